package org.loomwright.papers.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.papers.words.NoteList;

/**
 * Unfolds the checks on one subject. The same line is printed once and named by its number where it
 * is used again; inputs come first.
 */
final class SubjectMaker {
  private static final String GIVEN = "given";

  private final List<Check> checks;
  private final Map<Check, Integer> checkNumbers;
  private final NoteList sources;

  /** Printed lines with their numbers from 1, inputs first. */
  private final Map<TraceLine, Integer> numbers = new LinkedHashMap<>();

  /** Lines with the sum they follow from, over line numbers. */
  private final Map<TraceLine, Expression> sums = new LinkedHashMap<>();

  /** Digits a line needs beyond the usual. */
  private final Map<Integer, Integer> digits = new LinkedHashMap<>();

  private final Map<Integer, Set<Integer>> usedBy = new LinkedHashMap<>();

  SubjectMaker(List<Check> checks, Map<Check, Integer> checkNumbers, NoteList sources) {
    this.checks = List.copyOf(checks);
    this.checkNumbers = checkNumbers;
    this.sources = sources;
  }

  Calculation.Subject make(String lead, String title) {
    Map<List<TraceLine>, List<Check>> byTrace = new LinkedHashMap<>();
    checks.forEach(it -> byTrace.computeIfAbsent(it.trace(), key -> new ArrayList<>()).add(it));
    number(byTrace.keySet());
    byTrace.keySet().forEach(this::findSums);
    giveDigits();
    sums.forEach(
        (line, sum) ->
            sum.names()
                .forEach(
                    it ->
                        usedBy
                            .computeIfAbsent(Integer.valueOf(it), key -> new TreeSet<>())
                            .add(number(line))));
    List<Calculation.Line> inputs = new ArrayList<>();
    for (TraceLine line : numbers.keySet()) {
      if (isInput(line)) {
        inputs.add(input(line));
      }
    }
    List<Calculation.Block> blocks = new ArrayList<>();
    Set<Integer> printed = new TreeSet<>();
    List<Calculation.Result> ratings = new ArrayList<>();
    byTrace.forEach(
        (trace, them) -> {
          if (trace.stream().allMatch(SubjectMaker::isInput)) {
            them.forEach(it -> ratings.add(result(it, trace)));
          } else {
            blocks.add(block(trace, them, printed));
          }
        });
    if (!ratings.isEmpty()) {
      blocks.add(new Calculation.Block(List.of(), List.of(), ratings));
    }
    return new Calculation.Subject(lead, title, inputs, blocks);
  }

  private void number(Set<List<TraceLine>> traces) {
    for (boolean inputs : new boolean[] {true, false}) {
      for (List<TraceLine> trace : traces) {
        for (TraceLine line : trace) {
          if (isInput(line) == inputs) {
            numbers.putIfAbsent(line, numbers.size() + 1);
          }
        }
      }
    }
  }

  private static boolean isInput(TraceLine line) {
    return line.formula().equals(GIVEN);
  }

  private void findSums(List<TraceLine> trace) {
    for (int i = 0; i < trace.size(); i++) {
      TraceLine line = trace.get(i);
      if (!sums.containsKey(line)) {
        Redo.of(trace, i)
            .map(
                sum ->
                    sum.with(
                        it ->
                            new Expression.Name(
                                Integer.toString(number(trace.get(Integer.parseInt(it)))))))
            .filter(sum -> !sum.names().contains(Integer.toString(number(line))))
            .ifPresent(sum -> sums.put(line, sum));
      }
    }
  }

