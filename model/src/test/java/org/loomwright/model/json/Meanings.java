package org.loomwright.model.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the keys of documents mean, taken from the Javadoc of the records' components. */
final class Meanings {
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern PARAM =
      Pattern.compile("\\* @param (\\w+) (.*?)(?=\\s+\\* @|\\s+\\*/)", Pattern.DOTALL);

  private final Map<Class<?>, Map<String, String>> known = new HashMap<>();

  Optional<String> of(RecordComponent component) {
    Map<String, String> keys =
        known.computeIfAbsent(component.getDeclaringRecord(), Meanings::read);
    return Optional.ofNullable(keys.get(component.getName()));
  }

  private static Map<String, String> read(Class<?> type) {
    try {
      String source = Files.readString(SOURCES.resolve(type.getName().replace('.', '/') + ".java"));
      int declared = source.indexOf("public record " + type.getSimpleName());
      Map<String, String> keys = new HashMap<>();
      Matcher param = PARAM.matcher(source.substring(0, declared));
      while (param.find()) {
        keys.put(
            param.group(1),
            param
                .group(2)
                .replaceAll("\\s*\\n\\s*\\*\\s*", " ")
                .replaceAll("\\{@code ([^}]*)}", "$1"));
      }
      return keys;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
