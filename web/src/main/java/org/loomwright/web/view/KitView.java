package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Display;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.papers.words.Figures;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.KitPages;
import org.loomwright.web.shop.Planned;
import org.loomwright.web.shop.Stage;

/**
 * A stage of a kit.
 *
 * @param order the kit with its documents
 * @param stage the stage
 * @param planned how far it is
 */
public record KitView(KitOrder order, Stage stage, Planned planned) {

  /**
   * A line of the list of checks.
   *
   * @param number printed number
   * @param verdict sign and word
   * @param css class of the verdict
   * @param name what is checked
   * @param on what it is checked on
   * @param cases cases it is the worst in; empty when it speaks of all
   * @param figure figure with unit
   * @param limit limit with unit
   * @param margin margin, in percent
   * @param source where the limit comes from
   * @param href how the figure was found
   */
  public record Line(
      int number,
      String verdict,
      String css,
      String name,
      String on,
      String cases,
      String figure,
      String limit,
      String margin,
      String source,
      String href) {}

  /** The pages of the plan, when it is made. */
  public Optional<KitPages> pages() {
    return planned instanceof Planned.Done done ? Optional.of(done.pages()) : Optional.empty();
  }

  /** Why it can't be planned; empty when it can. */
  public String failure() {
    if (planned instanceof Planned.Stopped) {
      return "Planning was stopped. It begins anew when a document of the kit changes.";
    }
    return planned instanceof Planned.Failed failed ? failed.why() : "";
  }

  /** Whether a person stopped the planning. */
  public boolean stopped() {
    return planned instanceof Planned.Stopped;
  }

  /** Seconds since planning was asked for. */
  public long seconds() {
    return planned instanceof Planned.Working working ? working.seconds() : 0;
  }

  /** What planning is at, in words; empty when it is over. */
  public String phase() {
    return planned instanceof Planned.Working working ? working.phaseWords() : "";
  }

  /** The verdict in a word. */
  public String verdict() {
    return pages()
        .map(
            it ->
                !it.standing().releasable()
                    ? "✕ can't be released"
                    : it.standing().marginal().isEmpty()
                        ? "✓ can be released"
                        : "▲ can be released with a named reason")
        .orElse(
            planned instanceof Planned.Stopped
                ? "planning was stopped"
                : failure().isEmpty() ? "being planned" : "✕ can't be planned");
  }

  /** Class of the verdict. */
  public String css() {
    return pages()
        .map(
            it ->
                !it.standing().releasable()
                    ? "fails"
                    : it.standing().marginal().isEmpty() ? "holds" : "marginal")
        .orElse(failure().isEmpty() ? "working" : "fails");
  }

  /** What the plan comes to, in one line. */
  public String summary() {
    return pages()
        .map(
            it ->
                Figures.builds(it.plan().builds().possible())
                    + ", "
                    + count(it.plan().cases().size(), "case")
                    + ", "
                    + count(it.plan().design().leads().size(), "lead")
                    + ", "
                    + count(it.plan().design().partNumbers().size(), "part number")
                    + ", "
                    + count(it.plan().checks().size(), "check"))
        .orElse("");
  }

  private static String count(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  /** The checks, the worst first; quiet ones compare ratings, sizes and counts. */
  public List<Line> checks(boolean quiet, Display units) {
    return pages()
        .map(
            pages ->
                pages.checks().stream()
                    .filter(it -> it.quiet() == quiet)
                    .map(it -> line(pages, it, units))
                    .toList())
        .orElse(List.of());
  }

  /** All its ways. */
  public WaysView ways() {
    return pages()
        .map(it -> WaysView.of(it.names()))
        .orElseGet(() -> new WaysView(List.of(), List.of()));
  }

  /** One line of the checks. */
  public static Line line(KitPages pages, CheckRow row, Display units) {
    Check it = row.first();
    return new Line(
        row.number(),
        sign(it.verdict()),
        it.verdict().word(),
        it.name(),
        row.subjects(pages.names()),
        String.join(", ", it.cases()),
        Figures.figureBeside(it.figure(), it.limit(), it.unit(), units),
        (it.atMost() ? "at most " : "at least ")
            + Figures.figureBeside(it.limit(), it.figure(), it.unit(), units),
        Figures.margin(it.margin()),
        it.source(),
        Href.trace(pages.order().kit().id(), row.number()));
  }

  /** How the figures of a line were found: each line of the trace once, in order. */
  public static List<TraceLine> trace(CheckRow row) {
    LinkedHashSet<TraceLine> lines = new LinkedHashSet<>();
    row.checks().forEach(it -> lines.addAll(it.trace()));
    return new ArrayList<>(lines);
  }

  /** A value of a trace with its unit. */
  public static String value(TraceLine line, Display units) {
    return Amounts.of(line.value(), line.unit(), units);
  }

  private static String sign(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "✓ holds";
      case MARGINAL -> "▲ marginal";
      case FAILS -> "✕ fails";
    };
  }
}
