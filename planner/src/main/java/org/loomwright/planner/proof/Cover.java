package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Step;

/**
 * Ends and cases cover all possible builds: each comes to an end, and has exactly one case of each
 * component. Builds that do not are told together, so that the words for them are the shortest.
 */
final class Cover {
  private record Gap(Region builds, Optional<Step> step, String what) {}

  private final Subject subject;

  Cover(Subject subject) {
    this.subject = subject;
  }

  void check(Walk.Walked walked, Findings findings) {
    List<Gap> gaps = new ArrayList<>();
    walked
        .lost()
        .forEach(
            (step, builds) ->
                gaps.add(new Gap(builds, Optional.of(step), "no way leads on from this step")));
    cases(findings, gaps);
    Region unserved =
        gaps.stream().map(Gap::builds).reduce(subject.facts().regions().none(), Region::or);
    findings.require(true, unserved, Claim.COVER, Optional.empty(), "");
    if (unserved.isEmpty()) {
      return;
    }
    Region told =
        Fewest.of(subject.possible(), unserved).region(subject.facts().regions()).and(unserved);
    Gap shown =
        gaps.stream()
            .filter(gap -> told.within(gap.builds()))
            .findFirst()
            .orElseGet(
                () -> gaps.stream().filter(gap -> gap.builds().meets(told)).findFirst().get());
    findings.failOn(
        unserved,
        Claim.COVER,
        shown.step(),
        unserved.count()
            + " of "
            + subject.possible().count()
            + " possible builds are left unserved; on these "
            + shown.what());
  }

  private void cases(Findings findings, List<Gap> gaps) {
    Map<String, List<Case>> components = new TreeMap<>();
    subject
        .cases()
        .forEach(it -> components.computeIfAbsent(it.component(), id -> new ArrayList<>()).add(it));
    findings.require(
        !components.isEmpty(),
        subject.possible(),
        Claim.COVER,
        Optional.empty(),
        "there is no case");
    components.forEach((component, cases) -> component(component, cases, findings, gaps));
  }

  private void component(String component, List<Case> cases, Findings findings, List<Gap> gaps) {
    Region covered = subject.facts().regions().none();
    for (Case one : cases) {
      Optional<Region> when = subject.when(one);
      findings.require(
          when.isPresent(),
          subject.possible(),
          Claim.COVER,
          Optional.empty(),
          "case " + one.id() + " speaks of traits or values this vehicle does not have");
      if (when.isEmpty()) {
        continue;
      }
      findings.failOn(
          covered.and(when.get()),
          Claim.COVER,
          Optional.empty(),
          "case " + one.id() + " and an earlier case of component " + component + " both hold");
      covered = covered.or(when.get());
    }
    Region missing = subject.possible().minus(covered);
    if (!missing.isEmpty()) {
      gaps.add(
          new Gap(missing, Optional.empty(), "no case of " + topic(component, cases) + " holds"));
    }
  }

  private static String topic(String component, List<Case> cases) {
    return "'" + cases.get(0).topic() + "' (component " + component + ")";
  }
}
