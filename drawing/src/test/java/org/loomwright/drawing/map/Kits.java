package org.loomwright.drawing.map;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.BuildCount;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.Vehicle;

/** Kits drawn by lot, as they might come out of planning. */
final class Kits {
  private static final double ALONG_MM = 5600;
  private static final double DOWN_MM = 2000;
  private static final List<String> CASES = List.of("A1", "A2", "A3");

  private final Random lot;
  private final int places;
  private final List<int[]> tree = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();

  private Kits(long seed, int places) {
    this.lot = new Random(seed);
    this.places = places;
  }

  /** How many places are marked in the plan view. */
  enum Marked {
    NONE,
    SOME,
    ALL
  }

  /**
   * A plan with its vehicle.
   *
   * @param plan plan
   * @param vehicle vehicle
   */
  record Drawn(Plan plan, Vehicle vehicle) {}

  /** A kit by lot. Same seed, same kit. */
  static Drawn of(long seed, int places, int leads, Marked marked) {
    return new Kits(seed, places).make(leads, marked);
  }

  private Drawn make(int leadCount, Marked marked) {
    List<Place> all = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      boolean known = marked == Marked.ALL || marked == Marked.SOME && lot.nextInt(3) > 0;
      all.add(
          new Place(
              "p" + i,
              name(i),
              Temperature.of("60 °C"),
              false,
              false,
              known ? Optional.of(spot()) : Optional.empty()));
    }
    for (int i = 1; i < places; i++) {
      int to = lot.nextInt(4) == 0 ? lot.nextInt(i) : Math.max(0, i - 1 - lot.nextInt(2));
      tree.add(new int[] {i, to});
      runs.add(run(i, to, lot.nextInt(12) == 0));
    }
    for (int i = 0; i < places / 5; i++) {
      int from = lot.nextInt(places);
      int to = lot.nextInt(places);
      if (from != to) {
        runs.add(run(from, to, lot.nextInt(3) == 0));
      }
    }
    Vehicle vehicle =
        new Vehicle(
            "v",
            "a van",
            "1",
            Voltage.of("12 V"),
            Voltage.of("11.8 V"),
            Optional.empty(),
            "p0",
            List.of(),
            Optional.empty(),
            Optional.empty(),
            SplicePolicy.CRIMP,
            List.of(),
            List.of(),
            List.of(),
            marked == Marked.NONE || lot.nextInt(4) == 0
                ? Optional.empty()
                : Optional.of(
                    new PlanView(Optional.empty(), Length.ofMm(ALONG_MM), Length.ofMm(DOWN_MM))),
            all,
            runs,
            List.of(),
            List.of(),
            List.of(),
            List.of());
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < leadCount; i++) {
      leads.add(lead(i));
    }
    return new Drawn(plan(leads), vehicle);
  }

  private String name(int i) {
    return switch (lot.nextInt(6)) {
      case 0 -> "the place " + i;
      case 1 -> "the space behind the trim on the left side, number " + i;
      case 2 -> "Übergang " + i + " <hinten & unten>";
      default -> "the bay number " + i;
    };
  }

  private PlanSpot spot() {
    return new PlanSpot(
        Length.ofMm(100 + lot.nextInt((int) ALONG_MM - 200)),
        Length.ofMm(100 + lot.nextInt((int) DOWN_MM - 200)));
  }

  private Run run(int from, int to, boolean restraint) {
    List<PlanSpot> bends = new ArrayList<>();
    for (int i = lot.nextInt(3); i > 0; i--) {
      bends.add(spot());
    }
    return new Run(
        "r" + runs.size(),
        "p" + from,
        "p" + to,
        Length.ofMm(150 + lot.nextInt(2500)),
        Length.of("30 mm"),
        "the loom " + runs.size(),
        true,
        List.of(),
        List.of(),
        Optional.empty(),
        false,
        false,
        List.of(),
        bends,
        restraint,
        false,
        Optional.empty());
  }

  private Lead lead(int i) {
    int from = lot.nextInt(places);
    int to = lot.nextInt(places);
    PlainColour[] plain = PlainColour.values();
    String base = plain[lot.nextInt(plain.length)].word();
    String colour =
        lot.nextInt(3) == 0 ? base + "/" + plain[lot.nextInt(plain.length)].word() : base;
    boolean always = lot.nextBoolean();
    List<String> path = path(from, to);
    return new Lead(
        "L" + (i + 1),
        "L" + (i + 1),
        lot.nextInt(4) == 0 ? "a supply with a name that takes quite some room" : "supply " + i,
        "A",
        List.of("n" + i),
        "W",
        1.5,
        Colour.of(colour),
        end(from, i, always),
        end(to, i, always),
        path,
        1000,
        1200,
        1230,
        30,
        30,
        4,
        10);
  }

  private LeadEnd end(int place, int i, boolean always) {
    List<EndUse> uses = new ArrayList<>();
    uses.add(new EndUse(landing(place, i), always ? CASES : CASES.subList(0, 1), true));
    if (!always) {
      uses.add(
          new EndUse(
              lot.nextBoolean()
                  ? new Landing.Parked("p" + place, "CAP")
                  : new Landing.IntoCircuit("c" + lot.nextInt(3), "p" + place, "SP"),
              CASES.subList(1, 2),
              false));
      if (lot.nextBoolean()) {
        uses.add(new EndUse(new Landing.Parked("p" + place, "CAP"), CASES.subList(2, 3), false));
      }
    }
    return new LeadEnd("p" + place, uses);
  }

  private Landing landing(int place, int i) {
    return switch (lot.nextInt(7)) {
      case 0 -> new Landing.InCavity("connector " + place, "" + i, "T", Optional.empty(), false);
      case 1 -> new Landing.InSlot("block " + place, "F" + i, "T");
      case 2 -> new Landing.OnGround("ground " + place, "R");
      case 3 -> new Landing.IntoCircuit("circuit " + place, "p" + place, "SP");
      case 4 -> new Landing.InJoint("J" + place, "SP");
      default -> new Landing.InHousing("housing " + place + "/main", "" + i, "T", Optional.empty());
    };
  }

  /** Runs of the tree between two places. */
  private List<String> path(int from, int to) {
    List<Integer> up = upwards(from);
    List<Integer> down = upwards(to);
    List<String> path = new ArrayList<>();
    up.stream().filter(it -> !down.contains(it)).forEach(it -> path.add("r" + (it - 1)));
    List<String> back = new ArrayList<>();
    down.stream().filter(it -> !up.contains(it)).forEach(it -> back.add(0, "r" + (it - 1)));
    path.addAll(back);
    return path;
  }

  private List<Integer> upwards(int place) {
    List<Integer> up = new ArrayList<>();
    for (int at = place; at > 0; at = tree.get(at - 1)[1]) {
      up.add(at);
    }
    return up;
  }

  private Harness harness(List<Lead> leads) {
    List<Bundle> bundles = new ArrayList<>();
    List<JointSpot> joints = new ArrayList<>();
    for (Run run : runs) {
      List<Bundle.Wire> wires =
          leads.stream()
              .filter(it -> it.runs().contains(run.id()))
              .map(it -> new Bundle.Wire(it.id(), 0, 0, 2.1))
              .toList();
      if (wires.isEmpty()) {
        continue;
      }
      boolean turned = lot.nextBoolean();
      bundles.add(
          new Bundle(
              run.id(),
              turned ? run.to() : run.from(),
              turned ? run.from() : run.to(),
              run.length().mm() + 30,
              wires,
              2.1 * Math.sqrt(wires.size()),
              Optional.empty(),
              2.1 * Math.sqrt(wires.size()),
              20,
              Optional.empty(),
              List.of()));
      if (lot.nextInt(3) == 0) {
        joints.add(new JointSpot("J" + run.from(), run.from(), Optional.of(run.id()), 60));
      }
    }
    return new Harness(bundles, List.of(), joints, 0, 0, true, List.of(), List.of());
  }

  private Plan plan(List<Lead> leads) {
    return new Plan(
        new Kit("k", "a kit", "A", "v", "r", List.of(), List.of(), List.of(), Map.of()),
        new BuildCount(BigInteger.ONE, 0, 1, 1),
        List.of(),
        new Fit(List.of(), List.of()),
        List.of(),
        CASES.stream()
            .map(
                it ->
                    new Case(
                        it, "A", "topic", it, Condition.always(), BigInteger.ONE, 0.3, Map.of()))
            .toList(),
        List.of(),
        new Design(leads, List.of(), List.of(), List.of(), List.of()),
        lot.nextInt(5) == 0 ? Harness.NONE : harness(leads),
        List.of(),
        List.of(),
        List.of(),
        new Guide("", List.of(), List.of(), List.of(), List.of(), 0, 0),
        new Proof(true, BigInteger.ONE, List.of(), List.of(), List.of()),
        List.of());
  }
}
