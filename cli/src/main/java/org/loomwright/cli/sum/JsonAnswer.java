package org.loomwright.cli.sum;

import java.util.Locale;
import org.loomwright.physics.Check;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes an answer as one JSON object on one line, keys in the order of the documentation. */
final class JsonAnswer {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private JsonAnswer() {}

  static String of(Answer answer) {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    answer
        .figures()
        .forEach(
            figure -> put(object, figure.key(), figure.value().orElse(Double.POSITIVE_INFINITY)));
    if (!answer.checks().isEmpty()) {
      ArrayNode checks = object.putArray("checks");
      answer.checks().forEach(check -> addCheck(checks, check));
    }
    return MAPPER.writeValueAsString(object) + "\n";
  }

  private static void addCheck(ArrayNode checks, Check check) {
    ObjectNode object = checks.addObject();
    object.put("name", check.name());
    object.put("verdict", check.verdict().name().toLowerCase(Locale.ROOT));
    put(object, "value", check.value());
    put(object, "limit", check.limit());
  }

  /**
   * A whole number without a decimal point; "none" and "no limit", which are no numbers, as null.
   */
  private static void put(ObjectNode object, String key, double value) {
    if (Double.isInfinite(value)) {
      object.putNull(key);
    } else if (Amounts.isWhole(value)) {
      object.put(key, (long) value);
    } else {
      object.put(key, value);
    }
  }
}
