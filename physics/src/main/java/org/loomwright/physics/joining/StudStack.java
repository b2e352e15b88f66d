package org.loomwright.physics.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/**
 * Order of lugs on a stud. Lugs of the factory stay where they are, next to the metal; of the added
 * ones the lug with the most current comes first, so that it passes through the fewest other lugs.
 * Of equal currents the thicker conductor comes first, then the name decides. Source: common
 * practice.
 */
public final class StudStack {
  private StudStack() {}

  /**
   * An added lug.
   *
   * @param name what it belongs to
   * @param areaMm2 conductor area, mm², above zero
   * @param currentA most continuous current, A, zero or more
   */
  public record Lug(String name, double areaMm2, double currentA) {
    /** Refuses values that no lug can have. */
    public Lug {
      Require.positive("conductor area of " + name, areaMm2, "mm²");
      Require.notNegative("current of " + name, currentA, "A");
    }
  }

  /**
   * @param outwards the added lugs, nearest to the metal first
   * @param total lugs on the stud, those already there included
   * @param trace the position of each, counted from the metal
   */
  public record Result(List<Lug> outwards, int total, Trace trace) {
    /** Copies the list. */
    public Result {
      outwards = List.copyOf(outwards);
    }
  }

  /**
   * Stacks lugs.
   *
   * @param there lugs already on the stud, zero or more
   */
  public static Result of(int there, List<Lug> added) {
    Require.notNegative("lugs already on the stud", there, "");
    List<Lug> outwards = new ArrayList<>(added);
    outwards.sort(
        Comparator.comparingDouble((Lug it) -> -it.currentA())
            .thenComparingDouble(it -> -it.areaMm2())
            .thenComparing(Lug::name));
    Trace.Builder trace = Trace.builder().given("lugs already there", there, "1");
    int position = there;
    for (Lug it : outwards) {
      position++;
      trace.line(
          "position of " + it.name() + ", counted from the metal",
          "most current first",
          position,
          "1",
          "common practice");
    }
    trace.line(
        "lugs on the stud", "lugs already there + " + outwards.size(), position, "lugs", "count");
    return new Result(outwards, position, trace.build());
  }

  /** The number of lugs held against what the stud may carry. */
  public static Check check(Result stack, int most, String source) {
    return Check.atMost(
        "lugs on the stud", stack.total(), most, "lugs", "at most " + most + " lugs", source);
  }
}
