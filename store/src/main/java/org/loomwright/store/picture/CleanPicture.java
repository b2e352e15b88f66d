package org.loomwright.store.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.loomwright.model.picture.Picture;

/** A PNG or JPEG picture, upright, with nothing in its file but the picture. */
public final class CleanPicture {
  /** Most pixels taken; more would not fit into the memory of a small computer. */
  public static final long MOST_PIXELS = 50_000_000;

  /** Between 0 and 1; at this one no loss is seen (common practice). */
  private static final float JPEG_QUALITY = 0.92f;

  private final byte[] bytes;
  private final String mediaType;
  private final int widthPx;
  private final int heightPx;

  private CleanPicture(byte[] bytes, String mediaType, int widthPx, int heightPx) {
    this.bytes = bytes;
    this.mediaType = mediaType;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /**
   * Decodes a picture, turns it upright as its camera noted, and writes it anew without all else in
   * the file. A file that holds nothing else is kept byte for byte.
   *
   * @throws IllegalArgumentException when it is neither PNG nor JPEG by its first bytes, too large,
   *     or damaged; the message says what would be right
   */
  public static CleanPicture of(byte[] file) {
    if (file.length > Picture.LARGEST_BYTES) {
      throw new IllegalArgumentException(tooLarge(file.length));
    }
    boolean png = starts(file, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A);
    if (!png && !starts(file, 0xFF, 0xD8, 0xFF)) {
      throw new IllegalArgumentException(
          "the file is neither a PNG nor a JPEG picture, whatever its name says; save it as one");
    }
    if (png ? !FileEnd.isWholePng(file) : !FileEnd.isWholeJpeg(file)) {
      throw new IllegalArgumentException("the picture is damaged or cut off; copy it again");
    }
    String format = png ? "png" : "jpeg";
    BufferedImage image = decoded(file, format);
    byte[] clean = file;
    if (png ? !BareForm.isBarePng(file) : !BareForm.isBareJpeg(file)) {
      image = Orientation.upright(image, png ? Orientation.UPRIGHT : Orientation.of(file));
      clean = encoded(image, format);
    }
    if (clean.length > Picture.LARGEST_BYTES) {
      throw new IllegalArgumentException(tooLarge(clean.length));
    }
    return new CleanPicture(clean, "image/" + format, image.getWidth(), image.getHeight());
  }

  /** The file. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** "image/png" or "image/jpeg". */
  public String mediaType() {
    return mediaType;
  }

  /** Width, px. */
  public int widthPx() {
    return widthPx;
  }

  /** Height, px. */
  public int heightPx() {
    return heightPx;
  }

  private static BufferedImage decoded(byte[] file, String format) {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
    ImageReader reader = readers.next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      reader.setInput(in, true, true);
      long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
      if (pixels > MOST_PIXELS) {
        throw new IllegalArgumentException(
            "the picture has "
                + reader.getWidth(0)
                + " × "
                + reader.getHeight(0)
                + " pixels; at most "
                + MOST_PIXELS
                + " in all are taken, so save it smaller");
      }
      return reader.read(0);
    } catch (IOException | IndexOutOfBoundsException | NegativeArraySizeException e) {
      // The readers of the platform report damage in all these ways.
      throw new IllegalArgumentException(
          "the picture can't be decoded ("
              + e.getMessage()
              + "); copy it again, or save it as a PNG or JPEG in RGB colours",
          e);
    } finally {
      reader.dispose();
    }
  }

  private static byte[] encoded(BufferedImage image, String format) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      if (format.equals("jpeg")) {
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(JPEG_QUALITY);
      }
      writer.write(null, new IIOImage(image, null, null), how);
    } catch (IOException e) {
      throw new IllegalStateException("writing a picture into memory", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static String tooLarge(int size) {
    return "the picture has "
        + size
        + " bytes; "
        + Picture.LARGEST_BYTES
        + " (8 MB) are the most, so save it smaller";
  }

  private static boolean starts(byte[] bytes, int... wanted) {
    for (int i = 0; i < wanted.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != wanted[i]) {
        return false;
      }
    }
    return true;
  }
}
