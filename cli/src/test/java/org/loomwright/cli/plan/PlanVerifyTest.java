package org.loomwright.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.cli.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code plan --verify} on the demo. */
class PlanVerifyTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String ID = "network/verify";

  @TempDir private Path temp;
  private DemoCopy demo;

  @BeforeEach
  void copy() throws IOException {
    demo = DemoCopy.in(temp.resolve("shop"));
  }

  @Test
  void allNetworksAreCheckedAgainAndFoundSound() {
    Run run = plan("--verify", "--json");
    assertThat(run.exitCode()).as(run.err()).isZero();
    for (JsonNode plan : JSON.readTree(run.out()).get("plans")) {
      JsonNode check = check(plan);
      assertThat(check.get("figure").asDouble()).isZero();
      assertThat(check.get("limit").asDouble()).isZero();
      assertThat(check.get("verdict").asString()).isEqualTo("holds");
      int states = line(check, "states solved again").asInt();
      int figures = line(check, "worst figures compared").asInt();
      assertThat(states).isGreaterThanOrEqualTo(plan.get("networks").size());
      // Every element of every network has a highest current.
      int elements = 0;
      for (JsonNode network : plan.get("networks")) {
        elements += network.get("branches").size();
      }
      assertThat(figures).isGreaterThanOrEqualTo(elements).isGreaterThan(100);
      assertThat(line(check, "largest imbalance at a node").asDouble()).isLessThan(1e-6);
      assertThat(line(check, "largest miss of an element's law").asDouble()).isLessThan(1e-6);
      assertThat(notes(plan))
          .filteredOn(it -> it.startsWith("Networks verified: "))
          .singleElement()
          .asString()
          .startsWith(
              "Networks verified: "
                  + states
                  + " states solved again, "
                  + figures
                  + " worst figures compared; ")
          .endsWith("; no fault found.");
    }
  }

  @Test
  void theSummaryTellsOfIt() {
    Run run = plan("--kit", "trailer", "--verify");
    assertThat(run.exitCode()).as(run.out() + run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("Networks verified: ", "no fault found.");
  }

  /** Verifying adds its check and its note and changes nothing else. */
  @Test
  void withoutItNothingElseDiffers() {
    JsonNode plain = JSON.readTree(plan("--kit", "trailer", "--json").out());
    JsonNode verified = JSON.readTree(plan("--kit", "trailer", "--json", "--verify").out());
    assertThat(ids(plain)).doesNotContain(ID);
    List<String> more = new ArrayList<>(ids(verified));
    assertThat(more.remove(ID)).isTrue();
    assertThat(more).isEqualTo(ids(plain));
    assertThat(verified.get("design")).isEqualTo(plain.get("design"));
    assertThat(verified.get("networks")).isEqualTo(plain.get("networks"));
    assertThat(notes(plain)).noneMatch(it -> it.startsWith("Networks verified"));
    assertThat(notes(verified)).containsAll(notes(plain)).hasSize(notes(plain).size() + 1);
  }

  private static JsonNode check(JsonNode plan) {
    for (JsonNode check : plan.get("checks")) {
      if (check.get("id").asString().equals(ID)) {
        return check;
      }
    }
    throw new AssertionError("no check " + ID + " in " + ids(plan));
  }

  private static JsonNode line(JsonNode check, String what) {
    for (JsonNode line : check.get("trace")) {
      if (line.get("what").asString().equals(what)) {
        return line.get("value");
      }
    }
    throw new AssertionError("no line \"" + what + "\" in " + check);
  }

  private static List<String> ids(JsonNode plan) {
    List<String> ids = new ArrayList<>();
    plan.get("checks").forEach(it -> ids.add(it.get("id").asString()));
    return ids;
  }

  private static List<String> notes(JsonNode plan) {
    List<String> notes = new ArrayList<>();
    plan.get("notes").forEach(it -> notes.add(it.asString()));
    return notes;
  }

  private Run plan(String... options) {
    List<String> words = new ArrayList<>(List.of("plan", demo.folder().toString()));
    words.addAll(List.of(options));
    return Run.of(words);
  }
}
