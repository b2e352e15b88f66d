package org.loomwright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class ReferenceTablesTest {
  static Stream<ReferenceTable> allTables() {
    return Arrays.stream(ReferenceTables.class.getMethods())
        .filter(m -> Modifier.isStatic(m.getModifiers()) && m.getParameterCount() == 0)
        .map(ReferenceTablesTest::call);
  }

  private static ReferenceTable call(Method method) {
    try {
      return (ReferenceTable) method.invoke(null);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(method.getName(), e);
    }
  }

  @ParameterizedTest
  @MethodSource("allTables")
  void everyTableNamesItsSourceAndHasRows(ReferenceTable table) {
    assertThat(table.sources()).isNotEmpty();
    assertThat(table.sources().get(0)).startsWith("source: ");
    assertThat(table.header()).doesNotHaveDuplicates().hasSizeGreaterThan(1);
    assertThat(table.rows()).isNotEmpty();
    assertThat(String.join(" ", table.sources())).doesNotContain("http");
  }

  @Test
  void readsQuotesCommentsAndShortLines() {
    ReferenceTable table =
        CsvReader.read("t", "# source: here\n# more\na,b,c\n1,\"x, \"\"y\"\"\"\n\n2,,3\n");
    assertThat(table.sources()).containsExactly("source: here", "more");
    assertThat(table.header()).isEqualTo(List.of("a", "b", "c"));
    assertThat(table.rows()).hasSize(2);
    assertThat(table.rows().get(0).text("b")).isEqualTo("x, \"y\"");
    assertThat(table.rows().get(0).blank("c")).isTrue();
    assertThat(table.rows().get(1).number("c")).isEqualTo(3);
  }

  @Test
  void readsLargeGauges() {
    ReferenceTable table = CsvReader.read("t", "awg,x\n0000,1\n00,1\n0,1\n10,1\n");
    assertThat(table.rows().stream().map(r -> r.gauge("awg"))).containsExactly(-3, -1, 0, 10);
  }

  @Test
  void namesLineAndColumnOfWhatIsWrong() {
    ReferenceTable table = CsvReader.read("t", "# s\na,b\n1,x\n");
    assertThatThrownBy(() -> table.rows().get(0).number("b"))
        .hasMessage("t line 3, column \"b\": \"x\" is not a number");
    assertThatThrownBy(() -> table.rows().get(0).text("c")).hasMessageContaining("no column \"c\"");
    assertThatThrownBy(() -> CsvReader.read("t", "a,b\n1,2,3\n")).hasMessageContaining("t line 2");
    assertThatThrownBy(() -> CsvReader.read("t", "# only\n")).hasMessageContaining("no header");
    assertThatThrownBy(() -> ReferenceTables.table("nothing")).hasMessageContaining("nothing");
  }
}
