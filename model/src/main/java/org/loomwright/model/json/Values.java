package org.loomwright.model.json;

import tools.jackson.databind.JsonNode;

/** JSON values in words for messages. */
final class Values {
  private static final int SHOWN = 60;

  private Values() {}

  /** The value on one line, cut short where long; texts without quotation marks. */
  static String shown(JsonNode node) {
    return printable(node.isString() ? node.stringValue() : node.toString());
  }

  /** What sort of value it is, e.g. "a list". */
  static String sort(JsonNode node) {
    if (node.isString()) {
      return "text";
    }
    if (node.isNumber()) {
      return "a number";
    }
    if (node.isBoolean()) {
      return "true or false";
    }
    if (node.isArray()) {
      return "a list";
    }
    return node.isObject() ? "an object" : "null";
  }

  /** Cuts a long text and replaces control characters, so that a message stays one line. */
  static String printable(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(SHOWN)
        .map(
            c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
        .forEach(out::appendCodePoint);
    return text.codePoints().skip(SHOWN).findAny().isPresent() ? out + "…" : out.toString();
  }
}
