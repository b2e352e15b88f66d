package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.ProtectionCurve;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.protection.ChartPoint;
import org.loomwright.physics.protection.LoadPoint;
import org.loomwright.physics.protection.ProtectionChart;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.Protection;
import org.loomwright.planner.ways.LeadDraft;

/** The fuses of a kit against the wires they protect, as the checks of protection judge them. */
final class ProtectionCurves {
  private final KitOrder order;
  private final Feeds feeds;

  ProtectionCurves(KitOrder order, Feeds feeds) {
    this.order = order;
    this.feeds = feeds;
  }

  /**
   * Each lead but the grounds and the user's own with each fuse that is before it in some case. A
   * lead outside the range of the sums has none; its check "within what the sums can judge" says
   * why.
   */
  List<ProtectionCurve> of(List<Sized> leads) {
    List<ProtectionCurve> curves = new ArrayList<>();
    for (Sized sized : leads) {
      if (sized.strand().kind() != CircuitKind.GROUND && sized.need().isFused()) {
        named(sized.strand())
            .forEach((before, names) -> curve(sized, before, names).ifPresent(curves::add));
      }
    }
    return curves;
  }

  /** Fuses before a strand, each with its places in words. */
  private Map<FuseBefore, Set<String>> named(Strand strand) {
    Map<FuseBefore, Set<String>> named = new LinkedHashMap<>();
    for (String caseId : strand.cases()) {
      named
          .computeIfAbsent(feeds.before(strand, caseId), it -> new LinkedHashSet<>())
          .add(where(strand, caseId));
    }
    return named;
  }

  private String where(Strand strand, String caseId) {
    Touch source = feeds.chain(strand, caseId).get(0).in(caseId).map(LeadDraft::a).orElseThrow();
    if (source instanceof Touch.AtSlot at) {
      return "in slot "
          + at.slot()
          + " of "
          + order.vehicle().fuseBlock(at.block()).map(it -> it.name()).orElse(at.block());
    }
    return feeds.host(strand, caseId).map(it -> "of " + it.name()).orElse("before it");
  }

  private static Optional<ProtectionCurve> curve(
      Sized sized, FuseBefore before, Set<String> names) {
    try {
      ProtectionChart chart = Protection.chart(sized.wire(), sized.need(), before);
      return Optional.of(
          new ProtectionCurve(
              sized.lead().id(),
              "fuse " + Require.text(before.fuse().ratingA()) + " A " + String.join(" or ", names),
              Require.text(sized.lead().areaMm2()) + " mm²",
              points(chart.earliest()),
              points(chart.latest()),
              points(chart.damage()),
              chart.loads().stream()
                  .filter(it -> it.currentA() > 0 && it.durationS() > 0)
                  .map(ProtectionCurves::load)
                  .toList(),
              Optional.of(chart.endOfLineA()),
              Optional.of(chart.nearSourceA())));
    } catch (SumException outsideTheSums) {
      return Optional.empty();
    }
  }

  private static ProtectionCurve.Load load(LoadPoint load) {
    return new ProtectionCurve.Load(load.name(), load.currentA(), load.durationS());
  }

  private static List<ProtectionCurve.At> points(List<ChartPoint> points) {
    return points.stream().map(it -> new ProtectionCurve.At(it.currentA(), it.timeS())).toList();
  }
}
