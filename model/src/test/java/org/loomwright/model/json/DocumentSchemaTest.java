package org.loomwright.model.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Small;
import tools.jackson.databind.JsonNode;

class DocumentSchemaTest {
  private static final Path FOLDER = Path.of("../docs/schema");
  private static final String UPDATE = "loomwright.updateSchemas";
  private static final Meanings MEANINGS = new Meanings();

  private static String schema(DocumentKind kind) {
    return DocumentSchema.of(kind, MEANINGS::of);
  }

  /** The published schemas are those of the records; with the property set they are written. */
  @ParameterizedTest
  @EnumSource
  void publishedSchemaIsUpToDate(DocumentKind kind) throws IOException {
    Path file = FOLDER.resolve(kind.word() + ".schema.json");
    if (Boolean.getBoolean(UPDATE)) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, schema(kind));
    }
    assertThat(Files.exists(file) ? Files.readString(file).replace("\r\n", "\n") : "")
        .as(
            "%s is out of date; write it anew with: mvn -pl model -am test"
                + " -Dtest=DocumentSchemaTest -Dsurefire.failIfNoSpecifiedTests=false -D%s=true",
            file, UPDATE)
        .isEqualTo(schema(kind));
  }

  @Test
  void goodDocumentsConform() {
    for (NamedText text : Small.workspace().texts()) {
      assertThat(errors(text.text())).as(text.name()).isEmpty();
    }
  }

  /** What the schema can see, it refuses at the same path as the reader. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "supply": "12 V", | "supply": "twelve", | supply
          "revision": "4", | | revision
          "lugs": 1, | "lugs": "1", | grounds[0].lugs
          "lugs": 1, | "lugs": -1, | grounds[0].lugs
          "how": "measure-live" | "how": "measure-life" | traits[1].tell.how
          "batteryOpenings": ["bonnet"] | "batteryOpenings": "bonnet" | batteryOpenings
          "batteryOpenings": ["bonnet"] | "batteryOpenings": [5] | batteryOpenings[0]
          "share": "30 %" | "part": "30 %" | traits[0].values[0].part
          "restraintWait": "5 min" | "restraintWait": null | restraintWait
          "expect": {"yes": "two blades" | "expect": {"yes": 2 | fuseBlocks[0].slots[1].tell.expect.yes
          "wet": true | "wet": "true" | places[0].wet
          "colour": "brown" | "colour": "Brown!" | circuits[1].colour
          "ground rear-stud" | "stud rear-stud" | circuits[1].from
          "kind": "vehicle" | "kind": "van" | kind
          "format": 1 | "format": 2 | format
          """)
  void badDocumentsDoNot(String old, String now, String path) {
    String good = Small.text("alder-van.json");
    assertThat(good).contains(old);
    String bad = good.replace(old, now == null ? "" : now);
    assertThat(errors(bad)).hasSize(1).allMatch(error -> error.startsWith(path + ":"));
    assertThat(DocumentBinder.bind(tree(bad)).faults())
        .extracting(Fault::path)
        .containsExactly(path);
  }

  @Test
  void everyKeyIsExplained() {
    for (DocumentKind kind : DocumentKind.values()) {
      JsonNode schema = tree(schema(kind));
      assertThat(schema.path("properties").properties())
          .filteredOn(entry -> !List.of("kind", "format").contains(entry.getKey()))
          .allMatch(entry -> entry.getValue().has("description"));
      schema
          .path("$defs")
          .forEach(
              definition ->
                  definition
                      .path("properties")
                      .properties()
                      .forEach(
                          entry ->
                              assertThat(entry.getValue().has("description"))
                                  .as(entry.getKey())
                                  .isTrue()));
    }
  }

  private static List<String> errors(String text) {
    JsonNode document = tree(text);
    DocumentKind kind =
        DocumentKind.of(document.path("kind").stringValue()).orElse(DocumentKind.VEHICLE);
    return SchemaChecker.errors(tree(schema(kind)), document);
  }

  private static JsonNode tree(String text) {
    return ((JsonText.Tree) JsonText.parse(text)).node();
  }
}
