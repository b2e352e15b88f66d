package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.loomwright.papers.calculation.Calculation;
import org.loomwright.papers.calculation.Rule;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Inputs, lines and results of one subject as tables. */
final class SumsTables {
  private static final String PLACE = "\u2007";
  private static final int MOST_NAMES = 2;

  /** A block of so few rows stays on one page. */
  private static final int KEPT_ROWS = 14;

  /** So does a table of so few results. */
  private static final int KEPT_RESULTS = 4;

  /** So does a whole subject of so few rows. */
  private static final int KEPT_SUBJECT = 20;

  private SumsTables() {}

  /** Everything of a subject below the heading of its section. */
  static void write(Pack pack, Calculation.Subject subject, Html html) {
    write(pack, subject, none -> {}, html);
  }

  /**
   * Everything of a subject.
   *
   * @param heading writes a heading that must stay with what comes first
   */
  static void write(Pack pack, Calculation.Subject subject, Consumer<Html> heading, Html html) {
    html.open("div", rows(subject) <= KEPT_SUBJECT ? "keep" : "");
    Consumer<Html> first = heading;
    if (!subject.inputs().isEmpty()) {
      html.open("div", subject.inputs().size() <= KEPT_SUBJECT ? "keep" : "");
      first.accept(html);
      first = none -> {};
      html.line("h2", "", "Inputs");
      html.table(
          "sum",
          List.of(
              Column.key("Line", 6),
              Column.text("Quantity", 45),
              Column.number("Value", 14),
              Column.text("Unit", 10),
              Column.text("Used in lines", 25)),
          subject.inputs().stream().map(SumsTables::input).toList());
      html.close("div");
    }
    for (Calculation.Block block : subject.blocks()) {
      boolean kept = block.lines().size() + block.results().size() <= KEPT_ROWS;
      html.open("div", kept ? "keep" : "");
      first.accept(html);
      first = none -> {};
      block(pack, block, html);
      html.close("div");
    }
    html.close("div");
  }

  private static int rows(Calculation.Subject subject) {
    return subject.inputs().size()
        + subject.blocks().stream().mapToInt(it -> it.lines().size() + it.results().size()).sum();
  }

  private static void block(Pack pack, Calculation.Block block, Html html) {
    html.line("h2", "", heading(block));
    if (!block.lines().isEmpty()) {
      html.table(
          "sum",
          List.of(
              Column.key("Line", 4),
              Column.text("Quantity", 19),
              Column.text("Formula, and with the numbers of the lines named", 48),
              Column.text("Lines", 8),
              Column.number("Value", 9),
              Column.text("Unit", 6),
              Column.text("Source", 6)),
          block.lines().stream().map(SumsTables::line).toList());
    } else if (block.above().isEmpty()) {
      html.line(
          "p",
          "note",
          "Ratings and counts from the documents and the design, compared as they stand; nothing is"
              + " reckoned.");
    }
    if (!block.above().isEmpty()) {
      html.line("p", "note", "Also rests on lines above: " + ranges(block.above()) + ".");
    }
    html.table(
        block.results().size() <= KEPT_RESULTS ? "results keep" : "results",
        List.of(
            Column.key("Check", 8),
            Column.text("What has to be kept", 37),
            Column.number("Figure", 15),
            Column.number("Limit", 15),
            Column.number("Margin", 8),
            Column.text("Verdict", 10),
            Column.text("Source", 7)),
        block.results().stream().map(it -> result(pack, it)).toList());
  }

  /** The checks by name; many on the same lines by their count. */
  private static String heading(Calculation.Block block) {
    List<String> names =
        block.results().stream().map(it -> Figures.capital(it.check().name())).distinct().toList();
    return names.size() <= MOST_NAMES
        ? String.join("; ", names)
        : (block.lines().isEmpty() && block.above().isEmpty() ? "Ratings" : "Checks on these lines")
            + ": "
            + block.results().stream()
                .map(it -> Integer.toString(it.number()))
                .distinct()
                .collect(Collectors.joining(", "));
  }

  private static List<String> input(Calculation.Line it) {
    return List.of(
        Integer.toString(it.number()),
        it.what() + (it.source().isEmpty() ? "" : "\u00A0" + it.source()),
        it.value(),
        it.unit(),
        ranges(it.lines()));
  }

  private static List<String> line(Calculation.Line it) {
    return List.of(
        Integer.toString(it.number()),
        it.what(),
        formula(it),
        it.lines().stream().map(String::valueOf).collect(Collectors.joining(", ")),
        it.value(),
        it.unit(),
        it.source());
  }

  private static String formula(Calculation.Line it) {
    String numbers = it.numbers().isEmpty() ? "" : "= " + it.numbers();
    return it.formula().isEmpty() || numbers.isEmpty()
        ? it.formula() + numbers
        : it.formula() + "\n" + numbers;
  }

  private static List<String> result(Pack pack, Calculation.Result it) {
    Rule rule = Rule.of(it.check());
    return List.of(
        Integer.toString(it.number()),
        pack.names().prose(it.check().name())
            + (rule.words().isEmpty() ? "" : "\n" + pack.names().prose(rule.words()))
            + (it.check().cases().isEmpty() ? "" : "\nworst in " + Names.cases(it.check().cases())),
        amount(it.figure(), it.unit(), it.figureLine()),
        (it.check().atMost() ? "≤\u00A0" : "≥\u00A0")
            + amount(it.limit(), it.unit(), it.limitLine()),
        Figures.margin(it.check().margin()),
        ChecksSection.verdict(it.check().verdict()),
        it.source().isEmpty() ? PLACE : it.source());
  }

  private static String amount(String value, String unit, int line) {
    return value
        + (unit.isEmpty() ? "" : "\u00A0" + unit)
        + (line == 0 ? "" : "\nline\u00A0" + line);
  }

  /** Numbers in order, runs of three and more as "4 to 9". */
  static String ranges(List<Integer> numbers) {
    List<String> parts = new ArrayList<>();
    for (int from = 0; from < numbers.size(); ) {
      int to = from;
      while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
        to++;
      }
      if (to - from >= 2) {
        parts.add(numbers.get(from) + " to " + numbers.get(to));
      } else {
        numbers.subList(from, to + 1).forEach(it -> parts.add(it.toString()));
      }
      from = to + 1;
    }
    return String.join(", ", parts);
  }
}
