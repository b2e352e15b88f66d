package org.loomwright.benchmarks;

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
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Harness;
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

/** A made-up kit on a tree of runs. */
final class BigKit {
  private static final double ALONG_MM = 5600;
  private static final double DOWN_MM = 2000;
  private static final List<String> CASES = List.of("A1", "A2");

  private BigKit() {}

  /** Its vehicle; each place hangs on one not far before it. */
  static Vehicle vehicle(int places, boolean marked) {
    Random lot = new Random(places);
    List<Place> all = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      PlanSpot at =
          new PlanSpot(
              Length.ofMm(200 + (ALONG_MM - 400) * lot.nextDouble()),
              Length.ofMm(200 + (DOWN_MM - 400) * lot.nextDouble()));
      all.add(
          new Place(
              "p" + i,
              "the bay number " + i,
              Temperature.of("60 °C"),
              false,
              false,
              marked ? Optional.of(at) : Optional.empty()));
      if (i > 0) {
        runs.add(run(i, parent(i), 400 + lot.nextInt(1500)));
      }
    }
    return new Vehicle(
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
        marked
            ? Optional.of(
                new PlanView(Optional.empty(), Length.ofMm(ALONG_MM), Length.ofMm(DOWN_MM)))
            : Optional.empty(),
        all,
        runs,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static int parent(int place) {
    return Math.max(0, place - 1 - place % 3);
  }

  private static Run run(int from, int to, int lengthMm) {
    return new Run(
        "r" + from,
        "p" + from,
        "p" + to,
        Length.ofMm(lengthMm),
        Length.of("30 mm"),
        "the loom " + from,
        true,
        List.of(),
        List.of(),
        Optional.empty(),
        false,
        false,
        List.of(),
        List.of(),
        false,
        false,
        Optional.empty());
  }

  /** Its plan. */
  static Plan plan(int places, int leads) {
    Random lot = new Random(leads);
    List<Lead> all = new ArrayList<>();
    for (int i = 0; i < leads; i++) {
      int from = lot.nextInt(places);
      int to = lot.nextInt(places);
      PlainColour[] plain = PlainColour.values();
      LeadEnd a = end("p" + from, new Landing.InSlot("block " + from, "F" + i, "T"), i);
      LeadEnd b =
          end("p" + to, new Landing.InHousing("plug " + to, "" + i, "T", Optional.empty()), i);
      all.add(
          new Lead(
              "L" + (i + 1),
              "L" + (i + 1),
              "supply " + i,
              "A",
              List.of(),
              "W",
              1.5,
              Colour.of(plain[i % plain.length].word()),
              a,
              b,
              path(from, to),
              1000,
              1200,
              1230,
              30,
              30,
              4,
              10));
    }
    return new Plan(
        new Kit("k", "a kit", "A", "v", "r", List.of(), List.of(), List.of(), Map.of()),
        new BuildCount(BigInteger.TWO, 1, 1, 2),
        List.of(),
        new Fit(List.of(), List.of()),
        List.of(),
        CASES.stream()
            .map(
                it ->
                    new Case(
                        it, "A", "topic", it, Condition.always(), BigInteger.ONE, 0.5, Map.of()))
            .toList(),
        List.of(),
        new Design(all, List.of(), List.of(), List.of(), List.of()),
        Harness.NONE,
        List.of(),
        List.of(),
        List.of(),
        new Guide("", List.of(), List.of(), List.of(), List.of(), 0, 0),
        new Proof(true, BigInteger.TWO, List.of(), List.of(), List.of()),
        List.of());
  }

  private static LeadEnd end(String place, Landing landing, int i) {
    return new LeadEnd(
        place,
        i % 3 > 0
            ? List.of(new EndUse(landing, CASES, true))
            : List.of(
                new EndUse(landing, CASES.subList(0, 1), true),
                new EndUse(new Landing.Parked(place, "CAP"), CASES.subList(1, 2), false)));
  }

  private static List<String> path(int from, int to) {
    List<Integer> up = upwards(from);
    List<Integer> down = upwards(to);
    List<String> path = new ArrayList<>();
    up.stream().filter(it -> !down.contains(it)).forEach(it -> path.add("r" + it));
    down.stream().filter(it -> !up.contains(it)).forEach(it -> path.add("r" + it));
    return path;
  }

  private static List<Integer> upwards(int place) {
    List<Integer> up = new ArrayList<>();
    for (int at = place; at > 0; at = parent(at)) {
      up.add(at);
    }
    return up;
  }
}
