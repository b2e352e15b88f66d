package org.loomwright.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.cli.plan.DemoCopy.HEATER;
import static org.loomwright.cli.plan.DemoCopy.KIT;
import static org.loomwright.cli.plan.DemoCopy.VAN;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.cli.Run;

/** Twelve bad inputs: what the shop owner who made the mistake gets to read. */
class BadInputsTest {
  @TempDir private Path temp;
  private DemoCopy demo;

  @BeforeEach
  void copy() throws IOException {
    demo = DemoCopy.in(temp.resolve("shop"));
  }

  @Test
  void missingFolder() {
    Run run = Run.of("plan", temp.resolve("no-such-shop").toString());
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("no-such-shop: there is no such folder\n", "1 problem in ")
        .hasLineCount(2);
  }

  @Test
  void missingFile() throws IOException {
    demo.without("rules.rules.json");
    assertThat(problems())
        .contains(
            "crew-comfort.kit.json, rules: there is no set of rules 'shop-rules'; there are no sets"
                + " of rules at all");
  }

  @Test
  void brokenJson() throws IOException {
    demo.with(VAN, "\"supply\": \"12 V\",", "\"supply\": \"12 V\"");
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("van.vehicle.json, line ")
        .endsWith("this is not JSON: a comma, } or ] is missing before this");
  }

  @Test
  void wrongUnit() throws IOException {
    demo.with(VAN, "\"length\": \"700 mm\"", "\"length\": \"700 V\"");
    assertThat(problems())
        .containsExactly(
            "van.vehicle.json, runs[0].length: \"700 V\" can't be read as a length: at character"
                + " 5, V is a unit of voltage, not of length; expected mm, cm, m, in or ft, such as"
                + " \"820 mm\"");
  }

  @Test
  void misspeltTrait() throws IOException {
    demo.with(VAN, "\"presentWhen\": \"tow-prep = yes\"", "\"presentWhen\": \"tow-perp = yes\"");
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("van.vehicle.json, connectors[")
        .contains("presentWhen: there is no trait 'tow-perp'; did you mean 'tow-prep'?")
        .endsWith(" (it says 'tow-perp = yes')");
  }

  @Test
  void impossibleRuleSet() throws IOException {
    demo.with(
        VAN,
        "\"rules\": [",
        "\"rules\": [{\"exclude\": \"body = panel\", \"reason\": \"never built closed\"},"
            + " {\"exclude\": \"body != panel\", \"reason\": \"never built open\"},");
    assertThat(problems())
        .containsExactly(
            "van.vehicle.json, rules: rules[0] (never built closed) and rules[1] (never built open)"
                + " together exclude every build, so there is no vehicle left; weaken one of them");
  }

  /** 2^20 builds and more, so that nobody can find it by trying them all. */
  @Test
  void impossibleRuleSetOfAVehicleWithManyTraits() throws IOException {
    manyTraits(20);
    demo.with(
        VAN,
        "\"rules\": [",
        "\"rules\": [{\"exclude\": \""
            + all(20, "yes", " or ")
            + "\", \"reason\": \"extras never built\"},"
            + " {\"exclude\": \""
            + all(20, "no", " and ")
            + "\", \"reason\": \"never built bare\"},");
    assertThat(problems())
        .containsExactly(
            "van.vehicle.json, rules: rules[0] (extras never built) and rules[1] (never built bare)"
                + " together exclude every build, so there is no vehicle left; weaken one of them");
  }

