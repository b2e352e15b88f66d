package org.loomwright.store.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Recognises files that hold nothing but a picture: no notes, no place, no preview, no profile,
 * nothing behind the end. Those are kept byte for byte, so that taking a kept picture in again
 * changes nothing; a JPEG would lose a little each time it is written.
 */
final class BareForm {
  /** Chunks of ISO/IEC 15948 that carry the pixels. */
  private static final Set<String> PNG_CHUNKS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

  /** Frames and tables of ISO/IEC 10918-1 that a one-scan picture consists of. */
  private static final Set<Integer> JPEG_SEGMENTS = Set.of(0xC0, 0xC1, 0xC4, 0xDB, 0xDD);

  private static final int APP0 = 0xE0;
  private static final int START_OF_SCAN = 0xDA;
  private static final int END_OF_IMAGE = 0xD9;

  /** Length of a JFIF segment (ISO/IEC 10918-5) without a preview. */
  private static final int PLAIN_JFIF = 16;

  private BareForm() {}

  static boolean isBarePng(byte[] bytes) {
    ByteBuffer file = ByteBuffer.wrap(bytes);
    int at = 8;
    while (at + 12 <= bytes.length) {
      int length = file.getInt(at);
      String name = new String(bytes, at + 4, 4, StandardCharsets.US_ASCII);
      if (length < 0 || length > bytes.length - at - 12 || !PNG_CHUNKS.contains(name)) {
        return false;
      }
      at += 12 + length;
      if (name.equals("IEND")) {
        return length == 0 && at == bytes.length;
      }
    }
    return false;
  }

  static boolean isBareJpeg(byte[] bytes) {
    ByteBuffer file = ByteBuffer.wrap(bytes);
    int at = 2;
    while (at + 4 <= bytes.length && (bytes[at] & 0xFF) == 0xFF) {
      int marker = bytes[at + 1] & 0xFF;
      int length = file.getShort(at + 2) & 0xFFFF;
      boolean plain = marker == APP0 && length == PLAIN_JFIF || JPEG_SEGMENTS.contains(marker);
      at += 2 + length;
      if (marker == START_OF_SCAN) {
        return endsWithScan(bytes, at);
      }
      if (!plain || length < 2) {
        return false;
      }
    }
    return false;
  }

  /** Whether the scan is followed by the end of the picture and of the file. */
  private static boolean endsWithScan(byte[] bytes, int start) {
    for (int at = start; at + 1 < bytes.length; at++) {
      int next = bytes[at + 1] & 0xFF;
      boolean isMarker = (bytes[at] & 0xFF) == 0xFF && next != 0 && (next < 0xD0 || next > 0xD7);
      if (isMarker) {
        return next == END_OF_IMAGE && at + 2 == bytes.length;
      }
    }
    return false;
  }
}
