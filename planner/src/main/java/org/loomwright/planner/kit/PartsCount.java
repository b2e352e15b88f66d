package org.loomwright.planner.kit;

import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.design.Landing;

/** Counts parts by part number: pieces, and metres of wire or covering. */
final class PartsCount {
  private final Map<String, Double> pieces = new TreeMap<>();
  private final Map<String, Double> metres = new TreeMap<>();

  PartsCount piece(String part) {
    return pieces(part, 1);
  }

  PartsCount pieces(String part, int number) {
    pieces.merge(part, (double) number, Double::sum);
    return this;
  }

  PartsCount metres(String part, double amount) {
    metres.merge(part, amount, Double::sum);
    return this;
  }

  /** Counts what an end is made with. */
  PartsCount landing(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      piece(in.terminal());
      in.seal().ifPresent(this::piece);
    } else if (landing instanceof Landing.InHousing in) {
      piece(in.terminal());
      in.seal().ifPresent(this::piece);
    } else if (landing instanceof Landing.InSlot in) {
      piece(in.terminal());
    } else if (landing instanceof Landing.OnGround on) {
      piece(on.ring());
    } else if (landing instanceof Landing.IntoCircuit into) {
      piece(into.splice());
    } else if (landing instanceof Landing.Parked parked) {
      piece(parked.cap());
    }
    // A joint's splice is counted once with the joint, not with each lead that meets in it.
    return this;
  }

  PartsCount add(PartsCount other) {
    other.pieces.forEach((part, amount) -> pieces.merge(part, amount, Double::sum));
    other.metres.forEach((part, amount) -> metres.merge(part, amount, Double::sum));
    return this;
  }

  /** The most of each part that either asks for. */
  PartsCount most(PartsCount other) {
    other.pieces.forEach((part, amount) -> pieces.merge(part, amount, Math::max));
    other.metres.forEach((part, amount) -> metres.merge(part, amount, Math::max));
    return this;
  }

  Map<String, Double> pieces() {
    return pieces;
  }

  Map<String, Double> metres() {
    return metres;
  }
}
