package org.loomwright.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.model.document.Document;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Small;
import tools.jackson.databind.JsonNode;

/** What is written and read again must be the same, and the comparison must be able to fail. */
class RoundTripTest {
  static List<NamedText> texts() {
    return Stream.of(Small.workspace(), Small.stated()).flatMap(it -> it.texts().stream()).toList();
  }

  @ParameterizedTest
  @MethodSource("texts")
  void readWriteReadIsEqual(NamedText text) {
    compare(text, new RecordBinder());
  }

  @ParameterizedTest
  @MethodSource("texts")
  void writeReadWriteGivesTheSameBytes(NamedText text) {
    String written = DocumentWriter.write(read(text.text(), new RecordBinder()));
    assertThat(DocumentWriter.write(read(written, new RecordBinder()))).isEqualTo(written);
    assertThat(written)
        .startsWith("{\n  \"kind\": \"")
        .endsWith("\n}\n")
        .doesNotContain("\r", ": false", ": []", "null");
  }

  @ParameterizedTest
  @MethodSource("texts")
  void nothingWrittenByHandIsLost(NamedText text) {
    // The documents say nothing that may be left out, so the trees must be the same.
    String written = DocumentWriter.write(read(text.text(), new RecordBinder()));
    assertThat(tree(written)).isEqualTo(tree(text.text()));
  }

  /** A reader that forgets one field must be found out, else the tests above prove nothing. */
  @Test
  void aReaderThatDropsAFieldIsFound() {
    NamedText van = texts().get(0);
    for (String dropped : List.of("share", "passes", "caution", "wet", "evidence", "reachedAt")) {
      RecordBinder forgetful =
          new RecordBinder() {
            @Override
            @Nullable JsonNode child(JsonNode object, String key) {
              return key.equals(dropped) ? null : super.child(object, key);
            }
          };
      // The reader itself has no complaint, as each of these may be left out.
      assertThat(DocumentBinder.bind(tree(van.text()), forgetful).faults()).isEmpty();
      assertThatThrownBy(() -> compare(van, forgetful))
          .as("a reader that drops '%s'", dropped)
          .isInstanceOf(AssertionError.class);
    }
  }

  private static void compare(NamedText text, RecordBinder reader) {
    Document sound = read(text.text(), new RecordBinder());
    assertThat(read(DocumentWriter.write(sound), reader)).isEqualTo(sound);
  }

  private static Document read(String text, RecordBinder binder) {
    Bound bound = DocumentBinder.bind(tree(text), binder);
    assertThat(bound.faults()).isEmpty();
    return bound.good().orElseThrow();
  }

  private static JsonNode tree(String text) {
    return ((JsonText.Tree) JsonText.parse(text)).node();
  }
}
