package org.loomwright.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.loomwright.drawing.Seen.Spot;

/**
 * The cavity that lies farthest to a side, or is the largest or smallest, where that is plain to
 * see. Needs no rows, so it serves irregular faces too.
 */
final class ExtremeWords {
  /** Centres must differ by this share of the smaller cavity. */
  private static final double CENTRE = 0.5;

  /** Edges must differ by this share of it, the same way. */
  private static final double EDGE = 0.25;

  /** The next in size has at most this share of the area, and no side that is longer. */
  private static final double SIZE = 1 / 1.5;

  private ExtremeWords() {}

  /** Words for the few cavities that are extreme. */
  static Map<String, Phrase> of(Seen seen) {
    Map<String, Phrase> words = new LinkedHashMap<>();
    side(seen, Spot::x, Spot::widthMm, "the leftmost of all", words);
    side(seen, it -> -it.x(), Spot::widthMm, "the rightmost of all", words);
    side(seen, Spot::y, Spot::heightMm, "the highest of all", words);
    side(seen, it -> -it.y(), Spot::heightMm, "the lowest of all", words);
    for (Spot it : seen.cavities()) {
      if (others(seen, it).allMatch(other -> isLarger(it, other))) {
        add(it, "the largest of all", words);
      }
      if (others(seen, it).allMatch(other -> isLarger(other, it))) {
        add(it, "the smallest of all", words);
      }
    }
    return words;
  }

  private static void side(
      Seen seen,
      ToDoubleFunction<Spot> at,
      ToDoubleFunction<Spot> extent,
      String text,
      Map<String, Phrase> words) {
    for (Spot it : seen.cavities()) {
      if (others(seen, it).allMatch(other -> isBefore(it, other, at, extent))) {
        add(it, text, words);
      }
    }
  }

  private static java.util.stream.Stream<Spot> others(Seen seen, Spot spot) {
    return seen.cavities().stream().filter(it -> it != spot);
  }

  private static boolean isBefore(
      Spot one, Spot other, ToDoubleFunction<Spot> at, ToDoubleFunction<Spot> extent) {
    double size = Math.min(extent.applyAsDouble(one), extent.applyAsDouble(other));
    double centres = at.applyAsDouble(other) - at.applyAsDouble(one);
    double edges = centres - (extent.applyAsDouble(other) - extent.applyAsDouble(one)) / 2;
    return centres >= CENTRE * size && edges >= EDGE * size;
  }

  private static boolean isLarger(Spot one, Spot other) {
    return other.widthMm() * other.heightMm() <= SIZE * one.widthMm() * one.heightMm()
        && Math.max(other.widthMm(), other.heightMm()) <= Math.max(one.widthMm(), one.heightMm())
        && Math.min(other.widthMm(), other.heightMm()) <= Math.min(one.widthMm(), one.heightMm());
  }

  private static void add(Spot spot, String text, Map<String, Phrase> words) {
    words.merge(
        spot.number(),
        Phrase.plain(text),
        (one, other) -> Phrase.SHORTER.compare(one, other) <= 0 ? one : other);
  }
}
