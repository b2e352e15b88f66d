package org.loomwright.papers.job;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** Pictures drawn anew, without transparency. */
final class OnWhite {
  private OnWhite() {}

  /** The picture on white in another size, in pixels. */
  static BufferedImage drawn(BufferedImage from, int width, int height) {
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = to.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(from, 0, 0, width, height, Color.WHITE, null);
    pen.dispose();
    return to;
  }
}
