package org.loomwright.planner.proof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;

/**
 * Each lead of the user's own is in the box, ends where the kit says on the builds that use it and
 * nowhere on the others, bears what its author says it carries, and is tied to nothing that could
 * make it live.
 */
final class OwnAsAsked implements NetCheck {
  private static final double SLACK = 1e-6;

  private final Subject subject;
  private final WireLimits wires;

  OwnAsAsked(Subject subject) {
    this.subject = subject;
    this.wires = new WireLimits(subject);
  }

  @Override
  public void check(NetAt at, Findings findings) {
    for (Lead lead : at.net().leads()) {
      if (lead.own().isPresent()) {
        at.require(
            at.sources(Source.Kind.FEED).isEmpty()
                && at.circuits().isEmpty()
                && at.traced().isEmpty(),
            Claim.NO_BACK_FEED,
            findings,
            "lead " + lead.id() + " is the user's own and is tied to a feed, a circuit or a need");
      }
    }
  }

  /** Looks at one end of the guide. */
  void atEnd(Step step, Region here, Progress progress, Findings findings) {
    for (OwnLead own : subject.order().kit().ownLeads()) {
      Region wanted = own.when().map(subject.facts()::of).map(here::and).orElse(here);
      List<Lead> leads =
          subject.design().leads().stream()
              .filter(it -> it.own().filter(own.id()::equals).isPresent())
              .toList();
      Optional<Step> at = Optional.of(step);
      if (leads.size() != 1) {
        findings.failOn(
            wanted,
            Claim.COMPLETE,
            at,
            words(own) + (leads.isEmpty() ? " is not made" : " is made more than once"));
        continue;
      }
      Lead lead = leads.get(0);
      Region boxed = subject.facts().regions().none();
      for (Map.Entry<PartNumber, Region> box : subject.boxes().entrySet()) {
        boxed = box.getKey().leads().contains(lead.id()) ? boxed.or(box.getValue()) : boxed;
      }
      findings.failOn(
          wanted.minus(boxed), Claim.COMPLETE, at, words(own) + " is not in the box here");
      end(at, own, own.from(), lead, "a", here, wanted.and(boxed), progress, findings);
      end(at, own, own.to(), lead, "b", here, wanted.and(boxed), progress, findings);
      limits(at, own, lead, wanted, findings);
    }
  }

  private void end(
      Optional<Step> at,
      OwnLead own,
      OwnEnd asked,
      Lead lead,
      String end,
      Region here,
      Region wanted,
      Progress progress,
      Findings findings) {
    LeadEnd made = end.equals("a") ? lead.a() : lead.b();
    Region right = subject.facts().regions().none();
    Region idle = here.minus(wanted);
    Region landed = subject.facts().regions().none();
    for (Map.Entry<Landing, Region> it :
        Wiring.landings(subject, progress, lead, end, made).entrySet()) {
      if (isAt(asked, it.getKey())) {
        right = right.or(it.getValue());
      }
      if (!(it.getKey() instanceof Landing.Parked)) {
        landed = landed.or(it.getValue());
      }
    }
    findings.failOn(
        wanted.minus(right),
        Claim.COMPLETE,
        at,
        words(own) + " is to end at '" + asked.text() + "' and does not");
    findings.failOn(
        idle.and(landed),
        Claim.COMPLETE,
        at,
        words(own) + " is landed at its end " + end + " on builds that are not to use it");
  }

  private boolean isAt(OwnEnd asked, Landing landing) {
    if (asked instanceof OwnEnd.OfCavity it) {
      return inCavity(landing, it.connector(), it.cavity());
    }
    if (asked instanceof OwnEnd.OfPin it) {
      boolean supplied =
          landing instanceof Landing.InHousing in
              && in.housing().equals(it.equipment() + "/" + it.plug())
              && in.cavity().equals(it.cavity());
      return supplied
          || mount(it)
              .flatMap(Mount::connector)
              .filter(connector -> inCavity(landing, connector, it.cavity()))
              .isPresent();
    }
    if (asked instanceof OwnEnd.OfGround it) {
      return landing instanceof Landing.OnGround on && on.ground().equals(it.ground());
    }
    return landing instanceof Landing.Parked parked
        && parked.place().equals(((OwnEnd.Loose) asked).place());
  }

  private Optional<Mount> mount(OwnEnd.OfPin pin) {
    return subject.order().kit().mounts().stream()
        .filter(it -> it.equipment().equals(pin.equipment()) && it.plug().equals(pin.plug()))
        .findFirst();
  }

  private static boolean inCavity(Landing landing, String connector, String cavity) {
    return landing instanceof Landing.InCavity in
        && in.connector().equals(connector)
        && in.cavity().equals(cavity);
  }

  private void limits(Optional<Step> at, OwnLead own, Lead lead, Region wanted, Findings findings) {
    double currentA = own.current().amperes();
    Optional<Wire> wire = subject.order().parts().wire(lead.wire());
    double allowedA = wire.map(it -> wires.allowedA(lead, it)).orElse(0.0);
    findings.require(
        currentA <= allowedA + SLACK,
        wanted,
        Claim.LIMITS,
        at,
        words(own)
            + " may carry "
            + Figures.of(currentA)
            + " A; its wire is allowed "
            + Figures.of(allowedA)
            + " A");
    findings.require(
        own.size().filter(it -> Math.abs(it.areaMm2() - lead.areaMm2()) > 1e-3).isEmpty()
            && own.colour().filter(it -> !it.equals(lead.colour())).isEmpty(),
        wanted,
        Claim.COMPLETE,
        at,
        words(own) + " has not the size or colour that was asked for");
    for (LeadEnd end : List.of(lead.a(), lead.b())) {
      end.uses()
          .forEach(
              use ->
                  most(use.landing())
                      .ifPresent(
                          most ->
                              findings.require(
                                  currentA <= most + SLACK,
                                  wanted,
                                  Claim.LIMITS,
                                  at,
                                  words(own)
                                      + " may carry "
                                      + Figures.of(currentA)
                                      + " A; its end bears "
                                      + Figures.of(most)
                                      + " A")));
    }
  }

  private Optional<Double> most(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return terminal(it.terminal());
    }
    if (landing instanceof Landing.InHousing it) {
      return terminal(it.terminal());
    }
    return landing instanceof Landing.OnGround on
        ? subject.order().parts().rings().stream()
            .filter(it -> it.id().equals(on.ring()))
            .findFirst()
            .flatMap(Ring::currentLimit)
            .map(it -> it.amperes())
        : Optional.empty();
  }

  private Optional<Double> terminal(String id) {
    return subject.order().parts().terminal(id).map(Terminal::currentLimit).map(it -> it.amperes());
  }

  private static String words(OwnLead own) {
    return "the user's own lead '" + own.id() + "' (" + own.name() + ")";
  }
}
