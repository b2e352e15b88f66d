package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class DelimitedTest {

  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> cell =
        Arbitraries.strings()
            .withChars('a', 'Z', '0', '5', ' ', ',', ';', '\t', '"', '\n', '.', '/', 'µ', '²')
            .ofMaxLength(8)
            .map(CellText::clean);
    return Arbitraries.integers()
        .between(2, 7)
        .flatMap(width -> cell.list().ofSize(width).list().ofMinSize(3).ofMaxSize(12))
        .filter(rows -> rows.stream().allMatch(row -> !row.get(row.size() - 1).isEmpty()));
  }

  @Property(tries = 400)
  void whatAnyProgramWritesIsReadBack(
      @ForAll("tables") List<List<String>> rows,
      @ForAll Delimiter delimiter,
      @ForAll boolean windows,
      @ForAll boolean mark) {
    StringBuilder text = new StringBuilder(mark ? "\ufeff" : "");
    for (List<String> row : rows) {
      text.append(String.join(delimiter.text, row.stream().map(DelimitedTest::quoted).toList()));
      text.append(windows ? "\r\n" : "\n");
    }
    PastedTable table = Van.table(text.toString());
    assertThat(table.form()).isEqualTo(delimiter.form);
    assertThat(table.rows().stream().map(PastedTable.Row::cells).toList()).isEqualTo(rows);
    assertThat(table.rows().stream().map(PastedTable.Row::number).toList())
        .isEqualTo(java.util.stream.IntStream.rangeClosed(1, rows.size()).boxed().toList());
  }

  enum Delimiter {
    TAB("\t", TableForm.TAB),
    SEMICOLON(";", TableForm.SEMICOLON),
    COMMA(",", TableForm.COMMA);

    final String text;
    final TableForm form;

    Delimiter(String text, TableForm form) {
      this.text = text;
      this.form = form;
    }
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> ",;\t\"\n".indexOf(c) >= 0);
    return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
  }

  @Property(tries = 1000)
  void anyTextIsReadOrRefusedInWords(@ForAll String text) {
    assertDescribed(PastedTable.read(text));
  }

  @Property(tries = 300)
  void anyTextOfTableCharactersIsReadOrRefused(@ForAll("nasty") String text) {
    assertDescribed(PastedTable.read(text));
  }

  @Provide
  Arbitrary<String> nasty() {
    return Arbitraries.strings()
        .withChars('"', '\n', '\r', '\t', ',', ';', 'a', '1', '\0', '\ud800', '\u2028', '\ufeff')
        .ofMaxLength(300);
  }

  static void assertDescribed(Reading reading) {
    if (reading instanceof Reading.Bad bad) {
      assertThat(bad.message()).isNotBlank().doesNotContain("Exception");
    } else {
      assertThat(Van.table(reading).rows()).isNotEmpty();
    }
  }

  @Test
  void decimalCommasDoNotCut() {
    PastedTable table = Van.table("1;0,5;RD\n2;0,75;BK\n3;1,5;BU\n");
    assertThat(table.form()).isEqualTo(TableForm.SEMICOLON);
    assertThat(table.rows().get(1).cells()).containsExactly("2", "0,75", "BK");
  }

  @Test
  void raggedAndEmptyRowsKeepTheirPlaces() {
    PastedTable table = Van.table("pin\tname\tcolour\n\n1\tstop lamp\n2\ttail lamp\tRD\t\t\n");
    assertThat(table.rows().stream().map(PastedTable.Row::number).toList())
        .containsExactly(1, 3, 4);
    assertThat(table.width()).isEqualTo(3);
    assertThat(table.row(3).orElseThrow().text(2)).isEmpty();
    assertThat(PastedTable.ref(7, 2)).isEqualTo("C7");
    assertThat(PastedTable.ref(1, 27)).isEqualTo("AB1");
  }

  @Test
  void inchMarksAreNoQuotes() {
    PastedTable table = Van.table("1\t1/2\" sleeve\t\"open\n2\t\"say \"\"hi\"\"\"\tx\n");
    assertThat(table.rows().get(0).cells()).containsExactly("1", "1/2\" sleeve", "\"open");
    assertThat(table.rows().get(1).cells()).containsExactly("2", "say \"hi\"", "x");
  }

  @Test
  void hugeTextsAreRefusedInWords() {
    assertThat(PastedTable.read("a,".repeat(Limits.CHARACTERS))).isInstanceOf(Reading.Bad.class);
    assertThat(PastedTable.read("\n".repeat(1_900_000))).isInstanceOf(Reading.Bad.class);
    assertThat(PastedTable.read("a\tb\n".repeat(100_000))).isInstanceOf(Reading.Bad.class);
    assertThat(PastedTable.read("\"".repeat(1_900_000))).isInstanceOf(Reading.Bad.class);
    assertThat(PastedTable.read("x\t\"".repeat(400_000))).isInstanceOf(Reading.Bad.class);
    assertThat(PastedTable.read("\n\"".repeat(900_000))).isInstanceOf(Reading.Bad.class);
    assertThat(PastedTable.read("  \n\t")).isInstanceOf(Reading.Bad.class);
  }

  @Test
  void aCellCanBeCorrected() {
    PastedTable table = Van.table("1\trde\n2\tred\n");
    assertThat(table.with(1, 1, " red ").rows().get(0).cells()).containsExactly("1", "red");
    List<List<String>> cleared = new ArrayList<>();
    table.with(1, 0, "").with(1, 1, "").rows().forEach(row -> cleared.add(row.cells()));
    assertThat(cleared).containsExactly(List.of("2", "red"));
  }
}
