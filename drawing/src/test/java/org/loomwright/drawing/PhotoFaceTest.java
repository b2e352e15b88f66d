package org.loomwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.PhotoPoint;
import org.loomwright.model.vehicle.Side;

class PhotoFaceTest {
  /** A PNG of 440 × 320 px up to its size. */
  private static final Picture PICTURE =
      Picture.of(
          HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452000001b8000001400800000000"));

  /** Rows at 3 and 8 mm, columns at 3, 7 and 11 mm. */
  private static final Housing HOUSING = Housings.grid(2, 3);

  /** Seen from the mating side at 20 px for a mm: what is left on file is right in the photo. */
  private static final FacePhoto MATING =
      new FacePhoto(
          "face.png",
          Side.MATING_SIDE,
          List.of(point("1", 320, 80), point("3", 160, 80), point("4", 320, 180)));

  @Test
  void marksLieWhereTheCavitiesAre() {
    Looked picture = Looked.at(draw(88, 200));

    // 440 px are 88 mm wide, so a px is 0.2 mm: cavity 5 is at 240 px, 180 px.
    Looked.Text five =
        picture.texts().stream().filter(it -> it.words().equals("5")).findFirst().orElseThrow();
    assertThat((five.box().left() + five.box().right()) / 2).isCloseTo(48, within(0.02));
    assertThat(five.middleY()).isCloseTo(36, within(0.02));
    assertThat(picture.elements("image", "")).hasSize(1);
    assertThat(picture.elements("image", "").get(0).getAttribute("xlink:href"))
        .startsWith("data:image/png;base64,");
    picture.isSound();
  }

  @Test
  void everyMarkHasItsShapeALightEdgeAndItsWords() {
    String svg = draw(88, 200);
    Looked picture = Looked.at(svg);

    assertThat(picture.elements("polygon", "filled")).hasSize(2);
    assertThat(picture.elements("polygon", "ring")).hasSize(1);
    assertThat(picture.elements("polygon", "unknown")).hasSize(1);
    assertThat(picture.elements("polyline", "crossed")).hasSize(4);
    assertThat(picture.elements("polygon", "casing").size()).isGreaterThanOrEqualTo(7);
    assertThat(svg)
        .contains(
            "<title>test housing, photo of the mating side; filled by this kit: 5; blocked,"
                + " nothing can go in: 6; not the same on every build, or not known: 1; the one"
                + " meant: 2</title>");
  }

  @Test
  void keepsWithinTheRoomGiven() {
    assertThat(draw(88, 32)).contains("width=\"44mm\" height=\"32mm\"");
  }

  private static PhotoPoint point(String cavity, int x, int y) {
    return new PhotoPoint(Optional.of(cavity), Optional.empty(), x, y);
  }

  private static String draw(double width, double height) {
    return PhotoFace.svg(
        HOUSING,
        MATING,
        PICTURE,
        Map.of(
            "1",
            CavityMark.UNKNOWN,
            "2",
            CavityMark.SOUGHT,
            "5",
            CavityMark.FILLED,
            "6",
            CavityMark.BLOCKED),
        width,
        height,
        Lettering.text());
  }
}
