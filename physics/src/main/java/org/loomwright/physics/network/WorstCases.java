package org.loomwright.physics.network;

import java.math.BigInteger;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.physics.SumException;

/**
 * The worst figures over all load states and the supply range.
 *
 * @param lowestVoltage for each load the lowest voltage across it while it is on, V
 * @param highestCurrent for each element the current of largest magnitude, A, with its sign
 * @param tried how many states were solved
 * @param possible how many states there are, with each range at one of its two ends
 * @param unsolved states tried that have no operating point, in order of trying. If there is one,
 *     the figures speak for the other states only; those by superposition then are what constant
 *     currents would make, whatever the voltage
 */
public record WorstCases(
    Map<String, Worst> lowestVoltage,
    Map<String, Worst> highestCurrent,
    int tried,
    BigInteger possible,
    List<Unsolved> unsolved) {
  /** Copies, keeping the order. */
  public WorstCases {
    lowestVoltage = Collections.unmodifiableMap(new LinkedHashMap<>(lowestVoltage));
    highestCurrent = Collections.unmodifiableMap(new LinkedHashMap<>(highestCurrent));
    unsolved = List.copyOf(unsolved);
  }

  /** What a worst figure rests on. */
  public enum Basis {
    /** Proven: the network is linear, the shares of all loads and sources were added up. */
    SUPERPOSITION(true),
    /** Proven: nothing that is switched on or lowered can make this figure better. */
    MONOTONE(true),
    /**
     * Proven: every state was solved, or every set of switched resistors with the worst of the
     * other loads, and between the ends of a range nothing can be worse.
     */
    EXHAUSTIVE(true),
    /** Not proven: the worst of the states tried. */
    TRIED(false);

    private final boolean proven;

    Basis(boolean proven) {
      this.proven = proven;
    }

    /** Whether no state can be worse. */
    public boolean proven() {
      return proven;
    }
  }

  /**
   * @param value the figure
   * @param state the state that gives it
   * @param basis what that rests on
   */
  public record Worst(double value, LoadState state, Basis basis) {}

  /**
   * @param state a state
   * @param outcome why it has no operating point
   */
  public record Unsolved(LoadState state, NetworkOutcome outcome) {}

  /**
   * The lowest voltage at a load.
   *
   * @throws SumException if there is none: no such load, or no state tried has an operating point
   */
  public Worst lowestVoltageAt(String load) {
    return find(lowestVoltage, load);
  }

  /**
   * The highest current in an element.
   *
   * @throws SumException if there is none: no such element, or no state tried has an operating
   *     point
   */
  public Worst highestCurrentIn(String element) {
    return find(highestCurrent, element);
  }

  private static Worst find(Map<String, Worst> figures, String name) {
    Worst w = figures.get(name);
    if (w == null) {
      throw new SumException("no state solved has a figure for \"" + name + "\"");
    }
    return w;
  }

  /** How many states were tried and whether all figures are proven, in one sentence. */
  public String message() {
    long open =
        lowestVoltage.values().stream().filter(w -> !w.basis().proven()).count()
            + highestCurrent.values().stream().filter(w -> !w.basis().proven()).count();
    return tried
        + " of "
        + possible
        + " states tried; "
        + (open == 0 ? "all figures proven" : open + " figures are only the worst of those tried")
        + (unsolved.isEmpty() ? "" : "; " + unsolved.size() + " states have no operating point");
  }
}
