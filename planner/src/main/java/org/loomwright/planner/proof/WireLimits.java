package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Current;
import org.loomwright.physics.SumException;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.wire.Conductor;

/**
 * Wires bear their fuse and their current, are not thinner than a need asks, and end in terminals
 * and rings that bear the current; all sums made anew.
 *
 * <p>Current: as a single wire in the hottest air on its way, by handbook and heat balance; a
 * condition that a bundle can only make harder. Terminals: by the limit with their thickest wire;
 * what thinner wire or a hotter place takes off, the plan's own checks judge.
 */
final class WireLimits implements NetCheck {
  private static final double SLACK = 1e-6;

  private final Subject subject;
  private final LeadHeat heat;

  WireLimits(Subject subject) {
    this.subject = subject;
    this.heat = new LeadHeat(subject);
  }

  @Override
  public void check(NetAt at, Findings findings) {
    for (Link link : at.net().links()) {
      link.lead()
          .ifPresent(
              lead -> {
                current(at, link, lead, findings);
                link.landings().forEach(it -> landed(at, link, lead, it, findings));
              });
    }
    for (Traced traced : at.traced()) {
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
            + Figures.of(heat.ambientC(lead))
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

  private void landed(NetAt at, Link link, Lead lead, Landing landing, Findings findings) {
    Optional<String> terminal =
        landing instanceof Landing.InCavity it
            ? Optional.of(it.terminal())
            : landing instanceof Landing.InHousing it
                ? Optional.of(it.terminal())
                : landing instanceof Landing.InSlot it
                    ? Optional.of(it.terminal())
                    : Optional.empty();
    terminal
        .flatMap(subject.order().parts()::terminal)
        .ifPresent(it -> bears(at, link, lead, "terminal " + it.id(), it.currentLimit(), findings));
    if (landing instanceof Landing.OnGround on) {
      subject.order().parts().rings().stream()
          .filter(it -> it.id().equals(on.ring()))
          .findFirst()
          .flatMap(Ring::currentLimit)
          .ifPresent(it -> bears(at, link, lead, "ring " + on.ring(), it, findings));
    }
  }

  private static void bears(
      NetAt at, Link link, Lead lead, String what, Current limit, Findings findings) {
    double currentA = at.currentA(link);
    String figure =
        Figures.of(currentA)
            + " A of "
            + Figures.of(limit.amperes())
            + " A through "
            + what
            + " on lead "
            + lead.id();
    if (limit.amperes() > 0) {
      findings.figure(Claim.LIMITS, currentA / limit.amperes(), figure);
    }
    at.require(
        currentA <= limit.amperes() + SLACK, Claim.LIMITS, findings, "the current is " + figure);
  }

  /** Current a lead's wire may carry by itself in the hottest air on its way, A. */
  double allowedA(Lead lead, Wire wire) {
    if (wire.rating().celsius() <= heat.ambientC(lead)) {
      return 0;
    }
    try {
      return Ampacity.of(
              Ampacity.Input.single(conductor(wire), wire.rating().celsius(), heat.ambientC(lead)))
          .allowedA();
    } catch (SumException outsideTheSums) {
      // What the sums can't judge is not allowed anything.
      return 0;
    }
  }

  private Optional<Wire> wire(Lead lead) {
    return subject.order().parts().wire(lead.wire());
  }

  private static Conductor conductor(Wire wire) {
    return Copper.conductor(wire.size(), wire.diameter().mm());
  }
}
