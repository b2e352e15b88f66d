package org.loomwright.drawing.board;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is said and shown on a board beside its lines.
 *
 * @param ends what is drawn at an end, by the end's name
 * @param branches words after a branch's name and length, by the branch's name
 * @param notes lines for the foot of the board
 */
public record BoardWords(
    Map<String, Inset> ends, Map<String, String> branches, List<String> notes) {
  /** Nothing beside names and lengths. */
  public static final BoardWords NONE = of(Map.of());

  public BoardWords {
    ends = Collections.unmodifiableMap(new LinkedHashMap<>(ends));
    branches = Collections.unmodifiableMap(new LinkedHashMap<>(branches));
    notes = List.copyOf(notes);
  }

  /** Pictures at ends and no further words. */
  public static BoardWords of(Map<String, Inset> ends) {
    return new BoardWords(ends, Map.of(), List.of());
  }

  /**
   * What is drawn at an end, in mm from the upper left corner of its room.
   *
   * @param face SVG elements for the end's body; empty for a plain frame or symbol
   * @param table SVG elements for the table, which says the end's name; empty for a plain frame
   *     with the name
   */
  public record Inset(Optional<String> face, Optional<String> table) {}
}
