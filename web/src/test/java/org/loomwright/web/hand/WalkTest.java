package org.loomwright.web.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Step;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every possible build of the demo's kits goes through its guide in a browser without a network.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WalkTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final BrowserSession session = BrowserSession.start();
  @TempDir private Path folder;

  @AfterAll
  void close() {
    session.close();
  }

  private record Walked(List<String> shown, JsonNode record) {}

  private List<Walked> walkAll(DemoGuides demo, List<Map<String, String>> builds) {
    try (BrowserContext context = session.offline(Manner.PHONE)) {
      List<String> troubles = new ArrayList<>();
      context.onWebError(it -> troubles.add(it.error()));
      context.onConsoleMessage(it -> troubles.add(it.text()));
      context.onRequest(
          it -> {
            if (!it.url().startsWith("file:")) {
              troubles.add("asked for " + it.url());
            }
          });
      Page page = context.newPage();
      page.navigate(demo.file(folder).toUri().toString());
      Object found =
          page.evaluate(
              HandScripts.own("walk.js"),
              Map.of(
                  "builds",
                  builds,
                  "numbers",
                  builds.stream().map(it -> demo.number(it).id()).toList()));
      assertThat(troubles).isEmpty();
      return ((List<?>) found)
          .stream()
              .map(
                  it ->
                      new Walked(
                          HandScripts.list(it, "shown").stream().map(String::valueOf).toList(),
                          JSON.readTree(String.valueOf(((Map<?, ?>) it).get("record")))))
              .toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void everyBuildIsLedAsThePlanSays(String kit) {
    DemoGuides demo = DemoGuides.of(kit);
    List<Map<String, String>> builds = demo.builds();
    assertThat(builds).hasSizeBetween(100, 300);
    List<Walked> walks = walkAll(demo, builds);
    assertThat(walks).hasSameSizeAs(builds);

    double questions = 0;
    double weights = 0;
    TreeSet<String> cases = new TreeSet<>();
    for (int i = 0; i < builds.size(); i++) {
      Map<String, String> build = builds.get(i);
      Walked walked = walks.get(i);
      List<Step> steps = demo.walk(build);
      assertThat(walked.shown())
          .as("steps of %s", build)
          .isEqualTo(steps.stream().map(Step::id).toList());
      checkRecord(demo, build, steps, walked.record(), i);
      checkEndState(demo, build, walked.shown());
      demo.cases(build).forEach(it -> cases.add(it.id()));
      double weight = demo.weight(build);
      weights += weight;
      questions += weight * walked.record().get("answers").size();
    }
    assertThat(cases)
        .containsExactlyInAnyOrderElementsOf(demo.plan().cases().stream().map(Case::id).toList());
    assertThat(questions / weights)
        .isCloseTo(demo.plan().guide().expectedQuestions(), within(1e-9));
  }

  private static void checkRecord(
      DemoGuides demo, Map<String, String> build, List<Step> steps, JsonNode record, int i) {
    List<String> keys = new ArrayList<>(record.propertyNames());
    assertThat(keys)
        .startsWith("form", "version", "kit", "revision", "release", "vehicle", "guide", "serial");
    assertThat(record.get("form").asString()).isEqualTo("loomwright guide record");
    assertThat(record.get("guide").asString()).isEqualTo(GuidePrint.of(demo.plan()));
    assertThat(record.get("state").asString()).isEqualTo("finished");
    assertThat(record.get("serial").asString()).isEqualTo("S-" + i);
    assertThat(record.get("partNumber").asString()).isEqualTo(demo.number(build).id());
    List<String> ids = new ArrayList<>();
    record.get("cases").forEach(it -> ids.add(it.asString()));
    assertThat(ids).isEqualTo(demo.cases(build).stream().map(Case::id).toList());
    steps.stream()
        .flatMap(it -> it.ask().stream())
        .forEach(
            it ->
                assertThat(record.get("answers").get(it.trait()).asString())
                    .isEqualTo(build.get(it.trait())));
    for (Step step : steps) {
      step.readings().stream()
          .filter(it -> it.when().holds(build))
          .forEach(it -> assertThat(record.get("taken").has(it.id())).as(it.id()).isTrue());
    }
    assertThat(numbers(record.get("steps").asString()))
        .isEqualTo(steps.stream().map(Step::number).sorted().toList());
  }

  static List<Integer> numbers(String ranges) {
    List<Integer> numbers = new ArrayList<>();
    for (String range : ranges.split(",")) {
      String[] ends = range.split("-");
      for (int it = Integer.parseInt(ends[0]);
          it <= Integer.parseInt(ends[ends.length - 1]);
          it++) {
        numbers.add(it);
      }
    }
    return numbers;
  }

  /** Every end that is landed in the vehicle lies where the design says for the build's case. */
  private static void checkEndState(DemoGuides demo, Map<String, String> build, List<String> done) {
    Map<String, Landing> landed = new LinkedHashMap<>();
    for (String id : done) {
      Optional<Act> act = demo.plan().guide().step(id).orElseThrow().act();
      if (act.isPresent() && act.get() instanceof Act.Land it) {
        landed.put(it.lead() + it.end(), it.landing());
      } else if (act.isPresent() && act.get() instanceof Act.Change it) {
        landed.put(it.lead() + it.end(), it.landing());
      } else if (act.isPresent() && act.get() instanceof Act.Park it) {
        landed.put(it.lead() + it.end(), it.landing());
      }
    }
    Map<String, Landing> wanted = new LinkedHashMap<>();
    for (Lead lead : demo.plan().design().leads()) {
      if (demo.number(build).leads().contains(lead.id())) {
        wanted(demo, build, lead.id() + "a", lead.a(), wanted);
        wanted(demo, build, lead.id() + "b", lead.b(), wanted);
      }
    }
    landed.forEach(
        (end, landing) ->
            assertThat(landing)
                .as("end %s of %s", end, build)
                .isEqualTo(Optional.ofNullable(wanted.get(end)).orElseThrow()));
    // What the bench has done already need not be done in the vehicle.
    wanted
        .values()
        .removeIf(it -> it instanceof Landing.InHousing || it instanceof Landing.InJoint);
    assertThat(landed.keySet()).as("ends of %s", build).containsAll(wanted.keySet());
  }

  private static void wanted(
      DemoGuides demo,
      Map<String, String> build,
      String name,
      LeadEnd end,
      Map<String, Landing> wanted) {
    for (Case one : demo.cases(build)) {
      end.landing(one.id()).ifPresent(it -> wanted.put(name, it));
    }
  }
}
