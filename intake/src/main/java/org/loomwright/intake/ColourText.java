package org.loomwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Reads wire colours as tables give them: words, IEC 60757 codes, usual abbreviations, and the
 * maker's own codes as far as the vehicle has them on file already.
 */
final class ColourText {
  /** Usual abbreviations beside IEC 60757, English and German; common practice. */
  private static final Map<String, List<PlainColour>> SHORT = new LinkedHashMap<>();

  static {
    put(PlainColour.BLACK, "BLK", "BLACK", "SW", "SCHWARZ");
    put(PlainColour.BROWN, "BRN", "BRO", "BROWN", "BR", "BRAUN");
    put(PlainColour.RED, "RED", "R", "RT", "ROT");
    put(PlainColour.ORANGE, "ORG", "ORN", "ORANGE", "O", "OR");
    put(PlainColour.YELLOW, "YEL", "YLW", "YELLOW", "Y", "YL", "GE", "GELB");
    put(PlainColour.GREEN, "GRN", "GREEN", "GRUEN", "GRÜN");
    put(PlainColour.BLUE, "BLU", "BLUE", "BLAU");
    put(PlainColour.VIOLET, "VIO", "VIOLET", "V", "VI", "PURPLE", "PPL", "PUR", "VIOLETT");
    put(PlainColour.GREY, "GRY", "GRA", "GREY", "GRAY", "GRAU");
    put(PlainColour.WHITE, "WHT", "WHITE", "W", "WT", "WS", "WEISS");
    put(PlainColour.PINK, "PNK", "PINK", "RS", "ROSA");
    put(PlainColour.GOLD, "GOLD");
    put(PlainColour.TURQUOISE, "TUR", "TURQUOISE");
    put(PlainColour.SILVER, "SIL", "SILVER");
    for (PlainColour colour : PlainColour.values()) {
      put(colour, colour.code());
    }
    // Used for different colours by different makers.
    SHORT.put("B", List.of(PlainColour.BLACK, PlainColour.BLUE, PlainColour.BROWN));
    SHORT.put("BL", List.of(PlainColour.BLUE, PlainColour.BLACK));
    SHORT.put("G", List.of(PlainColour.GREEN, PlainColour.GREY));
    SHORT.put("GR", List.of(PlainColour.GREY, PlainColour.GREEN));
    SHORT.put("P", List.of(PlainColour.PINK, PlainColour.VIOLET));
  }

  private ColourText() {}

  private static void put(PlainColour colour, String... words) {
    for (String word : words) {
      SHORT.put(word, List.of(colour));
    }
  }

  /** The colour a cell names. */
  static Fact<Colour> read(String text, Vehicle vehicle) {
    String upper = CellText.line(text).toUpperCase(Locale.ROOT);
    if (upper.length() > 60) {
      return new Fact.Wrong<>(
          CellText.shown(text) + " is too long for a colour; write e.g. red/white");
    }
    Set<String> filed = filed(upper, vehicle);
    if (filed.size() == 1) {
      return new Fact.Known<>(Colour.of(filed.iterator().next()));
    }
    if (filed.size() > 1) {
      return new Fact.Wrong<>(
          CellText.shown(text)
              + " is on file for "
              + String.join(" and for ", filed)
              + "; write which one it is");
    }
    List<String> words = words(upper);
    if (words.isEmpty() || words.size() > 2) {
      return new Fact.Wrong<>(
          CellText.shown(text)
              + " does not name one or two colours; write base/tracer, e.g. red/white");
    }
    List<String> colours = new ArrayList<>();
    for (String word : words) {
      List<PlainColour> known = SHORT.getOrDefault(word, List.of());
      if (known.size() != 1) {
        return new Fact.Wrong<>(wrong(text, word, known));
      }
      colours.add(known.get(0).word());
    }
    // Base and tracer alike is how some tables write a plain wire.
    boolean plain = colours.size() == 2 && colours.get(0).equals(colours.get(1));
    return new Fact.Known<>(Colour.of(plain ? colours.get(0) : String.join("/", colours)));
  }

  /** Whether a cell names colours, if not only one way. */
  static boolean isOpen(String text) {
    String upper = CellText.line(text).toUpperCase(Locale.ROOT);
    if (upper.length() > 60) {
      return false;
    }
    List<String> words = words(upper);
    return !words.isEmpty() && words.size() <= 2 && words.stream().allMatch(SHORT::containsKey);
  }

  private static String wrong(String text, String word, List<PlainColour> known) {
    String lower = word.toLowerCase(Locale.ROOT);
    if (!known.isEmpty()) {
      return CellText.shown(text)
          + " can mean "
          + known.stream().map(PlainColour::word).collect(Collectors.joining(" or "))
          + "; write the word";
    }
    return "'"
        + lower
        + "' is not a colour"
        + Nearest.hint(
            lower,
            "the colours are",
            Arrays.stream(PlainColour.values()).map(PlainColour::word).toList());
  }

  /** Colours that circuits on file have under this code of the maker. */
  private static Set<String> filed(String code, Vehicle vehicle) {
    return vehicle.circuits().stream()
        .filter(
            it ->
                it.colourAsSeen()
                    .map(seen -> seen.toUpperCase(Locale.ROOT).equals(code))
                    .orElse(false))
        .map(Circuit::colour)
        .map(Colour::text)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static List<String> words(String upper) {
    List<String> words = new ArrayList<>();
    for (String word : upper.split("[^\\p{L}]+")) {
      boolean filler = List.of("WITH", "TRACER", "STRIPE", "AND", "WIRE", "").contains(word);
      if (!filler) {
        words.add(word);
      }
    }
    if (words.size() == 1 && !SHORT.containsKey(words.get(0)) && words.get(0).length() == 4) {
      String first = words.get(0).substring(0, 2);
      String second = words.get(0).substring(2);
      if (isIec(first) && isIec(second)) {
        return List.of(first, second);
      }
    }
    return words;
  }

  private static boolean isIec(String code) {
    return Arrays.stream(PlainColour.values()).anyMatch(it -> it.code().equals(code));
  }
}
