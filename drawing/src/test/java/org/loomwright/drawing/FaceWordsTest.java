package org.loomwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

class FaceWordsTest {
  private static final View WIRE_UP = new View(Side.WIRE_SIDE, LatchDirection.UP);

  @Test
  void saysRowAndPlaceForExactlyThatView() {
    Housing housing = Housings.grid(3, 4);

    assertThat(FaceWords.position(housing, WIRE_UP, "1")).isEqualTo("top left corner");
    assertThat(FaceWords.position(housing, new View(Side.MATING_SIDE, LatchDirection.UP), "1"))
        .isEqualTo("top right corner");
    assertThat(FaceWords.position(housing, new View(Side.WIRE_SIDE, LatchDirection.DOWN), "1"))
        .isEqualTo("bottom right corner");
    // A quarter to the right puts the left column on top and the top row on the right.
    assertThat(FaceWords.position(housing, new View(Side.WIRE_SIDE, LatchDirection.RIGHT), "1"))
        .isEqualTo("top right corner");
    assertThat(FaceWords.position(housing, new View(Side.WIRE_SIDE, LatchDirection.LEFT), "1"))
        .isEqualTo("bottom left corner");
    assertThat(FaceWords.sentence(housing, new View(Side.WIRE_SIDE, LatchDirection.DOWN), "7"))
        .isEqualTo("looking at the wire side, latch down: middle row, second from the left");
  }

  @Test
  void saysOnlyWhatIsNeededInASingleRowOrColumn() {
    assertThat(FaceWords.positions(Housings.grid(1, 5), WIRE_UP).values())
        .containsExactly(
            "leftmost", "second from the left", "middle", "second from the right", "rightmost");
    assertThat(FaceWords.positions(Housings.grid(4, 1), WIRE_UP).values())
        .containsExactly("top", "second from the top", "second from the bottom", "bottom");
    assertThat(FaceWords.positions(Housings.grid(1, 1), WIRE_UP).values())
        .containsExactly("the only cavity");
  }

  @Test
  void countsFromTheNearerEnd() {
    assertThat(FaceWords.position(Housings.grid(4, 30), WIRE_UP, "43"))
        .isEqualTo("second row from the top, 13th from the left");
    assertThat(FaceWords.position(Housings.grid(4, 30), WIRE_UP, "88"))
        .isEqualTo("second row from the bottom, third from the right");
  }

  @Test
  void saysClockPositionsInARoundFace() {
    List<Cavity> cavities = new ArrayList<>();
    cavities.add(Housings.cavity("13", 15, 15, 2, 2));
    cavities.addAll(Housings.ring(4, 5, 15, 9, 45));
    cavities.addAll(Housings.ring(8, 11, 15, 1, 0));
    Housing round = Housings.housing(30, 30, true, false, cavities);

    assertThat(FaceWords.position(round, WIRE_UP, "13")).isEqualTo("in the middle");
    assertThat(FaceWords.position(round, WIRE_UP, "1")).isEqualTo("at 12 o'clock");
    assertThat(FaceWords.position(round, WIRE_UP, "3")).isEqualTo("at 3 o'clock");
    assertThat(FaceWords.position(round, WIRE_UP, "9"))
        .isEqualTo("between 1 and 2 o'clock, inner ring");
    assertThat(FaceWords.sentence(round, new View(Side.MATING_SIDE, LatchDirection.UP), "3"))
        .isEqualTo("looking at the mating side, key up: at 9 o'clock");
  }

  /** Position 2 of the row is moulded closed and position 1 of the second too. */
  @Test
  void countsPositionsThatAreMouldedClosed() {
    List<Cavity> cavities = new ArrayList<>();
    for (Cavity it : Housings.grid(2, 6).cavities()) {
      boolean closed = it.number().equals("2") || it.number().equals("7");
      cavities.add(closed ? Housings.closed(it) : it);
    }
    Housing housing = Housings.housing(26, 11, false, true, cavities);

    assertThat(FaceWords.position(housing, WIRE_UP, "3")).isEqualTo("top row, third from the left");
    assertThat(FaceWords.position(housing, WIRE_UP, "8"))
        .isEqualTo("bottom row, second from the left");
    assertThat(FaceWords.position(housing, WIRE_UP, "7")).isEqualTo("bottom left corner");
    assertThat(FaceWords.positions(housing, WIRE_UP))
        .isEqualTo(FaceWords.positions(Housings.grid(2, 6), WIRE_UP));
  }

  @Test
  void saysWhatStandsOutInAnIrregularFace() {
    Housing housing =
        Housings.housing(
            30,
            20,
            false,
            true,
            List.of(
                Housings.cavity("1", 5, 8, 3, 3),
                Housings.cavity("2", 9, 6.9, 3, 3),
                Housings.cavity("3", 15, 9.2, 8, 8),
                Housings.cavity("4", 22, 10.4, 3, 3)));

    assertThat(FaceWords.position(housing, WIRE_UP, "3")).isEqualTo("the largest of all");
    assertThat(
            FaceWords.position(
                Housings.housing(
                    30,
                    20,
                    false,
                    true,
                    List.of(
                        Housings.cavity("1", 5, 5, 4, 4),
                        Housings.cavity("2", 8, 7.2, 4, 4),
                        Housings.cavity("3", 11, 9.4, 4, 4))),
                WIRE_UP,
                "1"))
        .isEqualTo("the highest of all");
  }

  @Test
  void saysAloneWhereARowHasOnePositionOnly() {
    Housing housing =
        Housings.housing(
            20,
            20,
            false,
            true,
            List.of(
                Housings.cavity("1", 10, 4, 3, 3),
                Housings.cavity("2", 4, 10, 3, 3),
                Housings.cavity("3", 16, 10, 3, 3)));
    assertThat(FaceWords.position(housing, WIRE_UP, "1")).isEqualTo("top row, alone");
  }

  @Test
  void fallsBackToTheNumberWhereRowsAreNotPlainToSee() {
    Housing housing =
        Housings.housing(
            30,
            20,
            false,
            true,
            List.of(
                Housings.cavity("1", 5, 5, 4, 4),
                Housings.cavity("2", 8, 7.2, 4, 4),
                Housings.cavity("3", 11, 9.4, 4, 4)));

    assertThat(FaceWords.position(housing, WIRE_UP, "2"))
        .isEqualTo("cavity number 2, by the number moulded beside it");
  }

  @Test
  void refusesACavityTheHousingDoesNotHave() {
    assertThatThrownBy(() -> FaceWords.position(Housings.grid(1, 2), WIRE_UP, "7"))
        .hasMessage("the face has no cavity '7'");
  }
}
