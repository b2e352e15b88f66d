package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The small, complete workspace of the test resources, and ways to spoil it. */
public final class Small {
  public static final Path FOLDER = Path.of("src/test/resources/small");
  private static final List<String> FILES =
      List.of(
          "alder-van.json",
          "cabin-fan.json",
          "fan-kit.json",
          "parts/bench-parts.json",
          "shop-rules.json");

  private final List<NamedText> texts;

  private Small(List<NamedText> texts) {
    this.texts = texts;
  }

  /** All documents, unspoilt. */
  public static Small workspace() {
    return new Small(FILES.stream().map(file -> new NamedText(file, text(file))).toList());
  }

  /** With one text in one file replaced; it must stand there exactly once. */
  public Small with(String file, String old, String now) {
    List<NamedText> changed = new ArrayList<>();
    boolean found = false;
    for (NamedText text : texts) {
      if (text.name().equals(file)) {
        assertThat(text.text().split(java.util.regex.Pattern.quote(old), -1))
            .as("'%s' stands once in %s", old, file)
            .hasSize(2);
        found = true;
        changed.add(new NamedText(file, text.text().replace(old, now)));
      } else {
        changed.add(text);
      }
    }
    assertThat(found).as("there is a file %s", file).isTrue();
    return new Small(changed);
  }

  /** With one more file. */
  public Small plus(String file, String text) {
    List<NamedText> more = new ArrayList<>(texts);
    more.add(new NamedText(file, text));
    return new Small(more);
  }

  /** Without one file. */
  public Small without(String file) {
    return new Small(texts.stream().filter(text -> !text.name().equals(file)).toList());
  }

  public List<NamedText> texts() {
    return texts;
  }

  public Read read() {
    return WorkspaceReader.read(texts);
  }

  /** All problems as words, empty when there are none. */
  public List<String> problems() {
    return words(read());
  }

  /** All problems as words, empty when there are none. */
  public static List<String> words(Read read) {
    return read instanceof Read.Bad bad
        ? bad.problems().stream().map(Problem::words).toList()
        : List.of();
  }

  /** The documents of a workspace that must be good. */
  public static Read.Good good(Read read) {
    assertThat(words(read)).isEmpty();
    return (Read.Good) read;
  }

  /** One file's text. */
  public static String text(String file) {
    try {
      return Files.readString(FOLDER.resolve(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
