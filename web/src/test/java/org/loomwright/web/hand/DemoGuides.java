package org.loomwright.web.hand;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.planner.plan.Planner;

/**
 * A demo kit with its plan, and what a fitter would find and do on each build.
 *
 * @param order kit with its documents
 * @param plan its plan
 */
record DemoGuides(KitOrder order, Plan plan) {
  static final List<String> KITS = List.of("crew-comfort", "trailer");

  private static final Map<String, DemoGuides> PLANNED = new ConcurrentHashMap<>();

  /** A kit of the demo, planned once. */
  static DemoGuides of(String kit) {
    return PLANNED.computeIfAbsent(
        kit,
        it -> {
          KitOrder order = order(it);
          return new DemoGuides(order, Planner.plan(order));
        });
  }

  private static KitOrder order(String kit) {
    List<NamedText> texts = new ArrayList<>();
    // Tests run in the folder of their module.
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        texts.add(new NamedText(file.getFileName().toString(), Files.readString(file)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (WorkspaceReader.read(texts) instanceof Read.Good good
        && KitOrders.resolve(good.workspace(), kit) instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the demo has no readable kit " + kit);
  }

  /** Every possible build, trait to value, one by one. */
  List<Map<String, String>> builds() {
    Vehicle vehicle = order.vehicle();
    List<Map<String, String>> all = new ArrayList<>(List.of(Map.of()));
    for (Trait trait : vehicle.traits()) {
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> build : all) {
        for (TraitValue value : trait.values()) {
          Map<String, String> more = new LinkedHashMap<>(build);
          more.put(trait.id(), value.id());
          longer.add(more);
        }
      }
      all = longer;
    }
    return all.stream()
        .filter(build -> vehicle.rules().stream().noneMatch(it -> it.exclude().holds(build)))
        .toList();
  }

  /** How common a build is beside the others: the product of the shares of its values. */
  double weight(Map<String, String> build) {
    double weight = 1;
    for (Trait trait : order.vehicle().traits()) {
      TraitValue value =
          trait.values().stream()
              .filter(it -> it.id().equals(build.get(trait.id())))
              .findFirst()
              .orElseThrow();
      weight *= value.share().map(it -> it.fraction()).orElse(1.0 / trait.values().size());
    }
    return weight;
  }

  /** The steps of a build in the order in which they are taken, by the edges alone. */
  List<Step> walk(Map<String, String> build) {
    List<Step> taken = new ArrayList<>();
    String at = plan.guide().start();
    while (true) {
      taken.add(plan.guide().step(at).orElseThrow());
      List<Edge> open =
          plan.guide().from(at).stream().filter(it -> it.when().holds(build)).toList();
      if (plan.guide().ends().contains(at)) {
        return taken;
      }
      if (open.size() != 1) {
        throw new IllegalStateException(build + " finds " + open.size() + " ways on at " + at);
      }
      at = open.get(0).to();
    }
  }

  /** Cases of a build, one for each component. */
  List<Case> cases(Map<String, String> build) {
    return plan.cases().stream().filter(it -> it.when().holds(build)).toList();
  }

  /** The part number that serves a build. */
  PartNumber number(Map<String, String> build) {
    List<String> ids = cases(build).stream().map(Case::id).toList();
    return plan.design().partNumbers().stream()
        .filter(it -> it.cases().containsAll(ids))
        .findFirst()
        .orElseThrow();
  }

  /** A few builds that together have every case. */
  List<Map<String, String>> oneOfEachCase() {
    List<Map<String, String>> chosen = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    for (Map<String, String> build : builds()) {
      List<String> ids = cases(build).stream().map(Case::id).toList();
      if (!seen.containsAll(ids)) {
        seen.addAll(ids);
        chosen.add(build);
      }
    }
    return chosen;
  }

  /** The same kit, its plan not proven. */
  DemoGuides unproven() {
    Proof proof = plan.proof();
    return with(
        plan.unserved(),
        new Proof(
            false, proof.builds(), proof.obligations(), proof.leaves(), proof.counterexamples()));
  }

  /** The same kit, not made for some builds. */
  DemoGuides notServing(Condition when, String reason) {
    return with(
        List.of(new Unserved(when.text(), when, BigInteger.ONE, List.of(), reason)), plan.proof());
  }

  private DemoGuides with(List<Unserved> unserved, Proof proof) {
    return new DemoGuides(
        order,
        new Plan(
            plan.kit(),
            plan.builds(),
            plan.gap(),
            plan.fit(),
            plan.ways(),
            plan.cases(),
            unserved,
            plan.design(),
            plan.harness(),
            plan.checks(),
            plan.protections(),
            plan.networks(),
            plan.guide(),
            proof,
            plan.notes()));
  }

  /** The file of this kit, written into a folder. */
  Path file(Path folder) {
    try {
      return Files.writeString(
          folder.resolve(order.kit().id() + ".html"),
          org.loomwright.papers.hand.HandGuide.text(order, plan, Optional.of(2)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
