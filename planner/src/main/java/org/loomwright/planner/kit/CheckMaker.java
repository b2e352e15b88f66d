package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.physics.SumException;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.Protection;
import org.loomwright.planner.sizing.WireSizer;
import org.loomwright.planner.ways.Way;

/** All checks of a kit, each with figure, limit, margin, source and trace. */
final class CheckMaker {
  private final KitOrder order;
  private final List<CaseSet> sets;
  private final List<Sized> leads;
  private final Feeds feeds;
  private final WireSizer sizer;
  private final List<OwnLeads.Told> told;
  private final Checklist list;

  CheckMaker(
      KitOrder order,
      List<CaseSet> sets,
      List<Sized> leads,
      Feeds feeds,
      List<OwnLeads.Told> told) {
    this.told = List.copyOf(told);
    this.order = order;
    this.sets = List.copyOf(sets);
    this.leads = List.copyOf(leads);
    this.feeds = feeds;
    this.sizer = new WireSizer(order.parts(), order.rules());
    this.list = new Checklist(order.rules().marginalBand().value().fraction());
  }

  List<Check> make(
      List<FuseFit> fuses,
      Evaluation evaluation,
      BundleHeats heats,
      boolean complete,
      Harness harness) {
    leads.forEach(this::protection);
    leads.forEach(this::leastArea);
    new EndChecks(order, leads.stream().map(Sized::lead).toList(), list).check();
    for (CaseSet set : sets) {
      for (NeedAt need : set.needs()) {
        fuseLimit(set, need);
        apart(set, need);
      }
    }
    new NetworkChecks(order, evaluation, list).check(complete);
    HeatChecks heat = new HeatChecks(heats, list);
    leads.forEach(sized -> heat.check(sized, evaluation));
    fuses.forEach(this::slotRating);
    new SelectivityChecks(leads, feeds, list).check();
    new CapacityChecks(order, sets, list).check();
    new BundleChecks(order, list).check(harness, leads);
    told.forEach(this::own);
    return list.checks();
  }

  private void own(OwnLeads.Told it) {
    list.addRating(
        "own/" + it.lead().id() + "/" + it.sort(),
        it.name(),
        "own lead " + it.lead().id() + ", " + it.lead().name(),
        leads.stream()
            .filter(sized -> sized.lead().own().filter(it.lead().id()::equals).isPresent())
            .flatMap(sized -> sized.strand().cases().stream())
            .toList(),
        it.figure(),
        it.limit(),
        true,
        it.unit(),
        it.source(),
        List.of());
  }

  private void protection(Sized sized) {
    String subject = "lead " + sized.lead().id();
    List<String> cases = List.copyOf(sized.strand().cases());
    try {
      Protection.Result result = sizer.protection(sized.wire(), sized.need());
      List<TraceLine> trace = Checklist.lines(result.trace());
      for (org.loomwright.physics.Check check : result.checks()) {
        String id = check.name() + "/" + sized.lead().id();
        if (check.name().equals(WireSizer.SECTION)) {
          list.addRating(id, subject, cases, check, trace);
        } else {
          list.add(id, subject, cases, check, trace);
        }
      }
    } catch (SumException outsideTheSums) {
      list.addOutside("sums/" + sized.lead().id(), subject, cases, outsideTheSums);
    }
  }

  private void leastArea(Sized sized) {
    for (NeedAt need : sized.strand().needs()) {
      need.need()
          .leastArea()
          .ifPresent(
              least ->
                  list.addRating(
                      "least area/" + sized.lead().id() + "/" + need.id(),
                      "conductor not below what is asked for " + need.topic(),
                      "lead " + sized.lead().id(),
                      List.copyOf(sized.strand().cases()),
                      sized.lead().areaMm2(),
                      least.areaMm2(),
                      false,
                      "mm²",
                      need.need().standard().orElse("the equipment's maker"),
                      List.of()));
    }
  }

  private void fuseLimit(CaseSet set, NeedAt need) {
    if (need.need().fuseAtMost().isEmpty()) {
      return;
    }
    double worst = 0;
    List<String> cases = new ArrayList<>();
    for (CaseSet.Member member : set.members()) {
      Way way = member.ways().get(need);
      double fuseA = 0;
      if (way != null && way.leads().isEmpty()) {
        fuseA = way.host().flatMap(Circuit::fuse).map(it -> it.amperes()).orElse(0.0);
      } else if (way != null) {
        fuseA =
            leads.stream()
                .filter(it -> it.strand().needs(member.id()).contains(need))
                .mapToDouble(it -> feeds.before(it.strand(), member.id()).fuse().ratingA())
                .max()
                .orElse(0);
      }
      if (fuseA > worst) {
        worst = fuseA;
        cases = new ArrayList<>();
      }
      if (fuseA == worst && fuseA > 0) {
        cases.add(member.id());
      }
    }
    list.addRating(
        "fuse limit/" + need.id(),
        "fuse not above what is allowed for " + need.topic(),
        need.equipment().name() + ", " + need.topic(),
        cases,
        worst,
        need.need().fuseAtMost().get().amperes(),
        true,
        "A",
        need.need().standard().orElse("the equipment's maker"),
        List.of());
  }

  private void apart(CaseSet set, NeedAt need) {
    if (need.need().apartFrom().isEmpty()) {
      return;
    }
    long shared =
        leads.stream()
            .filter(it -> it.strand().needs().contains(need))
            .filter(
                it ->
                    it.strand().needs().stream()
                        .anyMatch(
                            other ->
                                need.need().apartFrom().stream()
                                    .map(
                                        partner ->
                                            org.loomwright.planner.need.Needs.partnerId(
                                                need, partner))
                                    .anyMatch(other.id()::equals)))
            .count();
    list.addRating(
        "apart/" + need.id(),
        "leads shared with pins it must be kept apart from",
        need.equipment().name() + ", " + need.topic(),
        set.ids(),
        shared,
        0,
        true,
        "leads",
        need.need().standard().orElse("the equipment's maker"),
        List.of());
  }

  private void slotRating(FuseFit fuse) {
    Slot slot =
        order
            .vehicle()
            .fuseBlock(fuse.block())
            .flatMap((FuseBlock block) -> block.slot(fuse.slot()))
            .orElseThrow();
    list.addRating(
        "slot/" + fuse.block() + "/" + fuse.slot(),
        "fuse not above what the slot may hold",
        "slot " + fuse.slot() + " of " + fuse.block(),
        fuse.cases(),
        fuse.ratingA(),
        slot.maxRating().amperes(),
        true,
        "A",
        "vehicle document",
        List.of());
  }
}
