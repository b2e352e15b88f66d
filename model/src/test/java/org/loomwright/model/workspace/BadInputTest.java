package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Twelve bad inputs, each with the message its owner gets to read. */
class BadInputTest {
  private static final String VAN = "alder-van.json";

  @Test
  void missingFile() {
    assertThat(Small.words(WorkspaceReader.read(Path.of("no-such-shop"))))
        .containsExactly("no-such-shop: there is no such folder");
    assertThat(Small.workspace().without("shop-rules.json").problems())
        .containsExactly(
            "fan-kit.json, rules: there is no set of rules 'shop-rules'; there are no sets of rules"
                + " at all",
            "fan-kit.json, designedAgainst: there is no document 'shop-rules'; the documents are"
                + " alder-van, bench-parts, cabin-fan, fan-kit");
  }

  @Test
  void brokenJson() {
    assertThat(
            Small.workspace().with(VAN, "\"supply\": \"12 V\",", "\"supply\": \"12 V\"").problems())
        .containsExactly(
            "alder-van.json, line 8, column 3: this is not JSON: a comma, } or ] is missing before"
                + " this");
    assertThat(Small.workspace().plus("x.json", "{\"kind\": \"vehicle\",").problems())
        .containsExactly(
            "x.json, line 1, column 20: this is not JSON: the file ends too early; a closing }, ]"
                + " or quotation mark is missing");
    assertThat(
            Small.workspace().plus("x.json", "{\"kind\": \"kit\", \"kind\": \"kit\"}").problems())
        .containsExactly(
            "x.json, line 1, column 23: this is not JSON: the key \"kind\" stands twice in the same"
                + " object");
  }

  @Test
  void wrongUnit() {
    assertThat(Small.workspace().with(VAN, "2.4 m\"", "2.4 V\"").problems())
        .containsExactly(
            "alder-van.json, runs[0].length: \"2.4 V\" can't be read as a length: at character 5, V"
                + " is a unit of voltage, not of length; expected mm, cm, m, in or ft, such as"
                + " \"820 mm\"");
  }

  @Test
  void misspeltTrait() {
    assertThat(
            Small.workspace()
                .with(
                    VAN,
                    "\"presentWhen\": \"tow-prep = yes\"",
                    "\"presentWhen\": \"tow-perp = yes\"")
                .problems())
        .containsExactly(
            "alder-van.json, circuits[0].presentWhen: there is no trait 'tow-perp'; did you mean"
                + " 'tow-prep'?");
  }

  @Test
  void impossibleRuleSet() {
    String more =
        "\"rules\": [{\"exclude\": \"seats = none\", \"reason\": \"never built bare\"},"
            + " {\"exclude\": \"seats != none\", \"reason\": \"never built with seats\"},";
    assertThat(Small.workspace().with(VAN, "\"rules\": [", more).problems())
        .containsExactly(
            "alder-van.json, rules: rules[0] (never built bare) and rules[1] (never built with"
                + " seats) together exclude every build, so there is no vehicle left; weaken one of"
                + " them");
  }

  @Test
  void unknownPart() {
    assertThat(
            Small.workspace()
                .with(VAN, "\"housing\": \"HS-4\"", "\"housing\": \"HS-5X\"")
                .with("fan-kit.json", "\"connector\": \"rear-connector\"", "\"place\": \"rear\"")
                .problems())
        .containsExactly(
            "alder-van.json, connectors[0].housing: there is no housing 'HS-5X'; the housings are"
                + " HS-4");
    assertThat(
            Small.workspace()
                .with("parts/bench-parts.json", "\"seal\": \"SL-28\"", "\"seal\": \"CP-28\"")
                .problems())
        .containsExactly(
            "parts/bench-parts.json, terminals[0].seal: there is no wire seal 'CP-28'; 'CP-28' is a"
                + " sundry part, not a wire seal");
  }

  @Test
  void negativeLength() {
    assertThat(Small.workspace().with(VAN, "2.4 m\"", "-2.4 m\"").problems())
        .containsExactly(
            "alder-van.json, runs[0].length: \"-2.4 m\" can't be read as a length: at character 1, a"
                + " length must not be negative; expected \"820 mm\"");
    assertThat(Small.workspace().with(VAN, "2.4 m\"", "0 m\"").problems())
        .containsExactly("alder-van.json, runs[0]: a run's length must be more than zero");
  }

