package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.evidence.How;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FindingState;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.kit.Kit;

class FindingChecksTest {
  static final String FILE = "lamp.finding.json";
  static final String OPEN =
      """
      {"kind": "finding", "format": 1, "id": "lamp", "name": "Lamp wire", "revision": "1",
       "vehicle": "alder-van", "at": "cavity rear-connector 3", "seen": "a wire that is not on file",
       "how": "seen", "when": "2026-03-04", "by": "M. Orr", "kit": "fan-kit", "lead": "L1",
       "traits": {"tow-prep": "yes"}, "state": "open"}
      """;
  private static final String DONE =
      OPEN.replace("\"open\"", "\"accepted\", \"outcome\": \"circuit added\"");

  private static List<String> problems(String finding) {
    return Small.workspace().plus(FILE, finding).problems();
  }

  @Test
  void isReadAndWrittenAgain() {
    Read.Good good = Small.good(Small.workspace().plus(FILE, OPEN).read());
    Finding finding = good.workspace().findings().get(0);
    assertThat(finding.at()).contains(FoundAt.of("cavity rear-connector 3"));
    assertThat(finding.how()).isEqualTo(How.SEEN);
    assertThat(finding.traits()).isEqualTo(Map.of("tow-prep", "yes"));
    assertThat(finding.isOpen()).isTrue();
    Read again = Small.workspace().plus(FILE, DocumentWriter.write(finding)).read();
    assertThat(Small.good(again).workspace().findings()).containsExactly(finding);
  }

