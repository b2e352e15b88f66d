package org.loomwright.planner.proof;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.loomwright.model.design.Lead;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Run;
import org.loomwright.physics.SumException;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.wire.Conductor;

/**
 * Wires bear their fuse and their current, are not thinner than a need asks, and lose no more
 * voltage than the rules allow; all sums made anew.
 *
 * <p>Current: as a single wire in the hottest air on its way, by handbook and heat balance; a
 * condition that a bundle can only make harder. Drop: leads at the temperature their insulation is
 * rated for, factory wires at 60 °C where their length is on file; contacts and splices are not
 * counted.
 */
final class WireLimits implements NetCheck {
  private static final double SLACK = 1e-6;
  private static final double FACTORY_WIRE_C = 60;

  private final Subject subject;

  WireLimits(Subject subject) {
    this.subject = subject;
  }

  @Override
  public void check(NetAt at, Findings findings) {
    for (Link link : at.net().links()) {
      link.lead().ifPresent(lead -> current(at, link, lead, findings));
    }
    for (Traced traced : at.traced()) {
      if (traced.source().kind() != Source.Kind.SIGNAL) {
        drop(at, traced, findings);
      }
      traced
          .need()
          .need()
          .leastArea()
          .ifPresent(
              least -> {
                for (Lead lead : traced.leads()) {
                  double areaMm2 = wire(lead).map(it -> it.size().areaMm2()).orElse(0.0);
                  at.require(
                      areaMm2 >= least.areaMm2() - SLACK,
                      Claim.LIMITS,
                      findings,
                      "lead "
                          + lead.id()
                          + " has "
                          + Figures.of(areaMm2)
                          + " mm²; "
                          + traced.need().words()
                          + " asks for "
                          + least.text());
                }
              });
    }
  }

  /** Volt lost between a need's pin and its source. */
  double dropV(NetAt at, Traced traced) {
    double dropV = 0;
    for (Link link : traced.path()) {
      double currentA = at.currentA(link);
      if (link.lead().isPresent()) {
        Lead lead = link.lead().get();
        Optional<Wire> wire = wire(lead);
        dropV +=
            wire.map(
                    it ->
                        conductor(it).resistanceOhmPerM(it.rating().celsius())
                            * lead.lengthMm()
                            / 1000
                            * currentA)
                .orElse(Double.POSITIVE_INFINITY);
      } else if (link.source().isPresent() && link.source().get().length().isPresent()) {
        Circuit circuit = link.source().get();
        dropV +=
            conductor(circuit.wire()).resistanceOhmPerM(FACTORY_WIRE_C)
                * circuit.length().get().mm()
                / 1000
                * (currentA + at.factoryLoadA());
      }
    }
    return dropV;
  }

  private void drop(NetAt at, Traced traced, Findings findings) {
    if (traced.leads().isEmpty()) {
      return;
    }
    Rules rules = subject.order().rules();
    boolean ground = traced.source().kind() == Source.Kind.GROUND;
    boolean spliced = traced.path().stream().anyMatch(link -> link.source().isPresent());
    double share =
        (ground ? rules.groundDrop() : spliced ? rules.splicedFeedDrop() : rules.feedDrop())
            .value()
            .fraction();
    double limitV = share * subject.vehicle().supply().volts();
    double dropV = dropV(at, traced);
    String figure =
        Figures.of(dropV)
            + " V of "
            + Figures.of(limitV)
            + " V on the "
            + (ground ? "ground" : "feed")
            + " of "
            + traced.need().words();
    findings.figure(Claim.LIMITS, dropV / limitV, "drop " + figure);
    at.require(dropV <= limitV + SLACK, Claim.LIMITS, findings, "the voltage drop is " + figure);
    Need need = traced.need().need();
    if (!ground && need.minimumVoltage().isPresent()) {
      double leastV =
          subject.vehicle().supplyLowest().volts()
              - dropV
              - rules.groundDrop().value().fraction() * subject.vehicle().supply().volts();
      at.require(
          leastV >= need.minimumVoltage().get().volts() - SLACK,
          Claim.LIMITS,
          findings,
          traced.need().words()
              + " may get only "
              + Figures.of(leastV)
              + " V with the ground drop at its limit; it needs "
              + need.minimumVoltage().get().text());
    }
  }

  private void current(NetAt at, Link link, Lead lead, Findings findings) {
    Optional<Wire> wire = wire(lead);
    at.require(
        wire.isPresent(),
        Claim.LIMITS,
        findings,
        "the parts have no wire '" + lead.wire() + "' for lead " + lead.id());
    if (wire.isEmpty()) {
      return;
    }
    at.require(
        Math.abs(wire.get().size().areaMm2() - lead.areaMm2()) < 1e-3,
        Claim.LIMITS,
        findings,
        "lead " + lead.id() + " says " + Figures.of(lead.areaMm2()) + " mm² and its wire does not");
    boolean fused = at.feed().filter(it -> it.fuseA().isPresent()).isPresent();
    double factor = subject.order().rules().wireOverFuse().value().fraction();
    double askedA =
        fused ? at.feed().orElseThrow().fuseA().getAsDouble() * factor : at.currentA(link);
    double allowedA = allowedA(lead, wire.get());
    String figure =
        Figures.of(askedA)
            + " A asked, "
            + Figures.of(allowedA)
            + " A allowed in lead "
            + lead.id()
            + " at "
            + Figures.of(ambientC(lead))
            + " °C";
    if (askedA > 0) {
      findings.figure(Claim.LIMITS, askedA / allowedA, figure);
    }
    at.require(
        askedA <= allowedA + SLACK,
        Claim.LIMITS,
        findings,
        (fused ? "the wire is too thin for its fuse: " : "the wire is too thin for its current: ")
            + figure);
  }

  private double allowedA(Lead lead, Wire wire) {
    if (wire.rating().celsius() <= ambientC(lead)) {
      return 0;
    }
    try {
      return Ampacity.of(
              Ampacity.Input.single(conductor(wire), wire.rating().celsius(), ambientC(lead)))
          .allowedA();
    } catch (SumException outsideTheSums) {
      // What the sums can't judge is not allowed anything.
      return 0;
    }
  }

  private double ambientC(Lead lead) {
    DoubleStream places =
        DoubleStream.concat(
            DoubleStream.of(placeC(lead.a().place()), placeC(lead.b().place())),
            subject.vehicle().runs().stream()
                .filter(run -> lead.runs().contains(run.id()))
                .mapToDouble(this::runC));
    return places.max().orElseThrow();
  }

  private double runC(Run run) {
    double endsC = Math.max(placeC(run.from()), placeC(run.to()));
    return run.ambient().map(it -> Math.max(it.celsius(), endsC)).orElse(endsC);
  }

  private double placeC(String place) {
    return subject.vehicle().place(place).map(it -> it.ambient().celsius()).orElse(-60.0);
  }

  private Optional<Wire> wire(Lead lead) {
    return subject.order().parts().wire(lead.wire());
  }

  private static Conductor conductor(Wire wire) {
    return Copper.conductor(wire.size(), wire.diameter().mm());
  }

  private static Conductor conductor(org.loomwright.model.quantity.WireSize size) {
    return Copper.conductor(size, 0);
  }
}
