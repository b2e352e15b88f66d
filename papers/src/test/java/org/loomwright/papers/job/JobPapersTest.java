package org.loomwright.papers.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.papers.job.JobPdf.asFitted;
import static org.loomwright.papers.job.JobPdf.pages;
import static org.loomwright.papers.job.JobPdf.sheet;
import static org.loomwright.papers.job.JobPdf.words;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.picture.Pictures;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Reads the papers of the demo's jobs back with a reader of its own. */
class JobPapersTest {
  /** The text of the code on the first page, read from the page as it is printed. */
  private static String scanned(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 150);
      ByteArrayOutputStream png = new ByteArrayOutputStream();
      ImageIO.write(page, "png", png);
      QrReader.Result result = QrReader.read(png.toByteArray());
      assertThat(result).isInstanceOf(QrReader.Text.class);
      return ((QrReader.Text) result).text();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {DemoJobs.SIGNED, DemoJobs.UNDER_WAY, DemoJobs.SURVEY})
  void fontsAreInsideAndTheBytesAreTheSame(String id) throws IOException {
    Job job = DemoJobs.job(id);
    for (boolean whole : new boolean[] {true, false}) {
      byte[] file = whole ? asFitted(job) : sheet(job);
      assertThat(whole ? asFitted(job) : sheet(job)).isEqualTo(file);
      List<PDFont> fonts = new ArrayList<>();
      try (PDDocument document = Loader.loadPDF(file)) {
        for (PDPage page : document.getPages()) {
          for (COSName name : page.getResources().getFontNames()) {
            fonts.add(page.getResources().getFont(name));
          }
        }
      }
      assertThat(fonts).isNotEmpty().allMatch(PDFont::isEmbedded);
    }
  }

  @Test
  void aStrangerFindsWhatWasFitted() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    Fitted fitted = DemoJobs.fitted(job);
    String words = words(asFitted(job));
    assertThat(words)
        .contains("CREW-COMFORT-1", "CC1-0007", "serial ends in 0417", "T. Halvard, 2025-11-04")
        .contains("Signed off M. Orrin, 2025-11-05")
        .contains("without a ground wire at the floor connector")
        .doesNotContain("NOT DONE", "NOT SIGNED");
    assertThat(fitted.leads()).hasSize(8).extracting(Lead::id).doesNotContain("L2");
    for (Lead lead : fitted.leads()) {
      assertThat(words).contains(lead.colour().text(), lead.colour().code());
      for (Landing landing :
          List.of(fitted.landing(lead.a()).orElseThrow(), fitted.landing(lead.b()).orElseThrow())) {
        assertThat(words).contains(fitted.names().landing(landing));
      }
    }
    for (FuseFit fuse : fitted.fuses()) {
      assertThat(words)
          .contains(fitted.names().owner(fuse.block()) + ", slot " + fuse.slot())
          .contains(Figures.amps(fuse.ratingA()) + " A");
    }
  }

  @Test
  void valuesStandBesideWhatWasWanted() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    String words = words(asFitted(job));
    assertThat(words)
        .contains("battery rest voltage 12.6 V 12.4 V or more holds")
        .contains("0.21 V 0.18 V or less OUTSIDE")
        .contains("16 mA 14 mA");
    for (Deviation it : job.deviations()) {
      assertThat(words).contains(it.was(), it.why().orElseThrow());
    }
    assertThat(words).contains("finding floor-cavity-wire");
  }

  @Test
  void itSaysHowToTakeItOutAgain() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    String words = words(asFitted(job));
    assertThat(words)
        .contains(
            "1 Open the bonnet, to reach the battery."
                + " 2 Isolate the battery and wait 10 min, the vehicle maker's waiting time."
                + " 3 Open, as far as needed: ")
        .contains("Close what was opened, all but the bonnet. Connect the battery and close that")
        .contains("Pull the 20 A fuse out of slot F7 of the rear fuse block.")
        .contains("Can't be undone as it was.");
    int fuse = words.indexOf("Pull the 20 A fuse");
    int end = words.indexOf("Take end A of L1");
    int clips = words.indexOf("Take lead L1");
    assertThat(List.of(fuse, end, clips)).doesNotContain(-1).isSorted();
    assertThat(words).contains("Airbag and belt pretensioner wiring is within reach");
  }

  @Test
  void theCodeNamesKitSerialJobAndGuide() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    assertThat(scanned(asFitted(job)))
        .startsWith("LOOMWRIGHT JOB van-0417\n")
        .contains("\nkit crew-comfort revision A", "\nserial CC1-0007", "CREW-COMFORT-1");
    assertThat(scanned(sheet(job))).isEqualTo("LOOMWRIGHT JOB van-0417");
  }

  @Test
  void workThatIsNotDoneIsSaidSo() throws IOException {
    Job job = DemoJobs.job(DemoJobs.UNDER_WAY);
    String words = words(asFitted(job));
    assertThat(words)
        .contains("NOT SIGNED OFF: under way")
        .contains("NOT DONE: the rear fuse block, slot F7")
        .contains("not taken")
        .contains("parked at the left seat box");
    Fitted fitted = DemoJobs.fitted(job);
    Lead landed = fitted.leads().get(0);
    assertThat(fitted.isLanded(landed, "a")).isTrue();
    assertThat(words(sheet(job))).contains("The work is not signed off (under way)");
  }

  @Test
  void casesStillOpenAreSaidSo() throws IOException {
    assertThat(words(asFitted(DemoJobs.job(DemoJobs.SURVEY))))
        .contains("The answers do not decide the case of B;")
        .contains("Nothing was fitted.");
  }

  @Test
  void aPhotoThatIsNotAtHandIsNamed() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    Names names = DemoJobs.plan(job);
    byte[] without = AsFitted.pdf(job, names.order(), names.plan(), Pictures.none());
    assertThat(words(without)).contains("The photo rear-block-wire-side.png is not at hand.");
    assertThat(words(asFitted(job)))
        .doesNotContain("is not at hand")
        .contains("The rear fuse block from the wire side, before the work.");
  }

  @Test
  void aPhotoThatCanNotBeReadIsSaidSo() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    Names names = DemoJobs.plan(job);
    String file = "rear-block-wire-side.png";
    byte[] whole = Files.readAllBytes(Path.of("..", "demo", file));
    Pictures cutOff = new Pictures(Map.of(file, Picture.of(Arrays.copyOf(whole, 60))));
    assertThat(words(AsFitted.pdf(job, names.order(), names.plan(), cutOff)))
        .contains("The photo " + file + " can't be read.")
        .doesNotContain(file + " is not at hand");
  }

  @Test
  void theOwnerReadsOnePage() throws IOException {
    for (Job job : DemoJobs.all()) {
      assertThat(pages(sheet(job))).as(job.id()).isEqualTo(1);
    }
    assertThat(words(sheet(DemoJobs.job(DemoJobs.SIGNED))))
        .contains("Key-off current: 14 mA before the work, 16 mA after it.")
        .contains("Do not put in a larger fuse")
        .contains("20 A the rear fuse block, slot F7")
        .contains("warranty", "local law")
        .contains("rear door control feed")
        .contains("Owner", "Workshop");
  }

  @Test
  void manyDeviationsStayReadable() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    List<Deviation> many =
        IntStream.range(0, 30)
            .mapToObj(
                it ->
                    new Deviation(
                        Optional.of("no/such/step"),
                        "Deviation number " + it + " <b>&\u0000",
                        Optional.of("because of " + it),
                        Optional.empty()))
            .toList();
    Job other = DemoJobs.with(job, job.answers(), many);
    assertThat(words(asFitted(other)))
        .contains("Deviation number 0", "Deviation number 29 <b>&", "step no/such/step");
  }
}
