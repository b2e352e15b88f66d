package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.papers.calculation.Calculation;
import org.loomwright.papers.calculation.Rule;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** Inputs, lines and results of one subject as tables. */
final class SumsTables {
  private static final String PLACE = "\u2007";
  private static final int MOST_NAMES = 2;

  private SumsTables() {}

  static void write(Pack pack, Calculation.Subject subject, Html html) {
    if (!subject.inputs().isEmpty()) {
      html.open("div", "keep").line("h2", "", "Inputs");
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
      block(pack, block, html);
    }
  }

  private static void block(Pack pack, Calculation.Block block, Html html) {
    html.line("h2", "", heading(block));
    if (!block.lines().isEmpty()) {
      html.table(
          "sum",
          List.of(
              Column.key("Line", 5),
              Column.text("Quantity", 24),
              Column.text("Formula, and with the numbers of the lines named", 36),
              Column.text("Lines", 8),
              Column.number("Value", 11),
              Column.text("Unit", 9),
              Column.text("Source", 7)),
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
        "results",
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
        it.numbers().isEmpty() ? it.formula() : it.formula() + "\n= " + it.numbers(),
        it.lines().stream().map(String::valueOf).collect(Collectors.joining(", ")),
        it.value(),
        it.unit(),
        it.source());
  }

  private static List<String> result(Pack pack, Calculation.Result it) {
    Rule rule = Rule.of(it.check());
    return List.of(
        Integer.toString(it.number()),
        pack.names().prose(it.check().name())
            + (rule.words().isEmpty() ? "" : "\n" + pack.names().prose(rule.words()))
            + (it.check().cases().isEmpty()
                ? ""
                : "\nworst in " + org.loomwright.papers.words.Names.cases(it.check().cases())),
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
