package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Spot;

/** Draws a scene: ground, runs, stops with the leads through them, cards, notes. */
final class SceneDrawing {
  private final Scene scene;
  private final RunGraph graph;
  private final List<Boolean> always;
  private final Sheet sheet;
  private final double down;
  private final TrackPen pen;

  /**
   * @param always by lead, whether it serves all cases of its component
   * @param top height at which the scene's upper edge comes to lie, mm
   */
  SceneDrawing(Scene scene, List<Boolean> always, Sheet sheet, double top) {
    this.scene = scene;
    this.graph = scene.graph();
    this.always = always;
    this.sheet = sheet;
    this.down = top - scene.top();
    this.pen = new TrackPen(sheet, 0.86 * scene.pitch());
  }

  /** A lead's way into a stop: where it meets the stop's edge, and the direction there. */
  private record Port(int lead, Spot at, double angle) {}

  void draw(Optional<String> picture) {
    scene.layout().ground().ifPresent(it -> ground(moved(it), picture));
    for (int i = 0; i < graph.runs().size(); i++) {
      if (graph.runs().get(i).state() != RunState.USED) {
        unused(graph.runs().get(i), path(i));
      }
    }
    List<List<Port>> ports = new ArrayList<>();
    graph.stops().forEach(it -> ports.add(new ArrayList<>()));
    for (int i = 0; i < graph.runs().size(); i++) {
      ports(i, ports);
    }
    for (Scene.Placed card : scene.cards()) {
      leader(card, ports.get(card.stop()));
    }
    for (int i = 0; i < graph.runs().size(); i++) {
      used(i);
    }
    for (int i = 0; i < graph.runs().size(); i++) {
      for (MapRun.JointDot dot : graph.runs().get(i).joints()) {
        sheet.circle("joint", moved(scene.jointAt(i, dot)), 1.1, Sheet.INK, "#fff", 0.3);
      }
    }
    for (int i = 0; i < graph.stops().size(); i++) {
      stop(i, ports.get(i));
    }
    picture.ifPresent(it -> plates());
    for (Scene.Placed it : scene.cards()) {
      it.card().draw(sheet, graph.leads(), always, it.box().left(), it.box().top() + down);
    }
    scene.notes().forEach(it -> scene.write(sheet, it, down));
  }

  /** White ground for words over a picture. */
  private void plates() {
    Stream.concat(
            scene.notes().stream().map(Scene.Note::box),
            scene.cards().stream().map(Scene.Placed::box))
        .forEach(it -> sheet.rect("plate", moved(it), "#fff", "none", 0));
  }

  private void ground(Box box, Optional<String> picture) {
    sheet.rect("ground", box, "#fff", "#aaa", 0.2);
    picture.ifPresent(it -> sheet.image("plan-view", box, it, 0.45));
  }

  private void unused(MapRun run, List<Spot> path) {
    String name = run.state() == RunState.UNUSED ? "unused" : "forbidden";
    sheet.path(name, Segment.through(path), "#8a8a8a", 0.5, "");
    if (run.state() == RunState.FORBIDDEN) {
      for (double share : new double[] {0.3, 0.5, 0.7}) {
        Spot at = Plane.at(path, share).at();
        for (int side = -1; side <= 1; side += 2) {
          sheet.line(
              "cross",
              new Spot(at.x() - 1.3, at.y() - side * 1.3),
              new Spot(at.x() + 1.3, at.y() + side * 1.3),
              Sheet.INK,
              0.45,
              "");
        }
      }
    }
  }

  /** Tracks from a stop to its card, or a thin line where nothing ends. */
  private void leader(Scene.Placed card, List<Port> ports) {
    Spot from = moved(card.leader().from());
    Spot to = moved(card.leader().to());
    List<Integer> leads = card.card().stop().ends().isEmpty() ? List.of() : ending(card, ports);
    if (leads.isEmpty()) {
      if (card.leader().length() > scene.radius(card.stop()) + 3.5
          || !card.card().stop().ends().isEmpty()) {
        sheet.line("leader", from, to, "#777", 0.25, "");
      }
      return;
    }
    double pitch = scene.leaderPitch(card.stop());
    TrackPen narrow = new TrackPen(sheet, 0.86 * pitch);
    for (int i = 0; i < leads.size(); i++) {
      narrow.track(
          graph.leads().get(leads.get(i)),
          always.get(leads.get(i)),
          Plane.beside(List.of(from, to), (i - (leads.size() - 1) / 2.0) * pitch));
    }
  }

  /** Leads that go to a card, from left to right seen along its leader, as they come in. */
  private List<Integer> ending(Scene.Placed card, List<Port> ports) {
    Spot from = moved(card.leader().from());
    double across = Plane.angle(card.leader().from(), card.leader().to()) + Math.PI / 2;
    List<Integer> leads = new ArrayList<>(graph.ending(card.stop()));
    leads.sort(
        Comparator.comparingDouble(
            (Integer lead) ->
                ports.stream()
                    .filter(it -> it.lead() == lead)
                    .mapToDouble(
                        it ->
                            (it.at().x() - from.x()) * Math.cos(across)
                                + (it.at().y() - from.y()) * Math.sin(across))
                    .sum()));
    return leads;
  }

