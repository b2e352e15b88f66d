package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Run;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.Load;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;

/** Gives every strand its number, wire, colour, length and ends. */
final class LeadMaker {
  private final KitOrder order;
  private final List<Strand> strands;
  private final Feeds feeds;
  private final Bundles bundles;
  private final Lengths lengths;
  private final Ends ends;
  private final Colours colours = new Colours();

  LeadMaker(KitOrder order, List<Strand> strands, Feeds feeds, Ends ends) {
    this.order = order;
    this.strands = List.copyOf(strands);
    this.feeds = feeds;
    this.bundles = new Bundles(strands);
    this.lengths = new Lengths(order, strands);
    this.ends = ends;
    // What the user chose is taken; the others keep clear of it.
    strands.stream()
        .flatMap(it -> it.own().flatMap(OwnLead::colour).stream())
        .forEach(colours::take);
  }

  /**
   * Leads with their wires.
   *
   * @param leads leads, numbered in the order of the strands
   * @param evaluation the whole kit with those wires
   */
  record Leads(List<Sized> leads, Evaluation evaluation) {
    Leads {
      leads = List.copyOf(leads);
    }
  }

  Leads make(Evaluator evaluator) {
    Map<Strand, WireNeed> needs = needs();
    Sizing.Result sized = sizing(needs, evaluator).size();
    List<Sized> made = new ArrayList<>();
    needs.forEach(
        (strand, need) -> {
          Wire wire = sized.wires().get(strand);
          if (wire != null) {
            made.add(
                new Sized(
                    strand,
                    lead(Evaluator.name(made.size()), strand, wire, need, sized.wires()),
                    wire,
                    need));
          }
        });
    return new Leads(made, sized.evaluation());
  }

  /** What each strand has to bear. */
  Map<Strand, WireNeed> needs() {
    Map<Strand, WireNeed> needs = new LinkedHashMap<>();
    strands.forEach(strand -> needs.put(strand, need(strand)));
    return needs;
  }

  /** The search for the wires. */
  Sizing sizing(Map<Strand, WireNeed> needs, Evaluator evaluator) {
    return new Sizing(
        needs,
        new WireSizer(order.parts(), order.rules()),
        evaluator,
        new DropLimits(order),
        order.rules().marginalBand().value().fraction(),
        ends::fit);
  }

  private Lead lead(String id, Strand strand, Wire wire, WireNeed need, Map<Strand, Wire> wires) {
    Colour colour =
        strand.own().flatMap(OwnLead::colour).orElseGet(() -> colours.next(strand.kind(), wire));
    LeadEnd a = ends.end(strand, true, wire, need.load(), wires);
    LeadEnd b = ends.end(strand, false, wire, need.load(), wires);
    double finishedMm = need.lengthMm();
    String what = what(strand);
    return new Lead(
        id,
        id + " " + what,
        what,
        strand.component(),
        strand.needs().stream().map(NeedAt::id).toList(),
        wire.id(),
        wire.size().areaMm2(),
        colour,
        a,
        b,
        strand.route().runs().stream().map(Run::id).toList(),
        strand.route().lengthMm(),
        finishedMm,
        lengths.cutMm(finishedMm, ends.stripMm(a.asMade()), ends.stripMm(b.asMade())),
        strand.route().toleranceWorstMm(),
        strand.route().toleranceRssMm(),
        need.load().continuousA(),
        strand.kind() == CircuitKind.GROUND || !need.isFused() ? 0 : need.fuse().ratingA(),
        strand.own().map(OwnLead::id));
  }

  private static String what(Strand strand) {
    if (strand.own().isPresent()) {
      return strand.own().get().name();
    }
    List<NeedAt> needs = strand.needs();
    NeedAt first = needs.get(0);
    return needs.size() == 1
        ? first.topic()
        : "shared feed of "
            + String.join(
                " and ", needs.stream().map(need -> need.plug().name()).distinct().toList());
  }

  private WireNeed need(Strand strand) {
    Rules rules = order.rules();
    double lengthMm = lengths.finishedMm(strand);
    if (strand.own().isPresent()) {
      return own(strand, strand.own().get(), lengthMm);
    }
    double least =
        (strand.kind() == CircuitKind.SIGNAL ? rules.leastSignalArea() : rules.leastSupplyArea())
            .value()
            .areaMm2();
    Load load = Load.NONE;
    double restMm = 0;
    for (String caseId : strand.cases()) {
      List<Need> needs = strand.needs(caseId).stream().map(NeedAt::need).toList();
      Load here = Load.together(needs);
      load =
          new Load(
              Math.max(load.continuousA(), here.continuousA()),
              Math.max(load.peakA(), here.peakA()),
              Math.max(load.peakTimeS(), here.peakTimeS()));
      for (Need need : needs) {
        least = Math.max(least, need.leastArea().map(it -> it.areaMm2()).orElse(0.0));
      }
      double chainMm =
          feeds.chainsThrough(strand, caseId).stream()
              .mapToDouble(chain -> chain.stream().mapToDouble(it -> lengths.finishedMm(it)).sum())
              .max()
              .orElse(lengthMm);
      restMm = Math.max(restMm, chainMm - lengthMm + returnMm(strand, caseId));
    }
    return new WireNeed(
        strand.kind() == CircuitKind.GROUND,
        load,
        feeds.fuses(strand),
        lengthMm,
        restMm,
        strand.route().ambientC(),
        bundles.wires(strand),
        least,
        // The drop is judged with the whole network, not lead by lead.
        Double.POSITIVE_INFINITY,
        order.vehicle().supply().volts());
  }

  // Tied to no feed, so there is neither fuse nor fault loop nor drop to judge.
  private WireNeed own(Strand strand, OwnLead lead, double lengthMm) {
    return new WireNeed(
        strand.kind() == CircuitKind.GROUND,
        new Load(lead.current().amperes(), 0, 0),
        List.of(),
        lengthMm,
        0,
        strand.route().ambientC(),
        bundles.wires(strand),
        OwnLeads.leastAreaMm2(order, lead),
        Double.POSITIVE_INFINITY,
        order.vehicle().supply().volts());
  }

  // The other half of the fault loop: for a feed the longest ground of its plug, for a ground as
  // much again as itself, in the same size.
  private double returnMm(Strand strand, String caseId) {
    if (strand.kind() == CircuitKind.GROUND) {
      return lengths.finishedMm(strand);
    }
    return strands.stream()
        .filter(it -> it.kind() == CircuitKind.GROUND)
        .filter(
            it ->
                it.needs().stream()
                    .anyMatch(
                        ground ->
                            strand.needs(caseId).stream()
                                .anyMatch(own -> own.plug().equals(ground.plug()))))
        .mapToDouble(it -> lengths.finishedMm(it))
        .max()
        .orElse(0);
  }
}
