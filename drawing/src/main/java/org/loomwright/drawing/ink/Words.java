package org.loomwright.drawing.ink;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.LetterWidths;

/** Text cut into lines of a width. */
public final class Words {
  /** Line distance as share of the font size. */
  public static final double PITCH = 1.3;

  /** Characters of the longest unit with its mark of punctuation, e.g. "min,". */
  private static final int LONGEST_UNIT = 4;

  private Words() {}

  /**
   * Lines of a text, broken at spaces, and inside a word only where it is wider than a line alone.
   * A number and its unit stay together where they fit on a line.
   *
   * @param text text, not escaped; white space counts as one space
   * @param sizeMm font size
   * @param widthMm widest line; at least one character stands on each line whatever its width
   * @return the lines; none for a blank text
   */
  public static List<String> wrap(String text, double sizeMm, double widthMm) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(text, sizeMm, widthMm)) {
      if (word.isEmpty()) {
        continue;
      }
      String longer = line.isEmpty() ? word : line + " " + word;
      if (fits(longer, sizeMm, widthMm)) {
        line.setLength(0);
        line.append(longer);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(broken(word, sizeMm, widthMm, lines));
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** Width of the widest line, mm. */
  public static double width(List<String> lines, double sizeMm) {
    return lines.stream().mapToDouble(it -> sizeMm * LetterWidths.ems(it)).max().orElse(0);
  }

  /** Height of lines under each other, mm. */
  public static double height(List<String> lines, double sizeMm) {
    return lines.size() * PITCH * sizeMm;
  }

  private static List<String> words(String text, double sizeMm, double widthMm) {
    List<String> words = new ArrayList<>();
    for (String word : text.strip().split("[\\s\\p{Cntrl}]+", 0)) {
      String before = words.isEmpty() ? "" : words.get(words.size() - 1);
      String both = before + " " + word;
      if (isNumber(before) && isUnit(word) && fits(both, sizeMm, widthMm)) {
        words.set(words.size() - 1, both);
      } else {
        words.add(word);
      }
    }
    return words;
  }

  private static boolean isNumber(String word) {
    return word.matches("-?[0-9][0-9.]*");
  }

  private static boolean isUnit(String word) {
    return word.length() <= LONGEST_UNIT && !word.isEmpty() && !Character.isDigit(word.charAt(0));
  }

  /** Adds all full lines of a long word and returns what is left of it. */
  private static String broken(String word, double sizeMm, double widthMm, List<String> lines) {
    StringBuilder part = new StringBuilder();
    for (int character : word.codePoints().toArray()) {
      String next = Character.toString(character);
      if (!part.isEmpty() && !fits(part + next, sizeMm, widthMm)) {
        lines.add(part.toString());
        part.setLength(0);
      }
      part.append(next);
    }
    return part.toString();
  }

  private static boolean fits(String text, double sizeMm, double widthMm) {
    return sizeMm * LetterWidths.ems(text) <= widthMm;
  }
}
