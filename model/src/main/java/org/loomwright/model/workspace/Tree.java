package org.loomwright.model.workspace;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;

/**
 * Looks ids up in JSON as written. They are taken from there, and not from the records, so that one
 * bad value in an item does not make every reference to the item look wrong too.
 */
final class Tree {
  private Tree() {}

  /** The objects in a list of an object. */
  static List<JsonNode> items(JsonNode object, String list) {
    JsonNode items = object.path(list);
    return IntStream.range(0, items.isArray() ? items.size() : 0).mapToObj(items::get).toList();
  }

  /** The texts under a key of the objects in a list. */
  static List<String> texts(JsonNode object, String list, String key) {
    return items(object, list).stream()
        .map(item -> item.path(key))
        .filter(JsonNode::isString)
        .map(JsonNode::stringValue)
        .toList();
  }

  /** The ids in a list. */
  static List<String> ids(JsonNode object, String list) {
    return texts(object, list, "id");
  }

  /** The object with an id in a list. */
  static Optional<JsonNode> find(JsonNode object, String list, String id) {
    return items(object, list).stream()
        .filter(item -> item.path("id").isString() && item.path("id").stringValue().equals(id))
        .findFirst();
  }
}
