package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.Housing;

class ColumnGuessTest {
  private static final Housing HOUSING = Van.housing(Van.SOCKET);

  @Property(tries = 300)
  void columnsWithHeadersAreFoundInAnyOrder(@ForAll long seed) {
    Random random = new Random(seed);
    RandomPinout.Table made = RandomPinout.of(random, HOUSING, random.nextInt(2) * 0.1);
    List<List<String>> rows = new ArrayList<>(made.rows());
    rows.add(0, made.meanings().stream().map(it -> RandomPinout.header(random, it)).toList());
    ColumnGuess guess = ColumnGuess.of(RandomPinout.table(rows), HOUSING, Van.VEHICLE);
    assertThat(guess.headerRow()).contains(1);
    assertThat(guess.columns().stream().map(ColumnGuess.Column::meaning).toList())
        .as("%s", guess)
        .isEqualTo(made.meanings());
  }

  @Property(tries = 300)
  void columnsWithoutHeadersAreFoundByTheirCells(@ForAll long seed) {
    Random random = new Random(seed);
    RandomPinout.Table made = RandomPinout.of(random, HOUSING, 0);
    ColumnGuess guess = ColumnGuess.of(RandomPinout.table(made.rows()), HOUSING, Van.VEHICLE);
    assertThat(guess.headerRow()).isEmpty();
    for (Meaning meaning : List.of(Meaning.CAVITY, Meaning.SIZE, Meaning.COLOUR)) {
      int column = made.meanings().indexOf(meaning);
      assertThat(guess.columns().get(column).meaning()).as("%s %s", made, guess).isEqualTo(meaning);
    }
  }

  @Property(tries = 200)
  void anyTableHasAGuess(@ForAll List<List<String>> rows) {
    List<List<String>> clean =
        rows.stream().map(row -> row.stream().limit(50).map(CellText::clean).toList()).toList();
    PastedTable table = RandomPinout.table(clean);
    ColumnGuess guess = ColumnGuess.of(table, HOUSING, Van.VEHICLE);
    assertThat(guess.columns()).hasSize(table.width());
    Preview preview = Preview.of(table, guess, Van.SOCKET, HOUSING, Van.VEHICLE);
    assertThat(preview.rows().size() + preview.aside().size()).isEqualTo(table.rows().size());
  }

  @Test
  void titlesMayStandAboveTheHeaders() {
    PastedTable table =
        Van.table(
            "Tow socket, page 12\n\nPin\tWire color\tGauge\tFunction\tGoes to\n1\tRD\t18\tstop lamp\tF9\n");
    ColumnGuess guess = ColumnGuess.of(table, HOUSING, Van.VEHICLE);
    assertThat(guess.headerRow()).contains(3);
    assertThat(guess.columns().stream().map(ColumnGuess.Column::meaning).toList())
        .containsExactly(Meaning.CAVITY, Meaning.COLOUR, Meaning.SIZE, Meaning.NAME, Meaning.TO);
    assertThat(guess.columns().get(0).reason())
        .isEqualTo("its header says 'Pin'; 100 % of its cells can be read as cavity number");
    assertThat(guess.columns().get(0).confidence()).isGreaterThan(0.9);
  }

  @Test
  void aPersonCorrectsIt() {
    PastedTable table = Van.table("Pin\tFunction\tText\n1\tstop\tlamp\n2\ttail\tlamp\n");
    ColumnGuess guess = ColumnGuess.of(table, HOUSING, Van.VEHICLE).with(2, Meaning.NAME);
    assertThat(guess.columns().stream().map(ColumnGuess.Column::meaning).toList())
        .containsExactly(Meaning.CAVITY, Meaning.NOTE, Meaning.NAME);
    assertThat(guess.withHeader(table, java.util.Optional.empty()).headerRow()).isEmpty();
    assertThatThrownBy(() -> guess.with(3, Meaning.NAME)).hasMessageContaining("has 3");
  }
}
