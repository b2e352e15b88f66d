package org.loomwright.papers.calculation;

import java.util.List;
import org.loomwright.model.design.Check;

/**
 * The calculation report before it is laid out; all figures as printed.
 *
 * @param subjects what was calculated, leads first
 * @param sources formulas' and values' sources with their marks
 */
public record Calculation(List<Subject> subjects, List<String> sources) {
  /** Copies the lists. */
  public Calculation {
    subjects = List.copyOf(subjects);
    sources = List.copyOf(sources);
  }

  /** Number of lines whose sum is printed with its numbers. */
  public long reckoned() {
    return lines().filter(it -> !it.numbers().isEmpty()).count();
  }

  /** Number of lines that are reckoned or looked up, inputs left out. */
  public long worked() {
    return subjects.stream()
        .flatMap(it -> it.blocks().stream())
        .mapToLong(it -> it.lines().size())
        .sum();
  }

  private java.util.stream.Stream<Line> lines() {
    return subjects.stream().flatMap(it -> it.blocks().stream()).flatMap(it -> it.lines().stream());
  }

  /**
   * What checks are on: a lead, a need, a part of the vehicle.
   *
   * @param lead id of the lead, empty for anything else
   * @param title heading
   * @param inputs given values, numbered
   * @param blocks checks with their lines; lines are numbered on from the inputs
   */
  public record Subject(String lead, String title, List<Line> inputs, List<Block> blocks) {
    /** Copies the lists. */
    public Subject {
      inputs = List.copyOf(inputs);
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * Checks that rest on the same lines.
   *
   * @param above numbers of lines that stand above and are used again
   * @param lines new lines, first to last
   * @param results what comes out
   */
  public record Block(List<Integer> above, List<Line> lines, List<Result> results) {
    /** Copies the lists. */
    public Block {
      above = List.copyOf(above);
      lines = List.copyOf(lines);
      results = List.copyOf(results);
    }
  }

  /**
   * One line.
   *
   * @param number number within its subject
   * @param what quantity
   * @param formula formula in symbols or words, empty for inputs
   * @param numbers the formula with the printed numbers put in; empty when it is no arithmetic
   * @param lines numbers of the lines put in, or for an input of the lines that use it
   * @param value value as printed
   * @param unit unit, empty for pure numbers
   * @param source mark of its source, empty when it has none
   */
  public record Line(
      int number,
      String what,
      String formula,
      String numbers,
      List<Integer> lines,
      String value,
      String unit,
      String source) {
    /** Copies the list. */
    public Line {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A figure against its limit.
   *
   * @param number number in the pack's list of checks
   * @param check the check
   * @param figure figure as printed
   * @param figureLine number of its line, 0 when it has none
   * @param limit limit as printed
   * @param limitLine number of its line, 0 when it has none
   * @param unit unit
   * @param source mark of the rule's source, empty when it has none
   */
  public record Result(
      int number,
      Check check,
      String figure,
      int figureLine,
      String limit,
      int limitLine,
      String unit,
      String source) {}
}
