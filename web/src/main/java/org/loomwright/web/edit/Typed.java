package org.loomwright.web.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import tools.jackson.databind.JsonNode;

/**
 * What stands in the fields of a form: texts by the name of their field. The field of key "place"
 * in the record "tell" is {@code f.tell.place}; the third row of the list "near" starts with {@code
 * f.near.2}.
 */
final class Typed {
  /** Name of the record a form is for. */
  static final String ROOT = "f";

  private static final int MOST_ROWS = 2000;

  private final Map<String, String> texts;

  private Typed(Map<String, String> texts) {
    this.texts = texts;
  }

  /** What a person sent. */
  static Typed sent(Map<String, List<String>> form) {
    Map<String, String> texts = new LinkedHashMap<>();
    form.forEach(
        (name, values) -> {
          if (name.startsWith(ROOT + ".") && !values.isEmpty()) {
            texts.put(name, lines(values.get(0)));
          }
        });
    return new Typed(texts);
  }

  /** What a form shows of a record when it is opened. */
  static Typed opened(FormShape.Fields shape, JsonNode record, boolean isDocument) {
    Typed typed = new Typed(new LinkedHashMap<>());
    typed.open(ROOT, shape, record, isDocument);
    return typed;
  }

  private void open(String name, FormShape.Fields shape, JsonNode record, boolean isDocument) {
    for (FormField field : shape.fields()) {
      String at = name + "." + field.key();
      JsonNode node = record.path(field.key());
      switch (Sorts.of(field, isDocument)) {
        case INPUT -> texts.put(at, text(node));
        case LINES -> texts.put(at, linesOf(node));
        case GROUP -> {
          if (field.shape() instanceof FormShape.Fields inner) {
            texts.put(present(at), node.isMissingNode() ? "" : "true");
            open(at, inner, node, false);
          }
        }
        case ROWS -> {
          if (field.shape() instanceof FormShape.Items list
              && list.item() instanceof FormShape.Fields row) {
            int count = node.isArray() ? node.size() : 0;
            rows(at, count);
            for (int i = 0; i < count; i++) {
              texts.put(origin(at, i), Integer.toString(i));
              open(at + "." + i, row, node.get(i), false);
            }
          }
        }
        case ENTRIES -> {
          int i = 0;
          for (Map.Entry<String, JsonNode> entry : node.properties()) {
            texts.put(at + "." + i + ".key", lines(entry.getKey()));
            texts.put(at + "." + i + ".value", text(entry.getValue()));
            i++;
          }
          rows(at, i);
        }
        case OWN_FORM, OWN_FORMS -> {
          // On pages of their own.
        }
      }
    }
  }

  /** A value as it stands in its field. */
  static String text(JsonNode node) {
    if (node.isMissingNode() || node.isNull()) {
      return "";
    }
    if (node.isBoolean()) {
      return node.booleanValue() ? "true" : "";
    }
    return lines(node.isString() ? node.stringValue() : node.toString());
  }

  /** The items of a list, one on each line. */
  static String linesOf(JsonNode list) {
    return list.isArray()
        ? list.valueStream().map(Typed::text).collect(Collectors.joining("\n"))
        : text(list);
  }

  /** Browsers end lines their own way. */
  private static String lines(String text) {
    return text.replace("\r\n", "\n").replace('\r', '\n');
  }

  /** Name of the box that says whether a record that may be left out is there. */
  static String present(String group) {
    return group + "~is";
  }

  /** Name of the field that keeps which item of the list on file a row is. */
  static String origin(String rows, int row) {
    return rows + "." + row + "~of";
  }

  private static String count(String rows) {
    return rows + "~rows";
  }

  /** The text of a field; empty when it was not sent. */
  String get(String name) {
    return texts.getOrDefault(name, "");
  }

  /** Number of rows of a list. */
  int rows(String name) {
    String count = get(count(name));
    return count.matches("\\d{1,4}") ? Math.min(MOST_ROWS, Integer.parseInt(count)) : 0;
  }

  void rows(String name, int count) {
    texts.put(count(name), Integer.toString(count));
  }

  /** Whether something stands in any field below a name. */
  boolean anyBelow(String name) {
    return texts.entrySet().stream()
        .anyMatch(
            it ->
                it.getKey().startsWith(name + ".")
                    && !it.getKey().contains("~")
                    && !it.getValue().isBlank());
  }

  /** The same without one row; those behind it move up. */
  Typed withoutRow(String name, int row) {
    Map<String, String> fewer = new LinkedHashMap<>();
    String start = name + ".";
    texts.forEach(
        (key, value) -> {
          String rest = key.startsWith(start) ? key.substring(start.length()) : "";
          String digits = rest.replaceFirst("[.~].*$", "");
          if (!digits.matches("\\d{1,4}")) {
            fewer.put(key, value);
            return;
          }
          int index = Integer.parseInt(digits);
          if (index != row) {
            int now = index > row ? index - 1 : index;
            fewer.put(start + now + rest.substring(digits.length()), value);
          }
        });
    Typed typed = new Typed(fewer);
    typed.rows(name, Math.max(0, rows(name) - (row < rows(name) ? 1 : 0)));
    return typed;
  }
}
