package org.loomwright.model.difference;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.difference.Difference.Kind;
import tools.jackson.databind.JsonNode;

/**
 * What differs between two revisions of a document, in words and in document order. Works on any
 * JSON: documents of unknown kinds, unfinished and faulty ones too.
 *
 * <p>Objects are compared key by key. Lists whose items all have an own "id", "number" or "cavity"
 * are compared item by item, wherever an item stands; the text "1" and the number 1 are two keys.
 * Lists of plain values are compared as wholes: what came, what went, whether the order changed.
 * Items of other lists are taken for the same when most of what they say is the same.
 */
public final class DocumentDifference {
  /**
   * With more items in other places than this, only the whole list is said to be in another order.
   */
  private static final int MOVES_TOLD = 3;

  private final List<Difference> found = new ArrayList<>();

  private DocumentDifference() {}

  /**
   * The differences; empty when both are equal. A quantity written in another way is a difference,
   * the order of keys in an object is not.
   */
  public static List<Difference> between(JsonNode before, JsonNode after) {
    DocumentDifference difference = new DocumentDifference();
    difference.value(Where.ROOT, before, after);
    return List.copyOf(difference.found);
  }

  private void value(Where at, JsonNode before, JsonNode after) {
    if (before.equals(after)) {
      return;
    }
    if (before.isMissingNode()) {
      add(at, Kind.ADDED, FieldChange.added(at, after), before, after);
    } else if (after.isMissingNode()) {
      add(at, Kind.REMOVED, FieldChange.removed(at, before), before, after);
    } else if (before.isObject() && after.isObject()) {
      object(at, before, after);
    } else if (before.isArray() && after.isArray()) {
      list(at, before, after);
    } else if (!sameNumber(before, after)) {
      add(at, Kind.CHANGED, FieldChange.changed(at, before, after), before, after);
    }
  }

  /** Numbers made by programs can be equal in two ways; written, they are one. */
  private static boolean sameNumber(JsonNode before, JsonNode after) {
    return before.isNumber() && after.isNumber() && before.toString().equals(after.toString());
  }

  private void object(Where at, JsonNode before, JsonNode after) {
    List<String> keys =
        Orders.together(List.copyOf(before.propertyNames()), List.copyOf(after.propertyNames()));
    boolean sourced = Set.of("value", "source").containsAll(keys) && keys.contains("value");
    for (String key : keys) {
      boolean itself = sourced && key.equals("value") && !at.field().isEmpty();
      value(at.key(key, itself), before.path(key), after.path(key));
    }
  }

  private void list(Where at, JsonNode before, JsonNode after) {
    Optional<Keyed> keyed = Keyed.of(before, after);
    if (keyed.isPresent()) {
      keyed(at, keyed.get());
    } else if (plain(before) && plain(after)) {
      plainLists(at, before, after);
    } else {
      loose(at, before, after);
    }
  }

  private static boolean plain(JsonNode list) {
    for (JsonNode item : list) {
      if (item.isContainer()) {
        return false;
      }
    }
    return true;
  }

  private void keyed(Where at, Keyed lists) {
    Map<String, String> renamed = lists.renamed();
    Set<String> newNames = new HashSet<>(renamed.values());
    for (String name : lists.names()) {
      JsonNode was = lists.was(name);
      JsonNode is = lists.is(name);
      Where item = at.item(lists.key() + "=" + name, noun(at, lists, name, was, is));
      if (newNames.contains(name)) {
        continue;
      }
      String newName = renamed.get(name);
      if (newName != null) {
        Where key = item.key(lists.key(), false);
        JsonNode is2 = lists.is(newName).path(lists.key());
        add(
            key,
            Kind.CHANGED,
            item.subject() + " is now called " + ValueWords.of(lists.key(), is2),
            was.path(lists.key()),
            is2);
      } else if (was.isMissingNode()) {
        add(item, Kind.ADDED, FieldChange.newItem(item, is, lists.key()), was, is);
      } else if (is.isMissingNode()) {
        add(item, Kind.REMOVED, item.subject() + " taken out", was, is);
      } else {
        value(item, was, is);
      }
    }
    order(at, lists);
  }

  private static String noun(Where at, Keyed lists, String name, JsonNode was, JsonNode is) {
    JsonNode key = (is.isMissingNode() ? was : is).path(lists.key());
    String shown = Text.line(key.asString(), Text.NAME);
    String twin = key.isString() ? key.asString() : "\"" + key.asString() + "\"";
    boolean twins = lists.before().containsKey(twin) || lists.after().containsKey(twin);
    return FieldWords.singular(at.field())
        + " "
        + (shown.isBlank() ? "\"" + shown + "\"" : shown)
        + (twins && !twin.equals(name) ? key.isString() ? " (as text)" : " (as a number)" : "");
  }

