package org.loomwright.papers.calculation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.loomwright.model.design.TraceLine;

/**
 * Which lines of a trace a name in a formula can mean: the quantity of that name, a quantity whose
 * words hold all words of the name, or what the letter stands for in the trade.
 */
final class Symbols {
  /** What a letter stands for: words of the quantity and its units. */
  private record Letter(Pattern words, List<String> units) {
    boolean fits(TraceLine line) {
      return (units.isEmpty() || units.contains(line.unit())) && words.matcher(line.what()).find();
    }
  }

  private static final List<String> OHM = List.of("ohm", "Ω");
  private static final List<String> OHM_PER_M = List.of("ohm/m", "Ω/m");

  private static final Map<String, Letter> LETTERS =
      Map.ofEntries(
          letter("r20", "at 20 °C", OHM_PER_M),
          letter("r", "per metre", OHM_PER_M),
          letter("r(T)", "per metre", OHM_PER_M),
          letter("R", "", OHM),
          letter("L", "length", List.of("m")),
          letter("Lreturn", "return", List.of("m")),
          letter("I", "", List.of("A")),
          letter("U", "", List.of("V")),
          letter("V", "", List.of("V")),
          letter("P", "", List.of("W")),
          letter("T", "temperature|conductor|wire", List.of("°C")),
          letter("Ts", "surface", List.of("°C")),
          letter("Ta", "ambient", List.of("°C")),
          letter("Ti", "start", List.of("°C")),
          letter("Tf", "end", List.of("°C")),
          letter("t", "time", List.of("s")),
          letter("S", "area|section", List.of("mm²")),
          letter("A", "area|section", List.of("mm²")),
          letter("D", "outside diameter|diameter of", List.of("mm")),
          letter("k", "^k\\b", List.of()),
          letter("Nu", "Nusselt", List.of()),
          letter("Ra", "Rayleigh", List.of()),
          letter("Pr", "Prandtl", List.of()),
          letter("q", "heat", List.of("W/m")),
          letter("Rth", "thermal resistance", List.of()),
          letter("Vmin", "lowest|weak", List.of("V")),
          letter("Vmax", "highest|strong", List.of("V")),
          letter("Rweak", "weak|tired|high", OHM),
          letter("Rstrong", "strong|low", OHM),
          letter("Rcontacts", "contact", OHM),
          letter("Rwire", "wire", OHM));

  private final List<TraceLine> trace;
  private final int of;

  /**
   * @param trace the whole trace
   * @param of index of the line whose formula is read
   */
  Symbols(List<TraceLine> trace, int of) {
    this.trace = trace;
    this.of = of;
  }

  private static Map.Entry<String, Letter> letter(String name, String words, List<String> units) {
    return Map.entry(name, new Letter(Pattern.compile(words), units));
  }

  /** Whether some other line has a quantity of this name of several words. */
  boolean isName(String words) {
    return candidates(words).stream().anyMatch(it -> rank(it, words) < Rank.LETTER.ordinal());
  }

  /** Indexes of the lines a name can mean: the closest name first, then the nearest line above. */
  List<Integer> candidates(String name) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < trace.size(); i++) {
      if (i != of && rank(i, name) < Rank.NONE.ordinal()) {
        found.add(i);
      }
    }
    found.sort(
        Comparator.<Integer>comparingInt(it -> rank(it, name))
            .thenComparingInt(it -> it < of ? of - it : trace.size() + it));
    return found;
  }

  private enum Rank {
    SAME,
    START,
    HOLDS,
    LETTER,
    NONE
  }

  private int rank(int index, String name) {
    TraceLine line = trace.get(index);
    Letter letter = LETTERS.get(name);
    if (letter != null) {
      return letter.fits(line) ? Rank.LETTER.ordinal() : Rank.NONE.ordinal();
    }
    String what = line.what().toLowerCase(Locale.ROOT);
    String wanted = name.toLowerCase(Locale.ROOT);
    if (what.equals(wanted)) {
      return Rank.SAME.ordinal();
    }
    if (what.startsWith(wanted + " ") || what.startsWith(wanted + ",")) {
      return Rank.START.ordinal();
    }
    List<String> words = words(what);
    return words.containsAll(words(wanted)) && wanted.length() > 2
        ? Rank.HOLDS.ordinal()
        : Rank.NONE.ordinal();
  }

  private static List<String> words(String text) {
    return List.of(text.split("[\\s,()]+"));
  }
}
