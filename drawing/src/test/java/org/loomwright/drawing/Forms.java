package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Every phrase that the forms of the words allow, written down without a look at the face. */
final class Forms {
  private static final Pattern NUMBER = Pattern.compile("(\\d+)(st|nd|rd|th)");
  private static final List<String> COUNTS =
      List.of(
          "second",
          "third",
          "fourth",
          "fifth",
          "sixth",
          "seventh",
          "eighth",
          "ninth",
          "tenth",
          "eleventh",
          "twelfth",
          "13th",
          "14th",
          "15th",
          "16th",
          "17th",
          "18th",
          "19th",
          "20th");

  /** Shorter is: fewer words, then less to count, then fewer letters. */
  static final Comparator<String> SHORTER =
      Comparator.<String>comparingInt(it -> it.split(" ").length)
          .thenComparingInt(Forms::counted)
          .thenComparingInt(String::length);

  private Forms() {}

  /** Phrases by row, with up to so many rows and places. */
  static List<String> rows(int rows, int places) {
    return joined(
        line(rows, "top row", "bottom row", "middle row", " row", "top", "bottom"),
        with("alone", line(places, "leftmost", "rightmost", "middle", "", "left", "right")));
  }

  static List<String> columns(int columns, int places) {
    return joined(
        line(columns, "left column", "right column", "middle column", " column", "left", "right"),
        with("alone", line(places, "top", "bottom", "middle", "", "top", "bottom")));
  }

  /** Phrases for a single row or column. */
  static List<String> singles(int places) {
    List<String> all = line(places, "leftmost", "rightmost", "middle", "", "left", "right");
    all.addAll(line(places, "top", "bottom", "middle", "", "top", "bottom"));
    return all;
  }

  static List<String> corners() {
    return List.of(
        "top left corner", "top right corner", "bottom left corner", "bottom right corner");
  }

  static List<String> extremes() {
    return List.of(
        "the leftmost of all",
        "the rightmost of all",
        "the highest of all",
        "the lowest of all",
        "the largest of all",
        "the smallest of all");
  }

  static List<String> clock(int rings, int places) {
    List<String> hours = new ArrayList<>();
    for (int hour = 1; hour <= 12; hour++) {
      hours.add("at " + hour + " o'clock");
      hours.add("between " + hour + " and " + (hour % 12 + 1) + " o'clock");
    }
    for (String count : with("first", COUNTS.subList(0, Math.min(COUNTS.size(), places)))) {
      hours.add(count + " clockwise, counted from 12 o'clock");
    }
    List<String> all = new ArrayList<>(hours);
    all.add("in the middle");
    if (rings > 1) {
      all.addAll(
          joined(
              hours,
              line(
                  rings, "inner ring", "outer ring", "middle ring", " ring", "middle", "outside")));
    }
    return all;
  }

  private static int counted(String phrase) {
    int sum = 0;
    for (String word : phrase.replace(",", "").split(" ")) {
      Matcher number = NUMBER.matcher(word);
      int known = COUNTS.indexOf(word);
      sum +=
          number.matches()
              ? Integer.parseInt(number.group(1))
              : word.equals("first") ? 1 : known < 0 ? 0 : known + 2;
    }
    return sum;
  }

  private static List<String> line(
      int most, String first, String last, String middle, String noun, String from, String to) {
    List<String> all = new ArrayList<>(List.of(first, last, middle));
    for (String count : COUNTS.subList(0, Math.min(COUNTS.size(), Math.max(0, most - 1)))) {
      all.add(count + noun + " from the " + from);
      all.add(count + noun + " from the " + to);
    }
    return all;
  }

  private static List<String> with(String one, List<String> others) {
    List<String> all = new ArrayList<>(others);
    all.add(one);
    return all;
  }

  private static List<String> joined(List<String> firsts, List<String> seconds) {
    List<String> all = new ArrayList<>();
    firsts.forEach(first -> seconds.forEach(second -> all.add(first + ", " + second)));
    return all;
  }
}
