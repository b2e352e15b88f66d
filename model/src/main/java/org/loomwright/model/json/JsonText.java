package org.loomwright.model.json;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Parses JSON strictly (RFC 8259): no comments, no key twice in an object, nothing after the end.
 */
public final class JsonText {
  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build();

  private static final Pattern DUPLICATE = Pattern.compile("^Duplicate Object property \"(.*)\"$");

  private JsonText() {}

  /** A parsed text. */
  public sealed interface Parsed {}

  /** The value in the text. */
  public record Tree(JsonNode node) implements Parsed {}

  /** The text is not JSON; the path of the fault is its line and column. */
  public record Broken(Fault fault) implements Parsed {}

  /** Parses a text. */
  public static Parsed parse(String text) {
    if (text.isBlank()) {
      return new Broken(new Fault("", "", "the file is empty; a document in { } must stand here"));
    }
    try {
      return new Tree(MAPPER.readTree(text));
    } catch (JacksonException e) {
      TokenStreamLocation at = e.getLocation();
      String where =
          at == null || at.getLineNr() < 1
              ? ""
              : "line " + at.getLineNr() + ", column " + at.getColumnNr();
      return new Broken(new Fault(where, "", "this is not JSON: " + words(e)));
    }
  }

  private static String words(JacksonException e) {
    String message = String.valueOf(e.getOriginalMessage());
    if (e instanceof UnexpectedEndOfInputException
        || message.startsWith("Unexpected end-of-input")) {
      return "the file ends too early; a closing }, ] or quotation mark is missing";
    }
    Matcher twice = DUPLICATE.matcher(message);
    if (twice.find()) {
      return "the key \"" + Values.printable(twice.group(1)) + "\" stands twice in the same object";
    }
    if (message.contains("was expecting comma")) {
      return "a comma, } or ] is missing before this";
    }
    if (message.contains("was expecting double-quote")) {
      return "a key in quotation marks must stand here; a comma before } must go";
    }
    if (message.contains("was expecting a colon")) {
      return "a colon is missing between key and value";
    }
    if (message.contains("Trailing token")) {
      return "something follows after the end of the document";
    }
    // Whatever else the parser says is left in its words, without what only programs need.
    return Values.printable(message.lines().findFirst().orElse(message));
  }
}
