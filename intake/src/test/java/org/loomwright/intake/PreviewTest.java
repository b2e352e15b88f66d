package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Snippets of service tables as a shop may copy them, in words of our own. */
class PreviewTest {

  private static final Vehicle BARE =
      Van.without(Set.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "13"));

  private static List<String> words(Preview preview) {
    return preview.rows().stream()
        .flatMap(
            row ->
                Stream.concat(
                    row.remarks().stream().map(CellRemark::words),
                    row.differences().stream()
                        .map(it -> "row " + row.number() + ": " + it.words())))
        .toList();
  }

  private static List<Preview.State> states(Preview preview) {
    return preview.rows().stream().map(Preview.Row::state).toList();
  }

  private static Circuit circuit(Preview preview, int row) {
    return ((Outcome.OfCircuit) preview.rows().get(row).outcome().orElseThrow()).circuit();
  }

  @Test
  void aServiceTableBecomesCircuits() {
    Preview preview =
        Van.preview(
            """
            Tow socket insert, harness side
            Pin;Wire colour;Size (mm²);Function;Fuse;To;Remarks
            1;BU/WH;1,5;left indicator;;trailer module;
            3;BN;2,5;lamp return;;rear-ground;double crimp
            9;RDGN;4;permanent feed;F7 15A;;
            11;-;-;not used;;;
            12;;;plugged;;;
            """,
            Van.SOCKET,
            BARE);
    assertThat(states(preview)).containsOnly(Preview.State.NEW);
    assertThat(preview.aside()).hasSize(2);
    assertThat(words(preview))
        .containsExactly(
            "F3: 'trailer module' is not on file; taken as a unit, 'unit trailer-module'",
            "row 3: taken as a signal; give a supply kind if it is something else",
            "row 7: plugged: on file none, pasted always");
    Circuit indicator = circuit(preview, 0);
    assertThat(indicator.from()).isEqualTo(new Spot.OfCavity("tow-socket", "1"));
    assertThat(indicator.to()).containsExactly(new Spot.OfUnit("trailer-module"));
    assertThat(indicator.wire().text()).isEqualTo("1.5 mm²");
    assertThat(indicator.colour().text()).isEqualTo("blue/white");
    assertThat(indicator.colourAsSeen()).contains("BU/WH");
    Circuit ground = circuit(preview, 1);
    assertThat(ground.kind()).isEqualTo(CircuitKind.GROUND);
    assertThat(ground.from()).isEqualTo(new Spot.OfGround("rear-ground"));
    Circuit feed = circuit(preview, 2);
    assertThat(feed.kind()).isEqualTo(CircuitKind.SUPPLY);
    assertThat(feed.feed()).contains("30");
    assertThat(feed.from()).isEqualTo(new Spot.OfSlot("rear-block", "F7"));
    assertThat(feed.fuse().orElseThrow().amperes()).isEqualTo(15);
  }

  @Test
  void everyMistakeIsNamedAtItsCell() {
    Preview preview =
        Van.preview(
            """
            Cavity\tFunction\tGauge\tColor\tFrom
            1\tstop lamp\t18\trde\tbody-computer
            14\ttail lamp\t18\tred\tbody-computer
            2\tfog lamp\t18\tBL\tbody-computer
            3\tfog lamp\t77\tred\tbody-computer
            5\treverse\t18\tred\trear-blok F7
            6\treverse\t18\tred\tF7
            6\treverse\t18\tred\tF9
            7\tseat feed\t18\tred\tseat switch
            8\treverse\t18\tred/white/blue\tbody-computer
            10\treverse\t18\tred\tfloor 9
            """,
            Van.SOCKET,
            BARE);
    assertThat(states(preview)).containsOnly(Preview.State.PROBLEM);
    assertThat(words(preview))
        .containsExactly(
            "D2: 'rde' is not a colour; did you mean 'red'?",
            "A3: the tow socket insert has no cavity '14'; its cavities are 1, 2, 3, 4, 5, 6, 7, 8, 9,"
                + " 10, 11, 12 and 1 more",
            "D4: 'BL' can mean blue or black; write the word",
            "C5: '77' can't be a wire size: there is no such gauge here; expected 4/0 to 40 AWG",
            "E6: 'rear-blok F7' is not on file; did you mean 'rear block f7'?",
            "A7: cavity 6 stands in row 8 too; a cavity has one row: correct one of the numbers, or join"
                + " the rows",
            "A8: cavity 6 stands in row 7 too; a cavity has one row: correct one of the numbers, or join"
                + " the rows",
            "E9: 'seat switch' is not on file; taken as a unit, 'unit seat-switch'",
            "row 9: 'seat feed' speaks of a supply but not of which; add its DIN 72552 number, e.g. 'seat"
                + " feed 30'",
            "D10: 'red/white/blue' does not name one or two colours; write base/tracer, e.g. red/white",
            "E11: the housing of connector 'floor' is not at hand, so its cavities can't be checked");
    assertThat(((Outcome.OfFact) preview.rows().get(0).outcome().orElseThrow()).note())
        .contains("Function: stop lamp; Gauge: 18; Color: rde; From: body-computer");
    assertThat(preview.acceptable()).isEmpty();
  }

  @Test
  void whatIsOnFileIsShownBeside() {
    Preview preview =
        Van.preview(
            """
            pin,function,mm2,colour,fuse,to
            1,the trailer left indicator feed,1.5,BLW,7.5 A,
            2,the trailer rear fog lamp feed,1.0,GRY,,
            3,lamp ground,2.5,brown,,quarter-ground
            4,,1.5,red,10A,
            """,
            Van.SOCKET,
            Van.VEHICLE);
    assertThat(states(preview))
        .containsExactly(
            Preview.State.SAME,
            Preview.State.CHANGES,
            Preview.State.CHANGES,
            Preview.State.CHANGES);
    assertThat(words(preview))
        .containsExactly(
            "row 3: wire size: on file 1.5 mm², pasted 1 mm²",
            "row 4: ends: on file ground rear-ground to cavity tow-socket 3, pasted ground"
                + " quarter-ground to cavity tow-socket 3",
            "row 4: note: on file Rung out on one tow loom., pasted called 'lamp ground'",
            "row 5: wire colour: on file blue/green, pasted red",
            "row 5: fuse: on file 7.5 A, pasted 10 A");
  }

  @Test
  void cavitiesThatTakeNoWireAreKnown() {
    Preview preview =
        Van.preview(
            "pin\tname\tsize\tcolour\tto\n4\theater wake\t0.75\tWH\tunit heater\n5\theater\t0.75\tWH\tunit heater\n",
            Van.FLOOR,
            Van.VEHICLE);
    assertThat(words(preview))
        .contains(
            "row 2: cavity 4 is on file as blocked on every build; correct the number, or what is on"
                + " file first",
            "row 3: cavity 5 is on file as plugged on every build; correct what is on file, or say"
                + " which builds have these wires");
    PastedTable table =
        Van.table("pin\tname\tsize\tcolour\tto\n5\theater\t0.75\tWH\tunit heater\n");
    Preview never =
        Preview.of(
            table,
            ColumnGuess.of(table, Van.housing(Van.FLOOR), Van.VEHICLE),
            Van.FLOOR,
            Van.housing(Van.FLOOR),
            Van.VEHICLE,
            new Assumptions(Condition.never(), Optional.empty(), List.of()));
    assertThat(states(never)).containsExactly(Preview.State.NEW);
  }

  @Test
  void aRowThatSaysTooLittleIsKeptAsANote() {
    Preview preview = Van.preview("pin\tname\tcolour\n1\tstop lamp\tred\n", Van.SOCKET, BARE);
    assertThat(words(preview))
        .containsExactly(
            "row 2: kept as a note of cavity 1; to become a circuit the row must say its wire size and"
                + " where its other end is");
    assertThat(((Outcome.OfFact) preview.rows().get(0).outcome().orElseThrow()).note())
        .contains("name: stop lamp; colour: red");
  }

  @Test
  void withoutCavitiesThereIsNothingToAccept() {
    PastedTable table = Van.table("colour\tsize\nred\t0.5\n");
    ColumnGuess guess = ColumnGuess.of(table, Van.housing(Van.SOCKET), BARE);
    Preview preview =
        Preview.of(
            table,
            guess,
            Van.SOCKET,
            Van.housing(Van.SOCKET),
            BARE,
            new Assumptions(
                Condition.of("tow-perp = yes"), Optional.of(new Spot.OfGround("x")), List.of()));
    assertThat(preview.problems())
        .containsExactly(
            "no column is the cavity number; say which one it is",
            "there is no trait 'tow-perp'; did you mean 'tow-prep'?",
            "the other end of the wires, 'ground x', is not on file; write e.g. 'unit body-computer' or"
                + " 'slot BLOCK SLOT'");
    assertThat(preview.acceptable()).isEmpty();
  }

  @Test
  void theLargestTableIsJudged() {
    StringBuilder text = new StringBuilder("pin\tname\tsize\tcolour\tto\n");
    for (int i = 0; i < Limits.ROWS - 1; i++) {
      text.append("3\tlamp ")
          .append(i)
          .append("\t0.5\trde\tthe lamp number ")
          .append(i)
          .append('\n');
    }
    Preview preview = Van.preview(text.toString(), Van.SOCKET, BARE);
    assertThat(preview.rows()).hasSize(Limits.ROWS - 1);
    assertThat(states(preview)).containsOnly(Preview.State.PROBLEM);
    String longest = "a-1 ".repeat(999) + "b";
    String wide = (longest + "\t").repeat(20) + "\n1\t" + (longest + "\t").repeat(18);
    assertThat(Van.preview(wide, Van.SOCKET, BARE).rows()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "Red,red",
    "RD/WH,red/white",
    "rdwh,red/white",
    "RED with WHITE stripe,red/white",
    "gray,grey",
    "BN-YE,brown/yellow",
    "SW,black",
    "bk bk,black",
    "purple/org,violet/orange",
    "BLW,blue/white",
    "RSW,red/black"
  })
  void coloursAreReadAsTablesWriteThem(String text, String colour) {
    assertThat(ColourText.read(text, Van.VEHICLE).known().orElseThrow().text()).isEqualTo(colour);
  }

  @ParameterizedTest
  @CsvSource({
    "0.5,OPEN,0.5 mm²", "'0,5 mm²',OPEN,0.5 mm²", "18,AWG,18 AWG", "4,MM2,4 mm²",
        "4 sq mm,AWG,4 mm²",
    "18ga,OPEN,18 AWG", "AWG 20,MM2,20 AWG", "2/0,OPEN,2/0 AWG", "#16,OPEN,16 AWG",
        "2.5mm,OPEN,2.5 mm²"
  })
  void sizesAreReadAsTablesWriteThem(String text, SizeUnit unit, String size) {
    assertThat(SizeText.read(text, unit).known().orElseThrow().text()).isEqualTo(size);
  }

  @ParameterizedTest
  @CsvSource({"4,OPEN", "0,MM2", "400,MM2", "four,OPEN", "0.01,MM2", "99 AWG,AWG", "1e3,MM2"})
  void whatIsNoSizeIsRefused(String text, SizeUnit unit) {
    assertThat(SizeText.read(text, unit)).isInstanceOf(Fact.Wrong.class);
  }
}