  /** Where the leads of a run meet its stops. */
  private void ports(int index, List<List<Port>> ports) {
    MapRun run = graph.runs().get(index);
    if (run.from() == run.to()) {
      return;
    }
    List<Spot> path = path(index);
    List<Integer> order = inOrder(index);
    for (int i = 0; i < order.size(); i++) {
      double by = (i - (order.size() - 1) / 2.0) * scene.pitch();
      int last = path.size() - 1;
      ports.get(run.from()).add(port(order.get(i), run.from(), path.get(0), path.get(1), by));
      ports
          .get(run.to())
          .add(port(order.get(i), run.to(), path.get(last), path.get(last - 1), -by));
    }
  }

  private void used(int index) {
    MapRun run = graph.runs().get(index);
    if (run.from() == run.to() || run.state() != RunState.USED) {
      return;
    }
    List<Spot> path = path(index);
    sheet.path(
        "bundle", Segment.through(path), "#e6e6e6", run.leads().size() * scene.pitch() + 0.9, "");
    List<Integer> order = inOrder(index);
    for (int i = 0; i < order.size(); i++) {
      int lead = order.get(i);
      double by = (i - (order.size() - 1) / 2.0) * scene.pitch();
      pen.track(graph.leads().get(lead), always.get(lead), Plane.beside(path, by));
    }
  }

  private Port port(int lead, int stop, Spot middle, Spot towards, double by) {
    double angle = Plane.angle(middle, towards);
    double radius = scene.radius(stop);
    double out = Math.sqrt(Math.max(0, radius * radius - by * by));
    return new Port(
        lead, Plane.away(Plane.away(middle, angle, out), angle + Math.PI / 2, by), angle);
  }

  /**
   * Leads of a run from its left to its right, seen along it: those that turn left at its ends lie
   * left, so that few cross in the stops.
   */
  private List<Integer> inOrder(int index) {
    MapRun run = graph.runs().get(index);
    List<Spot> path = scene.path(index);
    double start = Plane.angle(path.get(0), path.get(1));
    double end = Plane.angle(path.get(path.size() - 2), path.get(path.size() - 1));
    List<Integer> order = new ArrayList<>(run.leads());
    order.sort(
        Comparator.comparingDouble(
                (Integer lead) ->
                    onward(lead, run.to(), index, end)
                        - onward(lead, run.from(), index, start + Math.PI))
            .thenComparing(it -> it));
    return order;
  }

  /** How a lead turns at a stop, as the angle from straight on; 0 where it is not known. */
  private double onward(int lead, int stop, int by, double angle) {
    for (int i = 0; i < graph.runs().size(); i++) {
      MapRun next = graph.runs().get(i);
      boolean here = next.from() == stop || next.to() == stop;
      if (i != by && here && next.leads().contains(lead)) {
        List<Spot> path = scene.path(i);
        double out =
            next.from() == stop
                ? Plane.angle(path.get(0), path.get(1))
                : Plane.angle(path.get(path.size() - 1), path.get(path.size() - 2));
        return Plane.turn(out - angle);
      }
    }
    return scene.cards().stream()
        .filter(it -> it.stop() == stop)
        .map(it -> Plane.turn(Plane.angle(it.leader().from(), it.leader().to()) - angle))
        .findFirst()
        .orElse(0.0);
  }

  /** A stop: its disc, the leads through it, its number. */
  private void stop(int index, List<Port> ports) {
    Spot at = moved(scene.layout().at().get(index));
    Stop stop = graph.stops().get(index);
    double radius = scene.radius(index);
    sheet.circle(
        stop.used() ? "stop" : "stop-unused",
        at,
        radius,
        "#fff",
        stop.used() ? Sheet.INK : "#777",
        stop.used() ? 0.5 : 0.3);
    for (int lead = 0; lead < graph.leads().size(); lead++) {
      int wanted = lead;
      List<Port> own = new ArrayList<>(ports.stream().filter(it -> it.lead() == wanted).toList());
      if (own.size() % 2 == 1) {
        cardPort(index, lead, ports).ifPresent(own::add);
      }
      for (int i = 0; i + 1 < own.size(); i += 2) {
        through(lead, at, own.get(i), own.get(i + 1), radius);
      }
      if (own.size() == 1) {
        through(lead, at, own.get(0), new Port(lead, at, own.get(0).angle() + Math.PI), radius);
      }
    }
    Card.badge(sheet, stop, at, Math.min(radius, 0.8 * scene.size()), scene.size());
  }

  /** Where the track to a stop's card leaves it. */
  private Optional<Port> cardPort(int stop, int lead, List<Port> ports) {
    return scene.cards().stream()
        .filter(it -> it.stop() == stop && !it.card().stop().ends().isEmpty())
        .map(
            it -> {
              List<Integer> ending = ending(it, ports);
              double place = ending.indexOf(lead) - (ending.size() - 1) / 2.0;
              return port(
                  lead,
                  stop,
                  moved(it.leader().from()),
                  moved(it.leader().to()),
                  place * scene.leaderPitch(stop));
            })
        .findFirst();
  }

  private void through(int lead, Spot middle, Port one, Port other, double radius) {
    double pull = 0.55 * radius;
    pen.curve(
        graph.leads().get(lead),
        always.get(lead),
        one.at(),
        Plane.away(one.at(), one.angle() + Math.PI, pull),
        other.at().equals(middle) ? middle : Plane.away(other.at(), other.angle() + Math.PI, pull),
        other.at());
  }

  private List<Spot> path(int run) {
    return scene.path(run).stream().map(this::moved).toList();
  }

  private Spot moved(Spot it) {
    return new Spot(it.x(), it.y() + down);
  }

  private Box moved(Box it) {
    return new Box(it.left(), it.top() + down, it.right(), it.bottom() + down);
  }
}
