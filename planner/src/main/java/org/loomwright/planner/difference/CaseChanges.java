package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Unserved;

/** Cases that were split, merged, redrawn, are new or gone, or have another letter. */
final class CaseChanges {
  private CaseChanges() {}

  static List<Change> of(Two two) {
    List<Change> changes = new ArrayList<>();
    List<String> renamed = new ArrayList<>();
    for (Family family : two.families()) {
      together(two, family).ifPresent(it -> changes.add(Change.neutral(Topic.WAYS, it)));
      redrawn(two, family).ifPresent(it -> changes.add(Change.neutral(Topic.WAYS, it)));
      for (Family.Pair pair : family.same()) {
        Case before = pair.before();
        Case after = pair.after();
        if (!before.words().equals(after.words())) {
          changes.add(
              Change.neutral(
                  Topic.WAYS,
                  "case "
                      + after.id()
                      + " is now "
                      + Words.cut(after.words())
                      + "; was "
                      + Words.cut(before.words())));
        }
        if (!before.id().equals(after.id())) {
          renamed.add(before.id() + " is now " + after.id());
        }
      }
    }
    if (!renamed.isEmpty()) {
      changes.add(Change.neutral(Topic.WAYS, "cases with another name: " + Words.list(renamed)));
    }
    return changes;
  }

  /** Needs that were planned apart and are planned together now, or the other way round. */
  private static Optional<String> together(Two two, Family family) {
    List<Case> before = new ArrayList<>(family.gone());
    List<Case> after = new ArrayList<>(family.come());
    family.same().forEach(it -> before.add(it.before()));
    family.same().forEach(it -> after.add(it.after()));
    long was = components(before);
    long is = components(after);
    if (was == is || was == 0 || is == 0) {
      return Optional.empty();
    }
    List<String> needs =
        after.stream().flatMap(it -> it.ways().keySet().stream()).distinct().toList();
    return Optional.of(
        (is < was ? "planned together now: " : "no longer planned together: ")
            + Words.list(two.is().needNames(needs)));
  }

  private static long components(List<Case> cases) {
    return cases.stream().map(Case::component).distinct().count();
  }

  /** Without those told as not served. */
  private static List<Case> told(List<Case> cases, List<Unserved> elsewhere) {
    return cases.stream()
        .filter(it -> elsewhere.stream().noneMatch(un -> un.when().text().equals(it.when().text())))
        .toList();
  }

  private static Optional<String> redrawn(Two two, Family family) {
    List<Case> gone = told(family.gone(), two.after().unserved());
    List<Case> come = told(family.come(), two.before().unserved());
    if (gone.isEmpty() && come.isEmpty()) {
      return Optional.empty();
    }
    if (gone.isEmpty()) {
      return Optional.of("new " + named(come));
    }
    if (come.isEmpty()) {
      List<String> heirs =
          family.same().stream()
              .filter(it -> !it.before().when().text().equals(it.after().when().text()))
              .map(it -> it.after().id())
              .toList();
      return Optional.of(
          named(gone)
              + Words.verb(gone.size(), " is", " are")
              + " gone"
              + (heirs.isEmpty() ? "" : ", part of " + PlanNames.cases(heirs) + " now"));
    }
    if (gone.size() == 1) {
      return Optional.of(named(gone) + " is split into " + named(come));
    }
    if (come.size() == 1) {
      return Optional.of(named(gone) + " are now one, " + named(come));
    }
    return Optional.of(
        PlanNames.cases(gone.stream().map(Case::id).toList()) + " are redrawn as " + named(come));
  }

  private static String named(List<Case> cases) {
    return (cases.size() == 1 ? "case " : "cases ")
        + Words.list(
            cases.stream().map(it -> it.id() + " (" + Words.brief(it.words()) + ")").toList());
  }
}
