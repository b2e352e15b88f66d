package org.loomwright.model.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON of no kind at all, drawn from few words so that things often look alike. */
final class RandomTrees {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final List<String> KEYS =
      List.of(
          "id", "number", "cavity", "name", "values", "wet", "need", "value", "source", "to", "");
  private static final List<String> TEXTS =
      List.of(
          "1", "a", "b", " a", "", "1 m", "1000 mm", "always", "slot block F7", "x = y", "\u0000");

  private RandomTrees() {}

  static String text(Random random, int depth) {
    return node(random, depth).toString();
  }

  private static JsonNode node(Random random, int depth) {
    int sort = random.nextInt(depth > 0 ? 9 : 4);
    if (sort > 5) {
      ArrayNode list = NODES.arrayNode();
      int size = random.nextInt(5);
      boolean objects = random.nextBoolean();
      for (int i = 0; i < size; i++) {
        list.add(objects ? object(random, depth - 1) : node(random, depth - 1));
      }
      return list;
    }
    if (sort > 3) {
      return object(random, depth - 1);
    }
    return switch (random.nextInt(6)) {
      case 0 -> NODES.nullNode();
      case 1 -> NODES.booleanNode(random.nextBoolean());
      case 2 -> NODES.numberNode(random.nextInt(3));
      case 3 -> NODES.numberNode(random.nextInt(3) / 2.0);
      default -> NODES.stringNode(TEXTS.get(random.nextInt(TEXTS.size())));
    };
  }

  private static ObjectNode object(Random random, int depth) {
    ObjectNode object = NODES.objectNode();
    int size = random.nextInt(5);
    for (int i = 0; i < size; i++) {
      object.set(KEYS.get(random.nextInt(KEYS.size())), node(random, depth));
    }
    return object;
  }

  /** Changes something somewhere; the root stays as it is when it holds nothing. */
  static void change(JsonNode tree, Random random) {
    List<JsonNode> holders = new ArrayList<>();
    collect(tree, holders);
    if (holders.isEmpty()) {
      return;
    }
    JsonNode holder = holders.get(random.nextInt(holders.size()));
    if (holder instanceof ObjectNode object) {
      String key = KEYS.get(random.nextInt(KEYS.size()));
      if (random.nextBoolean()) {
        object.remove(key);
      } else {
        object.set(key, node(random, 1));
      }
    } else if (holder instanceof ArrayNode list) {
      int at = random.nextInt(list.size() + 1);
      if (at == list.size() || random.nextInt(3) == 0) {
        list.insert(at, node(random, 1));
      } else if (random.nextBoolean()) {
        list.remove(at);
      } else {
        list.insert(0, list.remove(at));
      }
    }
  }

  private static void collect(JsonNode node, List<JsonNode> holders) {
    if (node.isContainer()) {
      holders.add(node);
      node.forEach(child -> collect(child, holders));
    }
  }
}
