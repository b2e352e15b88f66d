package org.loomwright.model.difference;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.loomwright.model.difference.Difference.Kind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Plants edits that don't touch one another into a tree, and knows what must be told of them. */
final class Planter {
  /** What must be found. */
  record Planted(String path, Kind kind) {}

  private record Edit(String path, String area, Kind kind, Runnable make) {}

  private final Random random;
  private final List<Edit> edits = new ArrayList<>();
  private int fresh;

  private Planter(Random random) {
    this.random = random;
  }

  /** Changes the tree. */
  static List<Planted> plant(JsonNode tree, int count, Random random) {
    Planter planter = new Planter(random);
    planter.collect(tree, "", "");
    List<Planted> planted = new ArrayList<>();
    List<Edit> chosen = new ArrayList<>();
    for (int i = 0; i < count * 5 && chosen.size() < count; i++) {
      Edit edit = planter.edits.get(random.nextInt(planter.edits.size()));
      boolean apart =
          chosen.stream()
              .noneMatch(it -> holds(it.area(), edit.area()) || holds(edit.area(), it.area()));
      if (apart) {
        chosen.add(edit);
        planted.add(new Planted(edit.path(), edit.kind()));
      }
    }
    chosen.forEach(it -> it.make().run());
    return planted;
  }

  private static boolean holds(String outer, String inner) {
    return inner.equals(outer) || inner.startsWith(outer + ".") || inner.startsWith(outer + "[");
  }

  /**
   * @param area the part of the tree nothing else may be planted into; that of an outer list where
   *     its items have no keys
   */
  private void collect(JsonNode node, String path, String area) {
    if (node instanceof ObjectNode object) {
      object(object, path, area);
    } else if (node instanceof ArrayNode list) {
      list(list, path, area);
    }
  }

  private void object(ObjectNode object, String path, String area) {
    for (String key : List.copyOf(object.propertyNames())) {
      String inner = path.isEmpty() ? key : path + "." + key;
      String own = area.isEmpty() ? inner : area;
      JsonNode value = object.path(key);
      if (Set.of("id", "number", "cavity").contains(key)) {
        continue;
      }
      if (value.isContainer()) {
        collect(value, inner, area);
      } else {
        edits.add(
            new Edit(inner, own, Kind.CHANGED, () -> object.put(key, value.asString() + "~")));
      }
      edits.add(new Edit(inner, own, Kind.REMOVED, () -> object.remove(key)));
    }
    String key = "extra" + fresh++;
    String inner = path.isEmpty() ? key : path + "." + key;
    edits.add(
        new Edit(inner, area.isEmpty() ? inner : area, Kind.ADDED, () -> object.put(key, "new")));
  }

  private void list(ArrayNode list, String path, String area) {
    if (list.isEmpty()) {
      return;
    }
    String key = key(list);
    if (!key.isEmpty()) {
      keyed(list, key, path, area);
    } else if (list.valueStream().noneMatch(JsonNode::isContainer)) {
      String own = area.isEmpty() ? path : area;
      int at = random.nextInt(list.size());
      edits.add(new Edit(path, own, Kind.ADDED, () -> list.insert(at, "value" + fresh++)));
      edits.add(new Edit(path, own, Kind.REMOVED, () -> list.remove(at)));
      edits.add(new Edit(path, own, Kind.CHANGED, () -> list.set(at, "value" + fresh++)));
      if (at > 0 && !list.get(0).equals(list.get(at))) {
        edits.add(new Edit(path, own, Kind.MOVED, () -> list.insert(0, list.remove(at))));
      }
    } else {
      loose(list, path, area.isEmpty() ? path : area);
    }
  }

  private void keyed(ArrayNode list, String key, String path, String area) {
    for (JsonNode item : list) {
      String inner = path + "[" + key + "=" + item.path(key) + "]";
      collect(item, inner, area);
      edits.add(
          new Edit(
              inner,
              area.isEmpty() ? inner : area,
              Kind.REMOVED,
              () -> list.remove(list.valueStream().toList().indexOf(item))));
    }
    String name = "fresh" + fresh++;
    String inner = path + "[" + key + "=\"" + name + "\"]";
    String own = area.isEmpty() ? inner : area;
    edits.add(
        new Edit(
            inner,
            own,
            Kind.ADDED,
            () -> list.insert(random.nextInt(list.size() + 1), fresh(key, name))));
    int last = list.size() - 1;
    if (last > 1) {
      JsonNode item = list.get(last);
      String moved = path + "[" + key + "=" + item.path(key) + "]";
      edits.add(
          new Edit(
              moved,
              // The edit of another item must not take away what this one is moved past.
              area.isEmpty() ? path : area,
              Kind.MOVED,
              () -> list.insert(0, list.remove(list.valueStream().toList().indexOf(item)))));
    }
  }

  private ObjectNode fresh(String key, String name) {
    ObjectNode item = tools.jackson.databind.node.JsonNodeFactory.instance.objectNode();
    return item.put(key, name).put("what", name);
  }

  private void loose(ArrayNode list, String path, String area) {
    Set<JsonNode> seen = new HashSet<>();
    for (int i = 0; i < list.size(); i++) {
      JsonNode item = list.get(i);
      if (!seen.add(item)) {
        continue;
      }
      if (item.size() > 1) {
        collect(item, path + "[" + i + "]", area);
      }
      int at = i;
      edits.add(new Edit(path + "[" + i + "]", area, Kind.REMOVED, () -> list.remove(at)));
    }
    edits.add(
        new Edit(
            path + "[" + list.size() + "]",
            area,
            Kind.ADDED,
            () -> list.addObject().put("entirely", "new" + fresh++)));
  }

  private static String key(ArrayNode list) {
    for (String key : List.of("id", "number", "cavity")) {
      Set<JsonNode> names = new HashSet<>();
      boolean all = true;
      for (JsonNode item : list) {
        JsonNode name = item.path(key);
        all &= (name.isString() || name.isIntegralNumber()) && names.add(name);
      }
      if (all) {
        return key;
      }
    }
    return "";
  }
}
