package org.loomwright.model.picture;

import java.util.Arrays;
import java.util.Base64;

/** A picture as stored in its file. Nothing is decoded but its size. */
public final class Picture {
  /** Largest file taken, bytes: a pack with larger ones could not be sent. */
  public static final int LARGEST_BYTES = 8 * 1024 * 1024;

  private final byte[] bytes;
  private final PictureHeader header;

  private Picture(byte[] bytes, PictureHeader header) {
    this.bytes = bytes;
    this.header = header;
  }

  /**
   * A picture from the bytes of its file.
   *
   * @throws IllegalArgumentException when it is too large, neither PNG nor JPEG by its content, cut
   *     off, or stored turned; the message says what would be right
   */
  public static Picture of(byte[] bytes) {
    if (bytes.length > LARGEST_BYTES) {
      throw new IllegalArgumentException(
          "the picture has "
              + bytes.length
              + " bytes; "
              + LARGEST_BYTES
              + " (8 MB) are the most, so save it smaller");
    }
    return new Picture(bytes.clone(), PictureHeader.read(bytes));
  }

  /** Width, px. */
  public int widthPx() {
    return header.widthPx();
  }

  /** Height, px. */
  public int heightPx() {
    return header.heightPx();
  }

  /** The whole picture as the text of a data address, for use inside a page or drawing. */
  public String dataUri() {
    return "data:" + header.mediaType() + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Picture it && Arrays.equals(bytes, it.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return header.mediaType() + " " + widthPx() + " × " + heightPx();
  }
}
