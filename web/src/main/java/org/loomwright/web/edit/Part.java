package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import org.loomwright.model.json.Paths;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A part of a document.
 *
 * @param at the way to it
 * @param shape what it should be
 * @param field the field it is the value of; absent for the document and for items
 * @param node what stands there; missing where nothing does
 * @param path where it is as messages say it, e.g. {@code runs[3]}
 * @param within the parts around it, from the document inwards
 */
record Part(
    PartPath at,
    FormShape shape,
    Optional<FormField> field,
    JsonNode node,
    String path,
    List<Part> within) {

  /** A whole document. */
  static Part whole(FormShape.Fields shape, JsonNode tree) {
    return new Part(PartPath.whole(), shape, Optional.empty(), tree, "", List.of());
  }

  /** The part at a path; empty when the records have no such place, or the list no such item. */
  static Optional<Part> find(FormShape.Fields shape, JsonNode tree, PartPath at) {
    Optional<Part> part = Optional.of(whole(shape, tree));
    for (String step : at.steps()) {
      part = part.flatMap(it -> it.step(step));
    }
    return part;
  }

  private Optional<Part> step(String step) {
    if (shape instanceof FormShape.Fields fields) {
      return fields.field(PartPath.name(step)).map(this::of);
    }
    if (shape instanceof FormShape.Items && node.isArray()) {
      int index = ItemNames.index(node, step);
      return index < 0 ? Optional.empty() : Optional.of(item(index));
    }
    return Optional.empty();
  }

  /** The value of a field of this record. */
  Part of(FormField of) {
    return new Part(
        at.to(of.key()),
        of.shape(),
        Optional.of(of),
        node.path(of.key()),
        Paths.key(path, of.key()),
        around());
  }

  /** The items of this list, in order. */
  List<Part> items() {
    List<Part> items = new ArrayList<>();
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      items.add(item(i));
    }
    return items;
  }

  private Part item(int index) {
    return new Part(
        ItemNames.paths(at, node).get(index),
        itemShape(),
        Optional.empty(),
        node.get(index),
        Paths.item(path, index),
        around());
  }

  /** An item that is not in this list yet. */
  Part fresh() {
    int index = node.isArray() ? node.size() : 0;
    return new Part(
        at.to(index),
        itemShape(),
        Optional.empty(),
        MissingNode.getInstance(),
        Paths.item(path, index),
        around());
  }

  private FormShape itemShape() {
    if (shape instanceof FormShape.Items items) {
      return items.item();
    }
    throw new IllegalStateException("no list: " + path);
  }

  private List<Part> around() {
    List<Part> longer = new ArrayList<>(within);
    longer.add(this);
    return longer;
  }

  /** Whether it is an item of a list. */
  boolean isItem() {
    return field.isEmpty() && !within.isEmpty();
  }

  /** The part it stands in. */
  Part parent() {
    return within.get(within.size() - 1);
  }

  /** Its record's fields; empty when it is no record. */
  Optional<FormShape.Fields> fields() {
    return shape instanceof FormShape.Fields fields ? Optional.of(fields) : Optional.empty();
  }

  /** Whether a document without it can be read. */
  boolean mayGo() {
    return isItem() || field.map(it -> !it.required()).orElse(false);
  }

  /** The nearest record of a type around it. */
  Optional<JsonNode> around(String type) {
    for (int i = within.size() - 1; i >= 0; i--) {
      if (within.get(i).shape() instanceof FormShape.Fields it && it.type().equals(type)) {
        return Optional.of(within.get(i).node());
      }
    }
    return Optional.empty();
  }

  /** Puts a value in its place; lists and records that are not there yet are made. */
  void put(ObjectNode tree, JsonNode value) {
    JsonNode holder = holder(tree);
    if (holder instanceof ObjectNode record && field.isPresent()) {
      record.set(field.get().key(), value);
    } else if (holder instanceof ArrayNode list) {
      int index = index();
      if (index < list.size()) {
        list.set(index, value);
      } else {
        list.add(value);
      }
    }
  }

  /** Takes it out. */
  void takeOut(ObjectNode tree) {
    JsonNode holder = holder(tree);
    if (holder instanceof ObjectNode record && field.isPresent()) {
      record.remove(field.get().key());
    } else if (holder instanceof ArrayNode list) {
      list.remove(index());
    }
  }

  /** Moves an item of a list, no further than its ends. */
  void move(ObjectNode tree, int by) {
    if (holder(tree) instanceof ArrayNode list) {
      int from = index();
      int to = Math.max(0, Math.min(list.size() - 1, from + by));
      list.insert(to, list.remove(from));
    }
  }

  /** Its place in the list it is an item of. */
  int index() {
    return Integer.parseInt(path.substring(path.lastIndexOf('[') + 1, path.length() - 1));
  }

  private JsonNode holder(ObjectNode tree) {
    JsonNode holder = tree;
    for (Part part : within) {
      if (part.within().isEmpty()) {
        continue;
      }
      JsonNode next =
          holder instanceof ArrayNode list
              ? list.path(part.index())
              : holder.path(part.field().map(FormField::key).orElse(""));
      boolean list = part.shape() instanceof FormShape.Items;
      if (!(list ? next.isArray() : next.isObject()) && holder instanceof ObjectNode record) {
        next = list ? record.arrayNode() : record.objectNode();
        record.set(part.field().map(FormField::key).orElse(""), next);
      }
      holder = next;
    }
    return holder;
  }
}
