package org.loomwright.cli.plan.summary;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.BuildCount;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.GapStatus;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.kit.KitOrder;

/** A plan made by hand, as large as a test wants it. */
final class HandMade {
  static final BigInteger BUILDS = BigInteger.valueOf(1264);

  private final KitOrder order;
  int leads = 2;
  double[] dropsV = {0.1};
  boolean proven = true;
  boolean served = true;

  HandMade(KitOrder order) {
    this.order = order;
  }

  Plan plan() {
    return new Plan(
        order.kit(),
        new BuildCount(BUILDS, 8, 2, 5),
        List.of(
            gap("heater/main/1", "heater and blower supply", 1264),
            gap("heater/main/2", "heater ground", 700)),
        new Fit(List.of("rear climate panel in the dash"), List.of()),
        List.of(),
        List.of(
            cased("A1", "A", "heater feed", "section B of the rear fuse block fed", 0.62),
            cased("A2", "A", "heater feed", "section B of the rear fuse block dead", 0.38),
            cased("B1", "B", "heater ground", "every van", 1)),
        served
            ? List.of()
            : List.of(
                new Unserved(
                    "prepared for towing",
                    Condition.is("tow-prep", "yes"),
                    BigInteger.valueOf(36),
                    List.of("heater/main/1"),
                    "slot F7 is taken")),
        new Design(allLeads(), List.of(), List.of(), List.of(), List.of(number())),
        Harness.NONE,
        checks(),
        List.of(),
        List.of(),
        new Guide("s1", List.of(), List.of(), List.of(), List.of(), 90, 0),
        proof(),
        List.of("Shares rest on 34 vans."));
  }

  private static NeedGap gap(String need, String words, int missing) {
    List<GapPart> parts = new ArrayList<>();
    parts.add(part(GapStatus.MISSING, missing));
    if (missing < BUILDS.intValue()) {
      parts.add(part(GapStatus.ALREADY_THERE, BUILDS.intValue() - missing));
    }
    return new NeedGap(need, words, parts);
  }

  private static GapPart part(GapStatus status, int builds) {
    return new GapPart(
        status, Condition.always(), "some", BigInteger.valueOf(builds), "", List.of());
  }

  private static Case cased(String id, String component, String topic, String words, double share) {
    return new Case(
        id, component, topic, words, Condition.always(), BigInteger.TEN, share, Map.of());
  }

  private List<Lead> allLeads() {
    List<Lead> all = new ArrayList<>();
    for (int i = 1; i <= leads; i++) {
      all.add(
          new Lead(
              "L" + i,
              "HTR-" + i,
              "heater feed",
              "A",
              List.of("heater/main/1"),
              "W-P-4",
              4,
              Colour.of("red/white"),
              new LeadEnd(
                  "rear-quarter",
                  List.of(
                      new EndUse(
                          new Landing.InSlot("rear-block", "F7", "OV-63-C"), List.of("A1"), true),
                      new EndUse(
                          new Landing.IntoCircuit("cargo-light", "rear-quarter", "SP-8"),
                          List.of("A2"),
                          false))),
              new LeadEnd(
                  "cabin-floor",
                  List.of(
                      new EndUse(
                          new Landing.InCavity(
                              "floor", "1", "OV-63-C", Optional.of("OV-S63C"), true),
                          List.of("A1"),
                          true),
                      new EndUse(new Landing.Parked("cabin-floor", "EC-6"), List.of("A2"), false))),
              List.of("quarter-to-floor"),
              1150,
              1400,
              1410,
              30,
              20,
              12.5,
              20));
    }
    return all;
  }

  private static PartNumber number() {
    return new PartNumber(
        "CC-1",
        "every van",
        List.of("L1"),
        List.of("A1", "A2", "B1"),
        1,
        List.of(),
        35,
        new BigDecimal("41.20"),
        new BigDecimal("30.33"),
        "EUR");
  }

  private List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (int i = 0; i < dropsV.length; i++) {
      checks.add(
          Check.of(
              "drop/L" + i,
              "voltage drop on the ground",
              "lead L" + i,
              List.of("A1"),
              dropsV[i],
              0.18,
              true,
              "V",
              0.03,
              "service texts: ground path below 0.2 V",
              List.of()));
    }
    return checks;
  }

  private Proof proof() {
    return new Proof(
        proven,
        BUILDS,
        List.of(
            new Obligation("cover", "every build ends somewhere", true, ""),
            new Obligation("met", "every need is met", proven, proven ? "" : "1 need")),
        List.of(),
        proven
            ? List.of()
            : List.of(
                new Counterexample(
                    "met",
                    Map.of("tow-prep", "yes"),
                    "prepared for towing",
                    BigInteger.valueOf(36),
                    "",
                    "no feed for the heater")));
  }
}
