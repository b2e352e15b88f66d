package org.loomwright.intake;

import java.util.Locale;
import java.util.Set;

/** What tables write where a cavity has no wire; common practice. */
final class EmptyWords {
  private static final Set<String> DASHES =
      Set.of("-", "--", "---", "–", "—", ".", "*", "/", "x", "n/a");
  private static final Set<String> EMPTY =
      Set.of(
          "empty",
          "not used",
          "unused",
          "nc",
          "n/c",
          "n.c.",
          "not connected",
          "no connection",
          "spare",
          "vacant",
          "none",
          "open",
          "not assigned",
          "blank");
  private static final Set<String> PLUGGED =
      Set.of("plugged", "plug", "cavity plug", "seal plug", "blanking plug", "plugged off");
  private static final Set<String> BLOCKED =
      Set.of("blocked", "not moulded", "not moulded through", "closed", "moulded closed");

  private EmptyWords() {}

  /** Whether a text only stands for "nothing here". */
  static boolean isDash(String text) {
    return DASHES.contains(plain(text));
  }

  static boolean isEmpty(String text) {
    return EMPTY.contains(plain(text));
  }

  static boolean isPlugged(String text) {
    return PLUGGED.contains(plain(text));
  }

  static boolean isBlocked(String text) {
    return BLOCKED.contains(plain(text));
  }

  private static String plain(String text) {
    return CellText.line(text).toLowerCase(Locale.ROOT);
  }
}
