package org.loomwright.web.hand;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Scripts beside the tests. */
final class HandScripts {
  private HandScripts() {}

  /** A list in an answer of a page, under a name; empty where there is none. */
  static List<?> list(Object answer, String name) {
    return answer instanceof Map<?, ?> map && map.get(name) instanceof List<?> list
        ? list
        : List.of();
  }

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
