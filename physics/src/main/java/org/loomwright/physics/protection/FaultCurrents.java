package org.loomwright.physics.protection;

import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Conductor;

/** Smallest and largest current of a short circuit behind a fuse. */
public final class FaultCurrents {
  /** Largest fault current that the sums of protection take, A. */
  public static final double LARGEST_A = 100_000;

  private FaultCurrents() {}

  /**
   * @param lowestV lowest supply at which a fault must clear, V
   * @param highestV highest supply, V, not below the lowest
   * @param strongSourceOhm resistance of source and cable up to the fuse at its best: full warm
   *     battery, ohm, 0.0001 to 10, and so much that at most 100 000 A flow at the highest supply
   * @param weakSourceOhm the same at its worst: old cold battery, ohm, not below the best
   * @param conductor wire of feed and return
   * @param feedM from the fuse to the end of the line, m
   * @param returnM back in the same wire, m; 0 for a fault to the body
   * @param contactsOhm contacts, fuse and body on the way, ohm
   * @param hotC conductor at its hottest when the fault begins, °C
   */
  public record Loop(
      double lowestV,
      double highestV,
      double strongSourceOhm,
      double weakSourceOhm,
      Conductor conductor,
      double feedM,
      double returnM,
      double contactsOhm,
      double hotC) {
    /** Checks the ranges. */
    public Loop {
      Require.within("lowest supply", lowestV, 1, 1000, "V");
      Require.within("highest supply", highestV, lowestV, 1000, "V");
      Require.within("resistance of a strong source", strongSourceOhm, 1e-4, 10, "ohm");
      Require.within("resistance of a weak source", weakSourceOhm, strongSourceOhm, 10, "ohm");
      Require.within("length of the feed", feedM, 0, 1000, "m");
      Require.within("length of the return", returnM, 0, 1000, "m");
      Require.within("resistance of contacts", contactsOhm, 0, 10, "ohm");
      Require.within("hot conductor", hotC, -60, 400, "°C");
      Require.within(
          "fault near the source (highest supply over strong source)",
          highestV / strongSourceOhm,
          0,
          LARGEST_A,
          "A");
    }
  }

  /**
   * @param endOfLineA smallest: end of the line, hot wire, lowest supply, weak source, A
   * @param nearSourceA largest: right behind the fuse, highest supply, strong source, A
   * @param trace how they came about
   */
  public record Result(double endOfLineA, double nearSourceA, Trace trace) {}

  /** Imin = Vmin / (Rweak + Rcontacts + r(hot) L), Imax = Vmax / Rstrong. */
  public static Result of(Loop loop) {
    double lengthM = loop.feedM() + loop.returnM();
    double wireOhm = loop.conductor().resistanceOhmPerM(loop.hotC()) * lengthM;
    double smallest = loop.lowestV() / (loop.weakSourceOhm() + loop.contactsOhm() + wireOhm);
    double largest = loop.highestV() / loop.strongSourceOhm();
    Trace trace =
        Trace.builder()
            .given("lowest supply", loop.lowestV(), "V")
            .given("highest supply", loop.highestV(), "V")
            .given("weak source", loop.weakSourceOhm(), "ohm")
            .given("strong source", loop.strongSourceOhm(), "ohm")
            .given("contacts on the way", loop.contactsOhm(), "ohm")
            .given("length there and back", lengthM, "m")
            .line(
                "wire, hot",
                "r20 * (234.5 + T) / 254.5 * length",
                wireOhm,
                "ohm",
                loop.conductor().source())
            .line(
                "fault at the end of the line",
                "Vmin / (Rweak + Rcontacts + Rwire)",
                smallest,
                "A",
                "Ohm's law")
            .line("fault near the source", "Vmax / Rstrong", largest, "A", "Ohm's law")
            .build();
    return new Result(smallest, largest, trace);
  }
}
