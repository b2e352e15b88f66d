package org.loomwright.model.colour;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Colour of a wire: base and up to one tracer, written as plain words ("red", "red/white").
 *
 * @param text as written
 * @param base colour of most of the insulation
 * @param all base and, where there is one, tracer
 */
public record Colour(String text, PlainColour base, List<PlainColour> all) {
  public Colour {
    all = List.copyOf(all);
  }

  /**
   * Reads a colour.
   *
   * @throws IllegalArgumentException when a word is not one of the plain colours
   */
  @JsonCreator
  public static Colour of(String text) {
    String[] words = text.strip().split("/", -1);
    if (words.length > 2) {
      throw new IllegalArgumentException(
          "'" + text + "' names more than two colours; write base/tracer, e.g. red/white");
    }
    List<PlainColour> colours = new ArrayList<>();
    for (String word : words) {
      colours.add(
          Arrays.stream(PlainColour.values())
              .filter(colour -> colour.word().equals(word.strip()))
              .findFirst()
              .orElseThrow(() -> new IllegalArgumentException(unknown(word.strip()))));
    }
    return new Colour(text, colours.get(0), colours);
  }

  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** IEC 60757 letters, joined in the standard's order, e.g. RDWH. */
  public String code() {
    return all.stream().sorted().map(PlainColour::code).collect(Collectors.joining());
  }

  private static String unknown(String word) {
    return "'"
        + word
        + "' is not a colour; use one of "
        + Arrays.stream(PlainColour.values())
            .map(PlainColour::word)
            .collect(Collectors.joining(", "));
  }
}
