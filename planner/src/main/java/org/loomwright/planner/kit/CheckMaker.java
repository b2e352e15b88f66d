package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Drop;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.WireSizer;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/** All checks of a kit, each with figure, limit, margin, source and trace. */
final class CheckMaker {
  private final KitOrder order;
  private final List<CaseSet> sets;
  private final List<Sized> leads;
  private final Feeds feeds;
  private final WireSizer sizer;
  private final double band;
  private final List<Check> checks = new ArrayList<>();

  CheckMaker(KitOrder order, List<CaseSet> sets, List<Sized> leads, Feeds feeds) {
    this.order = order;
    this.sets = List.copyOf(sets);
    this.leads = List.copyOf(leads);
    this.feeds = feeds;
    this.sizer = new WireSizer(order.parts(), order.rules());
    this.band = order.rules().marginalBand().value().fraction();
  }

  List<Check> make(List<FuseFit> fuses) {
    leads.forEach(this::protection);
    leads.forEach(this::leastArea);
    leads.forEach(this::terminals);
    for (CaseSet set : sets) {
      for (NeedAt need : set.needs()) {
        worstDrop(set, need);
        fuseLimit(set, need);
        apart(set, need);
      }
    }
    fuses.forEach(this::slotRating);
    capacities();
    return checks;
  }

  private void add(
      String id,
      String name,
      String subject,
      List<String> cases,
      double figure,
      double limit,
      boolean atMost,
      String unit,
      String source,
      List<TraceLine> trace) {
    checks.add(
        Check.of(id, name, subject, cases, figure, limit, atMost, unit, band, source, trace));
  }

  // Ratings come in steps: a rating equal to its limit keeps it fully.
  private void addRating(
      String id,
      String name,
      String subject,
      List<String> cases,
      double figure,
      double limit,
      boolean atMost,
      String unit,
      String source) {
    checks.add(
        Check.of(id, name, subject, cases, figure, limit, atMost, unit, 0, source, List.of()));
  }

  private void protection(Sized sized) {
    String subject = "lead " + sized.lead().id();
    List<String> cases = List.copyOf(sized.strand().cases());
    try {
      List<TraceLine> trace = lines(sizer.protectionTrace(sized.wire(), sized.need()));
      for (org.loomwright.physics.Check check : sizer.protection(sized.wire(), sized.need())) {
        boolean atMost = check.value() <= check.limit() == check.margin() >= 0;
        add(
            check.name() + "/" + sized.lead().id(),
            check.name(),
            subject,
            cases,
            check.value(),
            check.limit(),
            atMost,
            check.unit(),
            check.rule() + "; " + check.source(),
            trace);
      }
    } catch (SumException outsideTheSums) {
      // Nobody can say that such a lead is safe, so it fails by name.
      add(
          "sums/" + sized.lead().id(),
          "within what the sums can judge",
          subject,
          cases,
          0,
          1,
          false,
          "",
          outsideTheSums.getMessage() == null ? "" : outsideTheSums.getMessage(),
          List.of());
    }
  }

  private void leastArea(Sized sized) {
    for (NeedAt need : sized.strand().needs()) {
      need.need()
          .leastArea()
          .ifPresent(
              least ->
                  addRating(
                      "least area/" + sized.lead().id() + "/" + need.id(),
                      "conductor not below what is asked for " + need.topic(),
                      "lead " + sized.lead().id(),
                      List.copyOf(sized.strand().cases()),
                      sized.lead().areaMm2(),
                      least.areaMm2(),
                      false,
                      "mm²",
                      need.need().standard().orElse("the equipment's maker")));
    }
  }

  private void terminals(Sized sized) {
    for (boolean a : new boolean[] {true, false}) {
      var end = a ? sized.lead().a() : sized.lead().b();
      end.uses().stream()
          .map(use -> terminal(use.landing()))
          .flatMap(Optional::stream)
          .distinct()
          .map(order.parts()::terminal)
          .flatMap(Optional::stream)
          .forEach(
              terminal ->
                  add(
                      "terminal/" + sized.lead().id() + "/" + terminal.id(),
                      "current through terminal " + terminal.id(),
                      "lead " + sized.lead().id(),
                      List.copyOf(sized.strand().cases()),
                      sized.lead().currentA(),
                      terminal.currentLimit().amperes(),
                      true,
                      "A",
                      terminal.source(),
                      List.of()));
    }
  }

