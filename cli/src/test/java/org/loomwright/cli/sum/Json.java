package org.loomwright.cli.sum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.cli.Run;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Answers in JSON, read back by a strict reader. */
final class Json {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

  private Json() {}

  /** The answer of a sum that must end well, with nothing on standard error. */
  static JsonNode answer(String... words) {
    return answer(0, words);
  }

  /** The answer of a sum that must end with the given code. */
  static JsonNode answer(int exitCode, String... words) {
    List<String> all = new ArrayList<>(List.of("sum"));
    all.addAll(List.of(words));
    all.add("--json");
    Run run = Run.of(all);
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).as(run.out()).isEqualTo(exitCode);
    return read(run.out());
  }

  /** Reads what must be one object and nothing else. */
  static JsonNode read(String text) {
    JsonNode answer = MAPPER.readTree(text);
    assertThat(answer.isObject()).isTrue();
    return answer;
  }

  /** One number of an answer. */
  static double number(JsonNode answer, String key) {
    JsonNode value = answer.get(key);
    assertThat(value).as(key).isNotNull();
    assertThat(value.isNumber()).as(key + " is a number").isTrue();
    return value.doubleValue();
  }
}
