package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.StepKind;

/** How long the guide is and what it asks for. */
final class GuideChanges {
  private GuideChanges() {}

  static List<Change> of(Two two) {
    Guide was = two.before().guide();
    Guide is = two.after().guide();
    List<Change> changes = new ArrayList<>();
    List<String> parts = new ArrayList<>();
    count(parts, "step", was.steps().size(), is.steps().size());
    count(parts, "question", questions(was), questions(is));
    long minutes = Math.round(was.expectedMinutes());
    long now = Math.round(is.expectedMinutes());
    if (minutes != now) {
      parts.add(now + " min on average (was " + minutes + ")");
    }
    if (!parts.isEmpty()) {
      changes.add(
          new Change(
              Weight.ofGrowth(minutes, now),
              "the guide: " + String.join(", ", parts),
              Topic.GUIDE));
    } else {
      reworded(was, is, changes);
    }
    tools(was.tools(), is.tools(), "another tool is needed: ", "other tools are needed: ", changes);
    tools(is.tools(), was.tools(), "no longer needed: ", "no longer needed: ", changes);
    return changes;
  }

  private static void count(List<String> parts, String noun, long was, long is) {
    if (was != is) {
      parts.add(Words.count(is, noun) + " (was " + was + ")");
    }
  }

  private static long questions(Guide guide) {
    return guide.steps().stream().filter(it -> it.kind() == StepKind.ASK).count();
  }

  private static void reworded(Guide was, Guide is, List<Change> changes) {
    List<String> texts = was.steps().stream().map(it -> it.title() + it.text()).toList();
    long reworded =
        is.steps().stream().filter(it -> !texts.contains(it.title() + it.text())).count();
    if (reworded > 0) {
      changes.add(
          Change.neutral(
              Topic.GUIDE,
              Words.count(reworded, "step")
                  + " of the guide "
                  + Words.verb(reworded, "reads", "read")
                  + " differently"));
    }
  }

  private static void tools(
      List<String> was, List<String> is, String one, String many, List<Change> changes) {
    List<String> other = is.stream().filter(it -> !was.contains(it)).toList();
    if (!other.isEmpty()) {
      changes.add(
          Change.neutral(Topic.GUIDE, (other.size() == 1 ? one : many) + Words.list(other)));
    }
  }
}
