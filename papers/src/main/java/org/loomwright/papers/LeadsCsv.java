package org.loomwright.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.papers.words.Names;

/**
 * The leads as text for any program: RFC 4180, UTF-8 without a byte order mark, comma, CRLF,
 * numbers with a point. A text that a spreadsheet would take for a formula gets an apostrophe in
 * front.
 */
final class LeadsCsv {
  private static final List<String> HEAD =
      List.of(
          "label",
          "lead",
          "for",
          "needs",
          "from",
          "from place",
          "to",
          "to place",
          "wire",
          "area mm2",
          "colour",
          "colour code",
          "path mm",
          "length mm",
          "cut mm",
          "tolerance worst mm",
          "tolerance rss mm",
          "current A",
          "fuse A",
          "end A otherwise",
          "end B otherwise",
          "part numbers");

  private LeadsCsv() {}

  static String of(Names names) {
    StringBuilder csv = new StringBuilder(line(HEAD));
    for (Lead lead : names.plan().design().leads()) {
      List<String> cells = new ArrayList<>();
      cells.add(text(lead.label()));
      cells.add(text(lead.id()));
      cells.add(text(lead.what()));
      cells.add(text(String.join("; ", lead.needs())));
      end(cells, names, lead.a());
      end(cells, names, lead.b());
      cells.add(text(lead.wire()));
      cells.add(number(lead.areaMm2()));
      cells.add(text(lead.colour().text()));
      cells.add(text(lead.colour().code()));
      cells.add(number(lead.pathMm()));
      cells.add(number(lead.lengthMm()));
      cells.add(number(lead.cutMm()));
      cells.add(number(lead.toleranceWorstMm()));
      cells.add(number(lead.toleranceRssMm()));
      cells.add(number(lead.currentA()));
      cells.add(number(lead.fuseA()));
      cells.add(text(names.otherwise("A", lead.a())));
      cells.add(text(names.otherwise("B", lead.b())));
      cells.add(
          text(
              names.plan().design().partNumbers().stream()
                  .filter(it -> it.leads().contains(lead.id()))
                  .map(it -> it.id())
                  .collect(Collectors.joining("; "))));
      csv.append(line(cells));
    }
    return csv.toString();
  }

  private static void end(List<String> cells, Names names, LeadEnd end) {
    cells.add(text(names.landing(end.asMade())));
    cells.add(text(names.place(end.place())));
  }

  /** Rounded to a thousandth, which is finer than any of these can be made. */
  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    String fixed = String.format(Locale.ROOT, "%.3f", value);
    return fixed.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  private static String text(String words) {
    boolean formula = !words.isEmpty() && "=+-@\t\r".indexOf(words.charAt(0)) >= 0;
    return formula ? "'" + words : words;
  }

  private static String line(List<String> cells) {
    return cells.stream().map(LeadsCsv::quoted).collect(Collectors.joining(",")) + "\r\n";
  }

  private static String quoted(String cell) {
    boolean needed =
        cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
            || !cell.equals(cell.strip());
    return needed ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }
}
