package org.loomwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/** Faces as they come out on paper. */
class FaceLookTest {
  private static final double[][] ROOMS = {{32, 34}, {68, 56}, {164, 80}};

  @Property(tries = 2000)
  void noTextLiesOverAnotherAndNothingIsCutOff(@ForAll long seed) {
    Random random = new Random(seed);
    // Cavities of a scatter may lie on each other; reading the documents refuses that.
    Housing housing =
        RandomFaces.values()[random.nextInt(RandomFaces.values().length - 1)].housing(random);
    View view =
        new View(Side.values()[random.nextInt(2)], LatchDirection.values()[random.nextInt(4)]);
    double[] room = ROOMS[random.nextInt(ROOMS.length)];
    Map<String, CavityMark> marks = marks(housing, random);
    Looked face = Looked.at(Face.svg(housing, view, marks, room[0], room[1], Lettering.text()));

    face.isSound();
    long small = housing.cavities().size() + 1 - face.texts().size();
    assertThat(small).isNotNegative();
    // Every number is there where there is room, and the one meant in any case.
    if (Face.smallestNumberMm(housing, view, room[0], room[1]) > 1.5) {
      assertThat(small).isZero();
    }
    marks.forEach(
        (number, mark) -> {
          if (mark == CavityMark.SOUGHT && !housing.cavity(number).orElseThrow().closed()) {
            assertThat(face.texts()).extracting(Looked.Text::words).contains(number);
          }
        });
    assertThat(face.texts().stream().mapToDouble(it -> it.box().right()).max().orElseThrow())
        .isLessThanOrEqualTo(room[0] + 9);
  }

  private static Map<String, CavityMark> marks(Housing housing, Random random) {
    Map<String, CavityMark> marks = new LinkedHashMap<>();
    for (Cavity it : housing.cavities()) {
      if (random.nextInt(3) > 0) {
        marks.put(it.number(), CavityMark.values()[random.nextInt(CavityMark.values().length)]);
      }
    }
    return marks;
  }

  /** What is drawn, with every shade taken away. */
  @Test
  void marksDifferByShapeAlone() {
    for (boolean round : new boolean[] {false, true}) {
      Map<String, CavityMark> seen = new LinkedHashMap<>();
      for (CavityMark mark : CavityMark.values()) {
        String shapes =
            new CavityShape(5, 4, round)
                .strokes(mark, 0.8).stream()
                    .map(it -> it.points() + it.dashes() + (it.widthMm() > 0.5 ? "bold" : ""))
                    .toList()
                    .toString();
        assertThat(seen.put(shapes, mark)).as("%s looks like another", mark).isNull();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyMarkIsInTheLegend(CavityMark mark) {
    Housing housing = Housings.grid(1, 2);

    assertThat(FaceLegend.of(housing, Map.of("1", mark)))
        .extracting(FaceLegend.Sign::words)
        .containsExactly(mark.words() + ": 1", "nothing told: 2", "latch");
    assertThat(FaceLegend.all())
        .extracting(FaceLegend.Sign::words)
        .contains(mark.shape() + ": " + mark.words());
    FaceLegend.all().forEach(it -> Looked.at(it.svg()).isSound());
  }

  @Test
  void aPositionMouldedClosedIsBlockedWithoutBeingTold() {
    Cavity closed = Housings.closed(Housings.cavity("2", 9, 5, 4, 4));
    Housing housing =
        Housings.housing(14, 10, false, true, List.of(Housings.cavity("1", 4, 5, 4, 4), closed));
    View view = new View(Side.WIRE_SIDE, LatchDirection.UP);

    String svg = Face.svg(housing, view, Map.of(), 60, 60, Lettering.text());
    assertThat(Looked.at(svg).elements("polygon", "blocked")).hasSize(1);
    assertThat(svg).contains("blocked, nothing can go in: 2");
    assertThat(Face.svg(housing, view, Map.of("2", CavityMark.FILLED), 60, 60, Lettering.text()))
        .isEqualTo(svg);
  }
}
