package org.loomwright.web.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Scripts that are run in a page under test. */
final class Scripts {
  /** The rules for accessible pages. */
  static final String AXE = read("/axe.min.js");

  private Scripts() {}

  /** A script beside the tests. */
  static String own(String name) {
    return read("/org/loomwright/web/browser/" + name);
  }

  private static String read(String name) {
    try (InputStream in = Scripts.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("no " + name + " on the class path of the tests");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