  @Test
  void aWorkspaceWithoutFindingsIsAsBefore() {
    Workspace workspace = Small.good(Small.workspace().read()).workspace();
    assertThat(workspace.findings()).isEmpty();
    assertThat(workspace.kits()).extracting(Kit::id).containsExactly("fan-kit");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"place rear", "connector rear-connector", "ground rear-stud", "circuit tow-feed"})
  void allThingsOfAVehicleCanBeMeant(String at) {
    assertThat(problems(OPEN.replace("cavity rear-connector 3", at))).isEmpty();
    assertThat(FoundAt.of(at).text()).isEqualTo(at);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "alder-van" | "elder-van" | vehicle | there is no vehicle 'elder-van'
          rear-connector 3 | rear-conector 3 | at | there is no connector 'rear-conector'
          rear-connector 3 | rear-connector 9 | at | has no cavity '9'
          cavity rear-connector 3 | connector flor | at | there is no connector 'flor'
          cavity rear-connector 3 | place flor | at | there is no place 'flor'
          cavity rear-connector 3 | run nowhere | at | there is no run 'nowhere'
          cavity rear-connector 3 | ground nowhere | at | there is no ground stud 'nowhere'
          cavity rear-connector 3 | circuit nowhere | at | there is no circuit 'nowhere'
          cavity rear-connector 3 | block nowhere | at | there is no fuse block 'nowhere'
          cavity rear-connector 3 | slot nowhere 1 | at | there is no fuse block 'nowhere'
          cavity rear-connector 3 | the roof | at | is nothing of a vehicle; write 'place PLACE'
          cavity rear-connector 3 | cavity rear-connector | at | is nothing of a vehicle
          "2026-03-04" | "2026-02-30" | when | is no day; write year, month and day
          "2026-03-04" | "last week" | when | is no day
          "fan-kit" | "fan-kid" | kit | there is no kit 'fan-kid'; did you mean 'fan-kit'?
          "kit": "fan-kit", | "kit": "fan-kit", "job": "gone", | job | there is no job 'gone'
          "kit": "fan-kit", | | kit | say which kit, or leave the lead out
          "tow-prep": "yes" | "tow-prop": "yes" | traits.tow-prop | there is no trait 'tow-prop'
          "tow-prep": "yes" | "tow-prep": "maybe" | traits.tow-prep | has no value 'maybe'
          "open" | "accepted" | outcome | an accepted finding says what was done about it
          "open" | "set-aside" | outcome | says why nothing follows from it
          "open" | "open", "takenInto": "5" | takenInto | only an accepted finding is taken into
          "open" | "undecided" | state | 'undecided' is not known here
          "seen": "a wire that is not on file", | | seen | the key 'seen' is missing
          """)
  void plantedFaultsAreFound(String old, String now, String path, String words) {
    assertThat(OPEN).contains(old);
    assertThat(problems(OPEN.replace(old, now == null ? "" : now)))
        .singleElement()
        .asString()
        .startsWith(FILE + ", " + path + ": ")
        .contains(words);
  }

  /** A fact that is known by now may have been looked at while it was not. */
  @ParameterizedTest
  @CsvSource({"no,0", "maybe,1"})
  void whatWasSeenOfAFactStandsWhenTheFactIsKnown(String value, int problems) {
    Fact fact =
        Fact.of(Small.good(Small.workspace().read()).workspace().vehicles().get(0)).stream()
            .filter(it -> !it.when().isUnknown())
            .findFirst()
            .orElseThrow();
    String seen = "\"" + fact.trait() + "\": \"" + value + "\"";
    assertThat(problems(OPEN.replace("\"tow-prep\": \"yes\"", seen))).hasSize(problems);
  }

  @Test
  void slotsAreThoseOfTheirBlock() {
    String block =
        Small.good(Small.workspace().read()).workspace().vehicles().get(0).fuseBlocks().get(0).id();
    assertThat(problems(OPEN.replace("cavity rear-connector 3", "slot " + block + " X99")))
        .singleElement()
        .asString()
        .contains("there is no slot 'X99'");
  }

  @Test
  void aKitOfAnotherVehicleIsRefused() {
    String van =
        Small.text("alder-van.json").replaceFirst("\"id\": \"alder-van\"", "\"id\": \"birch-van\"");
    String finding = OPEN.replace("\"alder-van\"", "\"birch-van\"");
    assertThat(Small.workspace().plus("birch-van.json", van).plus(FILE, finding).problems())
        .singleElement()
        .asString()
        .contains("kit 'fan-kit' is for vehicle 'alder-van', not for this one");
  }

  /** The connector it was about may be gone because of it. */
  @Test
  void whatWasDecidedIsARecordOfItsDay() {
    assertThat(problems(DONE)).isEmpty();
    assertThat(
            problems(
                DONE.replace("rear-connector 3", "gone 3")
                    .replace("\"tow-prep\"", "\"gone\"")
                    .replace("\"fan-kit\"", "\"gone\"")))
        .isEmpty();
    assertThat(problems(DONE.replace("\"alder-van\"", "\"gone\""))).hasSize(1);
    assertThat(problems(DONE.replace("circuit added\"", "done\", \"takenInto\": \"5\""))).isEmpty();
  }

  @Test
  void photosAreLookedForAndNamedOnce() {
    String photo = "\"photos\": [{\"file\": \"a.png\"}, {\"file\": \"a.png\"}], \"state\"";
    List<String> twice = problems(OPEN.replace("\"state\"", photo));
    assertThat(twice)
        .containsExactly(FILE + ", photos[1].file: 'a.png' is there twice; once is enough");
    List<NamedText> texts =
        Small.workspace()
            .plus(FILE, OPEN.replace("\"state\"", "\"photos\": [{\"file\": \"a.png\"}], \"state\""))
            .texts();
    assertThat(Small.words(WorkspaceReader.read(texts, Map.of())))
        .singleElement()
        .asString()
        .startsWith(FILE + ", photos[0].file: there is no picture 'a.png'");
  }

  @Test
  void theDemoHasOneOfEach() {
    Read.Good demo = Small.good(WorkspaceReader.read(Path.of("../demo")));
    assertThat(demo.workspace().findings())
        .extracting(Finding::state)
        .containsExactlyInAnyOrder(FindingState.OPEN, FindingState.ACCEPTED);
    assertThat(FoundAt.connector("floor").isOn("floor")).isTrue();
    assertThat(FoundAt.block("floor").isOn("rear")).isFalse();
    assertThat(new FoundAt(FoundAt.Sort.RUN, "floor", Optional.empty()).isOn("floor")).isFalse();
  }
}
