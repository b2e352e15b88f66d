package org.loomwright.physics.protection;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.loomwright.physics.Require;

/** How the opening band of a fuse gives a time, as formulas and words of a trace. */
final class OpeningWords {
  private static final MathContext CONSTANT = new MathContext(7);

  private OpeningWords() {}

  /**
   * How {@link Fuse#shortestOpeningS} comes about.
   *
   * @param name name of the trace's line that holds the multiple of the rating
   */
  static String shortest(Fuse fuse, double currentA, String name) {
    double multiple = currentA / fuse.ratingA();
    List<FuseGate> gates = fuse.gates();
    for (int i = 0; i < gates.size(); i++) {
      FuseGate upper = gates.get(i);
      if (multiple <= upper.multiple() * (1 + 1e-9)) {
        boolean line = i >= 2 && upper.minS() > 0;
        FuseGate lower = gates.get(Math.max(0, i - 1));
        return line && fuse.shortestOpeningS(currentA) > upper.minS()
            ? "t1 * (t2 / t1)^(ln("
                + name
                + " / M1) / ln(M2 / M1)), t1 = "
                + number(lower.minS())
                + " s, t2 = "
                + number(upper.minS())
                + " s, M1 = "
                + number(lower.multiple())
                + ", M2 = "
                + number(upper.multiple())
            : "table: stays closed "
                + number(upper.minS())
                + " s at up to "
                + number(upper.multiple())
                + " times the rating";
      }
    }
    return "table: none is given beyond "
        + number(gates.get(gates.size() - 1).multiple())
        + " times the rating";
  }

  /**
   * How {@link Fuse#longestOpeningS} comes about.
   *
   * @param name name of the trace's line that holds the current
   * @param rating name of the line that holds the rating
   */
  static String longest(Fuse fuse, double currentA, String name, String rating) {
    FuseGate last = fuse.gates().get(fuse.gates().size() - 1);
    double multiple = currentA / fuse.ratingA();
    if (multiple > last.multiple()) {
      return "t (M * "
          + rating
          + " / "
          + name
          + ")², t = "
          + number(last.maxS())
          + " s, M = "
          + number(last.multiple());
    }
    return fuse.gates().stream()
        .filter(g -> g.multiple() <= multiple * (1 + 1e-9) && Double.isFinite(g.maxS()))
        .reduce((a, b) -> b.maxS() <= a.maxS() ? b : a)
        .map(OpeningWords::step)
        .orElse("table: not sure to open; 100 h stand for this");
  }

  /** The latest opening at the step itself, and up to the next one. */
  static String step(FuseGate gate) {
    return "table: open within "
        + number(gate.maxS())
        + " s from "
        + number(gate.multiple())
        + " times the rating on";
  }

  static String number(double value) {
    return Require.text(new BigDecimal(value).round(CONSTANT).doubleValue());
  }
}
