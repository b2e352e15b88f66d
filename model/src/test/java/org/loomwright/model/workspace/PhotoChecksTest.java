package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.kit.KitOrder;

class PhotoChecksTest {
  private static final String VAN = "alder-van.json";
  private static final String AT = "\"housing\": \"HS-4\",";

  /** The four cavities of HS-4, 10 mm by 6 mm apart, at 20 px for a mm. */
  private static final String FOUR =
      """
      {"cavity": "1", "x": 120, "y": 100}, {"cavity": "2", "x": 320, "y": 100},
      {"cavity": "3", "x": 120, "y": 220}, {"cavity": "4", "x": 320, "y": 220}""";

  /** A PNG of 440 × 320 px up to its size. */
  private static final byte[] PICTURE =
      HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452000001b8000001400800000000");

  @TempDir Path folder;

  @Test
  void pictureComesWithTheOrder() {
    Read read = read(photo("wire-side", FOUR), Map.of("face.png", PICTURE));
    Workspace workspace = Small.good(read).workspace();

    KitOrder order = ((KitOrders.Found) KitOrders.resolve(workspace, "fan-kit")).order();
    assertThat(order.pictures().find("face.png")).isPresent();
    assertThat(order.vehicle().connectors().get(0).photo().orElseThrow().points()).hasSize(4);
  }

  @Test
  void textsAloneNeedNoPicture() {
    Read read = WorkspaceReader.read(photo("wire-side", FOUR).texts());
    assertThat(Small.good(read).workspace().pictures().byName()).isEmpty();
  }

  @Test
  void cornersStandForCavities() {
    String corners =
        """
        {"corner": "top-left", "x": 0, "y": 0}, {"corner": "top-right", "x": 439, "y": 0},
        {"corner": "bottom-left", "x": 0, "y": 319}, {"cavity": "4", "x": 320, "y": 220}""";
    assertThat(Small.words(read(photo("wire-side", corners), Map.of("face.png", PICTURE))))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "x": 320, "y": 220 | "x": 440, "y": 220 | points[3]: the point lies outside the picture, which is 440 px wide and 320 px high
          "x": 320, "y": 220 | "x": 390, "y": 190 | points: the points bend the face more than a usable photo would; check that each point is the cavity it says, or take the photo more from the front
          "cavity": "4", "x": 320 | "cavity": "3", "x": 320 | points[3]: '3' is the point points[2] already; take another
          "cavity": "4", "x": 320 | "cavity": "5", "x": 320 | points[3]: housing 'HS-4' has no cavity '5'; its cavities are 1, 2, 3, 4
          "cavity": "4", "x": 320 | "corner": "top-left", "cavity": "4", "x": 320 | points[3]: a point is the centre of a cavity or a corner of the face: give 'cavity' or 'corner', and not both
          "wire-side", "points" | "mating-side", "points" | points: by its points the photo shows the wire side, but it is said to show the mating side; correct the side or the points
          "file": "face.png" | "file": "Face.png" | file: there is no picture 'Face.png'; put it into the folder of the documents, or write its name as it is there, capitals included
          """)
  void eachFaultIsNamed(String old, String now, String problem) {
    Small bad = photo("wire-side", FOUR).with(VAN, old, now);
    assertThat(Small.words(read(bad, Map.of("face.png", PICTURE))))
        .containsExactly("alder-van.json, connectors[0].photo." + problem);
  }

  @Test
  void pointsOnALineAndTooFewAreRefused() {
    String line =
        """
        {"cavity": "1", "x": 120, "y": 100}, {"cavity": "2", "x": 320, "y": 100},
        {"corner": "top-left", "x": 20, "y": 100}""";
    assertThat(Small.words(read(photo("wire-side", line), Map.of("face.png", PICTURE))))
        .singleElement()
        .asString()
        .contains("connectors[0].photo.points", "on one line");
    String two = "{\"cavity\": \"1\", \"x\": 1, \"y\": 1}";
    assertThat(Small.words(read(photo("wire-side", two), Map.of("face.png", PICTURE))))
        .singleElement()
        .asString()
        .contains("needs three points");
  }

  @Test
  void aPointThatTheOthersContradictIsNamed() {
    String six =
        FOUR
            + ", {\"corner\": \"top-left\", \"x\": 0, \"y\": 0},"
            + " {\"corner\": \"bottom-right\", \"x\": 300, \"y\": 310}";
    assertThat(Small.words(read(photo("wire-side", six), Map.of("face.png", PICTURE))))
        .singleElement()
        .asString()
        .contains("connectors[0].photo.points[", "don't fit together", "2.0 mm, is the most");
  }

  @Test
  void aPictureThatIsNoneIsRefused() {
    byte[] text = "not a picture".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    assertThat(Small.words(read(photo("wire-side", FOUR), Map.of("face.png", text))))
        .containsExactly(
            "alder-van.json, connectors[0].photo.file: 'face.png': the file is neither a PNG nor a"
                + " JPEG picture, whatever its name says; save it as one");
  }

  @Test
  void picturesAreFoundBesideTheDocumentsAndNowhereElse() throws IOException {
    for (NamedText text : photo("wire-side", FOUR).texts()) {
      Path file = folder.resolve("shop").resolve(text.name());
      Files.createDirectories(file.getParent());
      Files.writeString(file, text.text());
    }
    Files.write(folder.resolve("face.png"), PICTURE);
    assertThat(Small.words(WorkspaceReader.read(folder.resolve("shop"))))
        .singleElement()
        .asString()
        .contains("there is no picture 'face.png'");

    Files.write(folder.resolve("shop/face.png"), PICTURE);
    Read.Good good = Small.good(WorkspaceReader.read(folder.resolve("shop")));
    assertThat(good.workspace().pictures().byName()).containsOnlyKeys("face.png");

    Path van = folder.resolve("shop").resolve(VAN);
    Files.writeString(van, Files.readString(van).replace("face.png", "../face.png"));
    assertThat(Small.words(WorkspaceReader.read(folder.resolve("shop"))))
        .singleElement()
        .asString()
        .contains("there is no picture '../face.png'");
  }

  private static Small photo(String side, String points) {
    return Small.workspace()
        .with(
            VAN,
            AT,
            AT
                + " \"photo\": {\"file\": \"face.png\", \"side\": \""
                + side
                + "\", \"points\": ["
                + points
                + "]},");
  }

  private static Read read(Small small, Map<String, byte[]> pictures) {
    return WorkspaceReader.read(small.texts(), pictures);
  }
}
