package org.loomwright.planner.kit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.vehicle.CircuitKind;

/**
 * Gives leads colours that tell them apart as far as the wire can be bought in enough colours.
 * Grounds are brown or black and nothing else is (common practice; DIN 72551 colours from memory).
 */
final class Colours {
  private final Map<Colour, Integer> used = new HashMap<>();

  /** Marks a colour as used. */
  void take(Colour colour) {
    used.merge(colour, 1, Integer::sum);
  }

  Colour next(CircuitKind kind, Wire wire) {
    List<Colour> all = wire.colours();
    List<Colour> fitting =
        all.stream().filter(it -> isGround(it) == (kind == CircuitKind.GROUND)).toList();
    List<Colour> choice = fitting.isEmpty() ? all : fitting;
    Colour next =
        choice.stream()
            .min(
                Comparator.comparingInt((Colour it) -> used.getOrDefault(it, 0))
                    .thenComparingInt(choice::indexOf))
            .orElseThrow(
                () -> new IllegalStateException("wire " + wire.id() + " has no colour on file"));
    take(next);
    return next;
  }

  private static boolean isGround(Colour colour) {
    return colour.base() == PlainColour.BROWN || colour.base() == PlainColour.BLACK;
  }
}
