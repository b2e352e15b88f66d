package org.loomwright.papers.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Lead;

/** The printed sums of the demo kits, done again by hand. */
class CalculationTest {
  static final List<String> KITS = DemoKits.KITS;

  @ParameterizedTest
  @FieldSource("KITS")
  void everySumComesOutAsPrinted(String kit) {
    Calculation report = CalculationMaker.of(DemoKits.planned(kit));
    assertThat(report.subjects()).flatExtracting(ByHand::faults).isEmpty();
    assertThat(report.reckoned()).isGreaterThan(report.worked() / 3);
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

  /** What is compared as it stands in the documents has nothing to unfold. */
  @ParameterizedTest
  @FieldSource("KITS")
  void onlyPlainRatingsHaveNoTrace(String kit) {
    assertThat(DemoKits.planned(kit).plan().checks())
        .filteredOn(it -> it.trace().isEmpty())
        .extracting(Check::name)
        .allMatch(
            it ->
                it.startsWith("current through terminal ")
                    || it.equals("fuse not above what the slot may hold")
                    || it.startsWith("fuse not above what is allowed for ")
                    || it.startsWith("conductor not below what is asked for ")
                    || it.equals("leads shared with pins it must be kept apart from"));
  }

  @Test
  void theSameReportTwice() {
    assertThat(CalculationMaker.of(DemoKits.planned("trailer")))
        .isEqualTo(CalculationMaker.of(DemoKits.planned("trailer")));
  }
}