  @Test
  void duplicatedId() {
    assertThat(Small.workspace().with(VAN, "\"id\": \"bulkhead\"", "\"id\": \"sill\"").problems())
        .containsExactly(
            "alder-van.json, runs[1].id: 'sill' is already used by runs[0]; each needs its own");
    assertThat(Small.workspace().plus("z.json", Small.text("shop-rules.json")).problems())
        .containsExactly(
            "z.json, id: a set of rules with the id 'shop-rules' is already in shop-rules.json");
  }

  @Test
  void cavityOutOfRange() {
    assertThat(
            Small.workspace()
                .with(VAN, "cavity rear-connector 2", "cavity rear-connector 5")
                .problems())
        .containsExactly(
            "alder-van.json, circuits[1].to[0]: housing 'HS-4' has no cavity '5'; its cavities are"
                + " 1, 2, 3, 4");
  }

  @Test
  void circularRun() {
    assertThat(
            Small.workspace()
                .with(VAN, "\"from\": \"engine-bay\"", "\"from\": \"floor\"")
                .problems())
        .containsExactly(
            "alder-van.json, runs[1].to: the run is circular: it ends at 'floor', where it starts; a"
                + " run leads from one place to another");
  }

  @Test
  void wrongKind() {
    assertThat(
            Small.workspace()
                .with("fan-kit.json", "\"vehicle\": \"alder-van\"", "\"vehicle\": \"cabin-fan\"")
                .problems())
        .containsExactly(
            "fan-kit.json, vehicle: there is no vehicle 'cabin-fan'; 'cabin-fan' is a piece of"
                + " equipment, not a vehicle");
    assertThat(Small.workspace().with(VAN, "\"vehicle\"", "\"vehicel\"").problems())
        .containsExactly(
            "alder-van.json, kind: 'vehicel' is not a kind of document; did you mean 'vehicle'? The"
                + " kinds are vehicle, equipment, kit, parts, rules, finding, job, batch");
  }

  @Test
  void newerVersion() {
    assertThat(Small.workspace().with(VAN, "\"format\": 1", "\"format\": 2").problems())
        .containsExactly(
            "alder-van.json, format: written by a newer Loomwright (format 2); this one reads"
                + " format 1");
  }

  @Test
  void allAtOnce() {
    assertThat(
            Small.workspace()
                .with(VAN, "2.4 m\"", "2.4 V\"")
                .with(
                    VAN,
                    "\"presentWhen\": \"tow-prep = yes\"",
                    "\"presentWhen\": \"tow-perp = yes\"")
                .with(VAN, "\"share\": \"30 %\"", "\"shares\": \"30 %\"")
                .with("cabin-fan.json", "\"matesWith\": \"HS-4\"", "\"matesWith\": 4")
                .with("fan-kit.json", "\"plug\": \"main\"", "\"plug\": \"mian\"")
                .with("shop-rules.json", "\"revision\": \"2\",", "")
                .with("shop-rules.json", "\"75 %\"", "\"0.75\"")
                .plus("a.json", "[]")
                .problems())
        .containsExactly(
            "a.json: a document is an object in { } that starts with its kind, but this is a list",
            "alder-van.json, traits[0].values[0].shares: 'shares' is not a key of a trait value; did"
                + " you mean 'share'?",
            "alder-van.json, runs[0].length: \"2.4 V\" can't be read as a length: at character 5, V"
                + " is a unit of voltage, not of length; expected mm, cm, m, in or ft, such as"
                + " \"820 mm\"",
            "alder-van.json, circuits[0].presentWhen: there is no trait 'tow-perp'; did you mean"
                + " 'tow-prep'?",
            "cabin-fan.json, plugs[0].matesWith: a number stands here, but it must be text in"
                + " quotation marks",
            "fan-kit.json, mounts[0].plug: there is no plug 'mian'; did you mean 'main'?",
            "shop-rules.json, revision: the key 'revision' is missing: text in quotation marks",
            "shop-rules.json, fuseLoading.value: \"0.75\" can't be read as a percentage: at"
                + " character 5, the unit is missing; expected \"75 %\" if a share of one is meant,"
                + " \"0.75 %\" if not");
  }
}
