package org.loomwright.web.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Finds programs that the tests need: by a system property, else on the PATH. */
final class Programs {
  private Programs() {}

  /** The browser; property {@code loomwright.chromium} names another one. */
  static Path chromium() {
    return find("loomwright.chromium", List.of("chromium", "chromium-browser"), "chromium");
  }

  /** What runs the browser's driver; property {@code playwright.nodejs.path} names another one. */
  static Path node() {
    return find("playwright.nodejs.path", List.of("node", "nodejs"), "nodejs");
  }

  private static Path find(String property, List<String> names, String debian) {
    String named = System.getProperty(property, "");
    if (!named.isEmpty()) {
      Path program = Path.of(named);
      if (!Files.isExecutable(program)) {
        throw new AssertionError(
            "the system property " + property + " names " + named + ", which can't be run");
      }
      return program;
    }
    return names.stream()
        .flatMap(it -> onPath(it).stream())
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "the tests in a browser need "
                        + names.get(0)
                        + ", which is not on the PATH: ./check installs it (Debian's package "
                        + debian
                        + "), or name it by -D"
                        + property
                        + "=/path/to/it"));
  }

  private static Optional<Path> onPath(String name) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    for (String folder : path.split(File.pathSeparator)) {
      Path program = Path.of(folder.isEmpty() ? "." : folder, name);
      if (Files.isExecutable(program) && Files.isRegularFile(program)) {
        return Optional.of(program);
      }
    }
    return Optional.empty();
  }
}
