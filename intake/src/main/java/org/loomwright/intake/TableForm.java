package org.loomwright.intake;

/** How the cells of a pasted table were kept apart. */
public enum TableForm {
  TAB("tabs"),
  SEMICOLON("semicolons"),
  COMMA("commas"),
  SINGLE("one column"),
  XLSX("a spreadsheet file");

  private final String words;

  TableForm(String words) {
    this.words = words;
  }

  /** For people, e.g. "tabs". */
  public String words() {
    return words;
  }

  char delimiter() {
    return switch (this) {
      case TAB -> '\t';
      case SEMICOLON -> ';';
      case COMMA -> ',';
      // No text has it: control characters other than tab and line break are taken out first.
      case SINGLE, XLSX -> '\0';
    };
  }
}
