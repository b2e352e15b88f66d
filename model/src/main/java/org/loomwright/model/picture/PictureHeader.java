package org.loomwright.model.picture;

/**
 * What the first bytes of a picture say.
 *
 * @param mediaType "image/png" or "image/jpeg"
 * @param widthPx width, px
 * @param heightPx height, px
 */
record PictureHeader(String mediaType, int widthPx, int heightPx) {
  private static final int[] PNG = {0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};
  private static final int[] JPEG = {0xFF, 0xD8, 0xFF};
  private static final int[] EXIF = {'E', 'x', 'i', 'f', 0, 0};
  private static final int[] LITTLE_ENDIAN = {'I', 'I'};
  private static final int ORIENTATION = 0x0112;
  private static final int UPRIGHT = 1;

  PictureHeader {
    if (widthPx < 1 || heightPx < 1) {
      throw cutOff();
    }
  }

  /**
   * Reads the head of a PNG (ISO/IEC 15948) or JPEG (ISO/IEC 10918-1) file.
   *
   * @throws IllegalArgumentException when it is neither, is cut off, or is stored turned
   */
  static PictureHeader read(byte[] bytes) {
    if (starts(bytes, 0, PNG)) {
      // The first chunk is the header: length, name, width, height.
      return new PictureHeader("image/png", number(bytes, 16, 4), number(bytes, 20, 4));
    }
    if (starts(bytes, 0, JPEG)) {
      return jpeg(bytes);
    }
    throw new IllegalArgumentException(
        "the file is neither a PNG nor a JPEG picture, whatever its name says; save it as one");
  }

  private static PictureHeader jpeg(byte[] bytes) {
    int at = 2;
    while (true) {
      while (number(bytes, at, 1) == 0xFF && number(bytes, at + 1, 1) == 0xFF) {
        at++;
      }
      int marker = number(bytes, at + 1, 1);
      int length = number(bytes, at + 2, 2);
      if (number(bytes, at, 1) != 0xFF || length < 2) {
        throw cutOff();
      }
      if (isFrame(marker)) {
        return new PictureHeader("image/jpeg", number(bytes, at + 7, 2), number(bytes, at + 5, 2));
      }
      if (marker == 0xE1 && starts(bytes, at + 4, EXIF)) {
        upright(bytes, at + 10);
      }
      at += 2 + length;
    }
  }

  /** Markers of a frame's header; the three left out are tables. */
  private static boolean isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
  }

  /**
   * Refuses a picture that viewers turn and others don't: its pixels would not be where they seem.
   */
  private static void upright(byte[] bytes, int start) {
    boolean little = starts(bytes, start, LITTLE_ENDIAN);
    int table = start + number(bytes, start + 4, 4, little);
    int entries = number(bytes, table, 2, little);
    for (int i = 0; i < entries; i++) {
      int entry = table + 2 + 12 * i;
      if (number(bytes, entry, 2, little) == ORIENTATION
          && number(bytes, entry + 8, 2, little) > UPRIGHT) {
        throw new IllegalArgumentException(
            "the picture is stored turned with a note that viewers should turn it back; open it in"
                + " a picture program, save it upright, and count the pixels there");
      }
    }
  }

  private static boolean starts(byte[] bytes, int at, int[] wanted) {
    if (bytes.length < at + wanted.length) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if ((bytes[at + i] & 0xFF) != wanted[i]) {
        return false;
      }
    }
    return true;
  }

  private static int number(byte[] bytes, int at, int size) {
    return number(bytes, at, size, false);
  }

  private static int number(byte[] bytes, int at, int size, boolean little) {
    if (at < 0 || at > bytes.length - size) {
      throw cutOff();
    }
    int number = 0;
    for (int i = 0; i < size; i++) {
      number = number << 8 | bytes[little ? at + size - 1 - i : at + i] & 0xFF;
    }
    return number;
  }

  private static IllegalArgumentException cutOff() {
    return new IllegalArgumentException("the picture is damaged or cut off; copy it again");
  }
}
