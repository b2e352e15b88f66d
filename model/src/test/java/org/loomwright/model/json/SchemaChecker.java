package org.loomwright.model.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/** Checks JSON against a schema, for the keywords that the published schemas use and no others. */
final class SchemaChecker {
  private static final Set<String> KNOWN =
      Set.of(
          "$schema",
          "$defs",
          "$ref",
          "title",
          "description",
          "type",
          "properties",
          "required",
          "additionalProperties",
          "items",
          "enum",
          "const",
          "pattern",
          "minimum",
          "maximum");

  private final JsonNode root;
  private final List<String> errors = new ArrayList<>();

  private SchemaChecker(JsonNode root) {
    this.root = root;
  }

  static List<String> errors(JsonNode schema, JsonNode value) {
    SchemaChecker checker = new SchemaChecker(schema);
    checker.check(schema, value, "");
    return checker.errors;
  }

  private void check(JsonNode schema, JsonNode value, String path) {
    for (String keyword : schema.propertyNames()) {
      if (!KNOWN.contains(keyword)) {
        throw new IllegalArgumentException("keyword " + keyword);
      }
    }
    if (schema.has("$ref")) {
      String name = schema.get("$ref").stringValue().substring("#/$defs/".length());
      check(root.get("$defs").get(name), value, path);
    }
    if (schema.has("const") && !schema.get("const").equals(value)) {
      errors.add(path + ": not " + schema.get("const"));
    }
    if (schema.has("enum") && !contains(schema.get("enum"), value)) {
      errors.add(path + ": none of " + schema.get("enum"));
    }
    if (schema.has("type") && !isOf(schema.get("type").stringValue(), value)) {
      errors.add(path + ": no " + schema.get("type").stringValue());
      return;
    }
    if (schema.has("pattern")
        && !Pattern.compile(schema.get("pattern").stringValue())
            .matcher(value.stringValue())
            .find()) {
      errors.add(path + ": unlike " + schema.get("pattern"));
    }
    boolean low = schema.has("minimum") && value.doubleValue() < schema.get("minimum").intValue();
    boolean high = schema.has("maximum") && value.doubleValue() > schema.get("maximum").intValue();
    if (low || high) {
      errors.add(path + ": out of range");
    }
    for (int i = 0; schema.has("items") && i < value.size(); i++) {
      check(schema.get("items"), value.get(i), Paths.item(path, i));
    }
    if (value.isObject()) {
      object(schema, value, path);
    }
  }

  private void object(JsonNode schema, JsonNode value, String path) {
    for (JsonNode key : schema.path("required")) {
      if (!value.has(key.stringValue())) {
        errors.add(Paths.key(path, key.stringValue()) + ": missing");
      }
    }
    for (Map.Entry<String, JsonNode> entry : value.properties()) {
      String at = Paths.key(path, entry.getKey());
      JsonNode property = schema.path("properties").path(entry.getKey());
      JsonNode other = schema.path("additionalProperties");
      if (property.isObject()) {
        check(property, entry.getValue(), at);
      } else if (other.isObject()) {
        check(other, entry.getValue(), at);
      } else if (other.isBoolean() && !other.booleanValue()) {
        errors.add(at + ": not allowed");
      }
    }
  }

  private static boolean contains(JsonNode words, JsonNode value) {
    for (JsonNode word : words) {
      if (word.equals(value)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOf(String type, JsonNode value) {
    return switch (type) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isString();
      case "boolean" -> value.isBoolean();
      case "integer" -> value.isIntegralNumber();
      default -> throw new IllegalArgumentException("type " + type);
    };
  }
}