  private void order(Where at, Keyed lists) {
    List<String> before = new ArrayList<>(lists.before().keySet());
    List<String> after = new ArrayList<>(lists.after().keySet());
    before.retainAll(lists.after().keySet());
    after.retainAll(lists.before().keySet());
    Set<String> moved = Orders.moved(before, after);
    if (moved.size() > MOVES_TOLD) {
      String words = at.subjectAnd(FieldWords.of(at.field()) + " in another order");
      found.add(new Difference(at.path(), words, Kind.MOVED, Optional.empty(), Optional.empty()));
      return;
    }
    for (String name : moved) {
      Where item =
          at.item(lists.key() + "=" + name, noun(at, lists, name, lists.was(name), lists.is(name)));
      String now = place(at, lists, after, name);
      found.add(
          new Difference(
              item.path(),
              item.subject() + " moved: now " + now,
              Kind.MOVED,
              Optional.of(place(at, lists, before, name)),
              Optional.of(now)));
    }
  }

  private static String place(Where at, Keyed lists, List<String> order, String name) {
    int index = order.indexOf(name);
    if (index == 0) {
      return "first";
    }
    String other = order.get(index - 1);
    return "behind " + noun(at, lists, other, lists.was(other), lists.is(other));
  }

  private void plainLists(Where at, JsonNode before, JsonNode after) {
    List<JsonNode> was = items(before);
    List<JsonNode> is = items(after);
    List<JsonNode> gone = Orders.without(was, is).stream().map(was::get).toList();
    List<JsonNode> come = Orders.without(is, was).stream().map(is::get).toList();
    boolean sameOrder = Orders.sameOrder(was, is);
    Kind kind =
        gone.isEmpty() && come.isEmpty()
            ? Kind.MOVED
            : !sameOrder || (!gone.isEmpty() && !come.isEmpty())
                ? Kind.CHANGED
                : gone.isEmpty() ? Kind.ADDED : Kind.REMOVED;
    add(at, kind, FieldChange.plainList(at, gone, come, sameOrder, before, after), before, after);
  }

  /** Items without keys: equal ones are the same, and so are those that say nearly the same. */
  private void loose(Where at, JsonNode before, JsonNode after) {
    List<JsonNode> was = items(before);
    List<JsonNode> is = items(after);
    List<Integer> gone = new ArrayList<>(Orders.without(was, is));
    List<Integer> come = Orders.without(is, was);
    int seen = found.size();
    for (int index : come) {
      JsonNode item = is.get(index);
      Optional<Integer> twin = Likeness.best(item, gone, was, index);
      if (twin.isPresent()) {
        gone.remove(twin.get());
        value(at.item(String.valueOf(index), name(at, is, index)), was.get(twin.get()), item);
      } else {
        Where there = at.item(String.valueOf(index), name(at, is, index));
        add(there, Kind.ADDED, FieldChange.newItem(there, item, ""), FieldChange.NOTHING, item);
      }
    }
    for (int index : gone) {
      Where there = at.item(String.valueOf(index), name(at, was, index));
      add(
          there,
          Kind.REMOVED,
          FieldChange.goneItem(there, was.get(index)),
          was.get(index),
          FieldChange.NOTHING);
    }
    if (!Orders.sameOrder(was, is) && found.size() == seen) {
      add(
          at,
          Kind.MOVED,
          at.subjectAnd(FieldWords.of(at.field()) + " in another order"),
          before,
          after);
    }
  }

  private static String name(Where at, List<JsonNode> list, int index) {
    String noun = FieldWords.singular(at.field());
    return noun + " " + ValueWords.ownName(list.get(index)).orElse(String.valueOf(index + 1));
  }

  private static List<JsonNode> items(JsonNode list) {
    List<JsonNode> items = new ArrayList<>();
    list.forEach(items::add);
    return items;
  }

  private void add(Where at, Kind kind, String words, JsonNode before, JsonNode after) {
    found.add(new Difference(at.path(), words, kind, shown(at, before), shown(at, after)));
  }

  private static Optional<String> shown(Where at, JsonNode value) {
    return value.isMissingNode() ? Optional.empty() : Optional.of(ValueWords.of(at.field(), value));
  }
}
