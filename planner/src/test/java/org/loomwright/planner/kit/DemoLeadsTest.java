package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.design.Lead;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Demo;

/** Sizes and lengths of the demo's leads. */
class DemoLeadsTest {
  /** Path and tolerance from the van's runs; 75 mm slack and 50 mm service loop at each end. */
  @ParameterizedTest
  @CsvSource({
    // 1150 along the floor loom, 40 tolerance, 2 x 125; strip 6.5 and 6.5, 10 for the cut, up to
    // 10.
    "crew-comfort, heater/main/1, rear-quarter, 1150, 40, 1440, 1470",
    // 700 + 1250, 30 + 50, 2 x 125.
    "crew-comfort, heater/main/1, left-seat-box, 1950, 80, 2280, 2310",
    // 650 to the cross member, 30, 2 x 125; strip 5.5 and the ring's.
    "crew-comfort, heater/main/2, cabin-floor, 650, 30, 930, 960",
    // 700 + 1900 + 800 + 720, 30 + 60 + 30 + 40, 2 x 125.
    "trailer, trailer-socket/socket/9, left-seat-box, 4120, 160, 4530, 4560"
  })
  void lengthsAreThePathWithItsToleranceSlackAndLoop(
      String kit, String need, String from, double path, double off, double length, double cut) {
    Lead lead =
        Demo.plan(kit).design().leads().stream()
            .filter(it -> it.needs().contains(need) && it.a().place().equals(from))
            .findFirst()
            .orElseThrow();
    assertThat(lead.pathMm()).isEqualTo(path);
    assertThat(lead.toleranceWorstMm()).isEqualTo(off);
    assertThat(lead.toleranceRssMm()).isLessThanOrEqualTo(off);
    assertThat(lead.lengthMm()).isEqualTo(length).isEqualTo(path + off + 2 * 75 + 2 * 50);
    assertThat(lead.cutMm()).isEqualTo(cut);
  }

  @Test
  void everyBuildIsSoldExactlyOneNumberThatHoldsItsCases() {
    for (String kit : List.of(Demo.COMFORT, Demo.TRAILER)) {
      for (Map<String, String> build : AllBuilds.of(Demo.order(kit).vehicle())) {
        assertThat(Sold.numbers(Demo.plan(kit), build)).as("%s", build).hasSize(1);
      }
    }
  }
}
