package org.loomwright.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * How a result was reached: inputs, formulas, values between and the value itself, in the order of
 * reckoning. The last line is the result.
 *
 * @param lines the steps, first to last
 */
public record Trace(List<TraceLine> lines) {
  /** Copies the lines. */
  public Trace {
    lines = List.copyOf(lines);
  }

  /** Starts an empty trace. */
  public static Builder builder() {
    return new Builder();
  }

  /** Collects lines while a sum is being done; not shared between threads. */
  public static final class Builder {
    private final List<TraceLine> lines = new ArrayList<>();

    private Builder() {}

    /** Adds an input. */
    public Builder given(String what, double value, String unit) {
      lines.add(new TraceLine(what, "given", value, unit, ""));
      return this;
    }

    /** Adds a reckoned or looked-up value with its formula and source. */
    public Builder line(String what, String formula, double value, String unit, String source) {
      lines.add(new TraceLine(what, formula, value, unit, source));
      return this;
    }

    /** Adds all lines of a sum this one rests on. */
    public Builder addAll(Trace other) {
      lines.addAll(other.lines());
      return this;
    }

    /** The finished trace. */
    public Trace build() {
      return new Trace(lines);
    }
  }
}
