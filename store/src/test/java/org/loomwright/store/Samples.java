package org.loomwright.store;

/** Small documents for tests. */
final class Samples {
  static final Signature ANNA = new Signature("Anna", "measured it");
  static final Signature BEN = new Signature("Ben", "");
  static final DocumentKey VAN = new DocumentKey("job", "van");

  private Samples() {}

  /** A document of a kind that has no form yet, so that its text is kept as given. */
  static String text(DocumentKey key, String rest) {
    return "{\"kind\": \"" + key.kind() + "\", \"id\": \"" + key.id() + "\"" + rest + "}";
  }

  static Draft draft(DocumentKey key, String rest, Signature by) {
    return new Draft(key, text(key, rest), by);
  }

  static Draft van(String rest) {
    return draft(VAN, rest, ANNA);
  }
}
