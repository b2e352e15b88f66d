package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.shop.Shop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A part that is to be taken out of a document, or to change its place in its list. */
public final class PartChange {
  private static final int SHOWN = 200;

  private final DocumentKey key;
  private final ObjectNode tree;
  private final Part part;

  private PartChange(DocumentKey key, ObjectNode tree, Part part) {
    this.key = key;
    this.tree = tree;
    this.part = part;
  }

  /**
   * The part at a path.
   *
   * @param text the document's text
   * @return empty when there is none, or the document can't be without it
   */
  public static Optional<PartChange> of(DocumentKey key, String text, PartPath at) {
    Optional<DocumentKind> kind = DocumentKind.of(key.kind());
    if (kind.isEmpty()
        || !(JsonText.parse(text) instanceof JsonText.Tree parsed)
        || !(parsed.node() instanceof ObjectNode tree)) {
      return Optional.empty();
    }
    return Part.find(DocumentFields.of(kind.get()), tree, at)
        .filter(it -> it.mayGo() && !it.node().isMissingNode())
        .map(it -> new PartChange(key, tree, it));
  }

  /** What it is, in words. */
  public String title() {
    return Titles.noun(part) + ": " + Titles.of(part);
  }

  /** Name of the document. */
  public String document() {
    return tree.path("name").asString(key.id());
  }

  /** What goes with it, a line for each value. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, JsonNode> it : part.node().properties()) {
      String value = it.getValue().isString() ? it.getValue().stringValue() : shown(it.getValue());
      lines.add(FormField.words(it.getKey()) + ": " + cut(value));
    }
    return lines;
  }

  private static String shown(JsonNode value) {
    if (value.isBoolean()) {
      return value.booleanValue() ? "yes" : "no";
    }
    boolean records = value.isArray() && !value.isEmpty() && value.get(0).isObject();
    return records
        ? value.size() + " in all"
        : value.isContainer()
            ? String.join(", ", value.valueStream().map(Typed::text).toList())
            : value.toString();
  }

  private static String cut(String text) {
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN - 1) + "…";
  }

  /** The document without it. */
  public String without() {
    ObjectNode copy = tree.deepCopy();
    part.takeOut(copy);
    return copy.toPrettyString() + "\n";
  }

  /** The document with it so many places further down its list; less than 0 for up. */
  public String moved(int by) {
    ObjectNode copy = tree.deepCopy();
    if (part.isItem()) {
      part.move(copy, by);
    }
    return copy.toPrettyString() + "\n";
  }

  /** Why it was not taken out. */
  public Complaints refused(List<Problem> problems, Shop shop, String back) {
    return Complaints.of(problems, key, tree, Map.of(), Map.of(), shop, back);
  }
}
