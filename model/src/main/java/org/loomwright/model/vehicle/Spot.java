package org.loomwright.model.vehicle;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;

/**
 * Where a factory wire ends, written as "cavity CONNECTOR NUMBER", "slot BLOCK SLOT", "ground
 * STUD", "unit NAME" (inside a control unit or consumer that nobody works on) or "loose PLACE"
 * (taped back).
 */
public sealed interface Spot {
  /** A numbered cavity of a connector. */
  record OfCavity(String connector, String cavity) implements Spot {
    @Override
    public String text() {
      return "cavity " + connector + " " + cavity;
    }
  }

  /** The load blade of a fuse slot. */
  record OfSlot(String block, String slot) implements Spot {
    @Override
    public String text() {
      return "slot " + block + " " + slot;
    }
  }

  /** A ground stud. */
  record OfGround(String ground) implements Spot {
    @Override
    public String text() {
      return "ground " + ground;
    }
  }

  /** A control unit or consumer that is not worked on. */
  record OfUnit(String unit) implements Spot {
    @Override
    public String text() {
      return "unit " + unit;
    }
  }

  /** A taped-back end at a place. */
  record Loose(String place) implements Spot {
    @Override
    public String text() {
      return "loose " + place;
    }
  }

  /** The spot as written in a document. */
  @JsonValue
  String text();

  /**
   * Reads a spot.
   *
   * @throws IllegalArgumentException when the text has none of these forms
   */
  @JsonCreator
  public static Spot of(String text) {
    String[] words = text.strip().split(" +", -1);
    if (words.length == 3 && words[0].equals("cavity")) {
      return new OfCavity(words[1], words[2]);
    }
    if (words.length == 3 && words[0].equals("slot")) {
      return new OfSlot(words[1], words[2]);
    }
    if (words.length == 2 && words[0].equals("ground")) {
      return new OfGround(words[1]);
    }
    if (words.length == 2 && words[0].equals("unit")) {
      return new OfUnit(words[1]);
    }
    if (words.length == 2 && words[0].equals("loose")) {
      return new Loose(words[1]);
    }
    throw new IllegalArgumentException(
        "'"
            + text
            + "' is no end of a wire; write 'cavity CONNECTOR NUMBER', 'slot BLOCK SLOT', 'ground"
            + " STUD', 'unit NAME' or 'loose PLACE'");
  }
}
