package org.loomwright.planner.guide;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.kit.CaseSet;
import org.loomwright.planner.kit.Made;
import org.loomwright.planner.kit.NeedDrop;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;

/**
 * The values a guide asks to be taken, with the bands they have to lie in. Bands come from the
 * limits of the checks, expectations from the solved networks; both are named in the source.
 */
final class Readings {
  /**
   * Least voltage at rest of a 12 V lead-acid battery, V; common practice, about three quarters
   * charged. Other supplies in proportion.
   */
  static final double REST_V = 12.4;

  /** Least resistance of an open circuit on a multimeter, kΩ; common practice. */
  static final double OPEN_KOHM = 100;

  /**
   * Most that the key-off current may rise where the equipment names no figure; common practice.
   */
  static final double STANDBY_MA = 50;

  static final String FAULTS_BEFORE = "faults-before";
  static final String KEY_OFF_BEFORE = "key-off-before";

  private final KitOrder order;
  private final Made made;
  private final CaseRegions regions;
  private final CaseWords words;
  private final List<String> asked;
  private final List<NeedAt> needs;

  /**
   * @param asked traits asked for, in order
   */
  Readings(KitOrder order, Made made, CaseRegions regions, List<String> asked) {
    this.order = order;
    this.made = made;
    this.regions = regions;
    this.words = new CaseWords(made.sets(), regions);
    this.asked = List.copyOf(asked);
    this.needs = Needs.of(order);
  }

  /** Faults stored before the work. */
  static List<Reading> faults() {
    return List.of(
        everywhere(
            FAULTS_BEFORE,
            "stored faults before the work",
            ReadingKind.WORDS,
            Optional.empty(),
            Optional.empty(),
            "A fault on a circuit that is worked on is cleared up first.",
            ""));
  }

  /** Battery and key-off current before the work. */
  static List<Reading> atRest(double supplyV) {
    double leastV = REST_V * supplyV / 12;
    return List.of(
        everywhere(
            "rest-voltage",
            "battery rest voltage",
            ReadingKind.NUMBER,
            Optional.of(new Band(Optional.of(round(leastV)), Optional.empty(), "V")),
            Optional.empty(),
            "Charge the battery before you go on: a weak one makes every later value look worse"
                + " than the wiring is. If it does not keep its charge, it has to be replaced"
                + " first.",
            "common practice: 12.4 V for a 12 V lead-acid battery at rest"
                + (supplyV == 12 ? "" : ", in proportion for " + Names.number(supplyV) + " V")),
        keyOff(
            KEY_OFF_BEFORE,
            "key-off current before the work",
            Optional.empty(),
            "Well above "
                + Names.number(STANDBY_MA)
                + " mA something draws current already: find"
                + " out what, and tell the owner, before you add anything.",
            "common practice"));
  }

  /** No short on a fused lead, before its fuse goes in. */
  static Reading noShort(FuseFit fuse) {
    return everywhere(
        "short/" + fuse.block() + "/" + fuse.slot(),
        "resistance from the load side of slot " + fuse.slot() + " to bare body metal",
        ReadingKind.NUMBER,
        Optional.of(new Band(Optional.of(OPEN_KOHM), Optional.empty(), "kΩ")),
        Optional.empty(),
        "Leave the fuse out. Look for the short at the ends of the lead and where it passes edges.",
        "common practice: an open circuit reads 100 kΩ or more");
  }

  /** Drops and voltages under load, for every need that the kit wires, where it wires it. */
  List<Reading> underLoad() {
    List<Reading> readings = new ArrayList<>();
    for (NeedAt need : needs) {
      if (need.need().kind() == NeedKind.SIGNAL) {
        continue;
      }
      readings.addAll(drops(need));
      if (need.need().kind() == NeedKind.SUPPLY) {
        voltage(need).ifPresent(readings::add);
      }
    }
    return readings;
  }

  /** What works, and what has changed for the rest of the vehicle. */
  List<Reading> atTheEnd() {
    List<Reading> readings = new ArrayList<>();
    Region any = regions.of(List.of());
    for (NeedAt need : needs) {
      if (need.need().kind() == NeedKind.GROUND) {
        continue;
      }
      Region on = added(need);
      any = any.or(on);
      if (!on.isEmpty()) {
        readings.add(
            on(
                on,
                "works/" + need.id(),
                need.equipment().name() + ", " + need.topic() + ": works alone",
                ReadingKind.WORKS,
                Optional.empty(),
                "Isolate the battery again and go through the steps of this lead: fuse, terminals,"
                    + " ground.",
                ""));
      }
    }
    if (!any.isEmpty()) {
      readings.add(
          on(
              any,
              "works-together",
              "everything that was added works at the same time",
              ReadingKind.WORKS,
              Optional.empty(),
              "Compare the voltage under load once more with all loads on; look at the ground they"
                  + " share.",
              ""));
    }
    readings.add(
        everywhere(
            "others-work",
            "all else on the circuits that were worked on works: lamps, locks, windows",
            ReadingKind.WORKS,
            Optional.empty(),
            Optional.empty(),
            "Isolate the battery again and look at the last place that was worked on for that"
                + " circuit: a wire pulled out, a lock left open, a fuse in the wrong slot.",
            ""));
    readings.add(
        everywhere(
            "faults-after",
            "stored faults after the work",
            ReadingKind.WORDS,
            Optional.empty(),
            Optional.of(FAULTS_BEFORE),
            "Write every one down before any is cleared.",
            ""));
    readings.add(
        everywhere(
            "no-new-faults",
            "every fault stored now was there before the work",
            ReadingKind.WORKS,
            Optional.empty(),
            Optional.empty(),
            "A fault that was not there before comes from the work: clear it up before you hand"
                + " over.",
            ""));
    readings.add(
        keyOff(
            "key-off-after",
            "key-off current after the work",
            Optional.of(KEY_OFF_BEFORE),
            "Pull the added fuses one by one to find the load that stays on.",
            "common practice, where the equipment names no standby current"));
    return readings;
  }

