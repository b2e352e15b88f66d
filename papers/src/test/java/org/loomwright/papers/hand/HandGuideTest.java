package org.loomwright.papers.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Plan;
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
