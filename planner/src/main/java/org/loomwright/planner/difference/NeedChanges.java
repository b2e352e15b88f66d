package org.loomwright.planner.difference;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.GapStatus;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.Plan;

/** Needs, what is asked for beside wires, and what builds already have. */
final class NeedChanges {
  private NeedChanges() {}

  /** Needs that are new, gone or other; modules and coding. */
  static List<Change> of(Two two) {
    List<Change> changes = new ArrayList<>();
    Map<String, NeedGap> before = byNeed(two.before());
    Map<String, NeedGap> after = byNeed(two.after());
    List<String> come = after.keySet().stream().filter(it -> !before.containsKey(it)).toList();
    List<String> gone = before.keySet().stream().filter(it -> !after.containsKey(it)).toList();
    if (!come.isEmpty()) {
      changes.add(
          Change.neutral(
              Topic.GAP, "new " + needs(come.size()) + Words.list(two.is().needNames(come))));
    }
    if (!gone.isEmpty()) {
      changes.add(
          Change.neutral(
              Topic.GAP, "no longer asked for: " + Words.list(two.was().needNames(gone))));
    }
    List<Change> asked = new ArrayList<>();
    for (String need : after.keySet()) {
      if (before.containsKey(need) && !two.was().demand(need).equals(two.is().demand(need))) {
        asked.add(
            Change.neutral(
                Topic.GAP,
                two.is().needName(need)
                    + " asks for "
                    + two.is().demand(need)
                    + ", was "
                    + two.was().demand(need)));
      }
    }
    if (asked.size() <= two.detail()) {
      changes.addAll(asked);
    } else {
      changes.add(Change.neutral(Topic.GAP, asked.size() + " needs ask for something else"));
    }
    beside(two, "a module", Fit::modules, changes);
    beside(two, "coding", Fit::coding, changes);
    return changes;
  }

  private static String needs(int count) {
    return Words.verb(count, "need: ", "needs: ");
  }

  private static void beside(
      Two two, String what, Function<Fit, List<String>> lines, List<Change> changes) {
    List<String> before = lines.apply(two.before().fit());
    List<String> after = lines.apply(two.after().fit());
    after.stream()
        .filter(it -> !before.contains(it))
        .forEach(it -> changes.add(Change.worse(Topic.GAP, "needs " + what + " now: " + it)));
    before.stream()
        .filter(it -> !after.contains(it))
        .forEach(
            it -> changes.add(Change.better(Topic.GAP, "no longer needs " + what + ": " + it)));
  }

  private static Map<String, NeedGap> byNeed(Plan plan) {
    return plan.gap().stream()
        .collect(
            Collectors.toMap(
                NeedGap::need, it -> it, (one, other) -> one, java.util.LinkedHashMap::new));
  }

  /** How many builds there are, and on how many of them a need is met already. */
  static List<Change> gap(Two two) {
    List<Change> changes = new ArrayList<>();
    BigInteger was = two.before().builds().possible();
    BigInteger is = two.after().builds().possible();
    int traits = two.after().builds().traits();
    int oldTraits = two.before().builds().traits();
    if (!was.equals(is) || traits != oldTraits) {
      changes.add(
          Change.neutral(
              Topic.GAP,
              is
                  + " builds are possible, was "
                  + was
                  + (traits == oldTraits
                      ? ""
                      : "; they differ by " + traits + " traits, was " + oldTraits)));
    }
    List<Change> needs = new ArrayList<>();
    Map<String, NeedGap> before = byNeed(two.before());
    byNeed(two.after())
        .forEach(
            (need, gap) -> {
              NeedGap old = before.get(need);
              if (old != null && !when(old).equals(when(gap))) {
                needs.add(met(two, need, old, gap));
              }
            });
    if (needs.size() <= two.detail()) {
      changes.addAll(needs);
    } else {
      changes.add(
          Change.neutral(Topic.GAP, needs.size() + " needs are already there on other builds"));
    }
    return changes;
  }

  private static Change met(Two two, String need, NeedGap old, NeedGap gap) {
    BigInteger was = two.before().builds().possible();
    BigInteger is = two.after().builds().possible();
    return new Change(
        was.equals(is)
            ? Weight.ofGrowth(there(gap).doubleValue(), there(old).doubleValue())
            : Weight.NEUTRAL,
        two.is().needName(need)
            + ": already there on "
            + there(gap)
            + " of "
            + is
            + " builds, was "
            + there(old)
            + " of "
            + was,
        Topic.GAP);
  }

  private static String when(NeedGap gap) {
    return gap.parts().stream()
        .filter(it -> it.status() == GapStatus.ALREADY_THERE)
        .map(it -> it.when().text())
        .collect(Collectors.joining(" or "));
  }

  private static BigInteger there(NeedGap gap) {
    return gap.parts().stream()
        .filter(it -> it.status() == GapStatus.ALREADY_THERE)
        .map(GapPart::builds)
        .reduce(BigInteger.ZERO, BigInteger::add);
  }
}
