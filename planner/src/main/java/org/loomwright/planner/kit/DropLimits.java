package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  DropLimits(KitOrder order) {
    this.order = order;
  }

  /**
   * A need in a joint case, held against its drop budget.
   *
   * @param need the need
   * @param at the joint case
   * @param figures what the need gets there
   * @param limitV most drop allowed, V
   * @param limit the rule it comes from
   */
  record Judged(
      NeedAt need,
      JointCases.Tuple at,
      NeedFigures figures,
      double limitV,
      Sourced<Percent> limit) {
    /** Share of the budget used up. */
    double share() {
      return figures.dropV() / limitV;
    }

    /** Whether the budget is kept. */
    boolean keeps() {
      return figures.dropV() <= limitV + 1e-9;
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
                          limit));
                }
              });
    }
    return judged;
  }

  /**
   * Volts that a need lacks in a joint case; 0 or less when it gets enough; empty if none asked.
   */
  static Optional<Double> lacksV(NeedAt need, NeedFigures figures) {
    if (need.need().minimumVoltage().isEmpty() || figures.lowestV().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        need.need().minimumVoltage().get().volts() - figures.lowestV().getAsDouble());
  }

  private Sourced<Percent> limit(NeedAt need, Way way) {
    if (need.need().kind() == NeedKind.GROUND) {
      return order.rules().groundDrop();
    }
    return way.host().isPresent() ? order.rules().splicedFeedDrop() : order.rules().feedDrop();
  }
}
