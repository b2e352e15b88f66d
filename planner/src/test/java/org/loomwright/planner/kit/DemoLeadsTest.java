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
  /**
   * Path and tolerance from the van's runs; 75 mm slack and 50 mm service loop at each end; reach
   * between the cavities farthest apart on each face; 5 mm rounding of each tail.
   */
  @ParameterizedTest
  @CsvSource({
    // 1150 along the floor loom, 40 tolerance; block 125 + 48.8, connector 125 + 20.2; strip 6.5
    // and 6.5, 10 for the cut, up to 10.
    "crew-comfort, heater/main/1, rear-quarter, 1150, 40, 175, 150, 1540",
    // 700 + 1250, 30 + 50; block 125 + 47.5, connector as before.
    "crew-comfort, heater/main/1, left-seat-box, 1950, 80, 175, 150, 2380",
    // 650 to the cross member, 30; connector as before, ring without reach; strip 5.5 and the
    // ring's.
    "crew-comfort, heater/main/2, cabin-floor, 650, 30, 150, 125, 980",
    // 700 + 1900 + 800 + 720, 30 + 60 + 30 + 40; block 125 + 47.5, socket 125 + 29.0.
    "trailer, trailer-socket/socket/9, left-seat-box, 4120, 160, 175, 155, 4640"
  })
  void lengthsAreThePathWithItsToleranceSlackAndLoop(
      String kit,
      String need,
      String from,
      double path,
      double off,
      double tailA,
      double tailB,
      double cut) {
    Lead lead =
        Demo.plan(kit).design().leads().stream()
            .filter(it -> it.needs().contains(need) && it.a().place().equals(from))
            .findFirst()
            .orElseThrow();
    assertThat(lead.pathMm()).isEqualTo(path);
    assertThat(lead.toleranceWorstMm()).isEqualTo(off);
    assertThat(lead.toleranceRssMm()).isLessThanOrEqualTo(off);
    assertThat(lead.lengthMm()).isEqualTo(path + off + tailA + tailB);
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
