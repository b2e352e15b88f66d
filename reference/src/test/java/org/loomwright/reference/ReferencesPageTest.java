package org.loomwright.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The handbook's page of references and the accessors know every table there is. */
final class ReferencesPageTest {
  /** Tests run in the folder of their module. */
  private static List<String> files() throws IOException {
    try (Stream<Path> files =
        Files.list(Path.of("src", "main", "resources", "org", "loomwright", "reference"))) {
      return files.map(it -> it.getFileName().toString().replace(".csv", "")).sorted().toList();
    }
  }

  @Test
  void thePageListsEveryTable() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "references.md"));
    assertThat(files())
        .isNotEmpty()
        .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
  }

  @Test
  void everyTableHasAnAccessor() throws IOException {
    assertThat(ReferenceTablesTest.allTables().map(ReferenceTable::name))
        .containsExactlyInAnyOrderElementsOf(files());
  }
}
