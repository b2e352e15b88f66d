package org.loomwright.model.json;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.document.Document;
import tools.jackson.databind.JsonNode;

/**
 * Reads a document from its JSON tree.
 *
 * <p>Keys are the names of the records' components; beside them every document says its {@code
 * kind} and its {@code format}. Enum constants are words in lower case with hyphens. Optional
 * values, lists, maps and booleans may be left out (absent, empty, false); all else is required, so
 * that a forgotten number never becomes zero. Unknown keys are refused.
 */
public final class DocumentBinder {
  /** The format that is read and written. */
  public static final int FORMAT = 1;

  static final String KIND = "kind";
  static final String FORMAT_KEY = "format";

  private static final Map<DocumentKind, Shape.Fields> SHAPES =
      Stream.of(DocumentKind.values())
          .collect(Collectors.toUnmodifiableMap(kind -> kind, kind -> Shape.ofRecord(kind.type())));

  private DocumentBinder() {}

  /** The document in a tree, with all that is wrong with it. */
  public static Bound bind(JsonNode tree) {
    return bind(tree, new RecordBinder());
  }

  static Bound bind(JsonNode tree, RecordBinder binder) {
    Optional<DocumentKind> kind = kind(tree, binder);
    // What a newer format means can't be judged; going on would only blame good values.
    boolean readable = kind.isPresent() && format(tree.get(FORMAT_KEY), binder);
    Optional<Document> document =
        readable
            ? binder
                .fields(tree, shape(kind.get()), "", List.of(KIND, FORMAT_KEY))
                .map(Document.class::cast)
            : Optional.empty();
    return new Bound(kind, document, binder.faults(), binder.paths(), binder.faulty());
  }

  static Shape.Fields shape(DocumentKind kind) {
    Shape.Fields shape = SHAPES.get(kind);
    if (shape == null) {
      throw new IllegalStateException("no shape for " + kind);
    }
    return shape;
  }

  private static Optional<DocumentKind> kind(JsonNode tree, RecordBinder binder) {
    if (!tree.isObject()) {
      binder.fault(
          "",
          Values.shown(tree),
          "a document is an object in { } that starts with its kind, but this is "
              + Values.sort(tree));
      return Optional.empty();
    }
    JsonNode node = tree.get(KIND);
    if (node == null) {
      binder.fault(
          KIND,
          "",
          "the document does not say its kind; write \"kind\" with one of "
              + Nearest.list(DocumentKind.words()));
      return Optional.empty();
    }
    String word = Values.shown(node);
    Optional<DocumentKind> kind = node.isString() ? DocumentKind.of(word) : Optional.empty();
    if (kind.isEmpty()) {
      binder.fault(
          KIND,
          word,
          "'"
              + word
              + "' is not a kind of document"
              + Nearest.fullHint(word, "the kinds are", DocumentKind.words()));
    }
    return kind;
  }

  /** Whether what follows can be judged by this format. */
  private static boolean format(@Nullable JsonNode node, RecordBinder binder) {
    if (node == null) {
      binder.fault(FORMAT_KEY, "", "the key 'format' is missing; write \"format\": " + FORMAT);
      return true;
    }
    if (node.isIntegralNumber()) {
      BigInteger format = node.bigIntegerValue();
      if (format.compareTo(BigInteger.valueOf(FORMAT)) > 0) {
        binder.fault(
            FORMAT_KEY,
            Values.shown(node),
            "written by a newer Loomwright (format "
                + Values.shown(node)
                + "); this one reads format "
                + FORMAT);
        return false;
      }
      if (format.equals(BigInteger.valueOf(FORMAT))) {
        return true;
      }
    }
    binder.fault(
        FORMAT_KEY,
        Values.shown(node),
        "there is no format " + Values.shown(node) + "; write \"format\": " + FORMAT);
    return true;
  }
}
