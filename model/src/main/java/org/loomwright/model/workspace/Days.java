package org.loomwright.model.workspace;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Checks days as documents write them. */
final class Days {
  private Days() {}

  /** Notes a text that is no day; one that was refused before is passed over. */
  static void check(Scope scope, Object owner, String key, String day) {
    if (day.isEmpty()) {
      return;
    }
    try {
      var unused = LocalDate.parse(day);
    } catch (DateTimeParseException refusal) {
      scope.problem(
          owner,
          key,
          day,
          "'" + day + "' is no day; write year, month and day, such as 2026-03-04");
    }
  }
}
