package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loomwright.model.document.Document;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.json.JsonText;
import org.loomwright.web.shop.Shop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** Documents as trees, those of the shop and the one that is being edited as its form has it. */
final class Library {
  private final Shop shop;
  private final DocumentKind ownKind;
  private final JsonNode own;
  private final Map<DocumentKind, List<JsonNode>> known = new EnumMap<>(DocumentKind.class);

  Library(Shop shop, DocumentKind ownKind, JsonNode own) {
    this.shop = shop;
    this.ownKind = ownKind;
    this.own = own;
  }

  /** The document that is being edited. */
  JsonNode own() {
    return own;
  }

  DocumentKind ownKind() {
    return ownKind;
  }

  /** All documents of a kind. */
  List<JsonNode> all(DocumentKind kind) {
    return known.computeIfAbsent(kind, this::read);
  }

  private List<JsonNode> read(DocumentKind kind) {
    List<JsonNode> trees = new ArrayList<>();
    if (kind == ownKind) {
      trees.add(own);
    }
    String ownId = own.path("id").asString("");
    shop.files().stream()
        .map(it -> it.document())
        .filter(it -> DocumentKind.of(it) == kind)
        .filter(it -> kind != ownKind || !it.id().equals(ownId))
        .forEach(it -> trees.add(tree(it)));
    return trees;
  }

  private static JsonNode tree(Document document) {
    if (JsonText.parse(DocumentWriter.write(document)) instanceof JsonText.Tree it) {
      return it.node();
    }
    throw new IllegalStateException("a document was written as broken JSON");
  }

  /** The housing with a part number; missing when there is none. */
  JsonNode housing(JsonNode id) {
    return items(all(DocumentKind.PARTS), "housings")
        .filter(it -> it.path("id").equals(id))
        .findFirst()
        .orElse(MissingNode.getInstance());
  }

  /** Names of the pictures there are. */
  List<String> pictures() {
    return shop.workspace().pictures().byName().keySet().stream().sorted().toList();
  }

  /** All items of a list in some documents. */
  static Stream<JsonNode> items(List<JsonNode> trees, String list) {
    return trees.stream().flatMap(it -> it.path(list).valueStream());
  }
}
