package org.loomwright.papers.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Verdict;

/** Does the sums of a printed report again, from what is printed and nothing else. */
final class ByHand {
  private ByHand() {}

  /** What does not come out, in words; empty when all does. */
  static List<String> faults(Calculation.Subject subject) {
    List<String> faults = new ArrayList<>();
    Map<Integer, Calculation.Line> lines = lines(subject);
    for (Calculation.Line line : lines.values()) {
      if (!line.numbers().isEmpty()) {
        lineFault(line, lines).ifPresent(it -> faults.add(subject.title() + ", " + it));
      }
    }
    subject.blocks().stream()
        .flatMap(it -> it.results().stream())
        .forEach(
            it -> resultFault(it, lines).ifPresent(f -> faults.add(subject.title() + ", " + f)));
    return faults;
  }

  static Map<Integer, Calculation.Line> lines(Calculation.Subject subject) {
    Map<Integer, Calculation.Line> lines = new LinkedHashMap<>();
    subject.inputs().forEach(it -> lines.put(it.number(), it));
    subject.blocks().stream()
        .flatMap(it -> it.lines().stream())
        .forEach(it -> lines.put(it.number(), it));
    return lines;
  }

  private static Optional<String> lineFault(
      Calculation.Line line, Map<Integer, Calculation.Line> lines) {
    for (int used : line.lines()) {
      Calculation.Line there = lines.get(used);
      if (there == null || !line.numbers().contains(there.value())) {
        return Optional.of(
            "line " + line.number() + " does not show the value of line " + used + ": " + line);
      }
    }
    double again = PocketCalculator.reckon(line.numbers());
    double printed = PocketCalculator.reckon(line.value());
    return Math.abs(again - printed) <= lastButOne(line.value())
        ? Optional.empty()
        : Optional.of("line " + line.number() + " comes to " + again + ": " + line);
  }

  private static Optional<String> resultFault(
      Calculation.Result result, Map<Integer, Calculation.Line> lines) {
    for (int[] it : new int[][] {{result.figureLine(), 0}, {result.limitLine(), 1}}) {
      String shown = it[1] == 0 ? result.figure() : result.limit();
      Calculation.Line there = lines.get(it[0]);
      if (it[0] != 0 && (there == null || !there.value().equals(shown))) {
        return Optional.of("check " + result.number() + " shows " + shown + " not line " + it[0]);
      }
    }
    if (!isNumber(result.figure()) || !isNumber(result.limit())) {
      return Optional.empty();
    }
    double figure = PocketCalculator.reckon(result.figure());
    double limit = PocketCalculator.reckon(result.limit());
    boolean kept = result.check().atMost() ? figure <= limit : figure >= limit;
    double near = lastButOne(result.figure()) + lastButOne(result.limit());
    return kept == (result.check().verdict() != Verdict.FAILS) || Math.abs(figure - limit) <= near
        ? Optional.empty()
        : Optional.of("check " + result.number() + " does not bear its verdict");
  }

  private static boolean isNumber(String printed) {
    return !printed.startsWith("no");
  }

  /**
   * One unit of the last digit but one; a number that ends early is exact, and counts as if it had
   * five digits.
   */
  static double lastButOne(String printed) {
    double value = Math.abs(PocketCalculator.reckon(printed));
    if (value == 0) {
      return 1e-9;
    }
    String mantissa = printed.split("[\u00A0 ]×")[0].replaceAll("[^0-9.]", "");
    int digits = mantissa.replace(".", "").replaceFirst("^0+", "").length();
    int lead = (int) Math.floor(Math.log10(value)) + 1;
    return Math.pow(10, lead - Math.max(digits, 5) + 1.0);
  }
}
