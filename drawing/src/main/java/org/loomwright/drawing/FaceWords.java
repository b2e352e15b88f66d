package org.loomwright.drawing;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.View;

/**
 * Where a cavity is, in words for exactly one view. The words fit one cavity of the housing only,
 * and are the shortest of their forms that do: fewest words, then least to count, then fewest
 * letters.
 *
 * <p>Forms: row and place in it ("top row, third from the left"; "alone" when it is the only one),
 * column and place in it, the place alone where there is a single row or column, "top left corner",
 * "the leftmost of all" and its like, "the largest of all"; in a round face with rings the hour,
 * with the ring where the hour alone would not do ("at 2 o'clock, outer ring"), "in the middle",
 * and the count clockwise where hours are too coarse. Every position that is seen is counted, those
 * that are blocked or moulded closed too: a person who counts holes counts them. When none of the
 * forms is plain to see, the moulded number is all that is said: nothing is better than a wrong
 * direction.
 */
public final class FaceWords {
  private FaceWords() {}

  /**
   * The position of a cavity, e.g. "second row from the top, third from the right".
   *
   * @throws IllegalArgumentException when the housing has no such cavity
   */
  public static String position(Housing housing, View view, String cavity) {
    Seen seen = Seen.of(housing, view);
    seen.spot(cavity);
    return all(housing, seen).getOrDefault(cavity, byNumber(cavity));
  }

  /** The position of every cavity in the view, in the housing's order. */
  public static Map<String, String> positions(Housing housing, View view) {
    Seen seen = Seen.of(housing, view);
    return all(housing, seen);
  }

  /**
   * View and position, e.g. "looking at the wire side, latch down: top left corner".
   *
   * @throws IllegalArgumentException when the housing has no such cavity
   */
  public static String sentence(Housing housing, View view, String cavity) {
    return "looking at the " + view(housing, view) + ": " + position(housing, view, cavity);
  }

  /** The view in words, e.g. "wire side, latch down". */
  public static String view(Housing housing, View view) {
    return view.side().words()
        + ", "
        + (housing.latch() ? "latch " : "key ")
        + view.latch().name().toLowerCase(Locale.ROOT);
  }

  private static Map<String, String> all(Housing housing, Seen seen) {
    Map<String, String> words = new LinkedHashMap<>();
    if (seen.cavities().size() == 1) {
      words.put(seen.cavities().get(0).number(), "the only cavity");
      return words;
    }
    List<Map<String, Phrase>> kinds = kinds(housing, seen);
    for (Seen.Spot spot : seen.cavities()) {
      words.put(
          spot.number(),
          kinds.stream()
              .flatMap(kind -> Optional.ofNullable(kind.get(spot.number())).stream())
              .min(Phrase.SHORTER)
              .map(Phrase::text)
              .orElseGet(() -> byNumber(spot.number())));
    }
    // Two cavities on one spot, or a number moulded twice, must never share their words.
    if (new HashSet<>(words.values()).size() < seen.cavities().size()) {
      words.replaceAll((number, phrase) -> byNumber(number));
    }
    return words;
  }

  /** Right phrases by kind; each kind names a cavity once at most, and no two alike. */
  private static List<Map<String, Phrase>> kinds(Housing housing, Seen seen) {
    Map<String, Phrase> clock = housing.round() ? ClockWords.of(seen) : Map.of();
    // In a round face the clock is what people use; rows only when there are no rings.
    return clock.isEmpty()
        ? List.of(
            GridWords.byRow(seen),
            GridWords.byColumn(seen),
            GridWords.corners(seen),
            ExtremeWords.of(seen))
        : List.of(clock);
  }

  private static String byNumber(String cavity) {
    return "cavity number " + cavity + ", by the number moulded beside it";
  }
}
