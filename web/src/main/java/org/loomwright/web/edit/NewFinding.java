package org.loomwright.web.edit;

import java.util.List;
import java.util.Set;
import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The form of a new finding: all that can be said of it before anybody has decided on it. */
final class NewFinding {
  static final String LEAD =
      "Something seen on a real vehicle that the records do not say. It stays open until somebody"
          + " accepts it or sets it aside.";

  private static final Set<String> LATER = Set.of("revision", "state", "outcome", "takenInto");

  private NewFinding() {}

  static FormShape.Fields shape() {
    FormShape.Fields whole = DocumentFields.of(DocumentKind.FINDING);
    List<FormField> fields =
        whole.fields().stream().filter(it -> !LATER.contains(it.key())).toList();
    return new FormShape.Fields(whole.type(), whole.noun(), fields);
  }

  static void fill(ObjectNode tree, JsonNode said) {
    said.properties().stream()
        .filter(it -> !tree.has(it.getKey()))
        .forEach(it -> tree.set(it.getKey(), it.getValue()));
    tree.put("state", "open");
  }
}
