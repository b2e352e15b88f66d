package org.loomwright.planner.proof;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.physics.Check;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.protection.DamageLine;
import org.loomwright.physics.protection.FaultCurrents;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.FusePlace;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.protection.ProtectionCheck;
import org.loomwright.physics.protection.ProtectionRequest;

/**
 * The fuse of a feed opens before a short circuit damages a lead behind it: at the lead's far end
 * with a weak source and the wire hot, and right behind the fuse with a strong one.
 *
 * <p>A fault is one to the body. Judged where the form of the fuse, its place and the insulation of
 * the wire are on file; elsewhere nothing is claimed. What the fuse can interrupt is not judged.
 */
final class FuseProtects implements NetCheck {
  /** Of the physics' checks those that concern faults; load and start are judged elsewhere. */
  private static final Set<String> FAULTS =
      Set.of("overload", "fault at the end of the line", "short circuit");

  private final Subject subject;
  private final Resistances resistances;
  private final LeadHeat heat;
  private final Map<ProtectionRequest, List<Check>> known = new HashMap<>();

  FuseProtects(Subject subject) {
    this.subject = subject;
    this.resistances = new Resistances(subject);
    this.heat = new LeadHeat(subject);
  }

  @Override
  public void check(NetAt at, Findings findings) {
    if (at.feed().isEmpty() || at.feed().get().fuseA().isEmpty()) {
      return;
    }
    Source feed = at.feed().get();
    Optional<FeedSpot> spot = FeedSpot.of(subject, feed);
    Optional<FuseFamily> family = spot.flatMap(it -> it.family(at, feed));
    Optional<Double> ambientC = spot.flatMap(it -> it.ambientC(subject));
    if (family.isEmpty() || ambientC.isEmpty()) {
      return;
    }
    Fuse fuse = new Fuse(family.get(), feed.fuseA().getAsDouble());
    Set<Link> seen = new HashSet<>();
    for (Link link : at.net().links()) {
      if (link.lead().isPresent() && seen.add(link)) {
        judge(at, feed, spot.orElseThrow(), fuse, link, findings);
      }
    }
  }

  private void judge(
      NetAt at, Source feed, FeedSpot spot, Fuse fuse, Link link, Findings findings) {
    Lead lead = link.lead().orElseThrow();
    Optional<Wire> wire = subject.order().parts().wire(lead.wire());
    Optional<Insulation> insulation = wire.flatMap(FuseProtects::insulation);
    Optional<List<Link>> way = way(at, feed, link);
    if (insulation.isEmpty() || way.isEmpty()) {
      return;
    }
    try {
      ProtectionRequest request =
          request(spot, feed, fuse, lead, wire.orElseThrow(), insulation.get(), way.get());
      for (Check check : known.computeIfAbsent(request, it -> ProtectionCheck.of(it).checks())) {
        if (FAULTS.contains(check.name())) {
          at.require(
              check.verdict() != Verdict.FAILS,
              Claim.LIMITS,
              findings,
              "the "
                  + fuse.label()
                  + " of "
                  + feed.words()
                  + " does not protect lead "
                  + lead.id()
                  + ": "
                  + check.name()
                  + ", "
                  + Figures.of(check.value())
                  + " of "
                  + Figures.of(check.limit())
                  + " "
                  + check.unit());
        }
      }
    } catch (SumException outsideTheSums) {
      at.fail(
          Claim.LIMITS,
          findings,
          "whether the fuse of "
              + feed.words()
              + " protects lead "
              + lead.id()
              + " can't be judged: "
              + outsideTheSums.getMessage());
    }
  }

  private static Optional<Insulation> insulation(Wire wire) {
    try {
      return Optional.of(Insulation.parse(wire.insulation()));
    } catch (SumException notOnFile) {
      // Without published figures for the material nothing is claimed.
      return Optional.empty();
    }
  }

  /** Connections from the feed to the far end of a lead, the lead last. */
  private static Optional<List<Link>> way(NetAt at, Source feed, Link link) {
    return at.net()
        .path(feed.node(), link.to())
        .filter(path -> path.contains(link))
        .or(() -> at.net().path(feed.node(), link.from()).filter(path -> path.contains(link)));
  }

  private ProtectionRequest request(
      FeedSpot spot,
      Source feed,
      Fuse fuse,
      Lead lead,
      Wire wire,
      Insulation insulation,
      List<Link> way) {
    double ratingC = wire.rating().celsius();
    Rules rules = subject.order().rules();
    double lowestV = subject.vehicle().supplyLowest().volts();
    double cableOhm =
        spot.section()
            .map(it -> ElectricDefaults.feedCable(rules, it))
            .orElseGet(() -> ElectricDefaults.feedCable(rules))
            .value()
            .ohms();
    double strongOhm = ohms(ElectricDefaults.strongSource(rules, subject.vehicle()));
    double weakOhm = ohms(ElectricDefaults.weakSource(rules, subject.vehicle()));
    double contactsOhm = resistances.fuse(feed).map(Resistances.Known::ohm).orElse(0.0);
    for (Link link : way) {
      contactsOhm += beside(link, lead);
    }
    contactsOhm += ohms(ElectricDefaults.body(rules));
    return new ProtectionRequest(
        fuse,
        subject.inEngineBay(spot.block().place()) ? FusePlace.ENGINE_BAY : FusePlace.CABIN,
        spot.ambientC(subject).orElseThrow(),
        0,
        Optional.empty(),
        Optional.empty(),
        DamageLine.Wire.hot(conductor(wire), insulation, ratingC, heat.ambientC(lead)),
        new FaultCurrents.Loop(
            lowestV,
            Math.max(
                lowestV, ElectricDefaults.supplyHighest(rules, subject.vehicle()).value().volts()),
            strongOhm + cableOhm,
            Math.max(strongOhm, weakOhm) + cableOhm,
            conductor(wire),
            lead.lengthMm() / 1000,
            0,
            contactsOhm,
            ratingC),
        ProtectionRequest.DEFAULT_OPENING_S);
  }

  /** Resistance of a connection on the way but for the lead itself, wires hot, ohm. */
  private double beside(Link link, Lead self) {
    double ohm = 0;
    if (link.lead().isPresent()) {
      Lead lead = link.lead().get();
      ohm += end(lead, "a", link, 0) + end(lead, "b", link, 1);
      if (!lead.equals(self)) {
        ohm +=
            subject
                .order()
                .parts()
                .wire(lead.wire())
                .map(
                    it ->
                        conductor(it).resistanceOhmPerM(it.rating().celsius())
                            * lead.lengthMm()
                            / 1000)
                .orElse(0.0);
      }
    } else if (link.source().isPresent()) {
      Circuit circuit = link.source().get();
      ohm += ohms(ElectricDefaults.contact(subject.order().rules()));
      ohm +=
          circuit
              .length()
              .map(
                  it ->
                      Copper.conductor(circuit.wire(), 0)
                              .resistanceOhmPerM(GroupModel.FACTORY_WIRE_C)
                          * it.mm()
                          / 1000)
              .orElse(0.0);
    }
    return ohm;
  }

  private double end(Lead lead, String end, Link link, int index) {
    return resistances
        .end(lead, end, link.landings().get(index))
        .map(Resistances.Known::ohm)
        .orElse(0.0);
  }

  private static org.loomwright.physics.wire.Conductor conductor(Wire wire) {
    return Copper.conductor(wire.size(), wire.diameter().mm());
  }

  private static double ohms(Sourced<Resistance> resistance) {
    return resistance.value().ohms();
  }
}