  // One reading for each limit: a feed that is spliced in some cases may lose more there.
  private List<Reading> drops(NeedAt need) {
    Map<Double, List<NeedDrop>> byLimit = new TreeMap<>();
    for (NeedDrop drop : made.drops()) {
      if (drop.need().equals(need)) {
        byLimit.computeIfAbsent(round(drop.limitV()), it -> new ArrayList<>()).add(drop);
      }
    }
    boolean ground = need.need().kind() == NeedKind.GROUND;
    List<Reading> readings = new ArrayList<>();
    byLimit.forEach(
        (limitV, drops) -> {
          Region on = regions.of(drops.stream().map(NeedDrop::caseId).distinct().toList());
          double worstV = drops.stream().mapToDouble(NeedDrop::dropV).max().orElseThrow();
          NeedDrop first = drops.get(0);
          readings.add(
              on(
                  on,
                  (ground ? "drop-ground/" : "drop-feed/")
                      + need.id()
                      + (readings.isEmpty() ? "" : "/" + (readings.size() + 1)),
                  ground
                      ? "drop on the ground of "
                          + pin(need)
                          + ", from the pin to the battery's negative post"
                      : "drop on the feed of "
                          + pin(need)
                          + ", from the bus bar that feeds it to the pin",
                  ReadingKind.NUMBER,
                  Optional.of(new Band(Optional.empty(), Optional.of(limitV), "V")),
                  "Do not hand over. Measure from joint to joint along the way; the one that loses"
                      + " most is at fault.",
                  "limit "
                      + first.limit().value().text()
                      + " of "
                      + order.vehicle().supply().text()
                      + ": "
                      + first.limit().source()
                      + "; reckoned at worst "
                      + volts(worstV)));
        });
    return readings;
  }

  private Optional<Reading> voltage(NeedAt need) {
    Region on = added(need);
    if (on.isEmpty() || need.need().minimumVoltage().isEmpty()) {
      return Optional.empty();
    }
    double leastV = need.need().minimumVoltage().get().volts();
    String reckoned =
        made.checks().stream()
            .filter(it -> it.id().equals("voltage/" + need.id()))
            .findFirst()
            .map(it -> "; reckoned at worst " + volts(it.figure()))
            .orElse("");
    return Optional.of(
        on(
            on,
            "voltage/" + need.id(),
            "voltage at " + pin(need) + ", against its ground pin",
            ReadingKind.NUMBER,
            Optional.of(new Band(Optional.of(leastV), Optional.empty(), "V")),
            "Do not hand over. If both drops are in their bands, measure at the battery: it may be"
                + " flat.",
            "least voltage in the equipment's document" + reckoned));
  }

  /** Builds on which the kit wires a pin, or the ground it returns through. */
  private Region added(NeedAt need) {
    Region wired = wired(need);
    return Returns.of(need, needs).map(ground -> wired.or(wired(ground))).orElse(wired);
  }

  private Region wired(NeedAt need) {
    List<String> cases = new ArrayList<>();
    for (CaseSet set : made.sets()) {
      for (CaseSet.Member member : set.members()) {
        if (Optional.ofNullable(member.ways().get(need))
            .filter(way -> !way.leads().isEmpty())
            .isPresent()) {
          cases.add(member.id());
        }
      }
    }
    return regions.of(cases);
  }

  private Reading on(
      Region builds,
      String id,
      String name,
      ReadingKind kind,
      Optional<Band> band,
      String outside,
      String source) {
    Region here = regions.served();
    Described described = Described.of(builds, here, asked);
    boolean all = here.within(builds);
    return new Reading(
        id,
        name,
        kind,
        band.map(Band::unit),
        band,
        Optional.empty(),
        Optional.empty(),
        all ? Condition.always() : described.when(),
        all ? "" : words.of(builds, here).orElse(described.words()),
        outside,
        source);
  }

  private static Reading everywhere(
      String id,
      String name,
      ReadingKind kind,
      Optional<Band> band,
      Optional<String> compareWith,
      String outside,
      String source) {
    return new Reading(
        id,
        name,
        kind,
        band.map(Band::unit),
        band,
        compareWith,
        Optional.empty(),
        Condition.always(),
        "",
        outside,
        source);
  }

  private static Reading keyOff(
      String id, String name, Optional<String> compareWith, String outside, String source) {
    return new Reading(
        id,
        name,
        ReadingKind.NUMBER,
        Optional.of("mA"),
        Optional.empty(),
        compareWith,
        compareWith.map(before -> STANDBY_MA),
        Condition.always(),
        "",
        outside,
        source);
  }

  private static String pin(NeedAt need) {
    return need.topic() + " (pin " + need.pin().cavity() + " of the " + need.plug().name() + ")";
  }

  private static String volts(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString() + " V";
  }

  // Binary digits nobody reads off a meter.
  private static double round(double value) {
    return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN).doubleValue();
  }
}
