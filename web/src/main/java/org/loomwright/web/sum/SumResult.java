package org.loomwright.web.sum;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.physics.Check;
import org.loomwright.physics.TraceLine;

/**
 * The answer to a sum, or what is wrong with what was typed.
 *
 * @param figures what was asked for: name and value with unit
 * @param checks figures beside their limits; empty for a sum that checks nothing
 * @param trace how it was reached
 * @param chart the answer as a picture
 * @param errors what is wrong, by field; "" for what speaks of all of them
 */
public record SumResult(
    List<Figure> figures,
    List<Check> checks,
    List<TraceLine> trace,
    Optional<SumChart> chart,
    Map<String, String> errors) {

  /**
   * A figure.
   *
   * @param what what it is
   * @param shown value with its unit, or why there is none
   */
  public record Figure(String what, String shown) {}

  public SumResult {
    figures = List.copyOf(figures);
    checks = List.copyOf(checks);
    trace = trace.stream().distinct().toList();
    errors = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(errors));
  }

  /** Whether there is an answer. */
  public boolean isAnswer() {
    return errors.isEmpty() && !figures.isEmpty();
  }

  /** What is wrong with a field; empty when nothing is. */
  public String error(String key) {
    String error = errors.get(key);
    return error == null ? "" : error;
  }

  /** Nothing typed yet. */
  static SumResult blank() {
    return new SumResult(List.of(), List.of(), List.of(), Optional.empty(), Map.of());
  }

  static SumResult wrong(Map<String, String> errors) {
    return new SumResult(List.of(), List.of(), List.of(), Optional.empty(), errors);
  }

  static SumResult of(List<TraceLine> trace, SumChart chart, Figure... figures) {
    return new SumResult(List.of(figures), List.of(), trace, Optional.of(chart), Map.of());
  }
}
