package org.loomwright.web.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.vehicle.Run;
import org.loomwright.web.map.RunCheck.Verdict;

/** Stated lengths beside drawn ones. */
class RunCheckTest {
  /** A right angle: 400 mm and 300 mm, 500 mm straight. */
  private static final List<MapPoint> LINE =
      List.of(new MapPoint(100, 100), new MapPoint(500, 100), new MapPoint(500, 400));

  private static Run run(String length, String tolerance) {
    return new Run(
        "a-to-b",
        "a",
        "b",
        Length.of(length),
        Length.of(tolerance),
        "the sill",
        false,
        List.of(),
        List.of(),
        Optional.empty(),
        false,
        false,
        List.of(),
        List.of(),
        false,
        false,
        Optional.empty());
  }

  private static RunCheck check(String length) {
    return RunCheck.of(Optional.of(LINE), run(length, "30 mm"));
  }

  @Test
  void measuresTheLineAndTheStraightWay() {
    RunCheck check = check("700 mm");
    assertThat(check.drawnMm()).isEqualTo(700, within(1e-9));
    assertThat(check.straightMm()).isEqualTo(500, within(1e-9));
    assertThat(MapPoint.middle(LINE)).isEqualTo(new MapPoint(450, 100));
  }

  @Test
  void aQuarterMoreOrLessNeedsNoLook() {
    // 700 is a quarter less than 933.3 and a quarter more than 560.
    assertThat(check("933 mm").verdict()).isEqualTo(Verdict.AGREES);
    assertThat(check("934 mm").verdict()).isEqualTo(Verdict.APART);
    assertThat(check("560 mm").verdict()).isEqualTo(Verdict.AGREES);
    assertThat(check("559 mm").verdict()).isEqualTo(Verdict.APART);
    assertThat(check("934 mm").words(Display.METRIC)).contains("longer than drawn");
    assertThat(check("559 mm").words(Display.METRIC)).contains("longer than stated");
  }

  @Test
  void shorterThanTheStraightLineIsImpossible() {
    assertThat(check("500 mm").verdict()).isNotEqualTo(Verdict.IMPOSSIBLE);
    assertThat(check("499 mm").verdict()).isEqualTo(Verdict.IMPOSSIBLE);
    assertThat(check("499 mm").words(Display.METRIC)).contains("within its tolerance");
    assertThat(check("50 mm").words(Display.METRIC)).contains("500", "typing error");
  }

  @Test
  void whatIsNotDrawnIsNotJudged() {
    assertThat(RunCheck.of(Optional.empty(), run("5 mm", "1 mm")).verdict())
        .isEqualTo(Verdict.NOT_DRAWN);
  }

  @Test
  void lengthsAreReadInGroupsOfThree() {
    assertThat(MapWords.mm(1839.6)).isEqualTo("1\u00a0840\u00a0mm");
    assertThat(MapWords.mm(840)).isEqualTo("840\u00a0mm");
  }
}