  @Test
  void unknownPart() throws IOException {
    demo.with(HEATER, "\"matesWith\": \"OV-6S\"", "\"matesWith\": \"OV-6X\"");
    assertThat(problems())
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("heater.equipment.json, plugs[0].matesWith: there is no housing")
                    .contains("'OV-6X'", "did you mean 'OV-6S'?"));
  }

  @Test
  void negativeLength() throws IOException {
    demo.with(VAN, "\"length\": \"700 mm\"", "\"length\": \"-700 mm\"");
    assertThat(problems())
        .containsExactly(
            "van.vehicle.json, runs[0].length: \"-700 mm\" can't be read as a length: at character"
                + " 1, a length must not be negative; expected \"820 mm\"");
  }

  @Test
  void duplicatedId() throws IOException {
    demo.with(VAN, "\"id\": \"pretensioner-left\"", "\"id\": \"reversing-lamp\"");
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("van.vehicle.json, circuits[")
        .contains("id: 'reversing-lamp' is already used by circuits[")
        .endsWith("; each needs its own");
  }

  @Test
  void cavityOutOfRange() throws IOException {
    demo.with(VAN, "\"cavity tow-socket 8\"", "\"cavity tow-socket 18\"");
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("van.vehicle.json, circuits[")
        .contains("housing 'OV-13R' has no cavity '18'; its cavities are 1, 2, 3");
  }

  @Test
  void circularRun() throws IOException {
    demo.withMatch(
        VAN, "(\"from\": \"left-seat-box\",\\s*\"to\": )\"left-b-pillar\"", "$1\"left-seat-box\"");
    assertThat(problems())
        .first()
        .asString()
        .startsWith("van.vehicle.json, runs[0].to: the run is circular: it ends at 'left-seat-box'")
        .endsWith("; a run leads from one place to another");
  }

  @Test
  void wrongKind() throws IOException {
    demo.with(KIT, "\"vehicle\": \"packer\"", "\"vehicle\": \"heater\"");
    assertThat(problems())
        .first()
        .asString()
        .isEqualTo(
            "crew-comfort.kit.json, vehicle: there is no vehicle 'heater'; 'heater' is a piece of"
                + " equipment, not a vehicle");
  }

  @Test
  void newerVersion() throws IOException {
    demo.with(VAN, "\"format\": 1", "\"format\": 2");
    assertThat(problems())
        .contains(
            "van.vehicle.json, format: written by a newer Loomwright (format 2); this one reads"
                + " format 1");
  }

  @Test
  void allThatIsWrongIsSaidInOneGo() throws IOException {
    demo.with(VAN, "\"length\": \"700 mm\"", "\"length\": \"700 V\"")
        .with(VAN, "\"presentWhen\": \"tow-prep = yes\"", "\"presentWhen\": \"tow-perp = yes\"")
        .with(HEATER, "\"continuous\": \"12.5 A\"", "\"continuous\": \"12.5\"");
    assertThat(problems()).hasSize(3);
  }

  @Test
  void unknownKit() {
    Run run = Run.of("plan", demo.folder().toString(), "--kit", "crew-confort", "--json");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith(
            "there is no kit 'crew-confort'; did you mean 'crew-comfort'? The kits are"
                + " crew-comfort, trailer\n");
  }

  @Test
  void noKit() throws IOException {
    demo.without(KIT).without("trailer.kit.json");
    for (String ofAKit :
        List.of("heater-autumn.batch.json", "van-0288-trailer.job.json", "van-0533.job.json")) {
      demo.without(ofAKit);
    }
    assertThat(problems()).containsExactly("the folder holds no kit; add a document of kind kit");
  }

  /** The problems that the demo as changed is refused with, without the count at the end. */
  private List<String> problems() {
    Run run = Run.of("plan", demo.folder().toString());
    assertThat(run.exitCode()).as(run.err()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).doesNotContain("Exception", "\tat ");
    List<String> lines = run.err().lines().toList();
    int count = lines.size() - 1;
    assertThat(lines.get(count))
        .isEqualTo(
            (count == 1 ? "1 problem" : count + " problems")
                + " in "
                + demo.folder()
                + "; nothing was planned.");
    return lines.subList(0, count);
  }

  private void manyTraits(int count) throws IOException {
    String traits =
        IntStream.range(0, count)
            .mapToObj(
                i ->
                    "{\"id\": \"extra"
                        + i
                        + "\", \"name\": \"extra "
                        + i
                        + "\", \"values\": [{\"id\": \"no\", \"words\": \"without extra "
                        + i
                        + "\"}, {\"id\": \"yes\", \"words\": \"with extra "
                        + i
                        + "\"}], \"tell\": {\"how\": \"look\", \"place\": \"rear-bumper\","
                        + " \"effort\": \"1 min\", \"question\": \"Is it there?\", \"expect\":"
                        + " {\"no\": \"no\", \"yes\": \"yes\"}}},")
            .collect(Collectors.joining());
    demo.with(VAN, "\"traits\": [", "\"traits\": [" + traits);
  }

  private static String all(int count, String value, String joined) {
    return IntStream.range(0, count)
        .mapToObj(i -> "extra" + i + " = " + value)
        .collect(Collectors.joining(joined));
  }
}
