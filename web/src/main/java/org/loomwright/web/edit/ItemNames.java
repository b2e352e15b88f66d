package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** What the items of a list are called in addresses. */
final class ItemNames {
  private static final List<String> KEYS = List.of("id", "number", "cavity");

  private ItemNames() {}

  /** The name an item has of itself; empty when it has none. */
  static Optional<String> own(JsonNode item) {
    return KEYS.stream()
        .map(item::path)
        .filter(JsonNode::isString)
        .map(JsonNode::stringValue)
        .filter(it -> !it.isBlank())
        .findFirst();
  }

  /** The way to each item of a list: by its name where no other has the same, else by its place. */
  static List<PartPath> paths(PartPath list, JsonNode items) {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new HashSet<>();
    for (JsonNode item : items) {
      own(item).filter(it -> !seen.add(it)).ifPresent(twice::add);
    }
    List<PartPath> paths = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      int index = i;
      paths.add(
          own(items.get(i))
              .filter(it -> !twice.contains(it))
              .map(list::to)
              .orElseGet(() -> list.to(index)));
    }
    return paths;
  }

  /** The place of the item a step means; -1 when there is none. */
  static int index(JsonNode items, String step) {
    int index = PartPath.index(step);
    if (index >= 0) {
      return index < items.size() ? index : -1;
    }
    String name = PartPath.name(step);
    for (int i = 0; i < items.size(); i++) {
      if (own(items.get(i)).filter(name::equals).isPresent()) {
        return i;
      }
    }
    return -1;
  }
}
