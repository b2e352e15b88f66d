package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Region;

/** Puts cautions into a guide: each once on every build, directly before what calls for it. */
final class CautionSteps {
  private static final String STEP = "caution/";

  private final Vehicle vehicle;
  private final CautionCalls calls;
  private final List<Draft> all = new ArrayList<>();
  private final Map<String, List<Draft>> told = new LinkedHashMap<>();

  CautionSteps(Vehicle vehicle, CautionCalls calls) {
    this.vehicle = vehicle;
    this.calls = calls;
  }

  /** The steps with their cautions. */
  List<Draft> before(List<Draft> steps) {
    for (Draft step : steps) {
      if (!step.on().isEmpty()) {
        for (CautionRule rule : CautionTable.rules()) {
          if (rule.causes().stream().anyMatch(cause -> calls.calls(cause, step))) {
            say(rule, step);
          }
        }
      }
      all.add(step);
    }
    return List.copyOf(all);
  }

  private void say(CautionRule rule, Draft step) {
    List<Draft> before = told.computeIfAbsent(rule.id(), id -> new ArrayList<>());
    Region on = step.on();
    for (Draft one : before) {
      on = on.minus(one.on());
    }
    if (on.isEmpty()) {
      return;
    }
    if (!before.isEmpty()) {
      // Builds that have done nothing since it was printed last can read it there.
      Draft last = before.get(before.size() - 1);
      Region idle = on;
      for (Draft since : all.subList(all.indexOf(last) + 1, all.size())) {
        idle = since.kind() == StepKind.CAUTION ? idle : idle.minus(since.on());
      }
      last.widen(idle);
      on = on.minus(idle);
      if (on.isEmpty()) {
        return;
      }
    }
    Draft caution =
        new Draft(
                STEP + rule.id() + (before.isEmpty() ? "" : "/" + (before.size() + 1)),
                StepKind.CAUTION,
                step.place(),
                on)
            .say(rule.title(), rule.text().replace(CautionTable.WAIT, waiting()));
    before.add(caution);
    all.add(caution);
  }

  private String waiting() {
    return vehicle
        .restraintWait()
        .map(
            wait ->
                "Work on it only when "
                    + wait.text()
                    + " have passed since the battery was isolated (the maker's waiting time).")
        .orElse("Keep to the maker's waiting time after isolating the battery.");
  }
}
