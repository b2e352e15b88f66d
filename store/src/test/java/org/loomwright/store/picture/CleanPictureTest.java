package org.loomwright.store.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.picture.Picture;

/** What is kept of a picture, and what is not. */
class CleanPictureTest {
  private static final int RED = 0xFFFF0000;
  private static final int GREEN = 0xFF00FF00;
  private static final int BLUE = 0xFF0000FF;
  private static final int WHITE = 0xFFFFFFFF;
  private static final String PLACE = "N 48 51.5 E 2 17.7";

  /**
   * A picture with red top left, green top right, blue bottom left, white bottom right, turned as
   * its camera held it. Which corner is first: CIPA DC-008, tag Orientation ("the 0th row is at the
   * visual top, the 0th column at the visual left" and so on).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 32, 16, RGBW", "2, 32, 16, GRWB", "3, 32, 16, WBGR", "4, 32, 16, BWRG",
    "5, 16, 32, RBGW", "6, 16, 32, BRWG", "7, 16, 32, WGBR", "8, 16, 32, GWRB"
  })
  void aTurnedPhotoIsKeptUpright(int orientation, int width, int height, String corners)
      throws IOException {
    for (ByteOrder order : new ByteOrder[] {ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN}) {
      byte[] photo = withExif(jpeg(corners()), orientation, order);
      CleanPicture clean = CleanPicture.of(photo);
      assertThat(clean.widthPx()).isEqualTo(width);
      assertThat(clean.heightPx()).isEqualTo(height);
      BufferedImage seen = ImageIO.read(new ByteArrayInputStream(clean.bytes()));
      String found =
          letter(seen.getRGB(2, 2))
              + letter(seen.getRGB(width - 3, 2))
              + letter(seen.getRGB(2, height - 3))
              + letter(seen.getRGB(width - 3, height - 3));
      assertThat(found).isEqualTo(corners);
    }
  }

  @Test
  void whereAPhotoWasTakenIsGone() throws IOException {
    byte[] photo = withExif(jpeg(corners()), 1, ByteOrder.BIG_ENDIAN);
    assertThat(text(photo)).contains(PLACE).contains("Exif");
    byte[] clean = CleanPicture.of(photo).bytes();
    assertThat(text(clean)).doesNotContain(PLACE).doesNotContain("Exif");

    byte[] png = withTextChunk(encode(corners(), "png"));
    assertThat(text(png)).contains(PLACE);
    CleanPicture cleanPng = CleanPicture.of(png);
    assertThat(text(cleanPng.bytes())).doesNotContain(PLACE);
    BufferedImage kept = ImageIO.read(new ByteArrayInputStream(cleanPng.bytes()));
    assertThat(kept.getRGB(0, 0)).isEqualTo(RED);
    assertThat(kept.getRGB(31, 15)).isEqualTo(WHITE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void whatIsHiddenBehindTheEndIsGone(String format) throws IOException {
    byte[] plain = encode(corners(), format);
    byte[] tailed = concat(plain, PLACE.getBytes(StandardCharsets.US_ASCII));
    assertThat(text(CleanPicture.of(tailed).bytes())).doesNotContain(PLACE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void takingAKeptPictureInAgainChangesNothing(String format) throws IOException {
    byte[] file = concat(encode(corners(), format), new byte[] {1});
    CleanPicture once = CleanPicture.of(file);
    assertThat(once.bytes()).isNotEqualTo(file);
    assertThat(CleanPicture.of(once.bytes()).bytes()).isEqualTo(once.bytes());
    assertThat(once.mediaType()).isEqualTo("image/" + format);
    // The workspace's reader takes what is kept.
    assertThat(Picture.of(once.bytes()).widthPx()).isEqualTo(32);
  }

  @Test
  void whatIsNoPictureIsRefused() throws IOException {
    assertThatThrownBy(() -> CleanPicture.of("<svg/>".getBytes(StandardCharsets.US_ASCII)))
        .hasMessageStartingWith("the file is neither a PNG nor a JPEG picture");
    assertThatThrownBy(() -> CleanPicture.of(encode(corners(), "gif")))
        .hasMessageStartingWith("the file is neither a PNG nor a JPEG picture");
    for (String format : new String[] {"png", "jpeg"}) {
      byte[] whole = encode(corners(), format);
      for (int length = 8; length < whole.length; length++) {
        byte[] cut = java.util.Arrays.copyOf(whole, length);
        assertThatThrownBy(() -> CleanPicture.of(cut))
            .hasMessage("the picture is damaged or cut off; copy it again");
      }
    }
    byte[] broken = encode(corners(), "png");
    java.util.Arrays.fill(broken, 41, broken.length - 12 - 8, (byte) 7);
    assertThatThrownBy(() -> CleanPicture.of(broken))
        .hasMessageStartingWith("the picture can't be decoded");
    byte[] large = new byte[Picture.LARGEST_BYTES + 1];
    assertThatThrownBy(() -> CleanPicture.of(large)).hasMessageContaining("(8 MB) are the most");
  }

  /** A small file may unpack to more than the memory holds. */
  @Test
  void aPictureOfTooManyPixelsIsRefusedBeforeItIsDecoded() throws IOException {
    byte[] png = encode(corners(), "png");
    ByteBuffer.wrap(png).putInt(16, 60_000).putInt(20, 60_000);
    java.util.zip.CRC32 sum = new java.util.zip.CRC32();
    sum.update(png, 12, 17);
    ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
    assertThatThrownBy(() -> CleanPicture.of(png))
        .hasMessageStartingWith("the picture has 60000 × 60000 pixels; at most 50000000");
  }

