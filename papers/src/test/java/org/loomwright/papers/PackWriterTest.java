package org.loomwright.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackWriterTest {
  @TempDir private Path folder;

  @Test
  void writesItsFilesAndMakesTheFolder() throws Exception {
    Path out = folder.resolve("a/b");

    List<Path> files = PackWriter.write(SamplePlan.order(), SamplePlan.good(), out);

    assertThat(files)
        .extracting(it -> it.getFileName().toString())
        .containsExactly(
            "pack.pdf",
            "calculations.pdf",
            "leads.csv",
            "cut-list.xlsx",
            "parts.xlsx",
            "guide.html",
            "fit-check.html",
            "result.json");
    assertThat(files).allSatisfy(it -> assertThat(it).exists().isNotEmptyFile());
  }

  @Test
  void writesTheSameBytesAgain() throws Exception {
    List<Path> once =
        PackWriter.write(SamplePlan.order(), SamplePlan.troubled(), folder.resolve("1"));
    List<Path> again =
        PackWriter.write(SamplePlan.order(), SamplePlan.troubled(), folder.resolve("2"));

    for (int i = 0; i < once.size(); i++) {
      assertThat(Files.mismatch(once.get(i), again.get(i)))
          .as(once.get(i).toString())
          .isEqualTo(-1);
    }
  }
}
