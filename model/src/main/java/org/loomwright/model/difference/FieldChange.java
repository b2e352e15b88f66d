package org.loomwright.model.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** One changed value in words. */
final class FieldChange {
  static final JsonNode NOTHING = MissingNode.getInstance();

  private FieldChange() {}

  static String added(Where at, JsonNode is) {
    if (is.isBoolean()) {
      return truth(at, false, is.booleanValue());
    }
    return at.subjectAnd(whole(at, is, "added"));
  }

  static String removed(Where at, JsonNode was) {
    if (was.isBoolean()) {
      return truth(at, was.booleanValue(), false);
    }
    return at.subjectAnd(whole(at, was, "taken out"));
  }

  private static String whole(Where at, JsonNode value, String what) {
    if (value.isArray() && value.size() == 1 && value.get(0).isObject()) {
      JsonNode item = value.get(0);
      String noun = FieldWords.singular(at.field());
      String key = ValueWords.nameKey(item);
      return noun
          + ValueWords.ownName(item).map(name -> " " + name).orElse("")
          + " "
          + what
          + inBrackets(noun, item, key);
    }
    return FieldWords.of(at.field()) + " " + what + ": " + ValueWords.of(at.field(), value);
  }

  /**
   * An item put into a list.
   *
   * @param key the key that names it, empty when it has none
   */
  static String newItem(Where at, JsonNode is, String key) {
    return at.subject()
        + " added"
        + inBrackets(
            FieldWords.singular(at.field()), is, key.isEmpty() ? ValueWords.nameKey(is) : key);
  }

  /** An item without a name of its own taken out of a list. */
  static String goneItem(Where at, JsonNode was) {
    return at.subject()
        + " taken out"
        + inBrackets(FieldWords.singular(at.field()), was, ValueWords.nameKey(was));
  }

  private static String inBrackets(String noun, JsonNode item, String key) {
    String told = item.isObject() ? ValueWords.told(noun, item, key) : ValueWords.of(noun, item);
    return told.isEmpty() ? "" : " (" + told + ")";
  }

  static String changed(Where at, JsonNode was, JsonNode is) {
    if (at.path().isEmpty()) {
      return "the whole document was " + sort(was) + ", is " + sort(is);
    }
    if (was.isBoolean() && is.isBoolean()) {
      return truth(at, was.booleanValue(), is.booleanValue());
    }
    if (was.isString() && is.isString()) {
      return text(at, was.stringValue(), is.stringValue());
    }
    boolean oneIsText = was.isString() || is.isString();
    return words(at, mixed(at, was, oneIsText), mixed(at, is, oneIsText));
  }

  private static String text(Where at, String was, String is) {
    if (SameValue.of(was, is)) {
      return at.subjectAnd(
          lead(at)
              + " written as "
              + Text.line(is, Text.NAME)
              + ", was "
              + Text.line(was, Text.NAME)
              + " (the same value)");
    }
    Text.Pair pair = Text.Pair.of(was, is);
    if (pair.before().equals(pair.after()) || was.strip().equals(is.strip())) {
      return at.subjectAnd(
          FieldWords.of(at.field())
              + ": only spaces or signs that can't be seen changed in \""
              + Text.line(is, Text.NAME).strip()
              + "\"");
    }
    return words(at, ValueWords.quoted(pair.before()), ValueWords.quoted(pair.after()));
  }

  private static String words(Where at, String was, String is) {
    return at.subjectAnd(lead(at) + " was " + was + ", is " + is);
  }

  private static String lead(Where at) {
    return at.item() ? "it" : FieldWords.lead(at.field());
  }

  private static String mixed(Where at, JsonNode value, boolean oneIsText) {
    return oneIsText || value.isContainer()
        ? sort(value) + " " + ValueWords.of(at.field(), value)
        : ValueWords.of(at.field(), value);
  }

  private static String sort(JsonNode node) {
    if (node.isString()) {
      return "text";
    }
    if (node.isNumber()) {
      return "the number";
    }
    if (node.isBoolean()) {
      return "the answer";
    }
    if (node.isArray()) {
      return "a list:";
    }
    return node.isObject() ? "an entry:" : "";
  }

  private static String truth(Where at, boolean was, boolean is) {
    if (was == is) {
      return at.subjectAnd(
          FieldWords.of(at.field())
              + ": "
              + (is ? "yes" : "no")
              + ", as before, now written another way");
    }
    if (FieldWords.isAdjective(at.field()) && !at.subjects().isEmpty()) {
      return at.subject() + (is ? " is now " : " is no longer ") + FieldWords.of(at.field());
    }
    return at.subjectAnd(
        FieldWords.of(at.field())
            + ": was "
            + (was ? "yes" : "no")
            + ", is "
            + (is ? "yes" : "no"));
  }

  static String plainList(
      Where at,
      List<JsonNode> gone,
      List<JsonNode> come,
      boolean sameOrder,
      JsonNode before,
      JsonNode after) {
    List<String> parts = new ArrayList<>();
    if (gone.size() == 1 && come.size() == 1) {
      parts.add(one(at, come) + " instead of " + one(at, gone));
    } else {
      if (!come.isEmpty()) {
        parts.add(one(at, come) + " added");
      }
      if (!gone.isEmpty()) {
        parts.add(one(at, gone) + " taken out");
      }
    }
    if (!sameOrder) {
      parts.add(
          parts.isEmpty()
              ? "in another order: was "
                  + ValueWords.of(at.field(), before)
                  + ", is "
                  + ValueWords.of(at.field(), after)
              : "the others in another order");
    }
    return at.subjectAnd(FieldWords.of(at.field()) + ": " + String.join(", ", parts));
  }

  private static String one(Where at, List<JsonNode> values) {
    int shown = Math.min(values.size(), 4);
    String words =
        values.subList(0, shown).stream()
            .map(it -> ValueWords.of(at.field(), it))
            .collect(Collectors.joining(", "));
    return shown < values.size() ? words + " and " + (values.size() - shown) + " more" : words;
  }
}
