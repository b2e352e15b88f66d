package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockState;

class BatchChecksTest {
  static final String FILE = "march.batch.json";
  static final String BATCH =
      """
      {"kind": "batch", "format": 1, "id": "march", "name": "Ten of March", "revision": "1",
       "kit": "fan-kit", "release": 2, "partNumber": "FK-1", "made": "2026-03-01", "by": "M. Orr",
       "items": [
         {"serial": "FK-0006", "state": "on-the-shelf"},
         {"serial": "FK-0007", "state": "fitted", "job": "plate-17"},
         {"serial": "FK-0008", "state": "sold", "note": "to the workshop at the bridge"}]}
      """;
  private static final String JOB =
      JobChecksTest.OPEN.replace("\"revision\": \"1\",", "\"revision\": \"1\", \"release\": 2,");

  private static Small with(String batch) {
    return Small.workspace()
        .plus(FindingChecksTest.FILE, FindingChecksTest.OPEN)
        .plus(JobChecksTest.FILE, JOB)
        .plus(FILE, batch);
  }

  @Test
  void isReadAndWrittenAgain() {
    Batch batch = Small.good(with(BATCH).read()).workspace().batches().get(0);
    assertThat(batch.count(StockState.ON_THE_SHELF)).isEqualTo(1);
    assertThat(batch.item("FK-0007").orElseThrow().job()).contains("plate-17");
    assertThat(batch.item("FK-0009")).isEmpty();
    assertThat(Small.good(with(DocumentWriter.write(batch)).read()).workspace().batches())
        .containsExactly(batch);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "2026-03-01" | "March" | made | is no day
          "release": 2 | "release": 3 | items[1].job | job 'plate-17' says release '2', but here it is '3'
          "FK-1" | "FK-2" | items[1].job | says part number 'FK-1', but here it is 'FK-2'
          "FK-0007" | "FK-0017" | items[1].job | says serial number 'FK-0007', but here it is 'FK-0017'
          "FK-0008" | "FK-0006" | items[2].serial | is already given in batch 'march', items[0]
          "plate-17" | "plate-71" | items[1].job | there is no job 'plate-71'
          "fitted" | "sold" | items[1].job | a kit that is sold has no job
          "fitted" | "lost" | items[1].state | 'lost' is not known here
          """)
  void plantedFaultsAreFound(String old, String now, String path, String words) {
    assertThat(BATCH).contains(old);
    assertThat(with(BATCH.replace(old, now)).problems())
        .singleElement()
        .asString()
        .startsWith(FILE + ", " + path + ": ")
        .contains(words);
  }

  @Test
  void kitAndReleaseAreRight() {
    assertThat(with(BATCH.replace("fan-kit", "fan-kid")).problems())
        .hasSize(2)
        .anyMatch(it -> it.contains("there is no kit 'fan-kid'; did you mean 'fan-kit'?"))
        .anyMatch(it -> it.contains("job 'plate-17' says kit 'fan-kit'"));
    assertThat(with(BATCH.replace("\"release\": 2", "\"release\": 0")).problems())
        .anyMatch(it -> it.contains("numbered from 1"));
  }

  @Test
  void aSerialNumberIsGivenOnceInAllBatches() {
    String other =
        """
        {"kind": "batch", "format": 1, "id": "april", "name": "April", "revision": "1",
         "kit": "fan-kit", "release": 2, "partNumber": "FK-1", "made": "2026-04-01", "by": "M. Orr",
         "items": [{"serial": "FK-0006", "state": "scrapped"}]}
        """;
    assertThat(with(BATCH).plus("april.batch.json", other).problems())
        .singleElement()
        .asString()
        .contains("serial number 'FK-0006' is already given in batch 'march', items[0]");
  }

  /** What a job names is in its vehicle: not on the shelf, and in no other vehicle. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          under-way | "fitted", "job": "plate-17" | plate ends in 44 | FK-0006 | items[0] says that serial number 'FK-0006' is on the shelf
          under-way | "scrapped" | plate ends in 44 | FK-0007 | items[1] says that serial number 'FK-0007' is scrapped
          under-way | "fitted", "job": "plate-17" | plate ends in 44 | FK-0007 | job 'plate-17' has serial number 'FK-0007' too, on another vehicle
          under-way | "fitted", "job": "plate-17" | PLATE ends in: 17 | FK-0007 |
          given-up | "scrapped" | plate ends in 44 | FK-0007 |
          survey | "fitted", "job": "plate-17" | plate ends in 44 | FK-0006 |
          under-way | "fitted", "job": "plate-17" | plate ends in 44 | FK-0008 |
          under-way | "fitted", "job": "plate-17" | plate ends in 44 | FK-0099 |
          """)
  void whatAJobNamesIsInItsVehicle(
      String state, String item, String note, String serial, String words) {
    // The first job names no kit where another case is tried.
    String first = item.contains("plate-17") ? JOB : JOB.replace("\"serial\": \"FK-0007\", ", "");
    String second =
        JOB.replace("plate-17", "plate-44")
            .replace("plate ends in 17", note)
            .replace("under-way", state)
            .replace("FK-0007", serial);
    Small small =
        Small.workspace()
            .plus(FindingChecksTest.FILE, FindingChecksTest.OPEN)
            .plus(JobChecksTest.FILE, first)
            .plus("plate-44.job.json", second)
            .plus(FILE, BATCH.replace("\"fitted\", \"job\": \"plate-17\"", item));
    if (words == null) {
      assertThat(small.problems()).isEmpty();
    } else {
      assertThat(small.problems())
          .singleElement()
          .asString()
          .startsWith("plate-44.job.json, serial: ")
          .contains(words);
    }
  }

  @Test
  void aBatchHasKits() {
    String none = BATCH.substring(0, BATCH.indexOf(",\n \"items\"")) + "}";
    assertThat(with(none).problems())
        .singleElement()
        .asString()
        .startsWith(FILE + ", items: ")
        .contains("a batch lists each kit");
  }
}
