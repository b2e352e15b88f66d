package org.loomwright.papers.job;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Reads the text of a QR code out of a photo or picture of it. */
public final class QrReader {
  /** Largest file looked at, bytes. */
  public static final int LARGEST_BYTES = 24 * 1024 * 1024;

  /** More than any camera of a phone takes; larger ones are refused unread. */
  private static final long MOST_PIXELS = 120_000_000L;

  /** A code is found surest where a module is a few pixels wide, so several sizes are tried. */
  private static final int[] SIDES_PX = {2400, 1600, 1000, 640, 400};

  private static final Map<DecodeHintType, Object> HINTS =
      Map.of(
          DecodeHintType.POSSIBLE_FORMATS,
          List.of(BarcodeFormat.QR_CODE),
          DecodeHintType.TRY_HARDER,
          Boolean.TRUE,
          DecodeHintType.ALSO_INVERTED,
          Boolean.TRUE,
          DecodeHintType.CHARACTER_SET,
          "UTF-8");

  private QrReader() {}

  /** What became of a picture. */
  public sealed interface Result {}

  /** The text of the code. */
  public record Text(String text) implements Result {}

  /**
   * No text was found.
   *
   * @param why why not, and what would help
   */
  public record Nothing(String why) implements Result {}

  /** Reads a PNG or JPEG file. */
  public static Result read(byte[] file) {
    if (file.length == 0) {
      return new Nothing("the file is empty; choose a photo or picture of the code");
    }
    if (file.length > LARGEST_BYTES) {
      return new Nothing(
          "the picture has more than "
              + LARGEST_BYTES / 1024 / 1024
              + " MB; take the photo smaller, or cut out the code");
    }
    Optional<BufferedImage> picture;
    try {
      picture = picture(file);
    } catch (IOException | RuntimeException e) {
      // The platform's readers throw what they like on damaged files.
      return new Nothing(
          "the picture is damaged or cut off; save it again, or take the photo anew");
    }
    if (picture.isEmpty()) {
      return new Nothing(
          "the file is neither a PNG nor a JPEG picture of a usual size; save it as one");
    }
    for (int side : SIDES_PX) {
      Optional<String> text = text(fitted(picture.get(), side));
      if (text.isPresent()) {
        return new Text(text.get());
      }
    }
    return new Nothing(
        "no code was found in the picture; take it straight from the front, sharp, evenly lit and"
            + " with the white border, or use the saved file instead");
  }

  private static Optional<BufferedImage> picture(byte[] file) throws IOException {
    try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        return Optional.empty();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        boolean usual =
            List.of("png", "jpeg")
                .contains(reader.getFormatName().toLowerCase(java.util.Locale.ROOT));
        if (!usual || pixels > MOST_PIXELS) {
          return Optional.empty();
        }
        ImageReadParam param = reader.getDefaultReadParam();
        int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
        int every = Math.max(1, longest / (2 * SIDES_PX[0]));
        param.setSourceSubsampling(every, every, 0, 0);
        return Optional.of(reader.read(0, param));
      } finally {
        reader.dispose();
      }
    }
  }

  /** The picture on white, its longer side at most some pixels. */
  private static BufferedImage fitted(BufferedImage picture, int side) {
    double scale = Math.min(1, (double) side / Math.max(picture.getWidth(), picture.getHeight()));
    int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
    return OnWhite.drawn(picture, width, height);
  }

  private static Optional<String> text(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    LuminanceSource source =
        new RGBLuminanceSource(width, height, picture.getRGB(0, 0, width, height, null, 0, width));
    return decoded(new BinaryBitmap(new HybridBinarizer(source)))
        .or(() -> decoded(new BinaryBitmap(new GlobalHistogramBinarizer(source))));
  }

  private static Optional<String> decoded(BinaryBitmap bits) {
    try {
      return Optional.of(new MultiFormatReader().decode(bits, HINTS).getText());
    } catch (NotFoundException e) {
      return Optional.empty();
    }
  }
}
