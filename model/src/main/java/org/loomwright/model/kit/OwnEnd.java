package org.loomwright.model.kit;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;

/**
 * Where a lead of the user's own ends, written as "cavity CONNECTOR NUMBER", "pin EQUIPMENT PLUG
 * NUMBER", "ground STUD" or "loose PLACE" (capped, labelled and taped back). None of these makes it
 * live: what does, such as a slot of a fuse block, is a need's affair, with its fuse.
 */
public sealed interface OwnEnd {
  /** An empty cavity of a connector of the vehicle. */
  record OfCavity(String connector, String cavity) implements OwnEnd {
    @Override
    public String text() {
      return "cavity " + connector + " " + cavity;
    }
  }

  /** A cavity of the harness-side housing of an equipment plug that no need uses. */
  record OfPin(String equipment, String plug, String cavity) implements OwnEnd {
    @Override
    public String text() {
      return "pin " + equipment + " " + plug + " " + cavity;
    }
  }

  /** A ground stud. */
  record OfGround(String ground) implements OwnEnd {
    @Override
    public String text() {
      return "ground " + ground;
    }
  }

  /** A capped end at a place. */
  record Loose(String place) implements OwnEnd {
    @Override
    public String text() {
      return "loose " + place;
    }
  }

  /** The end as written in a document. */
  @JsonValue
  String text();

  /**
   * Reads an end.
   *
   * @throws IllegalArgumentException when the text has none of these forms
   */
  @JsonCreator
  static OwnEnd of(String text) {
    String[] words = text.strip().split(" +", -1);
    if (words.length == 3 && words[0].equals("cavity")) {
      return new OfCavity(words[1], words[2]);
    }
    if (words.length == 4 && words[0].equals("pin")) {
      return new OfPin(words[1], words[2], words[3]);
    }
    if (words.length == 2 && words[0].equals("ground")) {
      return new OfGround(words[1]);
    }
    if (words.length == 2 && words[0].equals("loose")) {
      return new Loose(words[1]);
    }
    throw new IllegalArgumentException(refusal(text, words[0]));
  }

  private static String refusal(String text, String first) {
    return switch (first) {
      case "slot" ->
          "'"
              + text
              + "' would make the lead live without a need and its fuse; write the need into the"
              + " equipment's document, and the planner finds its slot and fuse";
      case "circuit" ->
          "'"
              + text
              + "' would tie the lead to a wire of the vehicle without a need; write the need into"
              + " the equipment's document, and the planner finds the splice and its fuse";
      case "unit" ->
          "'"
              + text
              + "' is inside a unit that nobody works on; write the cavity of its connector,"
              + " 'cavity CONNECTOR NUMBER'";
      default ->
          "'"
              + text
              + "' is no end of a lead of your own; write 'cavity CONNECTOR NUMBER', 'pin EQUIPMENT"
              + " PLUG NUMBER', 'ground STUD' or 'loose PLACE'";
    };
  }
}
