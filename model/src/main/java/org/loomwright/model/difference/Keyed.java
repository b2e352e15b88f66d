package org.loomwright.model.difference;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Two states of a list whose items all have a key of their own; the same rule as for bringing two
 * edits together. Names are the JSON text of the key, so that the text "1" and the number 1 differ.
 *
 * @param key "id", "number" or "cavity"
 * @param before items by name, in their order
 * @param after the same, later
 */
record Keyed(String key, Map<String, JsonNode> before, Map<String, JsonNode> after) {
  private static final List<String> KEYS = List.of("id", "number", "cavity");

  /** By the first key that tells the items of both apart. */
  static Optional<Keyed> of(JsonNode before, JsonNode after) {
    for (String key : KEYS) {
      Optional<Map<String, JsonNode>> one = items(before, key);
      Optional<Map<String, JsonNode>> two = items(after, key);
      if (one.isPresent() && two.isPresent()) {
        return Optional.of(new Keyed(key, one.get(), two.get()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Map<String, JsonNode>> items(JsonNode list, String key) {
    Map<String, JsonNode> items = new LinkedHashMap<>();
    for (JsonNode item : list) {
      JsonNode name = item.path(key);
      boolean named = item.isObject() && (name.isString() || name.isIntegralNumber());
      if (!named || items.put(name.toString(), item) != null) {
        return Optional.empty();
      }
    }
    return Optional.of(items);
  }

  JsonNode was(String name) {
    return before.getOrDefault(name, MissingNode.getInstance());
  }

  JsonNode is(String name) {
    return after.getOrDefault(name, MissingNode.getInstance());
  }

  /** All names, in document order. */
  List<String> names() {
    return Orders.together(List.copyOf(before.keySet()), List.copyOf(after.keySet()));
  }

  /** Items that are the same but for their name: name before to name after. */
  Map<String, String> renamed() {
    Map<JsonNode, String> gone = new HashMap<>();
    before.forEach(
        (name, item) -> {
          if (!after.containsKey(name)) {
            gone.putIfAbsent(nameless(item), name);
          }
        });
    Map<String, String> renamed = new LinkedHashMap<>();
    after.forEach(
        (name, item) -> {
          if (!before.containsKey(name) && item.size() > 1) {
            String old = gone.remove(nameless(item));
            if (old != null) {
              renamed.put(old, name);
            }
          }
        });
    return renamed;
  }

  private JsonNode nameless(JsonNode item) {
    ObjectNode copy = (ObjectNode) item.deepCopy();
    copy.remove(key);
    return copy;
  }
}