  /**
   * Gives lines more digits until each sum, done with what is printed, comes out as printed; each
   * time the line of the sum whose rounding matters most.
   */
  private void giveDigits() {
    List<TraceLine> lines = List.copyOf(numbers.keySet());
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Map.Entry<TraceLine, Expression> it : sums.entrySet()) {
        int own = digits(number(it.getKey()));
        double value = Digits.printed(it.getKey().value(), own);
        // Half of what is promised: the reader rounds too.
        double allowed = Digits.lastButOne(it.getKey().value(), own) / 2;
        if (off(it.getValue(), value, lines, 0) > allowed) {
          changed |= moreDigits(it.getValue(), value, lines);
        }
      }
    }
  }

  private boolean moreDigits(Expression sum, double value, List<TraceLine> lines) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (String name : sum.names()) {
      int used = Integer.parseInt(name);
      boolean cut = Digits.isCut(lines.get(used - 1).value(), digits(used));
      double off = off(sum, value, lines, used);
      if (cut && digits(used) < Digits.MOST && off < least) {
        best = used;
        least = off;
      }
    }
    if (best > 0) {
      digits.put(best, digits(best) + 1);
    }
    return best > 0;
  }

  /** How far a sum of printed values is off, one of them taken unrounded; 0 for none. */
  private double off(Expression sum, double value, List<TraceLine> lines, int exact) {
    double again =
        sum.value(
            name -> {
              int used = Integer.parseInt(name);
              double of = lines.get(used - 1).value();
              return used == exact ? of : Digits.printed(of, digits(used));
            });
    return Math.abs(again - value);
  }

  private int digits(int number) {
    return digits.getOrDefault(number, Digits.USUAL);
  }

  private int number(TraceLine line) {
    return numbers.getOrDefault(line, 0);
  }

  private Calculation.Line input(TraceLine line) {
    return new Calculation.Line(
        number(line),
        line.what(),
        "",
        "",
        List.copyOf(usedBy.getOrDefault(number(line), Set.of())),
        text(line),
        Wording.unit(line.unit()),
        mark(line.source()));
  }

  private Calculation.Block block(List<TraceLine> trace, List<Check> them, Set<Integer> printed) {
    List<Calculation.Line> lines = new ArrayList<>();
    Set<Integer> above = new TreeSet<>();
    for (TraceLine line : trace) {
      if (isInput(line)) {
        continue;
      }
      if (printed.add(number(line))) {
        lines.add(reckoned(line));
      } else if (lines.stream().noneMatch(it -> it.number() == number(line))) {
        above.add(number(line));
      }
    }
    return new Calculation.Block(
        List.copyOf(above), lines, them.stream().map(it -> result(it, trace)).toList());
  }

  private Calculation.Line reckoned(TraceLine line) {
    Optional<Expression> sum = Optional.ofNullable(sums.get(line));
    return new Calculation.Line(
        number(line),
        line.what(),
        line.formula().isEmpty() ? "" : Wording.formula(line.formula()),
        sum.map(it -> it.text(this::printed)).orElse(""),
        sum.map(it -> it.names().stream().map(Integer::valueOf).toList()).orElse(List.of()),
        text(line),
        Wording.unit(line.unit()),
        mark(line.source()));
  }

  private String printed(String number) {
    int wanted = Integer.parseInt(number);
    return text(List.copyOf(numbers.keySet()).get(wanted - 1));
  }

  private String text(TraceLine line) {
    return Digits.text(line.value(), digits(number(line)));
  }

  private String mark(String source) {
    return source.isEmpty() ? "" : sources.mark(source);
  }

  private Calculation.Result result(Check check, List<TraceLine> trace) {
    int figureLine = line(trace, check.name(), check.figure(), check.unit());
    int limitLine = line(trace, check.name(), check.limit(), check.unit());
    return new Calculation.Result(
        checkNumbers.getOrDefault(check, 0),
        check,
        Digits.text(check.figure(), Math.max(Digits.USUAL, digits(figureLine))),
        figureLine,
        Digits.text(check.limit(), Math.max(Digits.USUAL, digits(limitLine))),
        limitLine,
        Wording.unit(check.unit()),
        mark(Rule.of(check).source()));
  }

  /**
   * The line of a trace that has a figure: of several the one that shares most words with the name
   * of the check, of these the last; 0 when there is none.
   */
  private int line(List<TraceLine> trace, String check, double value, String unit) {
    Set<String> words = words(check);
    int most = -1;
    int found = 0;
    for (TraceLine line : trace) {
      if (line.value() == value && line.unit().equals(unit)) {
        Set<String> shared = words(line.what());
        shared.retainAll(words);
        if (shared.size() >= most) {
          most = shared.size();
          found = number(line);
        }
      }
    }
    return found;
  }

  private static Set<String> words(String text) {
    return new TreeSet<>(List.of(text.split("[\\s,:]+")));
  }
}
