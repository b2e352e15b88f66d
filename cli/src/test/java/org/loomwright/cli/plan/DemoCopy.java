package org.loomwright.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A copy of the demo in a folder of its own, to be changed by a test.
 *
 * @param folder folder
 */
record DemoCopy(Path folder) {
  static final String VAN = "van.vehicle.json";
  static final String HEATER = "heater.equipment.json";
  static final String KIT = "crew-comfort.kit.json";

  /** The demo as it is in the program. */
  static DemoCopy in(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String name : DemoFiles.NAMES) {
      try (InputStream stream = DemoFiles.class.getResourceAsStream("demo/" + name)) {
        assertThat(stream).as(name).isNotNull();
        Files.write(folder.resolve(name), stream.readAllBytes());
      }
    }
    return new DemoCopy(folder);
  }

  /** Replaces the first place where the text stands; it must stand there. */
  DemoCopy with(String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(from);
    String changed =
        Pattern.compile(from, Pattern.LITERAL)
            .matcher(text)
            .replaceFirst(Matcher.quoteReplacement(to));
    Files.writeString(folder.resolve(file), changed);
    return this;
  }

  /** Replaces the first text of a form; there must be one. */
  DemoCopy withMatch(String file, String form, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    Matcher matcher = Pattern.compile(form).matcher(text);
    assertThat(matcher.find()).as(form).isTrue();
    Files.writeString(folder.resolve(file), matcher.replaceFirst(to));
    return this;
  }

  DemoCopy without(String file) throws IOException {
    Files.delete(folder.resolve(file));
    return this;
  }
}
