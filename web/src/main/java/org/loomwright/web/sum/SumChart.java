package org.loomwright.web.sum;

import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/**
 * The answer to a sum as a picture.
 *
 * @param markup the picture, safe to put into a page; empty when there is none
 * @param caption what it shows, or why there is none
 */
public record SumChart(String markup, String caption) {
  private static final double WIDE_MM = 150;
  private static final double NARROW_MM = 82;

  /** A picture for a desk and one for a phone. */
  static SumChart of(String caption, DoubleFunction<String> svg) {
    return new SumChart(
        "<div class=\"picture for-wide\">"
            + flexible(svg.apply(WIDE_MM))
            + "</div><div class=\"picture for-narrow\">"
            + flexible(svg.apply(NARROW_MM))
            + "</div>",
        caption);
  }

  /** The chart, or the reason why what was typed is beyond what it can show. */
  static SumChart orWhyNot(Supplier<SumChart> chart) {
    try {
      return chart.get();
    } catch (IllegalArgumentException beyond) {
      return new SumChart("", "There is no chart: " + beyond.getMessage() + ".");
    }
  }

  private static String flexible(String svg) {
    return svg.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\"");
  }
}
