package org.loomwright.model.json;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Printed numbers of steps, written as "1-12,14". */
final class StepNumbers {
  /** More steps than any guide has; keeps a wrong range from filling the memory. */
  private static final int MOST = 9999;

  private static final Pattern RANGE = Pattern.compile("([1-9][0-9]{0,3})(?:-([1-9][0-9]{0,3}))?");

  private StepNumbers() {}

  /**
   * Reads them.
   *
   * @throws IllegalArgumentException when the text has not this form
   */
  static List<Integer> read(String text) {
    List<Integer> numbers = new ArrayList<>();
    int last = 0;
    for (String part : text.split(",", -1)) {
      Matcher range = RANGE.matcher(part.strip());
      if (!range.matches()) {
        throw new IllegalArgumentException(
            "'"
                + Values.printable(part)
                + "' is no number of a step; write numbers and ranges up to "
                + MOST
                + " with commas between, such as 1-12,14");
      }
      int first = Integer.parseInt(range.group(1));
      int end = range.group(2) == null ? first : Integer.parseInt(range.group(2));
      if (first <= last || end < first) {
        throw new IllegalArgumentException(
            "'"
                + Values.printable(part)
                + "' does not follow "
                + last
                + "; each step stands once, smaller numbers first, such as 1-12,14");
      }
      for (int number = first; number <= end; number++) {
        numbers.add(number);
      }
      last = end;
    }
    return numbers;
  }

  /** Writes numbers that rise. */
  static String write(List<Integer> numbers) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < numbers.size(); i++) {
      int end = i;
      while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
        end++;
      }
      text.append(text.isEmpty() ? "" : ",").append(numbers.get(i));
      if (end > i) {
        text.append('-').append(numbers.get(end));
      }
      i = end;
    }
    return text.toString();
  }
}
