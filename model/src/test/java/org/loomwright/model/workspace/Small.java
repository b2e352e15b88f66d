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

  private static final String PARTS = "parts/bench-parts.json";
  private static final String ELECTRICS =
      """
      "revision": "2", "electrics": {
        "contact": {"value": "4 mΩ", "source": "our bench"},
        "splice": {"value": "0.4 mΩ", "source": "our bench"},
        "groundPoint": {"value": "1.1 mΩ", "source": "our bench"},
        "body": {"value": "0.7 mΩ", "source": "our bench"},
        "feedCable": {"value": "3 mΩ", "source": "our bench"},
        "strongSource": {"value": "4.5 mΩ", "source": "our bench"},
        "weakSource": {"value": "25 mΩ", "source": "our bench"},
        "fuseDrop": {"value": "120 mV", "source": "our bench"},
        "supplyHighest": {"value": "15 V", "source": "our bench"},
        "spliceBalance": {"value": "20 %", "source": "our bench"}},
      """;

  private final List<NamedText> texts;

  private Small(List<NamedText> texts) {
    this.texts = texts;
  }

  /** All documents, unspoilt. */
  public static Small workspace() {
    return new Small(FILES.stream().map(file -> new NamedText(file, text(file))).toList());
  }

  /** With electric values in the shop's rules. */
  public static Small ruled() {
    return workspace().with("shop-rules.json", "\"revision\": \"2\",", ELECTRICS.strip());
  }

  /** With all electric facts of the vehicle and the parts beside those of the rules. */
  public static Small stated() {
    return ruled()
        .after(
            "alder-van.json",
            "\"supplyLowest\": \"11.8 V\",",
            "\"source\": {\"highest\": \"14.8 V\", \"strong\": \"6 mΩ\", \"weak\": \"30 mΩ\"},")
        .after(
            "alder-van.json",
            "\"baseLoad\": \"12 A\"",
            ", \"feedResistance\": \"2 mΩ\", \"fuse\": \"60 A\", \"fuseForm\": \"bolt\"")
        .after("alder-van.json", "\"lugs\": 1,", "\"resistance\": \"0.9 mΩ\",")
        .after("alder-van.json", "\"fuse\": \"15 A\",", "\"fuseForm\": \"blade\",")
        .after("alder-van.json", "\"housing\": \"HS-4\",", "\"matePlating\": \"tin\",")
        .after("cabin-fan.json", "\"matesWith\": \"HS-4\",", "\"plating\": \"tin\",")
        .after(
            PARTS,
            "\"currentLimit\": \"25 A\",",
            "\"contactResistance\": \"2.2 mΩ\", \"currentLimits\": [{\"size\": \"1 mm²\","
                + " \"ambient\": \"60 °C\", \"current\": \"12 A\"}],")
        .after(
            PARTS,
            "\"strip\": \"6 mm\",",
            "\"insulationLeast\": \"2 mm\", \"insulationMost\": \"4 mm\", \"currentLimit\": \"24 A\",")
        .after(
            PARTS,
            "\"areaMost\": \"4 mm²\",",
            "\"resistance\": \"0.3 mΩ\", \"insulationMost\": \"4 mm\",")
        .after(PARTS, "\"rating\": \"10 A\",", "\"resistance\": \"7.5 mΩ\",")
        .after(
            PARTS,
            "\"bundleMost\": \"25 mm\",",
            "\"form\": \"conduit\", \"wall\": \"0.5 mm\", \"inner\": \"28 mm\",");
  }

  private Small after(String file, String old, String more) {
    return with(file, old, old + " " + more);
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
