package org.loomwright.papers.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.design.Lead;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Display;
import org.loomwright.papers.RandomKits;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.plan.Planner;

/** Sections in inches for the screen; on paper nothing changes. */
class UnitsTest {
  private final Names names = names();

  private static Names names() {
    KitOrder order = RandomKits.of(5);
    return new Names(order, Planner.plan(order));
  }

  private String section(String id, Pack pack) {
    Html html = new Html();
    Pack.sections().stream()
        .filter(it -> it.id().equals(id))
        .forEach(it -> it.writeForScreen(pack, html));
    return html.markup();
  }

  @Test
  void leadsAreShownFromTheirExactLengths() {
    String inches = section("leads", new Pack(names, Lettering.text(), Display.US));
    for (Lead it : names.plan().design().leads()) {
      assertThat(inches)
          .contains(">" + Display.US.bareLengthMm(it.lengthMm()) + "<")
          .contains(">" + Display.US.areaMm2(it.areaMm2()).replaceAll(" (?=mm²|AWG)", "\u00A0"));
    }
    assertThat(inches).contains("Length in", "Path in").doesNotContain("Length mm");
  }

  @Test
  void metricIsAsPrinted() {
    for (Section it : Pack.sections()) {
      assertThat(section(it.id(), new Pack(names, Lettering.text(), Display.METRIC)))
          .isEqualTo(section(it.id(), new Pack(names, Lettering.text())));
    }
  }

  @Property(tries = 1000)
  void figuresBesideLimitsAreRightToHalfTheirLastDigit(
      @ForAll @DoubleRange(min = 0, max = 20_000) double valueMm,
      @ForAll @DoubleRange(min = 0, max = 20_000) double limitMm) {
    String shown = Figures.figureBeside(valueMm, limitMm, "mm", Display.US);
    assertThat(shown).endsWith("\u00A0in");
    String number = shown.replace("\u00A0in", "");
    int decimals = number.contains(".") ? number.length() - number.indexOf('.') - 1 : 0;
    // Needless zeros are left out, so the last digit counts at least as much as the rule says.
    double half = 0.5 * Math.pow(10, -Math.max(decimals, valueMm < 10 ? 3 : 2));
    assertThat(Double.parseDouble(number)).isCloseTo(valueMm / 25.4, within(half + 1e-9));
  }

  @Property(tries = 500)
  void aDifferenceStaysToBeSeen(@ForAll @DoubleRange(min = 1, max = 5000) double valueMm) {
    double otherMm = valueMm + 0.001;
    assertThat(Figures.figureBeside(valueMm, otherMm, "mm", Display.US))
        .isNotEqualTo(Figures.figureBeside(otherMm, valueMm, "mm", Display.US));
  }
}
