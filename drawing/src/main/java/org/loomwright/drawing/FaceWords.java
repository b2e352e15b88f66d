package org.loomwright.drawing;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.View;

/**
 * Where a cavity is, in words for exactly one view. The words fit one cavity of the housing only.
 * When rows, columns or rings are not plain to see, the moulded number is all that is said: nothing
 * is better than a wrong direction.
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
    Map<String, String> clock = housing.round() ? ClockWords.of(seen) : Map.of();
    // In a round face the clock is what people use; rows only when there are no rings.
    List<Map<String, String>> kinds =
        clock.isEmpty()
            ? List.of(GridWords.byRow(seen), GridWords.byColumn(seen), GridWords.corners(seen))
            : List.of(clock);
    for (Seen.Spot spot : seen.cavities()) {
      String best = "";
      for (Map<String, String> kind : kinds) {
        String phrase = kind.getOrDefault(spot.number(), "");
        if (!phrase.isEmpty() && (best.isEmpty() || phrase.length() < best.length())) {
          best = phrase;
        }
      }
      words.put(spot.number(), best.isEmpty() ? byNumber(spot.number()) : best);
    }
    // Two cavities on one spot, or a number moulded twice, must never share their words.
    if (new HashSet<>(words.values()).size() < seen.cavities().size()) {
      words.replaceAll((number, phrase) -> byNumber(number));
    }
    return words;
  }

  private static String byNumber(String cavity) {
    return "cavity number " + cavity + ", by the number moulded beside it";
  }
}
