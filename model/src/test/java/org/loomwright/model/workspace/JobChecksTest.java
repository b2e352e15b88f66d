package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.json.DocumentWriter;

class JobChecksTest {
  static final String FILE = "plate-17.job.json";
  static final String OPEN =
      """
      {"kind": "job", "format": 1, "id": "plate-17", "name": "Fan into the grey van", "revision": "1",
       "kit": "fan-kit", "vehicle": "alder-van", "vehicleNote": "plate ends in 17",
       "when": "2026-03-04", "by": "M. Orr", "state": "under-way", "partNumber": "FK-1",
       "serial": "FK-0007", "answers": {"tow-prep": "yes"}, "done": ["prepare/kit", "act/isolate"],
       "taken": [{"reading": "rest", "name": "rest voltage", "value": "12.6 V"}],
       "deviations": [{"step": "act/isolate", "was": "clamp of another form", "finding": "lamp"}]}
      """;
  private static final String SIGNED =
      OPEN.replace("\"under-way\"", "\"signed-off\"")
          .replace("another form\"", "another form\", \"why\": \"same thread\"")
          .replace("}]}", "}], \"signOff\": {\"by\": \"M. Orr\", \"when\": \"2026-03-05\"}}");

  private static Small with(String job) {
    return Small.workspace().plus(FindingChecksTest.FILE, FindingChecksTest.OPEN).plus(FILE, job);
  }

  private static List<String> problems(String job) {
    return with(job).problems();
  }

  @Test
  void isReadAndWrittenAgain() {
    Job job = Small.good(with(OPEN).read()).workspace().jobs().get(0);
    assertThat(job.state()).isEqualTo(JobState.UNDER_WAY);
    assertThat(job.answers()).isEqualTo(Map.of("tow-prep", "yes"));
    assertThat(job.taken("rest").orElseThrow().value()).isEqualTo("12.6 V");
    assertThat(Small.good(with(DocumentWriter.write(job)).read()).workspace().jobs())
        .containsExactly(job);
    assertThat(problems(SIGNED)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "alder-van" | "elder-van" | vehicle | there is no vehicle 'elder-van'
          "fan-kit" | "fan-kid" | kit | there is no kit 'fan-kid'; did you mean 'fan-kit'?
          "2026-03-04" | "4 March" | when | is no day; write year, month and day
          "tow-prep": "yes" | "tow-prop": "yes" | answers.tow-prop | there is no trait 'tow-prop'
          "tow-prep": "yes" | "tow-prep": "maybe" | answers.tow-prep | has no value 'maybe'
          "act/isolate"], | "prepare/kit"], | done[1] | this step is there twice: 'prepare/kit'
          "lamp" | "lump" | deviations[0].finding | there is no finding 'lump'
          "under-way" | "signed" | state | 'signed' is not known here
          "revision": "1", | "revision": "1", "release": 0, | release | numbered from 1
          "revision": "1", | "revision": "1", "release": "2", | release | must be a whole number
          "12.6 V"}] | "12.6 V"}, {"reading": "rest", "name": "b", "value": "1"}] | taken[1].reading | already used
          "lamp"}] | "lamp"}], "signOff": {"by": "a", "when": "2026-03-05"} | signOff | a job that is under way is not signed
          "vehicleNote": "plate ends in 17", | | vehicleNote | the key 'vehicleNote' is missing
          """)
  void plantedFaultsAreFound(String old, String now, String path, String words) {
    assertThat(OPEN).contains(old);
    assertThat(problems(OPEN.replace(old, now == null ? "" : now)))
        .singleElement()
        .asString()
        .startsWith(FILE + ", " + path + ": ")
        .contains(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          , "signOff": {"by": "M. Orr", "when": "2026-03-05"} | | signOff | says who signed it
          "when": "2026-03-05" | "when": "2026-13-05" | signOff.when | is no day
          "partNumber": "FK-1", | | partNumber | which part number was fitted
          , "why": "same thread" | | deviations[0].why | says why it may stay
          """)
  void whatASignatureNeeds(String old, String now, String path, String words) {
    assertThat(SIGNED).contains(old);
    assertThat(problems(SIGNED.replace(old, now == null ? "" : now)))
        .singleElement()
        .asString()
        .startsWith(FILE + ", " + path + ": ")
        .contains(words);
  }

  /** The kit may have been given up since, a finding may have changed the vehicle. */
  @Test
  void whatIsOverIsARecordOfItsDay() {
    String gone = SIGNED.replace("\"fan-kit\"", "\"gone\"").replace("\"tow-prep\"", "\"gone\"");
    assertThat(problems(gone)).isEmpty();
    assertThat(problems(OPEN.replace("\"under-way\"", "\"given-up\"").replace("fan-kit", "gone")))
        .isEmpty();
    assertThat(problems(SIGNED.replace("\"alder-van\"", "\"gone\""))).hasSize(1);
  }

  /** A release rests on the documents of its day. */
  @Test
  void answersOnAReleaseGoByThatRelease() {
    String job = OPEN.replace("\"tow-prep\"", "\"gone\"");
    assertThat(problems(job)).hasSize(1);
    assertThat(
            problems(job.replace("\"revision\": \"1\",", "\"revision\": \"1\", \"release\": 2,")))
        .isEmpty();
  }

  @Test
  void aKitOfAnotherVehicleIsRefused() {
    String van =
        Small.text("alder-van.json").replaceFirst("\"id\": \"alder-van\"", "\"id\": \"birch-van\"");
    assertThat(
            with(OPEN.replace("\"alder-van\"", "\"birch-van\""))
                .plus("birch-van.json", van)
                .problems())
        .singleElement()
        .asString()
        .contains("kit 'fan-kit' is for vehicle 'alder-van', not for this one");
  }

  @Test
  void photosAreLookedFor() {
    String photo = "\"photos\": [{\"file\": \"a.png\", \"step\": \"act/isolate\"}], \"done\"";
    List<NamedText> texts = with(OPEN.replace("\"done\"", photo)).texts();
    assertThat(Small.words(WorkspaceReader.read(texts, Map.of())))
        .singleElement()
        .asString()
        .startsWith(FILE + ", photos[0].file: there is no picture 'a.png'");
  }
}
