package org.loomwright.drawing.board.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Tail;
import org.loomwright.model.parts.Parts;

/**
 * A connected tree of the harness with nothing in it that is neither an end nor a breakout: a place
 * where one bundle goes on into one tail is no node, and a bundle without a lead's end beyond it is
 * left out.
 *
 * @param edges its branches
 */
record HarnessGraph(List<Edge> edges) {
  HarnessGraph {
    edges = List.copyOf(edges);
  }

  /** What a node is. */
  enum Sort {
    PLACE,
    TAIL,
    JOINT
  }

  /**
   * A node.
   *
   * @param id id of the place, tail or joint
   */
  record Node(Sort sort, String id) {}

  /**
   * A joint on a branch.
   *
   * @param atMm from the branch's {@code from} node, mm
   */
  record On(String joint, double atMm) {}

  /**
   * A part of a branch with one covering all along.
   *
   * @param covering covering part; empty for bare wires
   */
  record Stretch(double lengthMm, Optional<String> covering) {}

  /** A branch. */
  record Edge(
      Node from,
      Node to,
      double diameterMm,
      boolean isRun,
      List<Stretch> stretches,
      List<On> joints) {
    Edge {
      stretches = List.copyOf(stretches);
      joints = List.copyOf(joints);
    }

    double lengthMm() {
      return stretches.stream().mapToDouble(Stretch::lengthMm).sum();
    }

    Edge turned() {
      List<Stretch> back = new ArrayList<>(stretches);
      java.util.Collections.reverse(back);
      double whole = lengthMm();
      List<On> on = joints.stream().map(it -> new On(it.joint(), whole - it.atMm())).toList();
      return new Edge(to, from, diameterMm, isRun, back, on);
    }

    /** This branch and one that begins where it ends, as one. */
    Edge then(Edge next) {
      List<Stretch> both = new ArrayList<>(stretches);
      both.addAll(next.stretches);
      List<On> on = new ArrayList<>(joints);
      double mine = lengthMm();
      next.joints.forEach(it -> on.add(new On(it.joint(), mine + it.atMm())));
      double thicker = Math.max(diameterMm, next.diameterMm);
      return new Edge(from, next.to, thicker, isRun && next.isRun, both, on);
    }

    /** The first so many mm, up to a new node. */
    Edge upTo(double mm, Node end) {
      List<Stretch> kept = new ArrayList<>();
      double left = mm;
      for (Stretch stretch : stretches) {
        if (left > 0) {
          kept.add(new Stretch(Math.min(left, stretch.lengthMm()), stretch.covering()));
        }
        left -= stretch.lengthMm();
      }
      List<On> on = joints.stream().filter(it -> !it.joint().equals(end.id())).toList();
      return new Edge(from, end, diameterMm, isRun, kept, on);
    }
  }

  /** The trees of a plan's harness, in the order of its bundles. */
  static List<HarnessGraph> of(Plan plan, Parts parts) {
    List<Edge> edges = raw(plan, parts);
    Set<String> kept = turningPlaces(plan);
    while (trim(edges, kept) || join(edges, kept)) {
      // Each round takes away one node.
    }
    return split(edges);
  }

  private static List<Edge> raw(Plan plan, Parts parts) {
    List<Edge> edges = new ArrayList<>();
    for (Bundle bundle : plan.harness().bundles()) {
      List<On> joints = new ArrayList<>();
      for (JointSpot spot : plan.harness().joints()) {
        if (spot.run().isPresent() && spot.run().get().equals(bundle.run())) {
          boolean isAtFrom = spot.place().equals(bundle.from());
          joints.add(
              new On(spot.joint(), isAtFrom ? spot.atMm() : bundle.lengthMm() - spot.atMm()));
        }
      }
      Optional<String> covering = bundle.covering().map(Bundle.Covered::part);
      edges.add(
          new Edge(
              new Node(Sort.PLACE, bundle.from()),
              new Node(Sort.PLACE, bundle.to()),
              Math.max(bundle.overallMm(), bundle.diameterMm()),
              true,
              List.of(new Stretch(bundle.lengthMm(), covering)),
              joints));
    }
    WireDiameters wires = new WireDiameters(plan, parts);
    for (Tail tail : plan.harness().tails()) {
      List<String> leads = tail.ends().stream().map(Tail.End::lead).distinct().toList();
      edges.add(
          bare(
              tail.place(),
              new Node(Sort.TAIL, tail.id()),
              tail.lengthMm(),
              wires.bundleMm(leads)));
    }
    for (JointSpot spot : plan.harness().joints()) {
      if (spot.run().isEmpty()) {
        double diameter = wires.bundleMm(wires.leadsOf(spot.joint()));
        edges.add(bare(spot.place(), new Node(Sort.JOINT, spot.joint()), spot.atMm(), diameter));
      }
    }
    return edges;
  }

