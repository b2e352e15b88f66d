package org.loomwright.web.edit;

import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormShape;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The form of a new batch: kits made in one go, each with its serial number. */
final class NewBatch {
  static final String LEAD =
      "Kits made in one go from one release, with one part number; each has a serial number of its"
          + " own.";

  private NewBatch() {}

  static FormShape.Fields shape() {
    FormShape.Fields whole = DocumentFields.of(DocumentKind.BATCH);
    return new FormShape.Fields(
        whole.type(),
        whole.noun(),
        whole.fields().stream().filter(it -> !it.key().equals("revision")).toList());
  }

  static void fill(ObjectNode tree, JsonNode said) {
    said.properties().stream()
        .filter(it -> !tree.has(it.getKey()))
        .forEach(it -> tree.set(it.getKey(), it.getValue()));
  }
}
