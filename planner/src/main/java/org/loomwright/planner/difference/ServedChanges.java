package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Unserved;

/** Builds that are no longer served, or are served now. */
final class ServedChanges {
  private static final String NO_WAY = "no way to meet ";

  private ServedChanges() {}

  static List<Change> of(Two two) {
    List<Change> changes = new ArrayList<>();
    List<Unserved> gone = new ArrayList<>(two.before().unserved());
    List<Unserved> come = new ArrayList<>(two.after().unserved());
    for (Unserved one : List.copyOf(gone)) {
      come.stream()
          .filter(it -> alike(one, it))
          .findFirst()
          .ifPresent(
              it -> {
                gone.remove(one);
                come.remove(it);
                if (!one.when().text().equals(it.when().text())) {
                  changes.add(moved(two, one, it));
                }
              });
    }
    come.forEach(
        it -> changes.add(Change.worse(Topic.GAP, lost(two.before(), two.after(), two.is(), it))));
    gone.forEach(
        it -> changes.add(Change.better(Topic.GAP, won(two.after(), two.before(), two.was(), it))));
    return changes;
  }

  private static boolean alike(Unserved one, Unserved two) {
    return Set.copyOf(one.needs()).equals(Set.copyOf(two.needs()));
  }

  private static Change moved(Two two, Unserved was, Unserved is) {
    return new Change(
        Weight.ofGrowth(share(two.before(), was), share(two.after(), is)),
        "not served: "
            + Words.cut(is.words())
            + " ("
            + builds(two.after(), is)
            + "), was "
            + Words.cut(was.words())
            + " ("
            + builds(two.before(), was)
            + "): "
            + Words.list(two.is().needNames(is.needs())),
        Topic.GAP);
  }

  private static double share(Plan plan, Unserved unserved) {
    return unserved.builds().doubleValue() / plan.builds().possible().doubleValue();
  }

  private static String lost(Plan served, Plan own, PlanNames names, Unserved unserved) {
    return subject(served, unserved)
            .map(it -> it + " is no longer served")
            .orElseGet(() -> "no longer served: " + Words.cut(unserved.words()))
        + " ("
        + builds(own, unserved)
        + "): "
        + why(names, unserved);
  }

  private static String won(Plan served, Plan own, PlanNames names, Unserved unserved) {
    return subject(served, unserved)
            .map(it -> it + " is served now")
            .orElseGet(() -> "served now: " + Words.cut(unserved.words()))
        + " ("
        + builds(own, unserved)
        + "); before: "
        + why(names, unserved);
  }

  /** The case that these builds are elsewhere, if they are just one. */
  private static Optional<String> subject(Plan served, Unserved unserved) {
    return served.cases().stream()
        .filter(it -> it.when().text().equals(unserved.when().text()))
        .filter(it -> it.ways().keySet().stream().anyMatch(unserved.needs()::contains))
        .findFirst()
        .map((Case it) -> PlanNames.named(it));
  }

  private static String builds(Plan plan, Unserved unserved) {
    return unserved.builds() + " of " + plan.builds().possible() + " builds";
  }

  private static String why(PlanNames names, Unserved unserved) {
    String needs = Words.list(names.needNames(unserved.needs()));
    String reason = unserved.reason();
    if (unserved.needs().size() == 1 && reason.startsWith(NO_WAY)) {
      String asked = names.demand(unserved.needs().get(0)) + ": ";
      int at = reason.indexOf(asked);
      String ways = at < 0 ? "" : ": " + Words.cut(reason.substring(at + asked.length()));
      return needs + " has no way there" + ways;
    }
    return reason.isEmpty()
        ? needs + " can't be met"
        : needs + ": " + Words.cut(names.brief(reason));
  }
}
