package org.loomwright.store.merge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.model.json.Paths;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Merges two edits of one JSON tree, given what both started from.
 *
 * <p>What only one side changed is taken from that side, what both changed alike is taken once.
 * Objects are compared key by key; lists of objects that all have an own "id", "number", "cavity",
 * "reading", "file" or "serial", and the steps that a job has done, item by item, wherever the item
 * stands; all other values are one part each. A part both sides changed in different ways, or one
 * changed and the other removed, is a clash.
 */
public final class JsonMerge {
  private final List<Clash> clashes = new ArrayList<>();

  private JsonMerge() {}

  /** What came of it. */
  public sealed interface Result {}

  /** One tree with both edits. */
  public record Clean(JsonNode tree) implements Result {}

  /** The edits don't go together. */
  public record Clashing(List<Clash> clashes) implements Result {
    public Clashing {
      clashes = List.copyOf(clashes);
    }
  }

  /** Brings two edits together; which of them comes first makes no difference to the tree. */
  public static Result merge(JsonNode base, JsonNode theirs, JsonNode yours) {
    JsonMerge merge = new JsonMerge();
    JsonNode tree = merge.value("", base, theirs, yours);
    return merge.clashes.isEmpty() ? new Clean(tree) : new Clashing(merge.clashes);
  }

  private JsonNode value(String path, JsonNode base, JsonNode theirs, JsonNode yours) {
    if (theirs.equals(yours) || base.equals(yours)) {
      return theirs;
    }
    if (base.equals(theirs)) {
      return yours;
    }
    if (base.isObject() && theirs.isObject() && yours.isObject()) {
      return object(path, base, theirs, yours);
    }
    if (base instanceof ArrayNode before
        && theirs instanceof ArrayNode one
        && yours instanceof ArrayNode two) {
      Optional<KeyedLists> lists = KeyedLists.of(path, before, one, two);
      if (lists.isPresent()) {
        return list(path, lists.get());
      }
    }
    clash(path, base, theirs, yours);
    return base;
  }

  private JsonNode object(String path, JsonNode base, JsonNode theirs, JsonNode yours) {
    Set<String> keys = new LinkedHashSet<>(base.propertyNames());
    Set<String> added = new TreeSet<>(theirs.propertyNames());
    added.addAll(yours.propertyNames());
    keys.addAll(added);
    ObjectNode merged = JsonNodeFactory.instance.objectNode();
    for (String key : keys) {
      JsonNode part =
          value(Paths.key(path, key), base.path(key), theirs.path(key), yours.path(key));
      if (!part.isMissingNode()) {
        merged.set(key, part);
      }
    }
    return merged;
  }

  private JsonNode list(String path, KeyedLists lists) {
    ArrayNode merged = JsonNodeFactory.instance.arrayNode();
    Optional<List<String>> order = lists.order();
    if (order.isEmpty()) {
      clash(path, lists.base().node(), lists.theirs().node(), lists.yours().node());
      return merged;
    }
    Set<String> names = new LinkedHashSet<>(order.get());
    // Those taken out by both, or by one, stand in no order, but may clash with a change.
    names.addAll(lists.base().items().keySet());
    for (String name : names) {
      JsonNode part =
          value(
              path + "[" + lists.key() + "=" + name + "]",
              item(lists.base(), name),
              item(lists.theirs(), name),
              item(lists.yours(), name));
      if (!part.isMissingNode()) {
        merged.add(part);
      }
    }
    return merged;
  }

  private static JsonNode item(KeyedLists.Keyed list, String name) {
    return list.items().getOrDefault(name, MissingNode.getInstance());
  }

  private void clash(String path, JsonNode base, JsonNode theirs, JsonNode yours) {
    clashes.add(new Clash(path, text(base), text(theirs), text(yours)));
  }

  private static Optional<String> text(JsonNode node) {
    return node.isMissingNode() ? Optional.empty() : Optional.of(node.toString());
  }
}
