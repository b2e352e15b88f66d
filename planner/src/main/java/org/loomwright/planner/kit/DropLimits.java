package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Sourced;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/** What a need may lose on its feed or ground, and the least voltage it must get. */
final class DropLimits {
  private final KitOrder order;
  private final double band;

  DropLimits(KitOrder order) {
    this.order = order;
    this.band = order.rules().marginalBand().value().fraction();
  }

  /**
   * A need in a joint case, held against its drop budget.
   *
   * @param need the need
   * @param at the joint case
   * @param figures what the need gets there
   * @param limitV most drop allowed, V
   * @param band share of the limit within which a check is marginal
   * @param limit the rule it comes from
   */
  record Judged(
      NeedAt need,
      JointCases.Tuple at,
      NeedFigures figures,
      double limitV,
      double band,
      Sourced<Percent> limit) {
    /** Share of the budget used up. */
    double share() {
      return figures.dropV() / limitV;
    }

    /** Verdict on the drop. */
    Verdict verdict() {
      return DropLimits.verdict(limitV - figures.dropV(), band * limitV);
    }

    /** Drop at which the check holds, V. */
    double goalV() {
      return limitV * (1 - band);
    }
  }

  /** All needs that get added leads, in each joint case. */
  List<Judged> drops(Evaluation evaluation) {
    List<Judged> judged = new ArrayList<>();
    for (Evaluation.Solved solved : evaluation.cases()) {
      solved
          .figures()
          .needs()
          .forEach(
              (need, figures) -> {
                Way way = solved.tuple().ways().get(need);
                if (way != null && !way.leads().isEmpty()) {
                  Sourced<Percent> limit = limit(need, way);
                  judged.add(
                      new Judged(
                          need,
                          solved.tuple(),
                          figures,
                          limit.value().fraction() * order.vehicle().supply().volts(),
                          band,
                          limit));
                }
              });
    }
    return judged;
  }

  /** The same, for supplies and grounds by the cases they belong to. */
  List<NeedDrop> byCase(Evaluation evaluation) {
    List<NeedDrop> drops = new ArrayList<>();
    for (Judged judged : drops(evaluation)) {
      if (judged.need().need().kind() == NeedKind.SIGNAL) {
        continue;
      }
      judged.at().members().stream()
          .filter(member -> member.ways().containsKey(judged.need()))
          .map(
              member ->
                  new NeedDrop(
                      judged.need(),
                      member.id(),
                      judged.figures().dropV(),
                      judged.limitV(),
                      judged.limit()))
          .forEach(drops::add);
    }
    return drops;
  }

  /** Verdict on the voltage a need gets; holds where none is asked for. */
  Verdict voltage(NeedAt need, NeedFigures figures) {
    if (need.need().minimumVoltage().isEmpty() || figures.lowestV().isEmpty()) {
      return Verdict.HOLDS;
    }
    double leastV = need.need().minimumVoltage().get().volts();
    return verdict(figures.lowestV().getAsDouble() - leastV, band * leastV);
  }

  /** Volts by which a need that is not sure of its least voltage misses it, and misses holding. */
  Optional<Missing> missing(NeedAt need, NeedFigures figures) {
    if (voltage(need, figures) == Verdict.HOLDS) {
      return Optional.empty();
    }
    double leastV = need.need().minimumVoltage().orElseThrow().volts();
    double lacksV = leastV - figures.lowestV().orElseThrow();
    return Optional.of(new Missing(lacksV, lacksV + band * leastV));
  }

  /**
   * How far a figure is off.
   *
   * @param limitV from its limit, V; zero or less when the limit is kept
   * @param goalV from where its check holds, V
   */
  record Missing(double limitV, double goalV) {}

  static Verdict verdict(double distance, double band) {
    // A last binary digit decides nothing.
    double slack = 1e-9;
    return distance >= band - slack
        ? Verdict.HOLDS
        : distance >= -slack ? Verdict.MARGINAL : Verdict.FAILS;
  }

  private Sourced<Percent> limit(NeedAt need, Way way) {
    if (need.need().kind() == NeedKind.GROUND) {
      return order.rules().groundDrop();
    }
    return way.host().isPresent() ? order.rules().splicedFeedDrop() : order.rules().feedDrop();
  }
}
