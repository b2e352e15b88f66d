package org.loomwright.papers.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.design.TraceLine;

/**
 * Finds the lines a figure follows from. A formula in a trace names quantities; here each name gets
 * the line it means, and the sum is done again with the values of those lines. Only when it comes
 * to the figure of the trace is the answer given, so a paper never shows a sum that does not come
 * out.
 */
final class Redo {
  /** Share of the figure within which the sum has come out; constants are written rounded. */
  private static final double NEAR = 3e-6;

  /** The same for a search among many combinations, which could hit by chance. */
  private static final double SAME = 1e-11;

  private static final int MOST_TRIES = 20_000;
  private static final int MOST_TERMS = 14;

  private static final Pattern CONSTANT =
      Pattern.compile("(?:with )?([\\p{L}\\p{N}]+) = (-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?)(?: [^,]*)?");
  private static final Pattern ONE_OF =
      Pattern.compile(
          "^(?:the )?(?:smaller|smallest|larger|largest|worse|worst|stricter|strictest)\\b.*");

  private final List<TraceLine> trace;
  private final int index;
  private final TraceLine line;

  private Redo(List<TraceLine> trace, int index) {
    this.trace = trace;
    this.index = index;
    this.line = trace.get(index);
  }

  /**
   * The formula of a line with the index of a line of the trace, as text, for each name.
   *
   * @return empty when the line is an input, or its formula is words
   */
  static Optional<Expression> of(List<TraceLine> trace, int index) {
    return new Redo(trace, index).found();
  }

  /** The arithmetic of a formula text, which may name constants behind a comma. */
  static String arithmetic(String formula) {
    int comma = formula.indexOf(", ");
    return comma < 0 ? formula : formula.substring(0, comma);
  }

  private Optional<Expression> found() {
    String formula = line.formula();
    if (formula.equals("given") || !Double.isFinite(line.value())) {
      return Optional.empty();
    }
    if (formula.isEmpty()) {
      return line.source().isEmpty() ? sameAs(trace.size()) : Optional.empty();
    }
    if (ONE_OF.matcher(formula).matches()) {
      return sameAs(index);
    }
    if (formula.equals("sum") || formula.startsWith("sum of ")) {
      return chosen('+', true);
    }
    if (formula.equals("product") || formula.startsWith("product of ")) {
      return chosen('*', false);
    }
    return arithmetic();
  }

  private Optional<Expression> sameAs(int before) {
    for (int i = Math.min(before, trace.size()) - 1; i >= 0; i--) {
      TraceLine other = trace.get(i);
      if (i != index
          && other.unit().equals(line.unit())
          && other.value() == line.value()
          && !other.formula().isEmpty()) {
        return Optional.of(reference(i));
      }
    }
    return Optional.empty();
  }

  /** A sum or product of lines above; those right above are tried first. */
  private Optional<Expression> chosen(char sign, boolean sameUnit) {
    List<Integer> above = new ArrayList<>();
    for (int i = index - 1; i >= 0 && above.size() < MOST_TERMS; i--) {
      TraceLine it = trace.get(i);
      boolean term = !sameUnit || (it.unit().equals(line.unit()) && !it.formula().isEmpty());
      if (term && Double.isFinite(it.value())) {
        above.add(0, i);
      }
    }
    for (int from = above.size() - 2; from >= 0; from--) {
      List<Integer> last = above.subList(from, above.size());
      if (comesOut(together(sign, last), SAME)) {
        return Optional.of(together(sign, last));
      }
    }
    for (int mask = 1; mask < 1 << above.size(); mask++) {
      List<Integer> some = new ArrayList<>();
      for (int i = 0; i < above.size(); i++) {
        if ((mask >> i & 1) == 1) {
          some.add(above.get(i));
        }
      }
      if (comesOut(together(sign, some), SAME)) {
        return Optional.of(together(sign, some));
      }
    }
    return Optional.empty();
  }

  private static Expression together(char sign, List<Integer> lines) {
    Expression all = reference(lines.get(0));
    for (int line : lines.subList(1, lines.size())) {
      all = new Expression.Operation(sign, all, reference(line));
    }
    return all;
  }

  private Optional<Expression> arithmetic() {
    Symbols symbols = new Symbols(trace, index);
    Map<String, Expression> constants = constants(line.formula());
    Optional<Expression> read =
        FormulaReader.read(
            arithmetic(line.formula()), it -> constants.containsKey(it) || symbols.isName(it));
    if (read.isEmpty()) {
      return Optional.empty();
    }
    List<String> names =
        read.get().names().stream().filter(it -> !constants.containsKey(it)).toList();
    List<List<Integer>> choices = new ArrayList<>();
    for (String name : names) {
      List<Integer> lines = symbols.candidates(name);
      if (lines.isEmpty()) {
        return Optional.empty();
      }
      choices.add(lines);
    }
    boolean bareWord =
        read.get() instanceof Expression.Name name
            && name.name().length() > 2
            && name.name().indexOf(' ') < 0;
    return bareWord ? Optional.empty() : tried(read.get(), constants, names, choices);
  }

  /** Goes through the choices, the likeliest of each name first. */
  private Optional<Expression> tried(
      Expression read,
      Map<String, Expression> constants,
      List<String> names,
      List<List<Integer>> choices) {
    int[] pick = new int[names.size()];
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      Map<String, Expression> meaning = new LinkedHashMap<>(constants);
      for (int i = 0; i < pick.length; i++) {
        meaning.put(names.get(i), reference(choices.get(i).get(pick[i])));
      }
      Expression filled = read.with(meaning::get);
      if (comesOut(filled, NEAR)) {
        return Optional.of(filled);
      }
      int place = pick.length - 1;
      while (place >= 0 && ++pick[place] == choices.get(place).size()) {
        pick[place--] = 0;
      }
      if (place < 0) {
        break;
      }
    }
    return Optional.empty();
  }

  private static Map<String, Expression> constants(String formula) {
    Map<String, Expression> constants = new LinkedHashMap<>();
    String[] parts = formula.split(", ");
    for (int i = 1; i < parts.length; i++) {
      Matcher constant = CONSTANT.matcher(parts[i]);
      if (constant.matches()) {
        double value = Double.parseDouble(constant.group(2));
        constants.put(
            constant.group(1), new Expression.Number(value, Wording.number(constant.group(2))));
      }
    }
    return constants;
  }

  private boolean comesOut(Expression filled, double share) {
    double again = filled.value(it -> trace.get(Integer.parseInt(it)).value());
    return Math.abs(again - line.value()) <= share * Math.abs(line.value());
  }

  private static Expression reference(int index) {
    return new Expression.Name(Integer.toString(index));
  }
}