  private static Optional<String> terminal(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return Optional.of(in.terminal());
    } else if (landing instanceof Landing.InHousing in) {
      return Optional.of(in.terminal());
    } else if (landing instanceof Landing.InSlot in) {
      return Optional.of(in.terminal());
    }
    return Optional.empty();
  }

  private record DropAt(
      String caseId, double volts, Sourced<Percent> limit, List<TraceLine> trace) {
    // How much of its own limit it uses up: a spliced feed may lose more than an own one.
    double share() {
      return volts / limit.value().fraction();
    }
  }

  // The worst case of a need's feed or ground, and the voltage left at its pin.
  private void worstDrop(CaseSet set, NeedAt need) {
    double supplyV = order.vehicle().supply().volts();
    boolean ground = kind(need) == CircuitKind.GROUND;
    DropAt worst = null;
    for (CaseSet.Member member : set.members()) {
      Optional<Sized> last =
          leads.stream()
              .filter(it -> it.strand().needs(member.id()).contains(need))
              .filter(it -> !isTrunkOnly(it, member.id(), need))
              .findFirst();
      if (last.isPresent()) {
        DropAt here = drop(last.get().strand(), member.id());
        worst = worst == null || here.share() > worst.share() ? here : worst;
      }
    }
    if (worst == null) {
      return;
    }
    add(
        "drop/" + need.id(),
        "voltage drop on the " + (ground ? "ground" : "feed"),
        need.equipment().name() + ", " + need.topic(),
        List.of(worst.caseId()),
        worst.volts(),
        worst.limit().value().fraction() * supplyV,
        true,
        "V",
        worst.limit().source(),
        worst.trace());
    if (!ground && need.need().minimumVoltage().isPresent()) {
      double groundV = order.rules().groundDrop().value().fraction() * supplyV;
      add(
          "voltage/" + need.id(),
          "voltage at the pin at lowest supply",
          need.equipment().name() + ", " + need.topic(),
          List.of(worst.caseId()),
          order.vehicle().supplyLowest().volts() - worst.volts() - groundV,
          need.need().minimumVoltage().get().volts(),
          false,
          "V",
          "the equipment's document; ground taken at its full budget",
          worst.trace());
    }
  }

  // A trunk carries several needs; the drop is followed from each need's own last lead.
  private boolean isTrunkOnly(Sized sized, String caseId, NeedAt need) {
    return leads.stream()
        .anyMatch(
            other ->
                other != sized
                    && other.strand().needs(caseId).contains(need)
                    && feeds.chain(other.strand(), caseId).contains(sized.strand()));
  }

  private DropAt drop(Strand last, String caseId) {
    double volts = 0;
    List<TraceLine> trace = new ArrayList<>();
    double supplyV = order.vehicle().supply().volts();
    for (Strand strand : feeds.chain(last, caseId)) {
      Sized sized = leads.stream().filter(it -> it.strand() == strand).findFirst().orElseThrow();
      double currentA = strand.needs(caseId).stream().mapToDouble(NeedAt::currentA).sum();
      Drop.Result drop = sizer.drop(sized.wire(), sized.lead().lengthMm(), currentA, supplyV);
      volts += drop.dropV();
      trace.add(new TraceLine("lead " + sized.lead().id(), "", drop.dropV(), "V", ""));
      trace.addAll(lines(drop.trace()));
    }
    Optional<Circuit> host = feeds.host(last, caseId);
    if (host.isPresent() && last.kind() != CircuitKind.GROUND) {
      double addedA = last.needs(caseId).stream().mapToDouble(NeedAt::currentA).sum();
      double hostV = HostDrop.volts(host.get(), addedA);
      volts += hostV;
      trace.add(
          new TraceLine(
              "drop in " + host.get().name(),
              host.get().length().isPresent()
                  ? "its resistance at " + (int) HostDrop.CONDUCTOR_C + " °C × all its current"
                  : "its length is not on file; taken as 0",
              hostV,
              "V",
              "vehicle document"));
    }
    trace.add(new TraceLine("drop from source to pin", "sum", volts, "V", "Ohm's law"));
    Sourced<Percent> limit =
        last.kind() == CircuitKind.GROUND
            ? order.rules().groundDrop()
            : host.isPresent() ? order.rules().splicedFeedDrop() : order.rules().feedDrop();
    return new DropAt(caseId, volts, limit, trace);
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
                .mapToDouble(it -> feeds.before(it.strand(), member.id()).ratingA())
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
    addRating(
        "fuse limit/" + need.id(),
        "fuse not above what is allowed for " + need.topic(),
        need.equipment().name() + ", " + need.topic(),
        cases,
        worst,
        need.need().fuseAtMost().get().amperes(),
        true,
        "A",
        need.need().standard().orElse("the equipment's maker"));
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
    addRating(
        "apart/" + need.id(),
        "leads shared with pins it must be kept apart from",
        need.equipment().name() + ", " + need.topic(),
        set.ids(),
        shared,
        0,
        true,
        "leads",
        need.need().standard().orElse("the equipment's maker"));
  }

  private void slotRating(FuseFit fuse) {
    Slot slot =
        order
            .vehicle()
            .fuseBlock(fuse.block())
            .flatMap((FuseBlock block) -> block.slot(fuse.slot()))
            .orElseThrow();
    addRating(
        "slot/" + fuse.block() + "/" + fuse.slot(),
        "fuse not above what the slot may hold",
        "slot " + fuse.slot() + " of " + fuse.block(),
        fuse.cases(),
        fuse.ratingA(),
        slot.maxRating().amperes(),
        true,
        "A",
        "vehicle document");
  }

  // Sum over components of each one's worst case: an upper bound for every build.
  private void capacities() {
    Map<String, Use> uses = new LinkedHashMap<>();
    Map<String, List<Worst>> worst = new LinkedHashMap<>();
    for (CaseSet set : sets) {
      Map<String, Map<String, Double>> byCase = new LinkedHashMap<>();
      for (CaseSet.Member member : set.members()) {
        for (Way way : member.ways().values()) {
          for (Use use : way.uses()) {
            uses.put(use.resource(), use);
            byCase
                .computeIfAbsent(use.resource(), r -> new LinkedHashMap<>())
                .merge(member.id(), use.amount(), Double::sum);
          }
        }
      }
      byCase.forEach(
          (resource, amounts) ->
              worst.computeIfAbsent(resource, r -> new ArrayList<>()).add(Worst.of(amounts)));
    }
    uses.forEach((resource, use) -> capacity(use, worst.getOrDefault(resource, List.of())));
  }

  /** The most that any case of a component takes of something, and the cases that do. */
  private record Worst(double amount, List<String> cases) {
    static Worst of(Map<String, Double> amounts) {
      double most = amounts.values().stream().mapToDouble(it -> it).max().orElse(0);
      return new Worst(
          most,
          amounts.entrySet().stream()
              .filter(it -> it.getValue() >= most - 1e-9)
              .map(Map.Entry::getKey)
              .toList());
    }
  }

  private void capacity(Use use, List<Worst> worst) {
    boolean lugs = use.resource().endsWith("lugs");
    String unit = lugs ? "lugs" : "A";
    add(
        "capacity/" + use.resource(),
        "room for added " + (lugs ? "lugs" : "load"),
        use.words(),
        worst.stream().flatMap(it -> it.cases().stream()).toList(),
        worst.stream().mapToDouble(Worst::amount).sum(),
        use.limit(),
        true,
        unit,
        "vehicle document and shop rules",
        worst.stream()
            .map(
                it ->
                    new TraceLine(
                        "added in case " + String.join(" or ", it.cases()),
                        "",
                        it.amount(),
                        unit,
                        "the equipment's document"))
            .toList());
  }

  private static CircuitKind kind(NeedAt need) {
    return switch (need.need().kind()) {
      case GROUND -> CircuitKind.GROUND;
      case SIGNAL -> CircuitKind.SIGNAL;
      case SUPPLY -> CircuitKind.SUPPLY;
    };
  }

  private static List<TraceLine> lines(Trace trace) {
    return trace.lines().stream()
        .map(it -> new TraceLine(it.what(), it.formula(), it.value(), it.unit(), it.source()))
        .toList();
  }
}
