package org.loomwright.cli.sum;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.cli.Run;

/** The page about the sums shows what the program really prints. */
class SumsPageTest {

  private static final Path PAGE = Path.of("..", "docs", "sums.md");

  /** A fenced block: the command after a dollar sign, then what it prints. */
  private static final Pattern EXAMPLE =
      Pattern.compile("```\n\\$ ./loomwright (.*)\n((?s:.*?))```");

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  record Example(String command, String printed) {}

  static Stream<Example> examples() throws IOException {
    Matcher matcher = EXAMPLE.matcher(Files.readString(PAGE));
    List<Example> examples = new ArrayList<>();
    while (matcher.find()) {
      examples.add(new Example(matcher.group(1), matcher.group(2)));
    }
    assertThat(examples).hasSizeGreaterThanOrEqualTo(7);
    return examples.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void examplesPrintWhatThePageShows(Example example) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(example.command());
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    assertThat(Run.of(words).out()).isEqualTo(example.printed());
  }
}
