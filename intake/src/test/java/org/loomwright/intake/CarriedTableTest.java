package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CarriedTableTest {
  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.strings()
        .withChars('a', '7', '\t', '\n', '\r', '\\', 't', 'n', '"', ';', ',', '<', 'é', ' ')
        .ofMaxLength(60);
  }

  @Property
  void comesBackTheSame(@ForAll("texts") String text) {
    if (PastedTable.read(text) instanceof Reading.Good good) {
      PastedTable table =
          new PastedTable(
              good.table().form(),
              good.table().rows(),
              List.of(new CellRemark(3, 1, text, "a\tb\\n\n" + text, true)));
      String carried = CarriedTable.write(table);
      assertThat(CarriedTable.read(carried)).isEqualTo(new Reading.Good(table));
      // Forms send line breaks as two characters.
      assertThat(CarriedTable.read(carried.replace("\n", "\r\n")))
          .isEqualTo(new Reading.Good(table));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "TABLE\nr\t1\ta",
        "TAB\nr\t0\ta",
        "TAB\nr\t2\ta\nr\t2\tb",
        "TAB\nr\tx\ta",
        "TAB\nr\t1\t\\q",
        "TAB\nr\t1\ta\\",
        "TAB\nq\t1\ta",
        "TAB\nr\t1\t",
        "TAB\nm\t1\t2"
      })
  void whatWasTamperedWithIsRefused(String text) {
    assertThat(CarriedTable.read(text)).isInstanceOf(Reading.Bad.class);
  }

  @Test
  void itKeepsWithinTheLimits() {
    assertThat(CarriedTable.read("TAB\nr\t1\t" + "a".repeat(Limits.CELL + 1)))
        .isInstanceOf(Reading.Bad.class);
    assertThat(CarriedTable.read("TAB\nr\t1" + "\ta".repeat(Limits.COLUMNS + 1)))
        .isInstanceOf(Reading.Bad.class);
    assertThat(CarriedTable.read("TAB\n" + "x".repeat(CarriedTable.LONGEST)))
        .isInstanceOf(Reading.Bad.class);
    StringBuilder rows = new StringBuilder("TAB\n");
    for (int i = 1; i <= Limits.ROWS + 1; i++) {
      rows.append("r\t").append(i).append("\ta\n");
    }
    assertThat(CarriedTable.read(rows.toString())).isInstanceOf(Reading.Bad.class);
  }
}
