package org.loomwright.store.merge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;

/**
 * Three states of a list whose items are told apart by a key of theirs.
 *
 * @param key the key
 */
record KeyedLists(String key, Keyed base, Keyed theirs, Keyed yours) {
  private static final List<String> KEYS =
      List.of("id", "number", "cavity", "reading", "file", "serial");

  /** Stands for a key where the items are texts and each is its own name. */
  private static final String ITSELF = "";

  /**
   * Paths of lists of texts that are sets: what a job has done. Of other lists of texts some are an
   * order, such as what a run passes through, and in some one text takes the place of another.
   */
  private static final Set<String> SETS = Set.of("done");

  /** A list with its items by name, in their order. */
  record Keyed(ArrayNode node, Map<String, JsonNode> items) {
    private static Optional<Keyed> of(ArrayNode list, String key) {
      Map<String, JsonNode> items = new LinkedHashMap<>();
      for (JsonNode item : list) {
        JsonNode name = key.equals(ITSELF) ? item : item.path(key);
        boolean named =
            item.isObject() != key.equals(ITSELF) && (name.isString() || name.isIntegralNumber());
        // The text of the node keeps the text "1" and the number 1 apart.
        if (!named || items.put(name.toString(), item) != null) {
          return Optional.empty();
        }
      }
      return Optional.of(new Keyed(list, items));
    }

    private List<String> only(Set<String> names) {
      return items.keySet().stream().filter(names::contains).toList();
    }
  }

  /**
   * The lists by the first key that tells the items of all three apart.
   *
   * @param path where they stand in the document
   */
  static Optional<KeyedLists> of(String path, ArrayNode base, ArrayNode theirs, ArrayNode yours) {
    for (String key : KEYS) {
      Optional<Keyed> before = Keyed.of(base, key);
      Optional<Keyed> one = Keyed.of(theirs, key);
      Optional<Keyed> two = Keyed.of(yours, key);
      if (before.isPresent() && one.isPresent() && two.isPresent()) {
        return Optional.of(new KeyedLists(key, before.get(), one.get(), two.get()));
      }
    }
    return SETS.contains(path) ? texts(base, theirs, yours) : Optional.empty();
  }

  /** Lists of texts, none of them twice. */
  private static Optional<KeyedLists> texts(ArrayNode base, ArrayNode theirs, ArrayNode yours) {
    for (ArrayNode list : List.of(base, theirs, yours)) {
      for (JsonNode item : list) {
        if (!item.isString()) {
          return Optional.empty();
        }
      }
    }
    return Keyed.of(base, ITSELF)
        .flatMap(
            before ->
                Keyed.of(theirs, ITSELF)
                    .flatMap(
                        one ->
                            Keyed.of(yours, ITSELF)
                                .map(two -> new KeyedLists(ITSELF, before, one, two))));
  }

  /**
   * Names of all items that nobody took out, in an order that keeps what either side moved, each
   * new item behind the one it was put behind; empty when both sides moved items differently.
   */
  Optional<List<String>> order() {
    Set<String> kept = new LinkedHashSet<>(base.items().keySet());
    kept.retainAll(theirs.items().keySet());
    kept.retainAll(yours.items().keySet());
    List<String> before = base.only(kept);
    List<String> one = theirs.only(kept);
    List<String> two = yours.only(kept);
    List<String> frame = before.equals(one) ? two : one;
    if (!before.equals(one) && !before.equals(two) && !one.equals(two)) {
      return Optional.empty();
    }
    Map<String, List<String>> addedHere = added(theirs, kept);
    Map<String, List<String>> addedThere = added(yours, kept);
    Set<String> order = new LinkedHashSet<>();
    place(order, "", addedHere, addedThere);
    for (String name : frame) {
      order.add(name);
      place(order, name, addedHere, addedThere);
    }
    return Optional.of(List.copyOf(order));
  }

  /** New items by the kept item they stand behind; "" for the start. */
  private Map<String, List<String>> added(Keyed side, Set<String> kept) {
    Map<String, List<String>> added = new LinkedHashMap<>();
    String anchor = "";
    for (String name : side.items().keySet()) {
      if (kept.contains(name)) {
        anchor = name;
      } else if (!base.items().containsKey(name)) {
        added.computeIfAbsent(anchor, it -> new ArrayList<>()).add(name);
      }
    }
    return added;
  }

  /** By name, so that the order of the sides makes no difference. */
  private static void place(
      Set<String> order,
      String anchor,
      Map<String, List<String>> one,
      Map<String, List<String>> two) {
    List<String> first = one.getOrDefault(anchor, List.of());
    List<String> second = two.getOrDefault(anchor, List.of());
    boolean swap = String.join("\n", first).compareTo(String.join("\n", second)) > 0;
    order.addAll(swap ? second : first);
    order.addAll(swap ? first : second);
  }
}
