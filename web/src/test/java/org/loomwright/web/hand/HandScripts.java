package org.loomwright.web.hand;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Scripts beside the tests. */
final class HandScripts {
  private HandScripts() {}

  static String own(String name) {
    try (InputStream in = HandScripts.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("no " + name + " beside the tests");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
