package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HousingChecksTest {
  private static final String PARTS = "parts/bench-parts.json";
  private static final String FOURTH =
      "\"number\": \"4\", \"x\": \"16 mm\", \"y\": \"11 mm\", \"width\": \"4 mm\", \"height\": \"4"
          + " mm\", \"terminals\": [\"TM-28\"], \"plug\": \"CP-28\"";

  @Test
  void aFaceMayHaveKeysLatchLockAndClosedPositions() {
    Small small =
        housing(
                """
                "keys": [{"form": "rib", "x": "2 mm", "y": "0 mm", "width": "1 mm", "height": "2 mm"},
                  {"form": "groove", "x": "22 mm", "y": "8 mm", "width": "1 mm", "height": "2 mm"}],
                "latchForm": {"x": "9 mm", "width": "6 mm"}, "lockEdge": "left",""")
            .with(
                PARTS, "\"x\": \"16 mm\", \"y\": \"5 mm\"", "\"x\": \"16.5 mm\", \"y\": \"5 mm\"");
    assertThat(small.problems()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "x": "16 mm", "y": "5 mm" | "x": "21 mm", "y": "5 mm" | cavities[1].x: the cavity reaches 1.00 mm beyond the face, which is "22 mm" wide; correct 'x' or its size
          "x": "6 mm", "y": "5 mm" | "x": "6 mm", "y": "1.5 mm" | cavities[0].y: the cavity reaches 0.50 mm beyond the face, which is "16 mm" high; correct 'y' or its size
          "x": "16 mm", "y": "5 mm" | "x": "9.9 mm", "y": "5 mm" | cavities[1]: cavity '2' lies over cavity '1'; correct the place or size of one of them
          "number": "3", | "closed": true, "number": "3", | cavities[2].terminals: a cavity that is moulded closed takes no terminals; leave them out, or "closed"
          "sealed": true, | "sealed": true, "latchForm": {"x": "30 mm", "width": "6 mm"}, | latchForm.x: the middle of the latch must be on the face, which is "22 mm" wide
          "sealed": true, | "sealed": true, "keys": [{"form": "rib", "x": "2 mm", "y": "17 mm", "width": "1 mm", "height": "2 mm"}], | keys[0].y: the middle of a key must be on the face, which is "16 mm" high
          "sealed": true, | "sealed": true, "keys": [{"form": "rib", "x": "2 mm", "y": "0 mm", "width": "0 mm", "height": "2 mm"}], | keys[0].width: "0 mm" can't be right: it must be more than zero
          """)
  void eachFaultIsNamed(String old, String now, String problem) {
    assertThat(Small.workspace().with(PARTS, old, now).problems())
        .contains(PARTS + ", housings[0]." + problem);
  }

  @Test
  void aRoundFaceHasNoCorners() {
    Small round = housing("\"round\": true,");
    assertThat(round.problems()).isEmpty();
    assertThat(
            round
                .with(PARTS, "\"x\": \"6 mm\", \"y\": \"5 mm\"", "\"x\": \"3 mm\", \"y\": \"4 mm\"")
                .problems())
        .containsExactly(
            PARTS
                + ", housings[0].cavities[0].x: the cavity reaches beyond the edge of the round"
                + " face; correct 'x', 'y' or its size");
  }

  @Test
  void touchingIsNotOverlapping() {
    assertThat(
            Small.workspace()
                .with(
                    PARTS, "\"x\": \"16 mm\", \"y\": \"5 mm\"", "\"x\": \"10 mm\", \"y\": \"5 mm\"")
                .problems())
        .isEmpty();
  }

  @Test
  void nothingEndsInAClosedPosition() {
    Small closed =
        Small.workspace()
            .with(
                PARTS,
                FOURTH,
                "\"number\": \"4\", \"x\": \"16 mm\", \"y\": \"11 mm\", \"width\": \"4 mm\","
                    + " \"height\": \"4 mm\", \"closed\": true");
    assertThat(closed.problems())
        .anyMatch(
            it ->
                it.contains(
                    "cavity '4' of housing 'HS-4' is moulded closed, so no wire can end in it"));
  }

  @Test
  void aLatchFormNeedsALatch() {
    assertThat(
            housing("\"latchForm\": {\"x\": \"9 mm\", \"width\": \"6 mm\"},")
                .with(PARTS, "\"latch\": true", "\"latch\": false")
                .problems())
        .containsExactly(
            PARTS
                + ", housings[0].latchForm: the housing has no latch to say this of; write"
                + " \"latch\": true, or leave the key out");
  }

  private static Small housing(String more) {
    return Small.workspace().with(PARTS, "\"sealed\": true,", "\"sealed\": true, " + more);
  }
}