  private static Edge bare(String place, Node end, double lengthMm, double diameterMm) {
    return new Edge(
        new Node(Sort.PLACE, place),
        end,
        diameterMm,
        false,
        List.of(new Stretch(lengthMm, Optional.empty())),
        List.of());
  }

  /** Places where a lead turns back, because both its ends leave there. */
  private static Set<String> turningPlaces(Plan plan) {
    Set<String> places = new LinkedHashSet<>();
    for (Lead lead : plan.design().leads()) {
      if (lead.runs().isEmpty() && lead.a().place().equals(lead.b().place())) {
        places.add(lead.a().place());
      }
    }
    return places;
  }

  private static List<Edge> at(List<Edge> edges, Node node) {
    return edges.stream()
        .filter(edge -> edge.from().equals(node) || edge.to().equals(node))
        .map(edge -> edge.to().equals(node) ? edge : edge.turned())
        .toList();
  }

  private static Set<Node> places(List<Edge> edges) {
    Set<Node> nodes = new LinkedHashSet<>();
    for (Edge edge : edges) {
      for (Node node : List.of(edge.from(), edge.to())) {
        if (node.sort() == Sort.PLACE) {
          nodes.add(node);
        }
      }
    }
    return nodes;
  }

  /** Cuts back one branch that ends at a place where no lead ends, to its last joint if any. */
  private static boolean trim(List<Edge> edges, Set<String> kept) {
    for (Node place : places(edges)) {
      List<Edge> here = at(edges, place);
      if (here.size() != 1 || kept.contains(place.id())) {
        continue;
      }
      Edge edge = here.get(0);
      int index = indexOf(edges, edge);
      Optional<On> last =
          edge.joints().stream().max(java.util.Comparator.comparingDouble(On::atMm));
      if (last.isPresent()) {
        edges.set(index, edge.upTo(last.get().atMm(), new Node(Sort.JOINT, last.get().joint())));
      } else {
        edges.remove(index);
      }
      return true;
    }
    return false;
  }

  /** Makes one branch of two at a place where nothing breaks out. */
  private static boolean join(List<Edge> edges, Set<String> kept) {
    for (Node place : places(edges)) {
      List<Edge> here = at(edges, place);
      if (here.size() == 2
          && !kept.contains(place.id())
          && !(here.get(0).isRun() && here.get(1).isRun())) {
        int first = indexOf(edges, here.get(0));
        int second = indexOf(edges, here.get(1));
        edges.set(Math.min(first, second), here.get(0).then(here.get(1).turned()));
        edges.remove(Math.max(first, second));
        return true;
      }
    }
    return false;
  }

  private static int indexOf(List<Edge> edges, Edge edge) {
    for (int i = 0; i < edges.size(); i++) {
      Edge it = edges.get(i);
      if ((it.from().equals(edge.from()) && it.to().equals(edge.to()))
          || (it.from().equals(edge.to()) && it.to().equals(edge.from()))) {
        return i;
      }
    }
    throw new IllegalStateException("no branch between " + edge.from() + " and " + edge.to());
  }

  private static List<HarnessGraph> split(List<Edge> edges) {
    Map<Node, Integer> groups = new LinkedHashMap<>();
    for (Edge edge : edges) {
      int mine = groups.computeIfAbsent(edge.from(), any -> groups.size());
      int its = groups.computeIfAbsent(edge.to(), any -> groups.size());
      int kept = Math.min(mine, its);
      groups.replaceAll((node, group) -> group == mine || group == its ? kept : group);
    }
    Map<Integer, List<Edge>> trees = new LinkedHashMap<>();
    for (Edge edge : edges) {
      trees
          .computeIfAbsent(groups.getOrDefault(edge.from(), 0), any -> new ArrayList<>())
          .add(edge);
    }
    return trees.values().stream().map(HarnessGraph::new).toList();
  }
}
