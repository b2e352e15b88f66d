package org.loomwright.papers;

import org.loomwright.model.design.Plan;
import org.loomwright.papers.json.PlanMapper;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plan as JSON: keys as the records name them, in their order; kinds and constants as words with
 * hyphens; numbers in the unit their key names.
 */
public final class PlanJson {
  /** Version of this form. */
  public static final int FORMAT = 1;

  private static final JsonMapper MAPPER = PlanMapper.mapper();

  private PlanJson() {}

  /** The plan as one JSON object with a line feed at the end. */
  public static String text(Plan plan) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("kind", "plan");
    root.put("format", FORMAT);
    root.put("releasable", plan.releasable());
    root.setAll((ObjectNode) MAPPER.valueToTree(plan));
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root).replace("\r\n", "\n")
        + "\n";
  }
}
