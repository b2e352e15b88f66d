package org.loomwright.papers.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.papers.PackWriter;
import org.loomwright.papers.words.Names;

/** The report as it lies in the folder: what was reckoned is what is printed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CalculationPdfTest {
  private final Names names = DemoKits.planned("crew-comfort");
  private final Calculation report = CalculationMaker.of(names);
  private final List<String> pages = new ArrayList<>();

  @BeforeAll
  void read(@TempDir Path folder) throws IOException {
    Path pdf = PackWriter.write(names.order(), names.plan(), folder).get(1);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(flat(stripper.getText(document)));
      }
    }
  }

  /** Rows are never broken, so each stands whole on one page, cell after cell. */
  @Test
  void everyLineIsPrintedWithItsNumbers() {
    for (Calculation.Subject subject : report.subjects()) {
      for (Calculation.Line line : ByHand.lines(subject).values()) {
        String row =
            line.numbers().isEmpty()
                ? line.number() + line.what() + line.formula()
                : line.number() + line.what() + line.formula() + "= " + line.numbers();
        assertThat(pages)
            .as("%s: %s", subject.title(), line)
            .anyMatch(it -> it.contains(flat(row)))
            .anyMatch(it -> it.contains(flat(line.value() + line.unit())));
      }
    }
  }

  @Test
  void everyResultIsPrintedWithItsMargin() {
    report.subjects().stream()
        .flatMap(it -> it.blocks().stream())
        .flatMap(it -> it.results().stream())
        .forEach(
            it ->
                assertThat(pages)
                    .as(it.check().id())
                    .anyMatch(
                        page ->
                            page.contains(flat(it.number() + it.check().name()))
                                && page.contains(flat(it.figure() + it.unit()))));
  }

  @Test
  void eachLeadBeginsAPageAndEveryPageNamesTheKit() {
    for (int i = 0; i < pages.size(); i++) {
      assertThat(pages.get(i))
          .contains(flat("kit crew-comfort · revision A"))
          .contains(flat("page " + (i + 1) + " of " + pages.size()));
    }
    report.subjects().stream()
        .filter(it -> !it.lead().isEmpty())
        .forEach(
            it ->
                assertThat(pages)
                    .as(it.title())
                    .filteredOn(page -> page.contains(flat(it.title() + " Label")))
                    .hasSize(1));
    assertThat(String.join("", pages.subList(pages.size() / 2, pages.size())))
        .contains(flat(report.sources().get(0)));
  }

  private static String flat(String text) {
    return text.replaceAll("[\\s\u00A0\u202F\u2003\u2007]+", "");
  }
}
