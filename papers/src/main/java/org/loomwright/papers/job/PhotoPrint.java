package org.loomwright.papers.job;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.loomwright.model.picture.Picture;

/**
 * A photo as it goes on paper: small enough that a paper with many of them can be sent, and without
 * what else the file held.
 */
final class PhotoPrint {
  /** Enough for 84 mm at 300 dots per inch. */
  private static final int LONGEST_PX = 1000;

  private static final float QUALITY = 0.82f;

  private PhotoPrint() {}

  /**
   * The photo as markup.
   *
   * @param widthMm most it may be wide
   * @param heightMm most it may be high
   * @return empty when it can't be decoded
   */
  static Optional<String> markup(Picture picture, double widthMm, double heightMm) {
    String address = picture.dataUri();
    byte[] file = Base64.getDecoder().decode(address.substring(address.indexOf(',') + 1));
    try {
      BufferedImage photo = ImageIO.read(new ByteArrayInputStream(file));
      if (photo == null) {
        return Optional.empty();
      }
      BufferedImage small = small(photo);
      double scale = Math.min(widthMm / small.getWidth(), heightMm / small.getHeight());
      return Optional.of(
          String.format(
              Locale.ROOT,
              "<img src=\"data:image/jpeg;base64,%s\" style=\"width:%.1fmm;height:%.1fmm\" alt=\"\"/>",
              Base64.getEncoder().encodeToString(jpeg(small)),
              small.getWidth() * scale,
              small.getHeight() * scale));
    } catch (IOException | RuntimeException e) {
      // The platform's readers throw what they like on damaged files; the paper says it is missing.
      return Optional.empty();
    }
  }

  private static BufferedImage small(BufferedImage photo) {
    double scale = Math.min(1, (double) LONGEST_PX / Math.max(photo.getWidth(), photo.getHeight()));
    int width = Math.max(1, (int) Math.round(photo.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(photo.getHeight() * scale));
    BufferedImage from = photo;
    // Halving first keeps fine lines of large photos.
    while (from.getWidth() > 2 * width) {
      from = OnWhite.drawn(from, from.getWidth() / 2, Math.max(1, from.getHeight() / 2));
    }
    return OnWhite.drawn(from, width, height);
  }

  private static byte[] jpeg(BufferedImage photo) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(photo, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
