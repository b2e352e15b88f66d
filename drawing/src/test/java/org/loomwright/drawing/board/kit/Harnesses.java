package org.loomwright.drawing.board.kit;

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
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.loomwright.model.design.BuildCount;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Plans with a harness drawn by lot, over the demo's parts and rules. Lengths of leads follow the
 * rule of the documents: bundles on the way, the tail at each end, and a joint's distance from its
 * place less for a lead that comes along its run, else more.
 */
public final class Harnesses {
  private static final List<String> PLACE_WORDS =
      List.of("dash, left", "tunnel", "B-pillar", "sill", "rear shelf", "floor, rear", "bulkhead");

  private final Random random;
  private final KitOrder demo;
  private final List<String> places = new ArrayList<>();
  private final int[] parents;
  private final double[] runsMm;
  private final List<Tail> tails = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<JointSpot> spots = new ArrayList<>();
  private final List<SuppliedHousing> housings = new ArrayList<>();
  private final List<Lead> leads = new ArrayList<>();
  private final Map<String, List<Tail.End>> ends = new LinkedHashMap<>();
  private final Map<Integer, List<String>> onRun = new LinkedHashMap<>();

  /** A plan and its order. */
  public record Drawn(Plan plan, KitOrder order) {}

  private Harnesses(long seed, int placeCount, KitOrder demo) {
    random = new Random(seed);
    this.demo = demo;
    parents = new int[placeCount];
    runsMm = new double[placeCount];
    for (int i = 0; i < placeCount; i++) {
      places.add("p" + i);
      // Now and then a tree of its own begins.
      parents[i] = i == 0 || random.nextInt(8) == 0 ? -1 : i - 1 - random.nextInt(Math.min(i, 4));
      runsMm[i] = 150 + random.nextInt(1200);
    }
  }

  /** A plan over so many places; the same seed gives the same plan. */
  public static Drawn random(long seed, int placeCount) {
    return new Harnesses(seed, placeCount, demo("trailer")).make();
  }

  /** The same for a board of that size, mm. */
  public static Drawn random(long seed, int placeCount, int widthMm, int heightMm) {
    return new Harnesses(seed, placeCount, demo("trailer", widthMm, heightMm)).make();
  }

  /** A kit of the demo folder, beside which the tests of a module run. */
  public static KitOrder demo(String kit) {
    return read(kit, text -> text);
  }

  /** The same with a board of that size in its rules, mm. */
  public static KitOrder demo(String kit, int widthMm, int heightMm) {
    JsonMapper mapper = JsonMapper.builder().build();
    return read(
        kit,
        text -> {
          ObjectNode document = (ObjectNode) mapper.readTree(text);
          if ("rules".equals(document.path("kind").asString(""))) {
            ObjectNode runs =
                document.get("runs") instanceof ObjectNode there
                    ? there
                    : document.putObject("runs");
            runs.putObject("boardWidth").put("value", widthMm + " mm").put("source", "this test");
            runs.putObject("boardHeight").put("value", heightMm + " mm").put("source", "this test");
          }
          return mapper.writeValueAsString(document);
        });
  }

