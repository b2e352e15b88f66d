package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.design.Plan;
import org.loomwright.model.finding.Finding;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Stage;

/**
 * Something that came back of a kit.
 *
 * @param finding what was found
 * @param tie the lead, step or thing it is tied to, in words; empty when it names none
 */
public record Comeback(Finding finding, String tie) {
  /**
   * What came back of a kit, open findings first.
   *
   * @param stage the stage that is shown: leads tell of leads, the guide of steps, the others of
   *     all
   * @param plan its plan; absent while there is none
   */
  public static List<Comeback> of(Shop shop, String kit, Stage stage, Optional<Plan> plan) {
    List<Comeback> all = new ArrayList<>();
    for (FindingView view : FindingView.all(shop)) {
      Finding it = view.finding();
      boolean here =
          switch (stage) {
            case LEADS -> it.lead().isPresent();
            case GUIDE -> it.step().isPresent();
            default -> true;
          };
      if (here && it.kit().filter(kit::equals).isPresent()) {
        all.add(new Comeback(it, tie(view, plan)));
      }
    }
    return all;
  }

  private static String tie(FindingView view, Optional<Plan> plan) {
    List<String> ties = new ArrayList<>();
    view.finding().lead().ifPresent(it -> ties.add(lead(it, plan)));
    view.finding().step().ifPresent(it -> ties.add(step(it, plan)));
    if (!view.at().isEmpty()) {
      ties.add(view.at());
    }
    return String.join("; ", ties);
  }

  private static String lead(String named, Optional<Plan> plan) {
    boolean there =
        plan.isEmpty()
            || plan.get().design().leads().stream()
                .flatMap(it -> Stream.of(it.id(), it.label()))
                .anyMatch(it -> it.equalsIgnoreCase(named));
    return "lead " + named + (there ? "" : ", which the kit no longer has");
  }

  private static String step(String id, Optional<Plan> plan) {
    if (plan.isEmpty()) {
      return "step " + id;
    }
    return plan.get()
        .guide()
        .step(id)
        .map(it -> "step " + it.number() + ", " + it.title())
        .orElse("step " + id + ", which the guide no longer has");
  }
}
