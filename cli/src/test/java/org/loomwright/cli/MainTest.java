package org.loomwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

  private static final List<String> SUMS =
      List.of(
          "resistance",
          "drop",
          "ampacity",
          "temperature",
          "withstand",
          "fuse",
          "bundle",
          "cut",
          "gauge");

  @Test
  void helpOfSumListsWhatExistsAndNothingElse() {
    Run run = Run.of("sum", "--help");
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(listed(run.out())).containsExactlyElementsOf(SUMS);
  }

  @Test
  void everyListedCommandHasHelpOnStandardOutput() {
    for (String command : listed(Run.of("--help").out())) {
      Run run = Run.of(command, "--help");
      assertThat(run.exitCode()).as(command).isZero();
      assertThat(run.out()).startsWith("Usage: loomwright " + command);
    }
    for (String sum : SUMS) {
      Run run = Run.of("sum", sum, "--help");
      assertThat(run.exitCode()).as(sum).isZero();
      assertThat(run.out()).startsWith("Usage: loomwright sum " + sum).contains("--json");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "sum",
        "braid",
        "--colour",
        "sum braid",
        "sum bundle",
        "sum cut --stock 5600mm",
        "sum cut --stock 5600mm --pieces 1380x22 --saw 1mm",
        "sum resistance",
        "sum resistance --wire 2.5mm2 --length 1m",
        "sum resistance --wire 2.5mm2 --length 1m --temperature 20C --colour red",
        "sum resistance --wire 2.5mm2 --length 1m --temperature 20C extra",
        "sum resistance --wire 2.5mm2 --length 1m --temperature",
        "sum resistance --wire 2.5mm2 --wire 4mm2 --length 1m --temperature 20C"
      })
  void wrongUsageEndsWithTwoAndAHint(String words) {
    Run run = Run.of(split(words));
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("Try: loomwright").doesNotContain("Exception", "\tat ");
  }

  @Test
  void aMisspeltOptionIsNamed() {
    Run run = Run.of(split("sum resistance --wire 2.5mm2 --lenght 1m --temperature 20C"));
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("--lenght", "--length");
  }

  @Test
  void aWrongUnitNamesOptionTextPositionAndWhatWouldBeRight() {
    Run run =
        Run.of(
            "sum", "resistance", "--wire", "2.5 mm²", "--length", "5 A", "--temperature", "20 °C");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("--length: \"5 A\"")
        .contains("character 3", "expected", "mm")
        .hasLineCount(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sum resistance --wire 2.5 --length 1m --temperature 20C",
        "sum resistance --wire 2.5mm2 --length -1m --temperature 20C",
        "sum resistance --wire 2.5mm2 --length long --temperature 20C",
        "sum resistance --wire 2.6mm2 --length 1m --temperature 20C",
        "sum resistance --wire 90AWG --length 1m --temperature 20C",
        "sum resistance --wire 2.5mm2 --length 1m --temperature 20V",
        "sum ampacity --wire 2.5mm2 --insulation-rating 105C --ambient 30C --wires many",
        "sum ampacity --wire 2.5mm2 --insulation-rating 105C --ambient 30C --wires 0",
        "sum ampacity --wire 2.5mm2 --insulation-rating 105C --ambient 30C --wires 3 --loaded 200%",
        "sum withstand --wire 2.5mm2 --insulation paper --time 1s",
        "sum bundle --diameters 2.1,,3.0",
        "sum bundle --diameters -2.1",
        "sum bundle --diameters 2000,1",
        "sum cut --stock 5600mm --pieces 1380",
        "sum cut --stock 5600mm --pieces 5601x1",
        "sum cut --stock 0mm --pieces 1x1",
        "sum cut --stock 5600V --pieces 1x1"
      })
  void anUnreadableValueEndsWithThreeAndOneSentence(String words) {
    Run run = Run.of(split(words));
    assertThat(run.exitCode()).as(run.err()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isNotBlank().doesNotContain("Exception", "\tat ").hasLineCount(1);
  }

  @Test
  void versionIsOneLine() {
    Run run = Run.of("--version");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).startsWith("loomwright ").hasLineCount(1);
  }

  @Test
  void anAnswerForPeopleGivesTheFigureAndHowItWasReached() {
    Run run =
        Run.of(
            "sum", "resistance", "--wire", "2.5 mm²", "--length", "1 m", "--temperature", "20 °C");
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("resistance  0.0076 ohm")
        .contains("How it was reached", "r * L", "ISO 6722-1");
  }

  private static List<String> split(String words) {
    return words.isEmpty() ? List.of() : List.of(words.split(" ", -1));
  }

  /** The names in the list of commands of a help text. */
  private static List<String> listed(String help) {
    List<String> names = new ArrayList<>();
    boolean within = false;
    for (String line : help.lines().toList()) {
      if (line.isBlank()) {
        within = false;
      } else if (within && line.startsWith("  ") && line.charAt(2) != ' ') {
        names.add(line.strip().replaceFirst("[ ,].*", ""));
      }
      within = within || line.equals("Commands:");
    }
    return names;
  }
}
