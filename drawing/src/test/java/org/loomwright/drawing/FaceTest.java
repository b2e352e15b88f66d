package org.loomwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class FaceTest {
  private static final View TURNED = new View(Side.MATING_SIDE, LatchDirection.DOWN);

  @Test
  void drawsTheFaceOnFile() throws IOException {
    String svg = draw(Housings.grid(2, 3), TURNED);

    try (InputStream golden = FaceTest.class.getResourceAsStream("face-mating-down.svg")) {
      assertThat(golden).isNotNull();
      assertThat(svg).isEqualTo(new String(golden.readAllBytes(), StandardCharsets.UTF_8).strip());
    }
    // Mirrored and turned by half a turn: what was top left is now bottom left.
    assertThat(numberAt(svg, "1").x()).isLessThan(numberAt(svg, "2").x());
    assertThat(numberAt(svg, "1").y()).isGreaterThan(numberAt(svg, "4").y());
  }

  @Test
  void marksByShapeAndWordsNotOnlyByShade() throws Exception {
    Document face = parse(draw(Housings.grid(2, 3), TURNED));

    assertThat(count(face, "polygon", "filled")).isEqualTo(2);
    assertThat(count(face, "polygon", "ring")).isEqualTo(1);
    assertThat(count(face, "polygon", "plugged")).isEqualTo(1);
    assertThat(count(face, "polygon", "free")).isEqualTo(3);
    assertThat(count(face, "rect", "wall")).isEqualTo(2);
    assertThat(face.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo(
            "test housing, mating side, latch down; filled by this kit: 2; closed with a cavity plug: 6; the one meant:"
                + " 4");
  }

  @Test
  void isTheSameWhereverItIsDrawn() {
    Locale before = Locale.getDefault();
    try {
      String first = draw(Housings.grid(3, 7), TURNED);
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(draw(Housings.grid(3, 7), TURNED)).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void keepsNumbersUprightAndSafe() throws Exception {
    Housing odd =
        Housings.housing(
            10, 10, false, false, java.util.List.of(Housings.cavity("<&\"1", 5, 5, 4, 4)));
    for (LatchDirection latch : LatchDirection.values()) {
      String svg =
          Face.svg(odd, new View(Side.WIRE_SIDE, latch), Map.of(), 60, 60, Lettering.text());
      assertThat(svg).doesNotContain("rotate").doesNotContain("transform");
      assertThat(parse(svg).getElementsByTagName("text").item(0).getTextContent())
          .isEqualTo("<&\"1");
    }
  }

  @Test
  void refusesAMarkOnACavityThatIsNotThere() {
    assertThatThrownBy(
            () ->
                Face.svg(
                    Housings.grid(1, 2),
                    TURNED,
                    Map.of("9", CavityMark.FILLED),
                    60,
                    60,
                    Lettering.text()))
        .hasMessageContaining("'9'");
  }

  private record At(double x, double y) {}

  private static At numberAt(String svg, String number) {
    try {
      NodeList texts = parse(svg).getElementsByTagName("text");
      for (int i = 0; i < texts.getLength(); i++) {
        Element text = (Element) texts.item(i);
        if (text.getTextContent().equals(number)) {
          return new At(
              Double.parseDouble(text.getAttribute("x")),
              Double.parseDouble(text.getAttribute("y")));
        }
      }
    } catch (Exception e) {
      throw new AssertionError("the picture is no XML", e);
    }
    throw new AssertionError("number " + number + " is not in the picture");
  }

  private static String draw(Housing housing, View view) {
    return Face.svg(
        housing,
        view,
        Map.of("2", CavityMark.FILLED, "4", CavityMark.SOUGHT, "6", CavityMark.PLUGGED),
        70,
        60,
        Lettering.text());
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static long count(Document document, String tag, String name) {
    NodeList nodes = document.getElementsByTagName(tag);
    long count = 0;
    for (int i = 0; i < nodes.getLength(); i++) {
      if (((Element) nodes.item(i)).getAttribute("class").equals(name)) {
        count++;
      }
    }
    return count;
  }
}
