package org.loomwright.papers.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.papers.calculation.DemoKits;
import org.loomwright.papers.words.Names;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class HandGuideTest {
  private static final Pattern DATA =
      Pattern.compile(
          "<script type=\"application/json\" id=\"data\">(.*?)</script>", Pattern.DOTALL);
  private static final Pattern SCRIPT = Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL);
  private static final Pattern STYLE = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL);

  private static String text(String kit) {
    Names names = DemoKits.planned(kit);
    return HandGuide.text(names.order(), names.plan(), Optional.of(3));
  }

  private static String part(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    assertThat(found.find()).isTrue();
    return found.group(1);
  }

  private static JsonNode data(String text) {
    return JsonMapper.builder().build().readTree(part(DATA, text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void oneSmallFileHoldsEverything(String kit) throws Exception {
    String text = text(kit);
    assertThat(text.getBytes(StandardCharsets.UTF_8).length).isLessThan(3_000_000);
    assertThat(text.chars().allMatch(it -> it < 0x7F)).as("plain ASCII").isTrue();
    assertThat(text(kit)).isEqualTo(text);
    // Nothing is loaded; the name of a standard's namespace is no address to ask.
    assertThat(text.replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http:")
        .doesNotContain("https:")
        .doesNotContain("<link")
        .doesNotContain(" src=")
        .doesNotContain("@import")
        .doesNotContain("url(");
    for (Pattern pattern : List.of(SCRIPT, STYLE)) {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(part(pattern, text).getBytes(StandardCharsets.UTF_8));
      assertThat(text).contains("'sha256-" + Base64.getEncoder().encodeToString(digest) + "'");
    }
    assertThat(text).contains("default-src 'none'").doesNotContain("unsafe");
  }

  @Test
  void oldBrowsersUnderstandTheScript() {
    String script = part(SCRIPT, text("crew-comfort"));
    String bare = script.replaceAll("(?m)^\\s*//.*$", "").replaceAll("'(\\\\.|[^'\\\\])*'", "''");
    assertThat(bare)
        .doesNotContain("=>")
        .doesNotContain("?.")
        .doesNotContain("??")
        .doesNotContain("`")
        .doesNotContain("...")
        .doesNotContainPattern("\\b(let|const|class|async|await|import|export)\\b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void theDataAreTheGuide(String kit) {
    Names names = DemoKits.planned(kit);
    Plan plan = names.plan();
    JsonNode data = data(text(kit));
    assertThat(data.get("guide").asString()).isEqualTo(GuidePrint.of(plan)).matches("[0-9a-f]{16}");
    assertThat(data.get("release").asInt()).isEqualTo(3);
    assertThat(data.get("steps").size()).isEqualTo(plan.guide().steps().size());
    for (int i = 0; i < plan.guide().steps().size(); i++) {
      Step step = plan.guide().steps().get(i);
      JsonNode node = data.get("steps").get(i);
      assertThat(node.get("id").asString()).isEqualTo(step.id());
      assertThat(node.get("next").size()).isEqualTo(plan.guide().from(step.id()).size());
      assertThat(node.get("readings").size()).isEqualTo(step.readings().size());
      step.shown()
          .ifPresent(
              shown -> {
                assertThat(node.has("picture")).as(step.id()).isTrue();
                assertThat(node.get("pictureWords").asString()).contains("looking at the");
              });
    }
  }

  /** All that a fitter is told and judged by is what the plan says, step for step. */
  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void limitsPowerAndAnswersAreThoseOfThePlan(String kit) {
    Plan plan = DemoKits.planned(kit).plan();
    JsonNode data = data(text(kit));
    int limits = 0;
    for (int i = 0; i < plan.guide().steps().size(); i++) {
      Step step = plan.guide().steps().get(i);
      JsonNode node = data.get("steps").get(i);
      assertThat(word(node, "undo")).as(step.id()).isEqualTo(named(step.undo()));
      assertThat(word(node, "kind")).as(step.id()).isEqualTo(named(step.kind()));
      assertThat(node.has("live") ? Optional.of(node.get("live").asBoolean()) : Optional.empty())
          .as(step.id())
          .isEqualTo(step.live());
      assertThat(node.has("act")).as(step.id()).isEqualTo(step.act().isPresent());
      for (int j = 0; j < step.readings().size(); j++) {
        Reading reading = step.readings().get(j);
        JsonNode taken = node.get("readings").get(j);
        assertThat(word(taken, "id")).isEqualTo(reading.id());
        assertThat(word(taken, "name")).isEqualTo(reading.name());
        assertThat(word(taken, "kind")).isEqualTo(named(reading.kind()));
        assertThat(word(taken, "outside")).isEqualTo(reading.outside());
        assertThat(word(taken, "words")).isEqualTo(reading.words());
        assertThat(word(taken, "source")).isEqualTo(reading.source());
        assertThat(word(taken, "unit")).isEqualTo(reading.unit().orElse(""));
        assertThat(word(taken, "compareWith")).isEqualTo(reading.compareWith().orElse(""));
        assertThat(number(taken, "rise")).isEqualTo(reading.mostRise());
        assertThat(taken.get("when").toString()).isEqualTo(Compiled.of(reading.when()).toString());
        assertBand(taken, reading.band());
        limits += reading.band().isPresent() ? 1 : 0;
      }
      assertThat(node.has("ask")).as(step.id()).isEqualTo(step.ask().isPresent());
      step.ask().ifPresent(ask -> assertAsk(node.get("ask"), ask));
      for (int j = 0; j < node.get("next").size(); j++) {
        Edge edge = plan.guide().from(step.id()).get(j);
        assertThat(word(node.get("next").get(j), "to")).isEqualTo(edge.to());
        assertThat(node.get("next").get(j).get("when").toString())
            .isEqualTo(Compiled.of(edge.when()).toString());
      }
    }
    assertThat(limits).isGreaterThan(3);
  }

  private static void assertAsk(JsonNode node, Ask ask) {
    assertThat(word(node, "trait")).isEqualTo(ask.trait());
    assertThat(word(node, "how")).isEqualTo(named(ask.how()));
    assertThat(node.get("answers").size()).isEqualTo(ask.answers().size());
    boolean banded = ask.answers().stream().allMatch(it -> it.band().isPresent());
    for (int i = 0; i < ask.answers().size(); i++) {
      Answer answer = ask.answers().get(i);
      JsonNode one = node.get("answers").get(i);
      assertThat(word(one, "value")).isEqualTo(answer.value());
      assertThat(word(one, "words")).isEqualTo(answer.words());
      assertThat(word(one, "expect")).isEqualTo(answer.expect());
      assertBand(one, answer.band().filter(it -> banded));
    }
  }

  private static void assertBand(JsonNode node, Optional<Band> band) {
    assertThat(node.has("band")).isEqualTo(band.isPresent());
    band.ifPresent(
        it -> {
          assertThat(number(node.get("band"), "low")).isEqualTo(it.low());
          assertThat(number(node.get("band"), "high")).isEqualTo(it.high());
          assertThat(word(node.get("band"), "unit")).isEqualTo(it.unit());
        });
  }

  private static String named(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String word(JsonNode node, String key) {
    return node.has(key) ? node.get(key).asString() : "";
  }

  private static Optional<Double> number(JsonNode node, String key) {
    return node.has(key) ? Optional.of(node.get(key).asDouble()) : Optional.empty();
  }

  @Test
  void aFingerprintChangesWithTheGuide() {
    Plan plan = DemoKits.planned("trailer").plan();
    Guide guide = plan.guide();
    Guide other =
        new Guide(
            guide.start(),
            guide.steps(),
            guide.edges().subList(1, guide.edges().size()),
            guide.ends(),
            guide.tools(),
            guide.expectedMinutes(),
            guide.expectedQuestions());
    Plan changed =
        new Plan(
            plan.kit(),
            plan.builds(),
            plan.gap(),
            plan.fit(),
            plan.ways(),
            plan.cases(),
            plan.unserved(),
            plan.design(),
            plan.harness(),
            plan.checks(),
            plan.protections(),
            plan.networks(),
            other,
            plan.proof(),
            plan.notes());
    assertThat(GuidePrint.of(changed)).isNotEqualTo(GuidePrint.of(plan));
    assertThat(GuidePrint.of(plan)).isEqualTo(GuidePrint.of(plan));
  }

  @Test
  void conditionsBecomeData() {
    assertThat(compiled("always")).isEqualTo("true");
    assertThat(compiled("never")).isEqualTo("false");
    assertThat(compiled("a = x")).isEqualTo("[\"is\",\"a\",\"x\"]");
    assertThat(compiled("a != x")).isEqualTo("[\"not\",[\"is\",\"a\",\"x\"]]");
    assertThat(compiled("a in (x, y) and b = z or c = x"))
        .isEqualTo(
            "[\"any\",[[\"all\",[[\"in\",\"a\",[\"x\",\"y\"]],[\"is\",\"b\",\"z\"]]],"
                + "[\"is\",\"c\",\"x\"]]]");
  }

  private static String compiled(String condition) {
    return Compiled.of(Condition.of(condition)).toString();
  }
}
