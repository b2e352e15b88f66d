package org.loomwright.model.finding;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Optional;

/**
 * What of the vehicle a finding concerns, written as "place PLACE", "connector CONNECTOR", "cavity
 * CONNECTOR NUMBER", "block BLOCK", "slot BLOCK SLOT", "ground STUD", "circuit CIRCUIT" or "run
 * RUN".
 *
 * @param sort what sort of thing it is
 * @param id the place, connector, fuse block, ground stud, circuit or run
 * @param part number of the cavity, or the slot; absent for all else
 */
public record FoundAt(Sort sort, String id, Optional<String> part) {
  /** What a finding can concern. */
  public enum Sort {
    PLACE("place", false),
    CONNECTOR("connector", false),
    CAVITY("cavity", true),
    BLOCK("block", false),
    SLOT("slot", true),
    GROUND("ground", false),
    CIRCUIT("circuit", false),
    RUN("run", false);

    private final String word;
    private final boolean inside;

    Sort(String word, boolean inside) {
      this.word = word;
      this.inside = inside;
    }

    /** The word in the document. */
    public String word() {
      return word;
    }
  }

  public FoundAt {
    if (part.isPresent() != sort.inside) {
      throw new IllegalArgumentException(
          "a " + sort.word + (sort.inside ? " is a part of another thing" : " has no part"));
    }
  }

  /** A connector. */
  public static FoundAt connector(String id) {
    return new FoundAt(Sort.CONNECTOR, id, Optional.empty());
  }

  /** A fuse block. */
  public static FoundAt block(String id) {
    return new FoundAt(Sort.BLOCK, id, Optional.empty());
  }

  /** Whether it is this connector or fuse block, or a part of it. */
  public boolean isOn(String face) {
    return switch (sort) {
      case CONNECTOR, CAVITY, BLOCK, SLOT -> id.equals(face);
      case PLACE, GROUND, CIRCUIT, RUN -> false;
    };
  }

  /** As written in a document. */
  @JsonValue
  public String text() {
    return sort.word + " " + id + part.map(it -> " " + it).orElse("");
  }

  /**
   * Reads it.
   *
   * @throws IllegalArgumentException when the text has none of these forms
   */
  @JsonCreator
  public static FoundAt of(String text) {
    String[] words = text.strip().split(" +", -1);
    for (Sort sort : Sort.values()) {
      if (words[0].equals(sort.word) && words.length == (sort.inside ? 3 : 2)) {
        return new FoundAt(sort, words[1], sort.inside ? Optional.of(words[2]) : Optional.empty());
      }
    }
    throw new IllegalArgumentException(
        "'"
            + text
            + "' is nothing of a vehicle; write 'place PLACE', 'connector CONNECTOR', 'cavity"
            + " CONNECTOR NUMBER', 'block BLOCK', 'slot BLOCK SLOT', 'ground STUD', 'circuit"
            + " CIRCUIT' or 'run RUN'");
  }
}
