package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;

/** Facts in plain words. */
public final class Told {
  private Told() {}

  /** How something is known, with its note; "no evidence" when nothing is noted. */
  public static String evidence(Optional<Evidence> evidence) {
    return evidence
        .map(it -> it.words() + it.note().map(note -> ": " + note).orElse(""))
        .orElse("no evidence noted");
  }

  /** When a condition holds. */
  public static String when(Condition condition) {
    if (condition.isUnknown()) {
      return "not known";
    }
    if (condition.expr() instanceof Expr.Always) {
      return "every build";
    }
    if (condition.expr() instanceof Expr.Never) {
      return "no build";
    }
    return condition.text();
  }

  /** When a condition holds, to go on in a sentence: "on every build", "where body = panel". */
  public static String onBuilds(Condition condition) {
    return condition.isUnknown()
        ? "on which builds is not known"
        : (differs(condition) ? "where " : "on ") + when(condition);
  }

  /** Whether a condition is left to the build, or not known. */
  public static boolean differs(Condition condition) {
    return !(condition.expr() instanceof Expr.Always || condition.expr() instanceof Expr.Never);
  }

  /** How one tells. */
  public static String how(TellHow how) {
    return switch (how) {
      case ASK_OWNER -> "ask the owner";
      case LOOK -> "look";
      case MEASURE_LIVE -> "measure, battery connected";
      case MEASURE_ISOLATED -> "measure, battery disconnected";
    };
  }

  /** What one finds for a value of a trait. */
  public static String expected(Tell tell, String value) {
    String found = tell.expect().get(value);
    return found == null ? "" : found;
  }

  /** How an act can be undone. */
  public static String undo(Undo undo) {
    return switch (undo) {
      case EASILY -> "easily";
      case SPECIAL_TOOL -> "with a special tool only";
      case NOT_AT_ALL -> "not at all";
    };
  }

  /** A name of the code as words, such as "crimp or solder". */
  public static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Words with commas between. */
  public static String list(List<String> words) {
    return words.isEmpty() ? "none" : String.join(", ", words);
  }

  /** The words that are there, with commas between. */
  public static String joined(String... words) {
    List<String> there = new ArrayList<>();
    for (String word : words) {
      if (!word.isEmpty()) {
        there.add(word);
      }
    }
    return String.join(", ", there);
  }
}
