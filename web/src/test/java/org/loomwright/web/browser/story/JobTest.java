package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;
import org.loomwright.web.job.DemoJobs;

/** A job from the first question to the sign-off, on a phone. */
class JobTest {
  private static final String CHARGED = "charged over night, 12.7 V in the morning";
  private static final Map<String, String> VAN = new LinkedHashMap<>();

  static {
    VAN.put("step fitted before", "with no side step yet");
    VAN.put("tow preparation", "not prepared for towing");
    VAN.put("feed of section B", "12.1");
    VAN.put("ground wire at the floor", "200 kΩ");
  }

  @TempDir private Path folder;

  @Test
  void isSurveyedFittedMeasuredAndSigned() {
    try (DemoStore store = DemoStore.in(folder);
        BrowserSession session = BrowserSession.start()) {
      DemoJobs.in(store.store());
      try (Person ben = new Person(session, store.pages().address(), Manner.PHONE, "Ben Ortega")) {
        work(ben, store);
        ben.window().assertCalm();
      }
    }
  }

  private static void work(Person ben, DemoStore store) {
    Page page = ben.open("/").page();
    page.locator("header").getByText("Jobs").click();
    ben.follow("New job");
    page.getByLabel("Kit and release").selectOption("crew-comfort 1");
    page.getByLabel("Which vehicle").fill("OST 417");
    page.getByLabel("Who does the work").fill("Ben Ortega");
    Layout.checkFit(page);
    ben.leave(() -> ben.button("Open the job").click());
    String job = page.url().replaceFirst("^https?://[^/]+", "").replaceFirst("\\?.*", "");
    page.locator(".job-next a").waitFor();
    ben.leave(() -> page.locator(".job-next a").click());

    Fitter fitter = new Fitter(ben, VAN).measures("rest voltage", "11.9", CHARGED);
    fitter.answer();
    fitter.answer();
    fitter.first();
    page.locator("#number").fill("6");
    ben.window().mayFail(job + "/survey", job + "/take", job + "/tick", job + "/sign");
    ben.press("Take this value").sees("6 V fits none of the answers");
    page.locator("#number").fill("12,1");
    ben.press("Take this value").sees("write a point in place of the comma: 12.1");
    fitter.answer();
    ben.leave(() -> page.getByText("Can't be known now").click());
    ben.sees("Perhaps B1");
    ben.sees("Case A1");
    Layout.checkFit(page);

    page.getByLabel("Serial number of the kit").fill("000017");
    page.locator("input[name=partNumber]").first().check();
    ben.leave(() -> ben.button("Begin fitting").click());
    page.locator(".job-next, .job-step").first().waitFor();
    aPhotoAndAFinding(ben, store);
    int done = fitter.toTheEnd();
    assertThat(done).isGreaterThan(40);

    ben.leave(() -> page.getByText("Go on to the sign-off").click());
    ben.follow("Values").sees("✕ outside").sees("reason given");
    Layout.checkFit(page);
    ben.follow("Sign-off").sees("every step is done");
    page.locator("#words").fill("handed over with the sheet");
    ben.leave(() -> ben.button("Sign off").click());
    ben.sees("Signed off");
    assertThat(store.text(key(job))).contains("\"signed-off\"", "12.1 V", "000017", "\"finding\"");
    papers(ben, job);
  }

  /** At the first step on the vehicle something looks otherwise: noted, photographed, told on. */
  private static void aPhotoAndAFinding(Person ben, DemoStore store) {
    Page page = ben.page();
    String step = page.locator("nav.job-move a").last().getAttribute("href");
    ben.open(step);
    ben.unfold("Photo at this step");
    page.getByLabel("Photo", exact())
        .setInputFiles(new FilePayload("IMG_2001.jpg", "image/jpeg", DemoJobs.photo()));
    page.getByLabel("What it shows").fill("another cover");
    ben.press("Keep the photo");
    assertThat(page.locator("img.found-photo")).hasCount(1);
    ben.unfold("Stop, and note what is otherwise");
    page.getByLabel("What it looks like").fill("the cover has five screws");
    page.locator("#why").fill("all five were found");
    ben.press("Note it").sees("Settled: all five were found");
    ben.leave(() -> page.locator(".job-otherwise a").last().click());
    assertThat(page.getByLabel("What was seen")).hasValue("the cover has five screws");
    Layout.checkFit(page);
    ben.save();
    String finding = page.url().replaceFirst(".*/finding/", "").replaceFirst("\\?.*", "");
    assertThat(store.text(new DocumentKey("finding", finding)))
        .contains("\"OST 417\"", "\"job\"", "\"step\"", "five screws", "\"step-before\"", "jobs/")
        .doesNotContain("of the guide");
    ben.open("/jobs");
    ben.leave(() -> page.locator(".job-list a").filter(has("OST 417")).first().click());
    ben.sees("Finding " + finding);
    ben.leave(() -> page.locator(".job-next a").click());
  }

  private static void papers(Person ben, String job) {
    Page page = ben.open(job).page();
    Download fitted = page.waitForDownload(() -> page.getByText("As-fitted record").click());
    assertThat(words(fitted))
        .contains("OST 417", "000017", "Ben Ortega", "11.9 V", "charged over night");
    Download sheet = page.waitForDownload(() -> page.getByText("Sheet for the owner").click());
    assertThat(words(sheet)).contains("OST 417");
    Download guide = page.waitForDownload(() -> page.getByText("Guide as one file").click());
    assertThat(guide.suggestedFilename()).endsWith("-guide.html");
  }

  private static String words(Download download) {
    try (PDDocument paper = Loader.loadPDF(download.path().toFile())) {
      return new PDFTextStripper().getText(paper).replaceAll("[\\s\\u00a0]+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Page.GetByLabelOptions exact() {
    return new Page.GetByLabelOptions().setExact(true);
  }

  private static Locator.FilterOptions has(String words) {
    return new Locator.FilterOptions().setHasText(words);
  }

  private static DocumentKey key(String job) {
    return new DocumentKey("job", job.substring(job.lastIndexOf('/') + 1));
  }
}
