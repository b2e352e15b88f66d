package org.loomwright.web.edit;

import java.util.stream.Stream;
import org.loomwright.model.json.FormShape;
import tools.jackson.databind.JsonNode;

/** What parts of documents are called. */
final class Titles {
  private static final int LONGEST = 90;

  private Titles() {}

  /** The name of a record, as far as it has one; else the way to it. */
  static String of(Part part) {
    String name = name(part.node());
    return cut(name.isEmpty() ? part.at().last() : name);
  }

  /** What sort of thing a part is. */
  static String noun(Part part) {
    if (part.field().isPresent()) {
      return part.field().get().label();
    }
    return part.shape() instanceof FormShape.Fields it ? it.noun() : "part";
  }

  private static String name(JsonNode node) {
    String ends =
        text(node, "from").isEmpty() ? "" : text(node, "from") + " to " + text(node, "to");
    String called =
        Stream.of(
                text(node, "name"), text(node, "what"), text(node, "exclude"), text(node, "words"))
            .filter(it -> !it.isBlank())
            .findFirst()
            .orElse(node.path("to").isString() ? ends : "");
    String id = ItemNames.own(node).orElse("");
    if (called.isEmpty()) {
      return id;
    }
    return id.isEmpty() || id.equals(called) ? called : called + " (" + id + ")";
  }

  private static String text(JsonNode node, String key) {
    return node.path(key).asString("");
  }

  private static String cut(String text) {
    String line = text.replace('\n', ' ').replace('\r', ' ');
    return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1) + "…";
  }
}
