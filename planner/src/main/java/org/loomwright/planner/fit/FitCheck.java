package org.loomwright.planner.fit;

import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;

/**
 * Everything needed to tell a customer whether a kit fits, from answers that need no opening of the
 * vehicle. Worked out once from a plan; answering is a walk over small diagrams, so that a page
 * without a program behind it can do it too.
 *
 * <p>Traits that are not answered are followed for every value. Nothing is guessed from shares;
 * only the time of the work is weighed with them.
 *
 * @param questions the questions, in the order in which they are asked; a diagram's traits are
 *     places in this list
 * @param traits what the shop may have to find out, in document order
 * @param wiring whether the wiring fits
 * @param modules modules needed
 * @param coding coding needed
 * @param numbers part numbers
 * @param work what fitting involves
 */
public record FitCheck(
    List<FitQuestion> questions,
    List<FitTrait> traits,
    Wiring wiring,
    Demands modules,
    Demands coding,
    Numbers numbers,
    Work work) {
  public FitCheck {
    questions = List.copyOf(questions);
    traits = List.copyOf(traits);
  }

  /**
   * The fit check of a planned kit.
   *
   * @param order the kit with its documents, unknown facts already traits
   * @param plan its plan
   * @throws IllegalArgumentException when the plan is not one of this order's vehicle
   */
  public static FitCheck of(KitOrder order, Plan plan) {
    return new FitMaker(order, plan).make();
  }

  /**
   * What answers say.
   *
   * @param answers question id to value id; questions left out count as "I don't know"
   * @throws IllegalArgumentException when there is no such question, or it has no such answer
   */
  public FitAnswer answer(Map<String, String> answers) {
    return new Answering(this, answers).answer();
  }
}
