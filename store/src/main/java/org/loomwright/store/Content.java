package org.loomwright.store;

import java.util.Optional;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.json.JsonText;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/**
 * The text of a document with its tree.
 *
 * @param text as it is kept
 * @param tree the JSON in it
 * @param good whether it is a document without faults of its own
 */
record Content(String text, JsonNode tree, boolean good) {
  private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");
  private static final ObjectWriter PLAIN =
      JsonMapper.builder()
          .build()
          .writer()
          .with(new DefaultPrettyPrinter().withObjectIndenter(LINES).withArrayIndenter(LINES));

  /**
   * Checks a text and brings it into the form in which it is kept: a good document as {@link
   * DocumentWriter} writes it, so that layout makes no difference; any other, such as unfinished
   * work, as it was given.
   */
  static Content of(DocumentKey key, String text) {
    if (text.length() > Draft.LONGEST) {
      throw new StoreException(
          key.shown()
              + " has "
              + text.length()
              + " characters; at most "
              + Draft.LONGEST
              + " are kept, so split it");
    }
    JsonText.Parsed parsed = JsonText.parse(text);
    if (parsed instanceof JsonText.Broken broken) {
      String at = broken.fault().path();
      throw new StoreException(
          key.shown() + (at.isEmpty() ? "" : ", " + at) + ": " + broken.fault().message());
    }
    JsonNode tree = ((JsonText.Tree) parsed).node();
    Optional<DocumentKey> own = keyOf(tree);
    if (own.isEmpty() || !own.get().equals(key)) {
      throw new StoreException(
          key.shown()
              + ": the text says it is "
              + own.map(DocumentKey::shown).orElse("no document")
              + "; its \"kind\" must be \""
              + key.kind()
              + "\" and its \"id\" \""
              + key.id()
              + "\"");
    }
    return kept(tree, text);
  }

  /** The content of a merged tree. */
  static Content of(JsonNode tree) {
    return kept(tree, PLAIN.writeValueAsString(tree) + "\n");
  }

  /** Which document a tree says it is. */
  static Optional<DocumentKey> keyOf(JsonNode tree) {
    JsonNode kind = tree.path("kind");
    JsonNode id = tree.path("id");
    if (!kind.isString() || !id.isString()) {
      return Optional.empty();
    }
    return Optional.of(new DocumentKey(kind.stringValue(), id.stringValue()));
  }

  private static Content kept(JsonNode tree, String otherwise) {
    return DocumentBinder.bind(tree)
        .good()
        .map(document -> canonical(DocumentWriter.write(document)))
        .orElseGet(() -> new Content(otherwise, tree, false));
  }

  private static Content canonical(String text) {
    if (JsonText.parse(text) instanceof JsonText.Tree it) {
      return new Content(text, it.node(), true);
    }
    throw new IllegalStateException("a document was written as broken JSON");
  }
}
