package org.loomwright.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.cli.Run;
import org.loomwright.model.workspace.Read;

class DemoCommandTest {
  /** The demo of the project, beside this module. */
  private static final Path PROJECT = Path.of("..").toAbsolutePath().normalize();

  @TempDir private Path temp;

  @Test
  void plansBothKitsAndSaysWhereTheFilesAre() {
    Path out = temp.resolve("out");
    Run run = Run.of("demo", "--no-serve", "--out", out.toString());
    assertThat(run.exitCode()).as(run.out() + run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains(
            "Kit crew-comfort, revision A",
            "Kit trailer, revision A",
            "The pack is in " + out + ": pack.pdf, ",
            "The pack is in " + out.resolve("trailer") + ": pack.pdf, ")
        .doesNotContain("pages");
    assertThat(out.resolve("pack.pdf")).isNotEmptyFile();
    assertThat(out.resolve("trailer").resolve("pack.pdf")).isNotEmptyFile();
  }

  @Test
  void withoutNoServeItOpensThePages() throws Exception {
    ServeCommandTest.Started demo =
        ServeCommandTest.start("demo", "--port", "0", "--out", temp.resolve("out").toString());
    assertThat(ServeCommandTest.get(demo.address() + "kit/trailer/gap"))
        .contains("13-pin trailer socket");
    assertThat(demo.stop()).isZero();
    assertThat(temp.resolve("out").resolve("pack.pdf")).isNotEmptyFile();
  }

  @Test
  void theProgramHoldsTheDemoOfTheProject() throws IOException {
    try (Stream<Path> files = Files.list(PROJECT.resolve("demo"))) {
      assertThat(
              files
                  .map(it -> it.getFileName().toString())
                  .filter(it -> it.endsWith(".json") || it.endsWith(".png")))
          .containsExactlyInAnyOrderElementsOf(DemoFiles.NAMES);
    }
    Read packed = DemoFiles.in(Optional.empty()).read();
    Read project = DemoFiles.in(Optional.of(PROJECT)).read();
    assertThat(packed).isInstanceOf(Read.Good.class).isEqualTo(project);
  }

  @Test
  void aProjectWithoutADemoFallsBackToTheOneInTheProgram() {
    assertThat(DemoFiles.in(Optional.of(temp)).where()).isEqualTo("the demo inside the program");
  }
}