  private static BufferedImage corners() {
    BufferedImage image = new BufferedImage(32, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 32; x++) {
      for (int y = 0; y < 16; y++) {
        image.setRGB(x, y, y < 8 ? (x < 16 ? RED : GREEN) : (x < 16 ? BLUE : WHITE));
      }
    }
    return image;
  }

  private static String letter(int colour) {
    boolean red = (colour >> 16 & 0xFF) > 128;
    boolean green = (colour >> 8 & 0xFF) > 128;
    boolean blue = (colour & 0xFF) > 128;
    return red && green && blue ? "W" : red ? "R" : green ? "G" : blue ? "B" : "?";
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    return encode(image, "jpeg");
  }

  private static byte[] encode(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, out)).isTrue();
    return out.toByteArray();
  }

  /** An Exif segment with one entry, and a text behind it as a note of the place. */
  private static byte[] withExif(byte[] jpeg, int orientation, ByteOrder order) {
    byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
    ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 12 + 4 + place.length).order(order);
    tiff.put(order == ByteOrder.BIG_ENDIAN ? new byte[] {'M', 'M'} : new byte[] {'I', 'I'});
    tiff.putShort((short) 42).putInt(8).putShort((short) 1);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0).putInt(0).put(place);
    byte[] head = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer segment = ByteBuffer.allocate(4 + head.length + tiff.capacity());
    segment.put((byte) 0xFF).put((byte) 0xE1);
    segment.putShort((short) (2 + head.length + tiff.capacity())).put(head).put(tiff.array());
    byte[] start = java.util.Arrays.copyOf(jpeg, 2);
    byte[] rest = java.util.Arrays.copyOfRange(jpeg, 2, jpeg.length);
    return concat(concat(start, segment.array()), rest);
  }

  private static byte[] withTextChunk(byte[] png) {
    byte[] said = ("Comment\0" + PLACE).getBytes(StandardCharsets.US_ASCII);
    ByteBuffer chunk = ByteBuffer.allocate(12 + said.length);
    chunk.putInt(said.length).put("tEXt".getBytes(StandardCharsets.US_ASCII)).put(said);
    java.util.zip.CRC32 sum = new java.util.zip.CRC32();
    sum.update(chunk.array(), 4, 4 + said.length);
    chunk.putInt((int) sum.getValue());
    // Behind the header: 8 bytes of magic, 25 of IHDR.
    byte[] start = java.util.Arrays.copyOf(png, 33);
    byte[] rest = java.util.Arrays.copyOfRange(png, 33, png.length);
    return concat(concat(start, chunk.array()), rest);
  }

  private static byte[] concat(byte[] one, byte[] two) {
    return ByteBuffer.allocate(one.length + two.length).put(one).put(two).array();
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
