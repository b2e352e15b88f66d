package org.loomwright.web.edit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A row more or less in a form that is not saved yet.
 *
 * @param typed what stands in the form after it
 * @param focus field to go on with; empty for none
 */
record RowChange(Typed typed, String focus) {
  private static final Pattern LESS = Pattern.compile("less:(.+)\\.(\\d{1,4})");

  /** Does what a button asked for: "more:NAME" or "less:NAME.ROW". */
  static RowChange of(String asked, Typed typed) {
    Matcher less = LESS.matcher(asked);
    if (less.matches()) {
      return new RowChange(
          typed.withoutRow(less.group(1), Integer.parseInt(less.group(2))), less.group(1));
    }
    if (asked.startsWith("more:")) {
      String name = asked.substring("more:".length());
      int rows = typed.rows(name);
      typed.rows(name, rows + 1);
      return new RowChange(typed, name + "." + rows);
    }
    return new RowChange(typed, "");
  }
}
