package org.loomwright.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.cli.Run;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanCommandTest {
  private static final JsonMapper STRICT =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();
  private static final List<String> PACK =
      List.of(
          "pack.pdf",
          "calculations.pdf",
          "leads.csv",
          "cut-list.xlsx",
          "parts.xlsx",
          "guide.html",
          "fit-check.html",
          "result.json");

  @TempDir private Path temp;
  private DemoCopy demo;

  @BeforeEach
  void copy() throws IOException {
    demo = DemoCopy.in(temp.resolve("shop"));
  }

  @Test
  void oneKitIsSummedUp() {
    Run run = plan("--kit", "crew-comfort");
    assertThat(run.exitCode()).as(run.out() + run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Rear-cabin heater and powered side steps for the panel van\n")
        .contains(
            "Kit crew-comfort, revision A, for the Ostveld Packer",
            " possible builds, 8 traits, ",
            "CAN BE RELEASED",
            "heater and blower supply",
            "\n  A1  ",
            "Part numbers\n",
            "→ floor connector cavity 1; ",
            "\nBundles: 6, ",
            " hold, ",
            ", 0 fail\n",
            "Proof: proven for ")
        .doesNotContain("trailer", "The pack is in", "Not served");
    assertThat(run.out().replaceAll("\\s+", " ")).contains(" changeable in ", " parked in ");
    assertThat(run.out().lines().count()).isLessThanOrEqualTo(55);
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
  }

  @Test
  void jsonIsOneObjectAndNothingElse() {
    Run run = plan("--kit", "crew-comfort", "--json");
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode plan = STRICT.readTree(run.out());
    assertThat(plan.at("/kit/id").asString()).isEqualTo("crew-comfort");
    assertThat(plan.get("releasable").asBoolean()).isTrue();
    assertThat(plan.at("/builds/possible").asInt()).isGreaterThanOrEqualTo(60);
    assertThat(plan.get("cases").size()).isGreaterThanOrEqualTo(4);
    assertThat(plan.at("/design/leads").size()).isPositive();
    assertThat(plan.at("/proof/proven").asBoolean()).isTrue();
  }

  /** Ratings compared as they stand have nothing to unfold; all else shows how it was found. */
  @Test
  void jsonUnfoldsEveryCheckInFullPrecision() {
    JsonNode plans = STRICT.readTree(plan("--json").out()).get("plans");
    int lines = 0;
    for (JsonNode plan : plans) {
      for (JsonNode check : plan.get("checks")) {
        JsonNode trace = check.get("trace");
        if (trace.isEmpty()) {
          assertThat(check.get("id").asString())
              .matches("(terminal|slot|fuse limit|least area|apart)/.*");
        }
        for (JsonNode line : trace) {
          lines++;
          assertThat(line.propertyNames())
              .containsExactly("what", "formula", "value", "unit", "source");
          assertThat(line.get("what").asString()).isNotBlank();
        }
      }
    }
    assertThat(lines).isGreaterThan(1000);
    assertThat(plans.toString()).containsPattern("\"value\":\\d+\\.\\d{10,}");
  }

  @Test
  void severalKitsAreAllPlanned() {
    Run text = plan();
    assertThat(text.exitCode()).as(text.out() + text.err()).isZero();
    assertThat(text.out())
        .startsWith("The folder holds 2 kits and each is planned: crew-comfort, trailer.")
        .contains("\nKit crew-comfort, ", "\nKit trailer, ");

    Run json = plan("--json");
    assertThat(json.exitCode()).isZero();
    JsonNode plans = STRICT.readTree(json.out()).get("plans");
    assertThat(plans.size()).isEqualTo(2);
    assertThat(plans.get(1).at("/kit/id").asString()).isEqualTo("trailer");
    assertThat(plans.get(0))
        .isEqualTo(STRICT.readTree(plan("--kit", "crew-comfort", "--json").out()));
  }

  /** More than the shared feed bears, but not so much that no way is left to try. */
  @Test
  void aRaisedLoadFailsAndTheCheckIsNamedWithItsFigure() throws IOException {
    for (int pin = 0; pin < 4; pin++) {
      demo.with("side-steps.equipment.json", "\"continuous\": \"3 A\"", "\"continuous\": \"4 A\"");
    }
    Run text = plan("--kit", "crew-comfort");
    assertThat(text.exitCode()).as(text.out()).isEqualTo(1);
    assertThat(text.err()).isEmpty();
    assertThat(text.out()).contains("\nNOT RELEASABLE: ");

    Run json = plan("--kit", "crew-comfort", "--json");
    assertThat(json.exitCode()).isEqualTo(1);
    JsonNode plan = STRICT.readTree(json.out());
    assertThat(plan.get("releasable").asBoolean()).isFalse();
    List<JsonNode> failing = new ArrayList<>();
    plan.get("checks")
        .forEach(
            check -> {
              if (check.get("verdict").asString().equals("fails")) {
                failing.add(check);
              }
            });
    assertThat(failing).isNotEmpty();
    String words = text.out().replaceAll("\\s+", " ");
    assertThat(failing)
        .anySatisfy(
            check ->
                assertThat(words)
                    .containsPattern(
                        "FAILS "
                            + Pattern.quote(
                                check.get("name").asString()
                                    + ", "
                                    + check.get("subject").asString()
                                    + ": ")
                            + "[0-9.]+ "
                            + Pattern.quote(check.get("unit").asString() + ", ")
                            + "at (most|least) [0-9.]+ "));
  }

  /**
   * 19 A on the largest fuse that fits, 25 A: 0.76 of it, where 0.75 of the rating that is left at
   * 50 °C is the limit: 0.75 (1 - 0.25 (50 - 20) / (85 - 20)).
   */
  @Test
  void aLoadThatNoFuseCarriesIsPlannedWithTheFailingCheckAndItsFigure() throws IOException {
    demo.with(DemoCopy.HEATER, "\"continuous\": \"12.5 A\"", "\"continuous\": \"19 A\"");
    Run run = plan("--kit", "crew-comfort");
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("NOT RELEASABLE: ", " checks fail").doesNotContain("Not served");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "FAILS loading, lead L1: 0.76 of the rating, at most 0.663 of the rating allowed, margin"
                + " −15 %",
            "the continuous load is 19 A of 16.587 A on the 25 A fuse of slot ");
  }

  /** Without its alternative slots the heater has no feed where section B is dead. */
  @Test
  void buildsThatNothingServesAreNamedWithTheNeedAndTheReason() throws IOException {
    demo.withMatch(DemoCopy.VAN, "(\"id\": \"S5\",[^}]*?\"metalWhen\": )\"always\"", "$1\"never\"");
    demo.withMatch(
        DemoCopy.VAN, "(\"id\": \"F8\",[^}]*?\"metalWhen\": )\"unknown\"", "$1\"never\"");
    Run run = plan("--kit", "crew-comfort");
    assertThat(run.exitCode()).as(run.out() + run.err()).isEqualTo(1);
    assertThat(run.out().replaceAll("\\s+", " "))
        .containsPattern("NOT RELEASABLE: [0-9]+ builds not served")
        .containsPattern(
            "Not served - [^(]*section B of the rear fuse block dead[^(]*\\([0-9]+ builds\\): heater"
                + " and blower supply")
        .contains("no way to meet ");
  }

  @Test
  void thePackIsWrittenAndASecondRunGivesTheSameBytes() throws IOException {
    Path out = temp.resolve("new folder").resolve("pack");
    Run first = plan("--kit", "crew-comfort", "--out", out.toString());
    assertThat(first.exitCode()).as(first.out() + first.err()).isZero();
    assertThat(first.out())
        .endsWith(
            "\nThe pack is in "
                + out
                + ": pack.pdf, calculations.pdf, leads.csv, cut-list.xlsx, parts.xlsx, board.pdf,"
                + " board-sheet.pdf, board-1.svg, board-1.dxf, guide.html, fit-check.html,"
                + " result.json\n");
    List<byte[]> before = contents(out);
    assertThat(before).allSatisfy(bytes -> assertThat(bytes).isNotEmpty());

    Path foreign = Files.writeString(out.resolve("notes.txt"), "ours");
    Run second = plan("--kit", "crew-comfort", "--out", out.toString());
    assertThat(second.out()).isEqualTo(first.out());
    List<byte[]> after = contents(out);
    for (int i = 0; i < PACK.size(); i++) {
      assertThat(after.get(i)).as(PACK.get(i)).isEqualTo(before.get(i));
    }
    assertThat(foreign).hasContent("ours");
  }

  @Test
  void packsOfSeveralKitsGoIntoFoldersOfTheirOwn() {
    Path out = temp.resolve("packs");
    assertThat(plan("--json", "--out", out.toString()).exitCode()).isZero();
    for (String kit : List.of("crew-comfort", "trailer")) {
      assertThat(PACK).allSatisfy(name -> assertThat(out.resolve(kit).resolve(name)).exists());
    }
  }

  /** The pack of one kit lies where the reader looks for documents. */
  @Test
  void aPackWithinTheWorkspaceDoesNotDisturbTheNextRun() {
    Path out = demo.folder().resolve("pack");
    Run written = plan("--kit", "crew-comfort", "--out", out.toString());
    assertThat(written.exitCode()).as(written.err()).isZero();
    assertThat(out.resolve("result.json")).exists();
    Run read = plan("--kit", "crew-comfort");
    assertThat(read.exitCode()).as(read.err()).isZero();
  }

  @Test
  void aPlaceWhereNothingCanBeWrittenIsSaidBeforePlanning() throws IOException {
    Path file = Files.writeString(temp.resolve("taken"), "ours");
    for (Path out : List.of(file, file.resolve("below"))) {
      Run run = plan("--out", out.toString());
      assertThat(run.exitCode()).isEqualTo(3);
      assertThat(run.out()).isEmpty();
      assertThat(run.err())
          .isEqualTo(
              "--out: the pack can't be written to "
                  + out
                  + ": "
                  + file
                  + " is a file. Name a folder in which files can be made.\n");
    }
    assertThat(file).hasContent("ours");
  }

  @Test
  void aFolderInPlaceOfAFileOfThePackIsSaid() throws IOException {
    Path out = Files.createDirectories(temp.resolve("out"));
    Files.createDirectories(out.resolve("pack.pdf"));
    Run run = plan("--kit", "trailer", "--out", out.toString());
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).startsWith("--out: ").contains("pack.pdf").doesNotContain("Exception");
  }

  private Run plan(String... options) {
    List<String> words = new ArrayList<>(List.of("plan", demo.folder().toString()));
    words.addAll(List.of(options));
    return Run.of(words);
  }

  private static List<byte[]> contents(Path out) throws IOException {
    List<byte[]> contents = new ArrayList<>();
    for (String name : PACK) {
      contents.add(Files.readAllBytes(out.resolve(name)));
    }
    return contents;
  }
}
