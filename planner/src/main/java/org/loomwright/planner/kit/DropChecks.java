package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.physics.wire.Drop;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.WireSizer;

/** Voltage drop on feed and ground of each need, and the voltage left at its pin. */
final class DropChecks {
  private final KitOrder order;
  private final List<Sized> leads;
  private final Feeds feeds;
  private final WireSizer sizer;
  private final Checklist list;

  DropChecks(KitOrder order, List<Sized> leads, Feeds feeds, WireSizer sizer, Checklist list) {
    this.order = order;
    this.leads = List.copyOf(leads);
    this.feeds = feeds;
    this.sizer = sizer;
    this.list = list;
  }

  private record DropAt(
      String caseId, double volts, Sourced<Percent> limit, List<TraceLine> trace) {
    // How much of its own limit it uses up: a spliced feed may lose more than an own one.
    double share() {
      return volts / limit.value().fraction();
    }
  }

  // The worst case of a need's feed or ground, and the voltage left at its pin.
  void worstDrop(CaseSet set, NeedAt need) {
    double supplyV = order.vehicle().supply().volts();
    boolean ground = need.need().kind() == NeedKind.GROUND;
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
    list.add(
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
      list.add(
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
      trace.addAll(Checklist.lines(drop.trace()));
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
}
