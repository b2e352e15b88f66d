package org.loomwright.store.picture;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a camera was held: the value of the tag Orientation (0x0112) of Exif, CIPA DC-008, "Tag
 * relating to image structure".
 */
final class Orientation {
  /** Stored as it is to be seen. */
  static final int UPRIGHT = 1;

  private static final int TAG = 0x0112;
  private static final int APP1 = 0xE1;
  private static final int START_OF_SCAN = 0xDA;

  private Orientation() {}

  /** The orientation noted in a JPEG file, 1 to 8; 1 when there is no readable note. */
  static int of(byte[] jpeg) {
    ByteBuffer bytes = ByteBuffer.wrap(jpeg);
    int at = 2;
    while (at + 4 <= jpeg.length && (jpeg[at] & 0xFF) == 0xFF) {
      int marker = jpeg[at + 1] & 0xFF;
      if (marker == 0xFF) {
        at++;
        continue;
      }
      int length = bytes.getShort(at + 2) & 0xFFFF;
      if (marker == START_OF_SCAN || length < 2) {
        return UPRIGHT;
      }
      if (marker == APP1 && at + 2 + length <= jpeg.length && startsExif(jpeg, at + 4)) {
        return ofTiff(bytes.slice(at + 10, Math.max(0, length - 8)));
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static boolean startsExif(byte[] jpeg, int at) {
    byte[] wanted = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    return at + wanted.length <= jpeg.length
        && java.util.Arrays.equals(jpeg, at, at + wanted.length, wanted, 0, wanted.length);
  }

  private static int ofTiff(ByteBuffer tiff) {
    if (tiff.capacity() < 8) {
      return UPRIGHT;
    }
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int table = tiff.getInt(4);
    if (table < 8 || table > tiff.capacity() - 2) {
      return UPRIGHT;
    }
    int entries = tiff.getShort(table) & 0xFFFF;
    for (int i = 0; i < entries && table + 14 + 12 * i <= tiff.capacity(); i++) {
      int entry = table + 2 + 12 * i;
      int value = tiff.getShort(entry + 8) & 0xFFFF;
      if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
        return value >= 1 && value <= 8 ? value : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /**
   * The picture as it is to be seen, as plain sRGB pixels of its own.
   *
   * @param orientation 1 to 8
   */
  static BufferedImage upright(BufferedImage image, int orientation) {
    int width = image.getWidth();
    int height = image.getHeight();
    boolean sideways = orientation >= 5;
    BufferedImage result =
        new BufferedImage(
            sideways ? height : width,
            sideways ? width : height,
            image.getColorModel().hasAlpha()
                ? BufferedImage.TYPE_INT_ARGB
                : BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      image.getRGB(0, y, width, 1, row, 0, width);
      if (orientation == UPRIGHT) {
        result.setRGB(0, y, width, 1, row, 0, width);
        continue;
      }
      for (int x = 0; x < width; x++) {
        // Odd ones of the pairs mirror; the rest is turning by quarters.
        int mirroredX = width - 1 - x;
        int mirroredY = height - 1 - y;
        switch (orientation) {
          case 2 -> result.setRGB(mirroredX, y, row[x]);
          case 3 -> result.setRGB(mirroredX, mirroredY, row[x]);
          case 4 -> result.setRGB(x, mirroredY, row[x]);
          case 5 -> result.setRGB(y, x, row[x]);
          case 6 -> result.setRGB(mirroredY, x, row[x]);
          case 7 -> result.setRGB(mirroredY, mirroredX, row[x]);
          default -> result.setRGB(y, mirroredX, row[x]);
        }
      }
    }
    return result;
  }
}
