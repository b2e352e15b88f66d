package org.loomwright.drawing.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import javax.imageio.ImageIO;

/**
 * Draws the stand-in for a photo of the demo's rear fuse block: its wire side, held a little turned
 * and tilted, so that the marks of the pack have something to be laid on. Arguments: file to write.
 */
public final class RearBlockPhoto {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 600;
  private static final double FACE_WIDTH = 50;
  private static final double FACE_HEIGHT = 56;
  private static final double[] COLUMNS = {8, 19, 30, 41};
  private static final double[] ROWS = {10, 28, 46};
  private static final Set<Integer> WIRED = Set.of(1, 2, 5, 11);
  private static final Set<Integer> WITHOUT_METAL = Set.of(4, 6, 12);
  private static final int SHADES = 48;

  private RearBlockPhoto() {}

  /** Writes the picture and prints the pixels of its reference points. */
  public static void main(String[] args) throws IOException {
    BufferedImage image =
        new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_INDEXED, greys());
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_DITHERING, RenderingHints.VALUE_DITHER_DISABLE);
    draw(pen);
    pen.dispose();
    ImageIO.write(image, "png", Path.of(args[0]).toFile());
    System.out.println("F1 " + pixel(8, 10) + ", F4 " + pixel(41, 10));
    System.out.println("F9 " + pixel(8, 46) + ", F12 " + pixel(41, 46));
    System.out.println("F6 " + pixel(19, 28));
  }

  private static void draw(Graphics2D pen) {
    pen.setPaint(new GradientPaint(0, 0, grey(176), WIDTH, HEIGHT, grey(132)));
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    fill(pen, grey(96), box(1.5, 2, FACE_WIDTH + 4, FACE_HEIGHT + 4));
    fill(pen, grey(40), box(-1.5, -1.5, FACE_WIDTH + 1.5, FACE_HEIGHT + 1.5));
    // The latch at the top.
    fill(pen, grey(52), box(15, -4.5, 35, -1));
    fill(pen, grey(70), box(16, -4, 34, -3));
    pen.setPaint(
        new GradientPaint(
            (float) u(0, 0),
            (float) v(0, 0),
            grey(86),
            (float) u(50, 56),
            (float) v(50, 56),
            grey(58)));
    pen.fill(box(0, 0, FACE_WIDTH, FACE_HEIGHT));
    // Ribs between the rows.
    for (double y : new double[] {19, 37}) {
      fill(pen, grey(100), box(3, y - 0.6, 47, y));
      fill(pen, grey(44), box(3, y, 47, y + 0.5));
    }
    int slot = 1;
    for (double y : ROWS) {
      for (double x : COLUMNS) {
        cavity(pen, x, y, slot++);
      }
    }
  }

  private static void cavity(Graphics2D pen, double x, double y, int slot) {
    fill(pen, grey(104), box(x - 3.9, y - 3.4, x + 3.9, y + 3.4));
    fill(pen, grey(48), box(x - 3.5, y - 3, x + 3.5, y + 3));
    fill(pen, grey(14), box(x - 3.1, y - 2.6, x + 3.5, y + 3));
    if (!WITHOUT_METAL.contains(slot)) {
      fill(pen, grey(150), box(x - 2.2, y - 1.6, x - 1.5, y + 1.9));
      fill(pen, grey(122), box(x + 1.5, y - 1.6, x + 2.2, y + 1.9));
    }
    if (WIRED.contains(slot)) {
      // A factory wire in the load side.
      fill(pen, grey(slot % 2 == 0 ? 198 : 20), box(x - 1.2, y - 1.5, x + 1.2, y + 1.6));
      pen.setStroke(new BasicStroke(2));
      pen.setColor(grey(226));
      pen.draw(box(x - 1.2, y - 1.5, x + 1.2, y + 1.6));
    }
  }

  private static void fill(Graphics2D pen, Color colour, Path2D area) {
    pen.setPaint(colour);
    pen.fill(area);
  }

  private static Path2D box(double left, double top, double right, double bottom) {
    Path2D path = new Path2D.Double();
    path.moveTo(u(left, top), v(left, top));
    path.lineTo(u(right, top), v(right, top));
    path.lineTo(u(right, bottom), v(right, bottom));
    path.lineTo(u(left, bottom), v(left, bottom));
    path.closePath();
    return path;
  }

  // A plane turned by 7 degrees and tilted, seen by a camera without distortion.
  private static double depth(double x, double y) {
    return 1 + 0.0035 * (x - 25) - 0.0028 * (y - 28);
  }

  private static double u(double x, double y) {
    return 320 + 8.6 * (0.9925 * (x - 25) - 0.1219 * (y - 28)) / depth(x, y);
  }

  private static double v(double x, double y) {
    return 306 + 8.6 * (0.1219 * (x - 25) + 0.9925 * (y - 28)) / depth(x, y);
  }

  private static String pixel(double x, double y) {
    return Math.round(u(x, y)) + " " + Math.round(v(x, y));
  }

  private static Color grey(int shade) {
    int nearest = (int) Math.round(shade * (SHADES - 1) / 255.0) * 255 / (SHADES - 1);
    return new Color(nearest, nearest, nearest);
  }

  private static IndexColorModel greys() {
    byte[] shades = new byte[SHADES];
    for (int i = 0; i < SHADES; i++) {
      shades[i] = (byte) (i * 255 / (SHADES - 1));
    }
    return new IndexColorModel(8, SHADES, shades, shades, shades);
  }
}
