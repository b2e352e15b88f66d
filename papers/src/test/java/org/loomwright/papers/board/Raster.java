package org.loomwright.papers.board;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A page as grey dots.
 *
 * @param dotsPerMm dots to a millimetre
 */
record Raster(BufferedImage image, double dotsPerMm) {
  /** Darker than this is ink. */
  private static final int INK = 170;

  /** A part of a page by the library's own renderer, mm from the upper left corner. */
  static Raster byLibrary(
      byte[] pdf, int page, int dpi, double xMm, double yMm, double wideMm, double highMm)
      throws IOException {
    double scale = dpi / 25.4;
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(wideMm * scale),
            (int) Math.ceil(highMm * scale),
            BufferedImage.TYPE_BYTE_GRAY);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Graphics2D graphics = image.createGraphics();
      graphics.setBackground(Color.WHITE);
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      graphics.translate(-xMm * scale, -yMm * scale);
      new PDFRenderer(document).renderPageToGraphics(page, graphics, dpi / 72f);
      graphics.dispose();
    }
    return new Raster(image, scale);
  }

  /** A part of a page by a renderer that knows nothing of the library. */
  static Raster byPoppler(
      byte[] pdf, int page, int dpi, double xMm, double yMm, double wideMm, double highMm)
      throws IOException, InterruptedException {
    double scale = dpi / 25.4;
    Path folder = Files.createTempDirectory("raster");
    try {
      Path file = folder.resolve("board.pdf");
      Files.write(file, pdf);
      Process process =
          new ProcessBuilder(
                  "pdftoppm",
                  "-png",
                  "-gray",
                  "-r",
                  Integer.toString(dpi),
                  "-f",
                  Integer.toString(page + 1),
                  "-l",
                  Integer.toString(page + 1),
                  "-x",
                  Long.toString(Math.round(xMm * scale)),
                  "-y",
                  Long.toString(Math.round(yMm * scale)),
                  "-W",
                  Integer.toString((int) Math.ceil(wideMm * scale)),
                  "-H",
                  Integer.toString((int) Math.ceil(highMm * scale)),
                  "-singlefile",
                  file.toString(),
                  folder.resolve("page").toString())
              .inheritIO()
              .start();
      if (process.waitFor() != 0) {
        throw new IOException("pdftoppm ended with " + process.exitValue());
      }
      return new Raster(ImageIO.read(folder.resolve("page.png").toFile()), scale);
    } finally {
      File[] files = folder.toFile().listFiles();
      for (File file : files == null ? new File[0] : files) {
        Files.delete(file.toPath());
      }
      Files.delete(folder);
    }
  }

  int width() {
    return image.getWidth();
  }

  int height() {
    return image.getHeight();
  }

  /** 0 for black to 255 for white; white beyond the edge. */
  int grey(int x, int y) {
    boolean isInside = x >= 0 && y >= 0 && x < width() && y < height();
    return isInside ? image.getRaster().getSample(x, y, 0) : 255;
  }

  boolean isInk(int x, int y) {
    return grey(x, y) < INK;
  }

  int dots(double mm) {
    return (int) Math.round(mm * dotsPerMm);
  }

  /** A spot, in dots. */
  record Dot(double x, double y) {}

  /**
   * Length of a ruler: finds a solid level line about 100 mm long with ticks at both ends, and
   * measures from tick to tick.
   */
  List<Double> rulersMm() {
    List<Double> found = new ArrayList<>();
    int lastY = -10;
    for (int y = 0; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        int end = x;
        while (end < width() && isInk(end, y)) {
          end++;
        }
        double mm = (end - x) / dotsPerMm;
        if (mm > 95 && mm < 105 && y > lastY + 3) {
          lastY = y;
          double first = tick(x, y);
          double last = tick(end, y);
          if (!Double.isNaN(first) && !Double.isNaN(last)) {
            found.add((last - first) / dotsPerMm);
          }
        }
        x = Math.max(x, end);
      }
    }
    return found;
  }

  /** Middle of the upright tick above a point, by the weight of its ink over a band of rows. */
  private double tick(int x, int y) {
    double weight = 0;
    double sum = 0;
    for (int row = y - dots(4.6); row <= y - dots(3.4); row++) {
      for (int column = x - dots(0.5); column <= x + dots(0.5); column++) {
        double ink = 255 - grey(column, row);
        weight += ink;
        sum += ink * (column + 0.5);
      }
    }
    return weight < 255 ? Double.NaN : sum / weight;
  }

  /** Crosses in a ring, found by their shape alone. */
  List<Dot> crosses() {
    List<Dot> found = new ArrayList<>();
    for (int y = dots(3); y < height() - dots(3); y++) {
      for (int x = dots(3); x < width() - dots(3); x++) {
        if (isInk(x, y) && isCross(x, y)) {
          Dot dot = new Dot(x + 0.5, y + 0.5);
          boolean isNew =
              found.stream()
                  .noneMatch(it -> Math.hypot(it.x() - dot.x(), it.y() - dot.y()) < dots(2));
          if (isNew) {
            found.add(middle(x, y));
          }
        }
      }
    }
    return found;
  }

  private boolean isCross(int x, int y) {
    for (int arm = 0; arm <= dots(2.7); arm++) {
      if (!isInk(x + arm, y) || !isInk(x - arm, y) || !isInk(x, y + arm) || !isInk(x, y - arm)) {
        return false;
      }
    }
    int ring = 0;
    int around = 0;
    for (int degrees = 22; degrees < 360; degrees += 45) {
      double dx = Math.cos(Math.toRadians(degrees));
      double dy = Math.sin(Math.toRadians(degrees));
      ring += isNear(x + 1.8 * dotsPerMm * dx, y + 1.8 * dotsPerMm * dy) ? 1 : 0;
      around += isNear(x + 1.15 * dotsPerMm * dx, y + 1.15 * dotsPerMm * dy) ? 1 : 0;
      around += isNear(x + 2.45 * dotsPerMm * dx, y + 2.45 * dotsPerMm * dy) ? 1 : 0;
    }
    return ring >= 7 && around <= 3;
  }

  private boolean isNear(double x, double y) {
    return isInk((int) Math.round(x), (int) Math.round(y));
  }

  /** The cross's middle to a part of a dot, by the weight of its arms. */
  private Dot middle(int x, int y) {
    double weightX = 0;
    double sumX = 0;
    double weightY = 0;
    double sumY = 0;
    int half = dots(0.5);
    for (int arm = dots(2.2); arm <= dots(2.7); arm++) {
      for (int side : new int[] {-1, 1}) {
        for (int off = -half; off <= half; off++) {
          double upright = 255 - grey(x + off, y + side * arm);
          weightX += upright;
          sumX += upright * (x + off + 0.5);
          double level = 255 - grey(x + side * arm, y + off);
          weightY += level;
          sumY += level * (y + off + 0.5);
        }
      }
    }
    return new Dot(sumX / weightX, sumY / weightY);
  }
}
