package org.loomwright.model.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * Turns one JSON tree into records and collects everything that is wrong with it. After a fault it
 * goes on with a stand-in, so that the rest can still be checked; what it gives then is for further
 * checks only.
 */
class RecordBinder {
  private final List<Fault> faults = new ArrayList<>();
  private final IdentityHashMap<Object, String> paths = new IdentityHashMap<>();
  private final Set<Object> faulty = Collections.newSetFromMap(new IdentityHashMap<>());

  /** The faults found so far, in the order of the records' components. */
  List<Fault> faults() {
    return faults;
  }

  /** Where each record was read from. */
  IdentityHashMap<Object, String> paths() {
    return paths;
  }

  /** Records with a fault in or below them. */
  Set<Object> faulty() {
    return faulty;
  }

  void fault(String path, String value, String message) {
    faults.add(new Fault(path, value, message));
  }

  /** The value of a key, or null when left out. Tests plant faults here. */
  @Nullable JsonNode child(JsonNode object, String key) {
    return object.get(key);
  }

  /**
   * Reads an object into its record.
   *
   * @param otherKeys keys that are allowed beside those of the record
   * @return empty when not even a record with stand-ins can be made
   */
  Optional<Object> fields(JsonNode node, Shape.Fields shape, String path, List<String> otherKeys) {
    if (!node.isObject()) {
      wrongSort(node, shape, path);
      return Optional.empty();
    }
    int before = faults.size();
    Set<String> meant = unknownKeys(node, shape, path, otherKeys);
    Object[] values = new Object[shape.fields().size()];
    boolean complete = true;
    for (int i = 0; i < values.length; i++) {
      Shape.Field field = shape.fields().get(i);
      String at = Paths.key(path, field.key());
      JsonNode child = child(node, field.key());
      Optional<Object> absent = field.shape().whenAbsent();
      Optional<Object> value = child == null ? absent : bind(child, field.shape(), at);
      if (child == null && absent.isEmpty() && !meant.contains(field.key())) {
        fault(at, "", "the key '" + field.key() + "' is missing: " + field.shape().words());
      }
      complete &= value.isPresent();
      values[i] = value.or(() -> absent).orElseGet(field.shape()::standIn);
    }
    try {
      Object made = shape.construct(values);
      paths.put(made, path);
      if (faults.size() > before) {
        faulty.add(made);
      }
      return Optional.of(made);
    } catch (IllegalArgumentException e) {
      // A refusal that a stand-in may have caused would only confuse.
      if (complete && faults.size() == before) {
        fault(path, Values.shown(node), String.valueOf(e.getMessage()));
      }
      return Optional.empty();
    }
  }

  /** Says which keys are not known; gives the keys that were probably meant. */
  private Set<String> unknownKeys(
      JsonNode node, Shape.Fields shape, String path, List<String> otherKeys) {
    List<String> known =
        Stream.concat(otherKeys.stream(), shape.fields().stream().map(Shape.Field::key)).toList();
    List<String> unused = known.stream().filter(key -> !node.has(key)).toList();
    Set<String> meant = new LinkedHashSet<>();
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      String key = entry.getKey();
      if (known.contains(key)) {
        continue;
      }
      Nearest.to(key, unused).ifPresent(meant::add);
      fault(
          Paths.key(path, key),
          Values.shown(entry.getValue()),
          "'"
              + Values.printable(key)
              + "' is not a key of a "
              + shape.noun()
              + (unused.isEmpty()
                  ? "; leave it out"
                  : Nearest.hint(key, "keys not used yet are", unused)));
    }
    return meant;
  }

  private Optional<Object> bind(JsonNode node, Shape shape, String path) {
    if (shape instanceof Shape.Maybe maybe) {
      Optional<Object> inner = bind(node, maybe.inner(), path);
      return inner.isPresent() ? Optional.of(inner) : Optional.empty();
    }
    if (shape instanceof Shape.Fields fields) {
      return fields(node, fields, path, List.of());
    }
    if (shape instanceof Shape.ListOf list && node.isArray()) {
      return Optional.of(list(node, list, path));
    }
    if (shape instanceof Shape.MapOf map && node.isObject()) {
      return Optional.of(map(node, map, path));
    }
    if (shape instanceof Shape.Truth && node.isBoolean()) {
      return Optional.of(node.booleanValue());
    }
    if (shape instanceof Shape.Whole && node.isNumber()) {
      return whole(node, path);
    }
    if (node.isString()) {
      String text = node.stringValue();
      if (shape instanceof Shape.Text) {
        return text(text, path);
      }
      if (shape instanceof Shape.Word word) {
        return word(text, word, path);
      }
      if (shape instanceof Shape.Formed formed) {
        return formed(text, formed, path);
      }
    }
    wrongSort(node, shape, path);
    return Optional.empty();
  }

  private List<Object> list(JsonNode node, Shape.ListOf shape, String path) {
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      bind(node.get(i), shape.item(), Paths.item(path, i)).ifPresent(items::add);
    }
    return items;
  }

  private Map<String, Object> map(JsonNode node, Shape.MapOf shape, String path) {
    Map<String, Object> items = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      bind(entry.getValue(), shape.item(), Paths.key(path, entry.getKey()))
          .ifPresent(item -> items.put(entry.getKey(), item));
    }
    return items;
  }

  private Optional<Object> whole(JsonNode node, String path) {
    if (node.isIntegralNumber() && node.canConvertToInt() && node.intValue() >= 0) {
      return Optional.of(node.intValue());
    }
    fault(
        path,
        Values.shown(node),
        Values.shown(node) + " can't stand here: a whole number, zero or more, must");
    return Optional.empty();
  }

  private Optional<Object> text(String text, String path) {
    if (text.isBlank()) {
      fault(path, text, "the text is empty; write something, or leave the key out if it may be");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private Optional<Object> word(String text, Shape.Word shape, String path) {
    Object constant = shape.constants().get(text);
    if (constant == null) {
      fault(
          path,
          Values.printable(text),
          "'"
              + Values.printable(text)
              + "' is not known here"
              + Nearest.fullHint(text, "the words are", shape.constants().keySet()));
    }
    return Optional.ofNullable(constant);
  }

  private Optional<Object> formed(String text, Shape.Formed shape, String path) {
    try {
      return Optional.of(shape.form().read().apply(text));
    } catch (IllegalArgumentException e) {
      fault(path, Values.printable(text), String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  private void wrongSort(JsonNode node, Shape shape, String path) {
    String found =
        node.isNull()
            ? "null says nothing; leave the key out, or write "
            : Values.sort(node) + " stands here, but it must be ";
    fault(path, Values.shown(node), found + shape.words());
  }
}