  private static KitOrder read(String kit, UnaryOperator<String> edit) {
    List<NamedText> texts = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        texts.add(new NamedText(file.getFileName().toString(), edit.apply(Files.readString(file))));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Read read = WorkspaceReader.read(texts);
    if (read instanceof Read.Good good
        && KitOrders.resolve(good.workspace(), kit) instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the demo has no readable kit " + kit + ": " + read);
  }

  /** A kit with another harness and design. */
  public static Plan plan(KitOrder order, Design design, Harness harness) {
    return new Plan(
        order.kit(),
        new BuildCount(BigInteger.ONE, 0, 0, 1),
        List.of(),
        new Fit(List.of(), List.of()),
        List.of(),
        List.of(),
        List.of(),
        design,
        harness,
        List.of(),
        List.of(),
        List.of(),
        new Guide("start", List.of(), List.of(), List.of(), List.of(), 0, 0),
        new Proof(true, BigInteger.ONE, List.of(), List.of(), List.of()),
        List.of());
  }

  private Drawn make() {
    for (int place = 0; place < places.size(); place++) {
      int count = isLeaf(place) ? 1 + random.nextInt(2) : random.nextInt(3);
      for (int i = 0; i < count; i++) {
        tail(place);
      }
      if (parents[place] >= 0 && random.nextInt(4) == 0) {
        joint(place);
      }
    }
    // Each tail gets a lead, joints get three or more.
    for (Tail tail : List.copyOf(tails)) {
      int count = 1 + random.nextInt(4);
      for (int i = 0; i < count; i++) {
        lead(new Tip(tail.place(), Optional.of(tail), Optional.empty()));
      }
    }
    for (JointSpot spot : spots) {
      for (int i = 0; i < 3; i++) {
        lead(new Tip(spot.place(), Optional.empty(), Optional.of(spot)));
      }
    }
    List<Joint> met = new ArrayList<>();
    for (Joint joint : joints) {
      List<String> here =
          leads.stream()
              .filter(
                  lead ->
                      isIn(lead.a().asMade(), joint.id()) || isIn(lead.b().asMade(), joint.id()))
              .map(Lead::id)
              .toList();
      met.add(new Joint(joint.id(), joint.place(), joint.splice(), here));
    }
    List<Tail> filled =
        tails.stream()
            .filter(tail -> ends.containsKey(tail.id()))
            .map(
                tail ->
                    new Tail(
                        tail.id(),
                        tail.place(),
                        tail.kind(),
                        tail.subject(),
                        ends.getOrDefault(tail.id(), List.of()),
                        tail.lengthMm()))
            .toList();
    Design design = new Design(leads, met, housings, List.of(), List.of());
    List<JointSpot> used =
        spots.stream()
            .filter(
                spot ->
                    met.stream()
                        .anyMatch(it -> it.id().equals(spot.joint()) && !it.leads().isEmpty()))
            .toList();
    Harness harness = new Harness(bundles(used), filled, used, 0, 0, true, List.of(), List.of());
    KitOrder order = order();
    return new Drawn(plan(order, design, harness), order);
  }

  private static boolean isIn(Landing landing, String joint) {
    return landing instanceof Landing.InJoint it && it.joint().equals(joint);
  }

  private boolean isLeaf(int place) {
    for (int i = place + 1; i < parents.length; i++) {
      if (parents[i] == place) {
        return false;
      }
    }
    return true;
  }

  private void tail(int place) {
    Tail.Kind kind = Tail.Kind.values()[random.nextInt(Tail.Kind.values().length)];
    String id = "T" + (tails.size() + 1);
    Vehicle vehicle = demo.vehicle();
    String subject =
        switch (kind) {
          case HOUSING -> housing(places.get(place));
          case CONNECTOR -> any(vehicle.connectors()).id();
          case BLOCK -> any(vehicle.fuseBlocks()).id();
          case GROUND -> any(vehicle.grounds()).id();
          case CIRCUIT -> any(vehicle.circuits()).id();
          case LOOSE -> places.get(place);
        };
    tails.add(new Tail(id, places.get(place), kind, subject, List.of(), 60 + random.nextInt(300)));
  }

  private String housing(String place) {
    Housing part = any(demo.parts().housings());
    String id = "H" + (housings.size() + 1);
    List<String> cavities = part.cavities().stream().map(it -> it.number()).toList();
    int half = (cavities.size() + 1) / 2;
    housings.add(
        new SuppliedHousing(
            id,
            part.id(),
            place,
            any(List.of("seat heater", "trailer module, main plug", "lamp")),
            cavities.subList(0, half),
            cavities.subList(half, cavities.size())));
    return id;
  }

  private void joint(int place) {
    String id = "J" + (joints.size() + 1);
    String splice = demo.parts().splices().get(0).id();
    joints.add(new Joint(id, places.get(place), splice, List.of()));
    boolean isStub = random.nextInt(3) == 0;
    List<String> here = onRun.computeIfAbsent(place, any -> new ArrayList<>());
    here.add(id);
    double atMm = 50.0 * here.size();
    spots.add(
        new JointSpot(
            id,
            places.get(place),
            isStub ? Optional.empty() : Optional.of("r" + place),
            Math.min(atMm, runsMm[place] - 20)));
  }

  /** Where a lead ends. */
  private record Tip(String place, Optional<Tail> tail, Optional<JointSpot> joint) {}

  private void lead(Tip one) {
    List<Tip> others = new ArrayList<>();
    for (Tail tail : tails) {
      if (!one.tail().equals(Optional.of(tail)) && path(one.place(), tail.place()).isPresent()) {
        others.add(new Tip(tail.place(), Optional.of(tail), Optional.empty()));
      }
    }
    for (JointSpot spot : spots) {
      boolean mayMeet = one.joint().isEmpty() && path(one.place(), spot.place()).isPresent();
      if (mayMeet) {
        others.add(new Tip(spot.place(), Optional.empty(), Optional.of(spot)));
      }
    }
    if (others.isEmpty()) {
      if (one.joint().isPresent()) {
        return;
      }
      // Alone in its tree: out and back in the same tail.
      others.add(one);
    }
    Tip other = any(others);
    List<Integer> path = path(one.place(), other.place()).orElseThrow();
    double pathMm = path.stream().mapToDouble(run -> runsMm[run]).sum();
    double lengthMm = pathMm + tipMm(one, path) + tipMm(other, path);
    Wire wire = any(demo.parts().wires());
    String id = "L" + (leads.size() + 1);
    leads.add(
        new Lead(
            id,
            any(List.of("FEED ", "GND ", "SIG ")) + (leads.size() + 1),
            "a lead",
            "A",
            List.of(),
            wire.id(),
            wire.size().areaMm2(),
            any(wire.colours()),
            end(id, true, one),
            end(id, false, other),
            path.stream().map(run -> "r" + run).toList(),
            pathMm,
            lengthMm,
            lengthMm + 20,
            0,
            0,
            1,
            5));
  }

  private double tipMm(Tip tip, List<Integer> path) {
    if (tip.tail().isPresent()) {
      return tip.tail().get().lengthMm();
    }
    JointSpot spot = tip.joint().orElseThrow();
    boolean comesAlong =
        spot.run().isPresent() && path.stream().anyMatch(run -> spot.run().get().equals("r" + run));
    return comesAlong ? -spot.atMm() : spot.atMm();
  }

  /** The runs between two places, none for one place; empty where they do not hang together. */
  private Optional<List<Integer>> path(String from, String to) {
    List<Integer> up = upward(places.indexOf(from));
    List<Integer> down = upward(places.indexOf(to));
    if (!up.get(up.size() - 1).equals(down.get(down.size() - 1))) {
      return Optional.empty();
    }
    List<Integer> runs = new ArrayList<>();
    up.stream().filter(place -> !down.contains(place)).forEach(runs::add);
    down.stream().filter(place -> !up.contains(place)).forEach(runs::add);
    return Optional.of(runs);
  }

  private List<Integer> upward(int place) {
    List<Integer> way = new ArrayList<>();
    for (int at = place; at >= 0; at = parents[at]) {
      way.add(at);
    }
    return way;
  }

  private LeadEnd end(String lead, boolean isSideA, Tip tip) {
    Landing landing =
        tip.joint()
            .<Landing>map(spot -> new Landing.InJoint(spot.joint(), "SP"))
            .orElseGet(() -> landing(tip.tail().orElseThrow()));
    tip.tail()
        .ifPresent(
            tail ->
                ends.computeIfAbsent(tail.id(), any -> new ArrayList<>())
                    .add(new Tail.End(lead, isSideA)));
    List<EndUse> uses = new ArrayList<>(List.of(new EndUse(landing, List.of("A1"), true)));
    if (tip.joint().isEmpty() && random.nextInt(4) == 0) {
      uses.add(new EndUse(new Landing.Parked(tip.place(), "CAP"), List.of("A2", "A3"), false));
    }
    if (tip.joint().isEmpty() && random.nextInt(6) == 0) {
      String circuit = any(demo.vehicle().circuits()).id();
      uses.add(
          new EndUse(new Landing.IntoCircuit(circuit, tip.place(), "SP"), List.of("A4"), false));
    }
    return new LeadEnd(tip.place(), uses);
  }

  private Landing landing(Tail tail) {
    String spot = "" + (1 + ends.getOrDefault(tail.id(), List.of()).size());
    return switch (tail.kind()) {
      case HOUSING -> new Landing.InHousing(tail.subject(), spot, "T", Optional.empty());
      case CONNECTOR -> new Landing.InCavity(tail.subject(), spot, "T", Optional.empty(), false);
      case BLOCK -> new Landing.InSlot(tail.subject(), "F" + spot, "T");
      case GROUND -> new Landing.OnGround(tail.subject(), "R");
      case CIRCUIT -> new Landing.IntoCircuit(tail.subject(), tail.place(), "SP");
      case LOOSE -> new Landing.Parked(tail.place(), "C");
    };
  }

  private List<Bundle> bundles(List<JointSpot> used) {
    List<Bundle> bundles = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      String run = "r" + i;
      List<Lead> here = leads.stream().filter(lead -> lead.runs().contains(run)).toList();
      boolean hasJoint = used.stream().anyMatch(it -> it.run().equals(Optional.of(run)));
      if (parents[i] < 0 || (here.isEmpty() && !hasJoint)) {
        continue;
      }
      double diameter =
          1 + 1.2 * Math.sqrt(here.stream().mapToDouble(it -> square(diameterMm(it))).sum());
      boolean isCovered = random.nextInt(3) > 0;
      String covering = any(demo.parts().coverings()).id();
      bundles.add(
          new Bundle(
              run,
              places.get(parents[i]),
              places.get(i),
              runsMm[i],
              here.stream().map(it -> new Bundle.Wire(it.id(), 0, 0, diameterMm(it))).toList(),
              diameter,
              isCovered
                  ? Optional.of(
                      new Bundle.Covered(covering, runsMm[i], Optional.empty(), Optional.empty()))
                  : Optional.empty(),
              diameter + (isCovered ? 1 : 0),
              4 * diameter,
              Optional.empty(),
              List.of()));
    }
    return bundles;
  }

  private static double square(double value) {
    return value * value;
  }

  private double diameterMm(Lead lead) {
    return demo.parts().wire(lead.wire()).orElseThrow().diameter().mm();
  }

  private KitOrder order() {
    Vehicle it = demo.vehicle();
    List<Place> named = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      String words = PLACE_WORDS.get(i % PLACE_WORDS.size()) + " " + (i / PLACE_WORDS.size() + 1);
      named.add(
          new Place(places.get(i), words, Temperature.of("40 °C"), false, false, Optional.empty()));
    }
    Vehicle vehicle =
        new Vehicle(
            it.id(),
            it.name(),
            it.revision(),
            it.supply(),
            it.supplyLowest(),
            it.source(),
            it.battery(),
            it.batteryOpenings(),
            it.restraintWait(),
            it.sleepWait(),
            it.splicePolicy(),
            it.traits(),
            it.rules(),
            it.openings(),
            it.planView(),
            named,
            List.of(),
            it.connectors(),
            it.fuseBlocks(),
            it.grounds(),
            it.circuits());
    return new KitOrder(demo.kit(), vehicle, demo.equipment(), demo.parts(), demo.rules());
  }

  private <T> T any(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
