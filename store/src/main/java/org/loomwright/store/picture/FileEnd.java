package org.loomwright.store.picture;

import java.nio.ByteBuffer;

/** Tells files that were cut off, which decoders fill up with grey and take. */
final class FileEnd {
  private static final int IEND = 0x49454E44;

  private FileEnd() {}

  /** Whether a PNG file (ISO/IEC 15948) goes on to its last chunk. */
  static boolean isWholePng(byte[] bytes) {
    ByteBuffer file = ByteBuffer.wrap(bytes);
    int at = 8;
    while (at + 12 <= bytes.length) {
      int length = file.getInt(at);
      if (length < 0 || length > bytes.length - at - 12) {
        return false;
      }
      if (file.getInt(at + 4) == IEND) {
        return true;
      }
      at += 12 + length;
    }
    return false;
  }

  /** Whether a JPEG file (ISO/IEC 10918-1) has an end behind the start of its first scan. */
  static boolean isWholeJpeg(byte[] bytes) {
    ByteBuffer file = ByteBuffer.wrap(bytes);
    int at = 2;
    while (at + 4 <= bytes.length && (bytes[at] & 0xFF) == 0xFF) {
      int marker = bytes[at + 1] & 0xFF;
      if (marker == 0xFF) {
        at++;
        continue;
      }
      at += 2 + (file.getShort(at + 2) & 0xFFFF);
      if (marker == 0xDA) {
        for (; at + 1 < bytes.length; at++) {
          if ((bytes[at] & 0xFF) == 0xFF && (bytes[at + 1] & 0xFF) == 0xD9) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
