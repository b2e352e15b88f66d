package org.loomwright.papers.calculation;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
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
    Name name = Name.of(words);
    for (int i = 0; i < trace.size(); i++) {
      if (i != of && name.rank(trace.get(i)).compareTo(Rank.LETTER) < 0) {
        return true;
      }
    }
    return false;
  }

  /** Indexes of the lines a name can mean: the closest name first, then the nearest line above. */
  List<Integer> candidates(String name) {
    Name read = Name.of(name);
    List<Rank> ranks = trace.stream().map(read::rank).toList();
    return IntStream.range(0, trace.size())
        .filter(it -> it != of && ranks.get(it) != Rank.NONE)
        .boxed()
        .sorted(
            Comparator.<Integer, Rank>comparing(ranks::get)
                .thenComparingInt(it -> it < of ? of - it : trace.size() + it))
        .toList();
  }

  private enum Rank {
    SAME,
    START,
    HOLDS,
    LETTER,
    NONE
  }

  /** A name in small letters, with its words. */
  private record Name(Optional<Letter> letter, String wanted, List<String> words) {
    private static final Pattern BETWEEN = Pattern.compile("[\\s,()]+");

    static Name of(String name) {
      String wanted = name.toLowerCase(Locale.ROOT);
      return new Name(
          Optional.ofNullable(LETTERS.get(name)), wanted, List.of(BETWEEN.split(wanted)));
    }

    Rank rank(TraceLine line) {
      if (letter.isPresent()) {
        return letter.get().fits(line) ? Rank.LETTER : Rank.NONE;
      }
      String what = line.what().toLowerCase(Locale.ROOT);
      // Few lines hold the text of every word at all, and splitting a line takes its time.
      if (!words.stream().allMatch(what::contains)) {
        return Rank.NONE;
      }
      if (what.equals(wanted)) {
        return Rank.SAME;
      }
      if (what.startsWith(wanted + " ") || what.startsWith(wanted + ",")) {
        return Rank.START;
      }
      return wanted.length() > 2 && List.of(BETWEEN.split(what)).containsAll(words)
          ? Rank.HOLDS
          : Rank.NONE;
    }
  }
}
