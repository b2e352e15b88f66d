package org.loomwright.model.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.How;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Takes findings into the demo's van, and reads what it says then. */
class IntoVehicleTest {
  private static final Path DEMO = Path.of("..", "demo");
  private static final String VAN = "van.vehicle.json";
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static ObjectNode van() {
    try {
      return (ObjectNode) JSON.readTree(Files.readString(DEMO.resolve(VAN)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Vehicle read(JsonNode van) {
    List<NamedText> texts = new ArrayList<>();
    Map<String, byte[]> pictures = new TreeMap<>();
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.equals(VAN)) {
          texts.add(new NamedText(VAN, van.toString()));
        } else if (name.endsWith(".json")) {
          texts.add(new NamedText(name, Files.readString(file)));
        } else if (name.endsWith(".png")) {
          pictures.put(name, Files.readAllBytes(file));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Read read = WorkspaceReader.read(texts, pictures);
    assertThat(read).isInstanceOf(Read.Good.class);
    return ((Read.Good) read).workspace().vehicles().get(0);
  }

  private static Finding finding(String at) {
    return new Finding(
        "f",
        "a finding",
        "1",
        "packer",
        Optional.of(FoundAt.of(at)),
        "It was otherwise.",
        Optional.empty(),
        How.MEASURED,
        "2026-02-03",
        "T. Halvard",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        List.of(),
        FindingState.OPEN,
        Optional.empty(),
        Optional.empty());
  }

  private static NewTrait trait(FactOf fact, boolean holds) {
    return new NewTrait(
        "late-loom",
        "late loom",
        "with the loom as known",
        "with the late loom",
        Optional.of(new BigDecimal("12.5")),
        TellHow.LOOK,
        "cabin-floor",
        List.of("floor-cover"),
        "1 min",
        "Is the loom wrapped in grey?",
        "black",
        "grey",
        List.of("hand lamp"),
        fact,
        holds);
  }

  /** What a fact says, as text of the document. */
  private static String fact(JsonNode vehicle, String at, FactOf fact) {
    FoundAt spot = FoundAt.of(at);
    JsonNode lists = vehicle.path(List.of("circuits", "connectors", "fuseBlocks").get(index(spot)));
    for (JsonNode it : lists) {
      if (it.path("id").stringValue().equals(spot.id())) {
        return inside(it, spot, fact).path(fact.key()).asString(absent(fact));
      }
    }
    throw new IllegalArgumentException(at);
  }

  private static int index(FoundAt at) {
    return switch (at.sort()) {
      case CIRCUIT -> 0;
      case CONNECTOR, CAVITY -> 1;
      default -> 2;
    };
  }

  private static String absent(FactOf fact) {
    return fact == FactOf.PLUGGED || fact == FactOf.BLOCKED ? "never" : "always";
  }

  private static JsonNode inside(JsonNode thing, FoundAt at, FactOf fact) {
    String part = at.part().orElse("");
    return switch (fact) {
      case PRESENT -> thing;
      case PLUGGED, BLOCKED -> one(thing.path("cavities"), "cavity", part);
      case METAL -> one(thing.path("slots"), "id", part);
      case FED ->
          one(
              thing.path("sections"),
              "id",
              one(thing.path("slots"), "id", part).path("section").stringValue());
    };
  }

  private static JsonNode one(JsonNode list, String key, String value) {
    for (JsonNode it : list) {
      if (it.path(key).stringValue().equals(value)) {
        return it;
      }
    }
    throw new IllegalArgumentException(value);
  }

  @ParameterizedTest
  @CsvSource({
    "circuit outlet-feed,PRESENT",
    "circuit heater-feed,PRESENT",
    "circuit cargo-light,PRESENT",
    "slot rear-block F5,FED",
    "slot rear-block F1,METAL",
    "slot rear-block F4,METAL",
    "cavity floor 2,PLUGGED",
    "cavity floor 4,BLOCKED",
    "cavity floor 1,BLOCKED",
    "connector floor,PRESENT"
  })
  void onBuildsAsRecordedNothingChangesAndOnTheOthersItIsAsFound(String at, FactOf fact) {
    Condition before = Condition.of(fact(van(), at, fact));
    for (boolean holds : List.of(true, false)) {
      ObjectNode changed = IntoVehicle.trait(van(), finding(at), trait(fact, holds)).orElseThrow();
      Vehicle vehicle = read(changed);
      Condition after = Condition.of(fact(changed, at, fact));
      for (Map<String, String> build : builds(vehicle)) {
        boolean found = NewTrait.AS_FOUND.equals(build.get("late-loom"));
        assertThat(after.holds(build))
            .as("%s %s %s", at, after, build)
            .isEqualTo(found ? holds : before.holds(build));
      }
      Trait made = vehicle.traits().get(vehicle.traits().size() - 1);
      assertThat(made.values())
          .extracting(it -> it.share().orElseThrow().fraction())
          .containsExactly(0.875, 0.125);
      assertThat(made.tell().openings()).containsExactly("floor-cover");
      assertThat(made.evidence().orElseThrow().words())
          .isEqualTo("measured 2026-02-03, T. Halvard");
    }
  }

  /** A fact that nobody knew is known by the trait. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void anUnknownFactIsKnownByTheTrait(boolean holds) {
    String at = "slot rear-block F8";
    assertThat(fact(van(), at, FactOf.METAL)).isEqualTo("unknown");
    ObjectNode changed =
        IntoVehicle.trait(van(), finding(at), trait(FactOf.METAL, holds)).orElseThrow();
    read(changed);
    assertThat(fact(changed, at, FactOf.METAL))
        .isEqualTo("late-loom = " + (holds ? "as-found" : "as-recorded"));
  }

  /** A cavity has one question for two facts: it goes when both are known. */
  @Test
  void theQuestionOfACavityStaysWhileOneOfItsFactsIsUnknown() {
    ObjectNode van = van();
    JsonNode slot = one(one(van.path("fuseBlocks"), "id", "rear-block").path("slots"), "id", "F8");
    ObjectNode cavity =
        (ObjectNode)
            one(one(van.path("connectors"), "id", "floor").path("cavities"), "cavity", "1");
    cavity.put("pluggedWhen", "unknown").put("blockedWhen", "unknown");
    cavity.set("tell", slot.path("tell").deepCopy());
    ObjectNode changed =
        IntoVehicle.trait(van, finding("cavity floor 1"), trait(FactOf.PLUGGED, true))
            .orElseThrow();
    JsonNode after =
        one(one(changed.path("connectors"), "id", "floor").path("cavities"), "cavity", "1");
    assertThat(after.has("tell")).isTrue();
    read(changed);
    ObjectNode both =
        IntoVehicle.trait(
                changed,
                finding("cavity floor 1"),
                new NewTrait(
                    "blocked-loom",
                    "blocked loom",
                    "with cavity 1 open",
                    "with cavity 1 blocked",
                    Optional.empty(),
                    TellHow.LOOK,
                    "cabin-floor",
                    List.of("floor-cover"),
                    "1 min",
                    "Is cavity 1 moulded through?",
                    "open",
                    "blocked",
                    List.of(),
                    FactOf.BLOCKED,
                    true))
            .orElseThrow();
    assertThat(
            one(one(both.path("connectors"), "id", "floor").path("cavities"), "cavity", "1")
                .has("tell"))
        .isFalse();
    read(both);
  }

  private static List<Map<String, String>> builds(Vehicle vehicle) {
    List<Map<String, String>> all = new ArrayList<>(List.of(Map.of()));
    for (Trait trait : vehicle.traits()) {
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> build : all) {
        for (TraitValue value : trait.values()) {
          Map<String, String> more = new LinkedHashMap<>(build);
          more.put(trait.id(), value.id());
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }

  @Test
  void evidenceKeepsWhatWasNotedBefore() {
    ObjectNode changed = IntoVehicle.evidence(van(), finding("cavity floor 1")).orElseThrow();
    JsonNode floor = one(changed.path("connectors"), "id", "floor");
    assertThat(one(floor.path("cavities"), "cavity", "1").path("evidence").toString())
        .isEqualTo(
            "{\"how\":\"measured\",\"when\":\"2026-02-03\",\"by\":\"T. Halvard\",\"note\":\"It was"
                + " otherwise. Before: Blue seal plug in every van.\"}");
    read(changed);
  }

  @Test
  void aTraitGetsAValueMore() {
    ObjectNode changed =
        IntoVehicle.value(
                van(),
                "body",
                "tipper",
                "with a tipper",
                "a tipping bed",
                Optional.empty(),
                BigDecimal.TEN)
            .orElseThrow();
    Trait body = read(changed).traits().get(0);
    assertThat(body.values()).extracting(TraitValue::id).endsWith("tipper").hasSize(4);
    assertThat(body.values())
        .extracting(it -> it.share().orElseThrow().text())
        .containsExactly("49.5 %", "22.5 %", "18 %", "10 %");
    assertThat(body.tell().expect()).containsEntry("tipper", "a tipping bed");
  }

  @Test
  void aMeasuredTraitGetsAValueMoreWithItsBand() {
    ObjectNode changed =
        IntoVehicle.value(
                van(),
                "rear-feed",
                "weak",
                "with a weak feed",
                "about half the voltage",
                Optional.of("4 V to 6 V"),
                BigDecimal.ONE)
            .orElseThrow();
    Trait feed =
        read(changed).traits().stream()
            .filter(it -> it.id().equals("rear-feed"))
            .findFirst()
            .orElseThrow();
    assertThat(feed.tell().bands())
        .containsOnlyKeys("yes", "no", "weak")
        .hasEntrySatisfying("weak", it -> assertThat(it.text()).isEqualTo("4 V to 6 V"));
  }

  @Test
  void nothingIsChangedWhereTheThingIsGone() {
    assertThat(IntoVehicle.evidence(van(), finding("circuit gone"))).isEmpty();
    assertThat(IntoVehicle.evidence(van(), finding("place cabin-floor"))).isEmpty();
    assertThat(IntoVehicle.value(van(), "gone", "a", "b", "c", Optional.empty(), BigDecimal.ONE))
        .isEmpty();
    assertThat(IntoVehicle.trait(van(), finding("circuit heater-feed"), trait(FactOf.METAL, true)))
        .isEmpty();
  }
}
