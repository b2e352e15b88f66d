package org.loomwright.papers.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QrReaderTest {
  /** A picture of a code on a grey table, turned and shrunk or enlarged as by a camera. */
  private static BufferedImage photo(String text, double turn, int side, int noise)
      throws WriterException {
    BitMatrix code =
        new QRCodeWriter()
            .encode(
                text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"));
    BufferedImage photo = new BufferedImage(side, side * 4 / 3, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = photo.createGraphics();
    pen.setColor(new Color(150, 140, 130));
    pen.fillRect(0, 0, photo.getWidth(), photo.getHeight());
    pen.translate(photo.getWidth() / 2.0, photo.getHeight() / 2.0);
    pen.rotate(Math.toRadians(turn));
    double scale = side * 0.6 / code.getWidth();
    pen.scale(scale, scale);
    pen.translate(-code.getWidth() / 2.0, -code.getHeight() / 2.0);
    pen.setColor(new Color(225, 225, 215));
    pen.fillRect(0, 0, code.getWidth(), code.getHeight());
    pen.setColor(new Color(40, 40, 50));
    for (int y = 0; y < code.getHeight(); y++) {
      for (int x = 0; x < code.getWidth(); x++) {
        if (code.get(x, y)) {
          pen.fillRect(x, y, 1, 1);
        }
      }
    }
    pen.dispose();
    Random random = new Random(7);
    for (int y = 0; y < photo.getHeight(); y++) {
      for (int x = 0; noise > 0 && x < photo.getWidth(); x++) {
        Color it = new Color(photo.getRGB(x, y));
        int shift = random.nextInt(2 * noise + 1) - noise;
        photo.setRGB(
            x,
            y,
            new Color(
                    mixed(it.getRed(), shift),
                    mixed(it.getGreen(), shift),
                    mixed(it.getBlue(), shift))
                .getRGB());
      }
    }
    return photo;
  }

  private static int mixed(int value, int shift) {
    return Math.max(0, Math.min(255, value + shift));
  }

  private static byte[] file(BufferedImage picture, String form) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(picture, form, bytes);
    return bytes.toByteArray();
  }

  private static String long1() {
    StringBuilder text = new StringBuilder("{\"form\":\"loomwright guide record\"");
    for (int i = 0; i < 40; i++) {
      text.append(",\"reading-").append(i).append("\":\"").append(i * 7 % 50).append(".5 Ω\"");
    }
    return text.append('}').toString();
  }

  @ParameterizedTest
  @CsvSource({"0, 900, 0, png", "0, 3000, 20, jpeg", "90, 1200, 30, jpeg", "17, 1500, 10, png"})
  void aPhotoOfACodeIsRead(double turn, int side, int noise, String form) throws Exception {
    for (String text : new String[] {"kurz", "{\"é\":\"µ Ω 漢\"}", long1()}) {
      QrReader.Result read = QrReader.read(file(photo(text, turn, side, noise), form));
      assertThat(read).as("%s", text.length()).isEqualTo(new QrReader.Text(text));
    }
  }

  @Test
  void aPictureWithoutACodeIsSaidSo() throws Exception {
    BufferedImage plain = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
    assertThat(QrReader.read(file(plain, "png")))
        .isInstanceOfSatisfying(
            QrReader.Nothing.class,
            it -> assertThat(it.why()).contains("no code was found in the picture"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "hello", "%PDF-1.7", "GIF89a", "\u0089PNG\r\n"})
  void otherFilesAreRefusedInWords(String text) {
    assertThat(QrReader.read(text.getBytes(StandardCharsets.ISO_8859_1)))
        .isInstanceOfSatisfying(
            QrReader.Nothing.class,
            it -> assertThat(it.why()).isNotBlank().doesNotContain("xception"));
  }

  @Test
  void aPictureCutOffIsRefusedOrRead() throws Exception {
    byte[] whole = file(photo("kurz", 0, 600, 0), "png");
    for (int end = 0; end < whole.length; end += whole.length / 23) {
      QrReader.Result read = QrReader.read(Arrays.copyOf(whole, end));
      if (read instanceof QrReader.Text text) {
        assertThat(text.text()).isEqualTo("kurz");
      } else {
        assertThat(((QrReader.Nothing) read).why()).isNotBlank();
      }
    }
  }

  @Test
  void aPictureOfAMillionSidesIsRefusedUnread() throws Exception {
    byte[] bomb = file(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png");
    // Width and height stand in the first chunk.
    bomb[17] = 0x7f;
    bomb[21] = 0x7f;
    assertThat(QrReader.read(bomb)).isInstanceOf(QrReader.Nothing.class);
  }
}
