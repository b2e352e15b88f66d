package org.loomwright.cli.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.physics.cutting.Piece;
import picocli.CommandLine.ITypeConverter;

/** Reads lists of lengths in mm with commas between, with or without a count behind each. */
final class NumberList {

  private static final Pattern NUMBER = Pattern.compile("\\d{1,9}(\\.\\d{1,9})?");
  private static final Pattern UNIT = Pattern.compile(" *mm(?![\\p{L}\\d])");
  private static final Pattern TIMES = Pattern.compile(" *[xX×] *");
  private static final Pattern COUNT = Pattern.compile("\\d{1,9}");
  private static final Pattern COMMA = Pattern.compile(" *, *");
  private static final Pattern SPACES = Pattern.compile(" *");

  private final String text;
  private final String noun;
  private final String expected;
  private int at;

  private NumberList(String text, String noun, String expected) {
    this.text = text;
    this.noun = noun;
    this.expected = expected;
  }

  /** Diameters, such as "2.1,2.1,3.0". */
  static final class DiametersReader implements ITypeConverter<Diameters> {
    @Override
    public Diameters convert(String text) {
      return new NumberList(
              text, "diameters in mm", "numbers in mm with commas between, such as \"2.1,2.1,3.0\"")
          .diameters();
    }
  }

  /** Pieces, such as "1380x22,1520x25". */
  static final class PiecesReader implements ITypeConverter<Pieces> {
    @Override
    public Pieces convert(String text) {
      return new NumberList(
              text,
              "pieces to cut",
              "length in mm, \"x\" and count, with commas between, such as \"1380x22,1520x25\"")
          .pieces();
    }
  }

  /**
   * Diameters as read.
   *
   * @param mm at least one, each above zero, mm
   */
  record Diameters(List<Double> mm) {}

  /**
   * Pieces as read.
   *
   * @param list at least one, lengths and counts above zero
   */
  record Pieces(List<Piece> list) {}

  private Diameters diameters() {
    List<Double> diameters = new ArrayList<>();
    skip(SPACES);
    do {
      diameters.add(length());
    } while (more());
    return new Diameters(diameters);
  }

  private Pieces pieces() {
    List<Piece> pieces = new ArrayList<>();
    skip(SPACES);
    do {
      double lengthMm = length();
      if (!skip(TIMES)) {
        throw wrong(at, "\"x\" and a count must follow");
      }
      pieces.add(new Piece(lengthMm, count()));
    } while (more());
    return new Pieces(pieces);
  }

  private double length() {
    int start = at;
    double lengthMm = Double.parseDouble(take(NUMBER, "a number is missing"));
    if (lengthMm == 0) {
      throw wrong(start, "the number must be above zero");
    }
    skip(UNIT);
    return lengthMm;
  }

  private int count() {
    int start = at;
    int count = Integer.parseInt(take(COUNT, "a count is missing"));
    if (count == 0) {
      throw wrong(start, "the count must be above zero");
    }
    return count;
  }

  /** Whether a comma announces another entry; anything else must be the end. */
  private boolean more() {
    if (skip(COMMA)) {
      return true;
    }
    skip(SPACES);
    if (at < text.length()) {
      throw wrong(at, "\"" + text.charAt(at) + "\" is not understood");
    }
    return false;
  }

  private String take(Pattern pattern, String otherwise) {
    int start = at;
    if (!skip(pattern)) {
      throw wrong(at, otherwise);
    }
    return text.substring(start, at);
  }

  private boolean skip(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    boolean found = matcher.lookingAt();
    at = found ? matcher.end() : at;
    return found;
  }

  private WrongInput wrong(int where, String problem) {
    String shown = text.length() > 60 ? text.substring(0, 60) + "…" : text;
    return new WrongInput(
        String.format(
            Locale.ROOT,
            "\"%s\" can't be read as %s: at character %d, %s; expected %s.",
            shown.replaceAll("\\p{Cntrl}", "?"),
            noun,
            where + 1,
            problem.replaceAll("\\p{Cntrl}", "?"),
            expected));
  }
}
