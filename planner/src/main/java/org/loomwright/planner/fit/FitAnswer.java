package org.loomwright.planner.fit;

import java.util.List;
import java.util.Optional;

/**
 * What answers say about a kit.
 *
 * @param conflict ids of questions whose answers no known build has together, as few as possible
 *     that none can be left out; empty when such builds are known. With a conflict nothing else is
 *     said: every part is open
 * @param wiring whether the wiring fits
 * @param modules whether it does without further modules
 * @param coding whether it does without coding
 * @param number which part number
 * @param work what fitting involves
 */
public record FitAnswer(
    List<String> conflict, Part wiring, Part modules, Part coding, Number number, Job work) {
  /**
   * Answer to one part.
   *
   * @param outcome outcome
   * @param reasons what it rests on
   * @param deciding what decides when it is open
   */
  public record Part(Outcome outcome, List<Reason> reasons, Deciding deciding) {
    public Part {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * One reason.
   *
   * @param outcome for a demand: whether it falls away; for builds that are not served: never fits
   * @param place place in the list of demands or refusals
   */
  public record Reason(Outcome outcome, int place) {}

  /**
   * What decides what is open: the questions that can still be answered, and then the traits the
   * shop has to find out, as few as decide whatever those answers are.
   *
   * @param questions ids of questions
   * @param traits ids of traits
   */
  public record Deciding(List<String> questions, List<String> traits) {
    /** Nothing is open. */
    public static final Deciding NOTHING = new Deciding(List.of(), List.of());

    public Deciding {
      questions = List.copyOf(questions);
      traits = List.copyOf(traits);
    }
  }

  /**
   * Which part number.
   *
   * @param possible part numbers that it can be; one when it is known
   * @param none whether it can be that none serves
   * @param deciding what decides when there are several possibilities
   */
  public record Number(List<String> possible, boolean none, Deciding deciding) {
    public Number {
      possible = List.copyOf(possible);
    }
  }

  /**
   * What fitting involves where the kit is proven.
   *
   * @param minutes expected time in minutes over the mix of vehicles with these answers; empty when
   *     the kit is proven for none of them
   * @param lines what comes up
   */
  public record Job(Optional<Double> minutes, List<Line> lines) {
    public Job {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Something that comes up.
   *
   * @param kind sort
   * @param words its name; empty where the kind says it all
   * @param always whether it comes up on every build left, or only on some
   */
  public record Line(Work.Kind kind, String words, boolean always) {}

  public FitAnswer {
    conflict = List.copyOf(conflict);
  }
}
