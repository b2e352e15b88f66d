package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.papers.calculation.Calculation;
import org.loomwright.papers.calculation.CalculationMaker;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** The calculation report as one document of markup. */
public final class CalculationDocument {
  private CalculationDocument() {}

  /** The calculation report of a pack. */
  public static String of(Pack pack) {
    Calculation report = CalculationMaker.of(pack.names());
    List<Section> sections = sections(pack, report);
    Html html = new Html();
    Shell.runningWords(pack, html);
    front(pack, report, sections, html);
    sections.forEach(it -> Shell.write(pack, it, html));
    return Shell.document(pack, "calculation report of a wiring kit", sections, html);
  }

  private static List<Section> sections(Pack pack, Calculation report) {
    List<Section> sections = new ArrayList<>(List.of(new HowToReckonSection()));
    if (BarsSection.hasAny(pack.plan())) {
      sections.add(new BarsSection());
    }
    List<Calculation.Subject> others = new ArrayList<>();
    for (Calculation.Subject subject : report.subjects()) {
      if (subject.lead().isEmpty()) {
        others.add(subject);
      } else {
        sections.add(new LeadSumsSection(subject));
      }
    }
    if (!others.isEmpty()) {
      sections.add(new OtherSumsSection(others));
    }
    if (!report.sources().isEmpty()) {
      sections.add(new SourcesSection(report.sources()));
    }
    return sections;
  }

  private static void front(Pack pack, Calculation report, List<Section> sections, Html html) {
    html.open("section", "cover", "cover")
        .line("div", "run-section", "Calculation report")
        .line("p", "kicker", "Calculation report of the wiring kit")
        .line("h1", "", pack.order().kit().name())
        .line("p", "ident", Figures.capital(pack.ident()))
        .line(
            "p",
            "lead",
            "Every figure of the kit's checks with what it was found from: the values taken from the"
                + " documents, the formulas, the values between, and where each comes from. The"
                + " pages of one lead and the list of sources are enough to do its sums again by"
                + " hand.")
        .line(
            "p",
            "",
            pack.plan().checks().size()
                + " checks rest on "
                + report.worked()
                + " lines. "
                + report.reckoned()
                + " of them show their formula with the numbers put in; the others are read from a"
                + " table, assumed, or found by a search or a balance, and say which.")
        .line(
            "p",
            "safety",
            "This report supports a trained person's judgement; it does not replace it.")
        .line("h2", "", "Contents")
        .open("table", "contents");
    List<Entry> entries = entries(sections);
    int rows = (entries.size() + 1) / 2;
    for (int row = 0; row < rows; row++) {
      html.open("tr", "");
      entries.get(row).write(html);
      html.line("td", "gap", "");
      if (row + rows < entries.size()) {
        entries.get(row + rows).write(html);
      } else {
        html.line("td", "gap", "").line("td", "gap", "");
      }
      html.close("tr");
    }
    html.close("table").close("section");
  }

  private static List<Entry> entries(List<Section> sections) {
    List<Entry> entries = new ArrayList<>();
    for (Section section : sections) {
      entries.add(new Entry(section.id(), section.title()));
      if (section instanceof OtherSumsSection others) {
        others.entries().forEach((id, title) -> entries.add(new Entry(id, "\u2003" + title)));
      }
    }
    return entries;
  }

  /** A line of the contents. */
  private record Entry(String id, String title) {
    void write(Html html) {
      html.open("td", "")
          .link(id, "", title)
          .close("td")
          .open("td", "at")
          .link(id, "at", "")
          .close("td");
    }
  }
}
