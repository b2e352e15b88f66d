package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import org.loomwright.model.json.Paths;
import org.loomwright.model.workspace.Problem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * Turns what was typed into a record. A value whose field was left as it was opened stays exactly
 * as it is on file, whatever it is; so do keys that no field shows.
 */
final class FormReader {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Typed typed;
  private final Map<String, String> fields = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private FormReader(Typed typed) {
    this.typed = typed;
  }

  /**
   * What was read.
   *
   * @param record the record
   * @param fields name of the field for each path in the document
   * @param problems what no record can hold
   */
  record Result(ObjectNode record, Map<String, String> fields, List<Problem> problems) {}

  /**
   * Reads a form.
   *
   * @param base the record on file; missing for a new one
   * @param path where it is in the document
   * @param taken ids a new record can't have
   */
  static Result read(
      FormShape.Fields shape, JsonNode base, Typed typed, String path, Set<String> taken) {
    FormReader reader = new FormReader(typed);
    reader.fields.put(path, Complaints.FORM);
    ObjectNode record = reader.record(Typed.ROOT, shape, base, path, path.isEmpty(), taken);
    return new Result(record, reader.fields, reader.problems);
  }

  private ObjectNode record(
      String name,
      FormShape.Fields shape,
      JsonNode base,
      String path,
      boolean isDocument,
      Set<String> taken) {
    ObjectNode record = base instanceof ObjectNode it ? it.deepCopy() : NODES.objectNode();
    for (FormField field : shape.fields()) {
      String at = name + "." + field.key();
      String where = Paths.key(path, field.key());
      JsonNode node = base.path(field.key());
      Sorts sort = Sorts.of(field, isDocument);
      if (sort != Sorts.OWN_FORM && sort != Sorts.OWN_FORMS) {
        fields.put(where, at);
      }
      JsonNode now =
          switch (sort) {
            case INPUT -> typed.get(at).equals(Typed.text(node)) ? node : input(field, at);
            case LINES -> typed.get(at).equals(Typed.linesOf(node)) ? node : lines(at);
            case GROUP -> group(field, at, node, where);
            case ROWS -> rows(field, at, node, where);
            case ENTRIES -> entries(at, node, where);
            case OWN_FORM, OWN_FORMS -> node;
          };
      if (now.isMissingNode()) {
        record.remove(field.key());
      } else {
        record.set(field.key(), now);
      }
    }
    boolean nameless = shape.field("id").isPresent() && !record.has("id");
    if (nameless && base.isMissingNode() && !record.isEmpty()) {
      record.put("id", NewId.of(record, shape.noun(), taken));
    }
    return record;
  }

  private JsonNode input(FormField field, String at) {
    String text = typed.get(at);
    if (text.isBlank()) {
      return MissingNode.getInstance();
    }
    if (field.shape() instanceof FormShape.YesNo) {
      return text.equals("true") ? BooleanNode.TRUE : StringNode.valueOf(text);
    }
    String plain = text.strip();
    if (field.shape() instanceof FormShape.Whole && plain.matches("-?\\d{1,30}")) {
      return NODES.numberNode(new java.math.BigInteger(plain));
    }
    return StringNode.valueOf(plain);
  }

  private JsonNode lines(String at) {
    ArrayNode list = NODES.arrayNode();
    typed.get(at).lines().map(String::strip).filter(it -> !it.isEmpty()).forEach(list::add);
    return list.isEmpty() ? MissingNode.getInstance() : list;
  }

  private JsonNode group(FormField field, String at, JsonNode node, String where) {
    if (!(field.shape() instanceof FormShape.Fields shape)) {
      return node;
    }
    boolean ticked = typed.get(Typed.present(at)).equals("true");
    boolean typedInto = typed.anyBelow(at);
    if (!node.isMissingNode() && !node.isObject() && !typedInto) {
      return node;
    }
    boolean wanted = field.required() || ticked || (node.isMissingNode() && typedInto);
    return wanted ? record(at, shape, node, where, false, Set.of()) : MissingNode.getInstance();
  }

  private JsonNode rows(FormField field, String at, JsonNode node, String where) {
    if (!(field.shape() instanceof FormShape.Items list
        && list.item() instanceof FormShape.Fields shape)) {
      return node;
    }
    ArrayNode rows = NODES.arrayNode();
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < typed.rows(at); i++) {
      taken.add(typed.get(at + "." + i + ".id").strip());
    }
    for (int i = 0; i < typed.rows(at); i++) {
      String row = at + "." + i;
      String origin = typed.get(Typed.origin(at, i));
      JsonNode base =
          origin.matches("\\d{1,4}") ? node.path(Integer.parseInt(origin)) : node.path(-1);
      if (typed.anyBelow(row)) {
        String here = Paths.item(where, rows.size());
        fields.put(here, row);
        ObjectNode record = record(row, shape, base, here, false, taken);
        ItemNames.own(record).ifPresent(taken::add);
        rows.add(record);
      }
    }
    return rows.isEmpty() && node.isEmpty()
        ? node
        : rows.isEmpty() ? MissingNode.getInstance() : rows;
  }

  private JsonNode entries(String at, JsonNode node, String where) {
    ObjectNode entries = NODES.objectNode();
    for (int i = 0; i < typed.rows(at); i++) {
      String row = at + "." + i;
      String typedKey = typed.get(row + ".key");
      String text = typed.get(row + ".value");
      if (typedKey.isBlank() && text.isBlank()) {
        continue;
      }
      String key =
          node.propertyNames().stream()
              .filter(it -> it.equals(typedKey))
              .findFirst()
              .orElse(typedKey.strip());
      if (key.isEmpty() || entries.has(key)) {
        String message =
            key.isEmpty() ? "write the key this stands for" : "'" + key + "' is there twice";
        String place = where + ".row" + i;
        fields.put(place, row + ".key");
        problems.add(new Problem("", place, key, message));
        continue;
      }
      fields.put(Paths.key(where, key), row + ".value");
      JsonNode old = node.path(key);
      boolean same = !old.isMissingNode() && Typed.text(old).equals(text);
      entries.set(key, same ? old : StringNode.valueOf(text.strip()));
    }
    return entries.isEmpty() && node.isEmpty()
        ? node
        : entries.isEmpty() ? MissingNode.getInstance() : entries;
  }
}
