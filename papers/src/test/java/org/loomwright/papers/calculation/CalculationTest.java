package org.loomwright.papers.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.loomwright.model.design.Lead;

/** The printed sums of the demo kits, done again by hand. */
class CalculationTest {
  static final List<String> KITS = DemoKits.KITS;

  @ParameterizedTest
  @FieldSource("KITS")
  void everySumComesOutAsPrinted(String kit) {
    Calculation report = CalculationMaker.of(DemoKits.planned(kit));
    assertThat(report.subjects()).flatExtracting(ByHand::faults).isEmpty();
    assertThat(report.reckoned()).isGreaterThan(report.worked() * 4 / 5);
  }

  @ParameterizedTest
  @FieldSource("KITS")
  void everyLeadShowsTheSumsEveryoneKnows(String kit) {
    Calculation report = CalculationMaker.of(DemoKits.planned(kit));
    List<String> leads =
        DemoKits.planned(kit).plan().design().leads().stream().map(Lead::id).toList();
    assertThat(report.subjects())
        .extracting(Calculation.Subject::lead)
        .filteredOn(it -> !it.isEmpty())
        .containsExactlyElementsOf(leads);
    for (Calculation.Subject subject : report.subjects()) {
      if (!subject.lead().isEmpty()) {
        assertThat(ByHand.lines(subject).values())
            .as(subject.title())
            .filteredOn(it -> it.formula().contains("(234.5 + T) / 254.5"))
            .isNotEmpty()
            .anyMatch(it -> it.numbers().contains("(234.5 + "));
      }
    }
  }

  /** Each printed figure is altered by two units of its last digit but one, one after another. */
  @ParameterizedTest
  @FieldSource("KITS")
  void anAlteredFigureIsFound(String kit) {
    Calculation report = CalculationMaker.of(DemoKits.planned(kit));
    int altered = 0;
    for (Calculation.Subject subject : report.subjects()) {
      for (Calculation.Line line : ByHand.lines(subject).values()) {
        boolean bears = !line.numbers().isEmpty() || !usedIn(subject, line).isEmpty();
        if (bears && !line.value().startsWith("no")) {
          altered++;
          assertThat(ByHand.faults(with(subject, line, falsified(line))))
              .as("%s, line %s", subject.title(), line.number())
              .isNotEmpty();
        }
      }
    }
    assertThat(altered).isGreaterThan(50);
  }

  private static List<Calculation.Line> usedIn(Calculation.Subject subject, Calculation.Line line) {
    return ByHand.lines(subject).values().stream()
        .filter(it -> !it.numbers().isEmpty() && it.lines().contains(line.number()))
        .toList();
  }

  private static Calculation.Line falsified(Calculation.Line line) {
    double wrong = PocketCalculator.reckon(line.value()) + 2 * ByHand.lastButOne(line.value());
    return new Calculation.Line(
        line.number(),
        line.what(),
        line.formula(),
        line.numbers(),
        line.lines(),
        Digits.text(wrong, Digits.MOST),
        line.unit(),
        line.source());
  }

  private static Calculation.Subject with(
      Calculation.Subject subject, Calculation.Line old, Calculation.Line wrong) {
    List<Calculation.Block> blocks = new ArrayList<>();
    for (Calculation.Block block : subject.blocks()) {
      blocks.add(
          new Calculation.Block(
              block.above(), replaced(block.lines(), old, wrong), block.results()));
    }
    return new Calculation.Subject(
        subject.lead(), subject.title(), replaced(subject.inputs(), old, wrong), blocks);
  }

  private static List<Calculation.Line> replaced(
      List<Calculation.Line> lines, Calculation.Line old, Calculation.Line wrong) {
    return lines.stream().map(it -> it.equals(old) ? wrong : it).toList();
  }

  /** What no pocket calculator finds is looked up, or says in words what it comes from. */
  private static final List<String> NOT_RECKONED =
      List.of(
          "table",
          "published",
          "compared",
          "not claimed",
          "count",
          "most current first",
          "worst of the bundle and all its parts",
          "worst of this bundle and all smaller ones",
          "this wire alone, worse than in the bundle",
          "highest of all load states",
          "found in another state than the one above",
          "C dT/dt = I² r(T) \u2212 q(T)",
          "100 h: ",
          "none");

  @ParameterizedTest
  @FieldSource("KITS")
  void aLineWithoutSumIsLookedUpOrSaysWhy(String kit) {
    Calculation report = CalculationMaker.of(DemoKits.planned(kit));
    assertThat(report.subjects())
        .flatExtracting(Calculation.Subject::blocks)
        .flatExtracting(Calculation.Block::lines)
        .filteredOn(it -> it.numbers().isEmpty())
        .extracting(Calculation.Line::formula)
        .allMatch(it -> NOT_RECKONED.stream().anyMatch(it::startsWith));
  }

  @ParameterizedTest
  @FieldSource("KITS")
  void everyCheckHasItsFigureAndItsLimitOnALine(String kit) {
    Calculation report = CalculationMaker.of(DemoKits.planned(kit));
    assertThat(report.subjects())
        .flatExtracting(Calculation.Subject::blocks)
        .flatExtracting(Calculation.Block::results)
        .hasSameSizeAs(DemoKits.planned(kit).plan().checks())
        .allMatch(it -> it.figureLine() > 0 && it.limitLine() > 0);
  }

  @Test
  void theSameReportTwice() {
    assertThat(CalculationMaker.of(DemoKits.planned("trailer")))
        .isEqualTo(CalculationMaker.of(DemoKits.planned("trailer")));
  }
}
