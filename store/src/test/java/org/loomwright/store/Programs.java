package org.loomwright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Starts programs of the tests as processes of their own. */
final class Programs {
  private Programs() {}

  /**
   * Starts a main class.
   *
   * @param before words before the call of java, e.g. those of a shell that sets a limit
   */
  static Process start(List<String> before, Class<?> main, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(before);
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx128m",
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            main.getName()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }
}
