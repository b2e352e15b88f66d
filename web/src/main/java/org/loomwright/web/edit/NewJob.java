package org.loomwright.web.edit;

import java.util.List;
import java.util.Set;
import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The form of a new job: which kit goes into which vehicle. The survey comes first. */
final class NewJob {
  static final String LEAD =
      "One vehicle and the kit that goes into it. The survey comes first; what is done, measured"
          + " and left otherwise is added on its page.";

  private static final Set<String> ASKED =
      Set.of("name", "id", "kit", "release", "vehicle", "vehicleNote", "owner", "when", "by");

  private NewJob() {}

  static FormShape.Fields shape() {
    FormShape.Fields whole = DocumentFields.of(DocumentKind.JOB);
    List<FormField> fields =
        whole.fields().stream().filter(it -> ASKED.contains(it.key())).toList();
    return new FormShape.Fields(whole.type(), whole.noun(), fields);
  }

  static void fill(ObjectNode tree, JsonNode said) {
    said.properties().stream()
        .filter(it -> !tree.has(it.getKey()))
        .forEach(it -> tree.set(it.getKey(), it.getValue()));
    tree.put("state", "survey");
  }
}
