package org.loomwright.model.design;

import java.util.Optional;
import org.loomwright.model.condition.Condition;

/**
 * A value that a step asks to be taken and written down: measured, tried or read out.
 *
 * @param id stable id, such as "rest-voltage" or "drop-feed/heater/main/1"
 * @param name what is read, short
 * @param kind what sort of value it is
 * @param unit unit a number is kept in: "V", "mV", "A", "mA", "Ω", "kΩ" or "MΩ"; absent for other
 *     kinds
 * @param band where a measured number has to lie; absent where any number will do, as for a value
 *     that is only compared later
 * @param compareWith id of the reading taken earlier that this one repeats at the end of the work
 * @param mostRise most that a number may lie above the one it is compared with, in the unit; absent
 *     where nothing is compared by number
 * @param when builds on which it is taken; decided by answers given before
 * @param words those builds for people who know the answers; empty for all that come to the step
 * @param outside what to do when the number lies outside, or the answer is no
 * @param source where the band comes from; empty without one
 */
public record Reading(
    String id,
    String name,
    ReadingKind kind,
    Optional<String> unit,
    Optional<Band> band,
    Optional<String> compareWith,
    Optional<Double> mostRise,
    Condition when,
    String words,
    String outside,
    String source) {
  public Reading {
    if (unit.isPresent() != (kind == ReadingKind.NUMBER)) {
      throw new IllegalArgumentException(
          "reading '" + id + "': numbers, and they alone, have units");
    }
    if (band.isPresent() && !band.map(Band::unit).equals(unit)) {
      throw new IllegalArgumentException("reading '" + id + "': its band has another unit");
    }
    if (mostRise.isPresent() && (compareWith.isEmpty() || unit.isEmpty())) {
      throw new IllegalArgumentException("reading '" + id + "': nothing to compare by number");
    }
  }
}
