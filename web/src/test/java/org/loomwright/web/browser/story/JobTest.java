package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Verdict;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.ReleaseDraft;
import org.loomwright.store.Signature;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;
import org.loomwright.web.shop.Pinned;

/** A job from the first question to the sign-off, on a phone. */
class JobTest {
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
      release(store);
      try (Person ben = new Person(session, store.pages().address(), Manner.PHONE, "Ben Ortega")) {
        work(ben, store);
        ben.window().assertCalm();
      }
    }
  }

  /** Releases the kit as it is, without making its papers. */
  private static void release(DemoStore store) {
    store
        .store()
        .releases()
        .release(
            new ReleaseDraft(
                "crew-comfort",
                Pinned.of(store.store(), "crew-comfort").orElseThrow().pins(),
                Verdict.HOLDS,
                Map.of("note.txt", new byte[] {'1'}),
                new Signature("Ina Roth", "first batch")));
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

    Fitter fitter = new Fitter(ben, VAN).measures("rest voltage", "11.9");
    fitter.answer();
    fitter.answer();
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
    int done = fitter.toTheEnd();
    assertThat(done).isGreaterThan(40);

    ben.leave(() -> page.getByText("Go on to the sign-off").click());
    ben.sees("can't be signed off yet").sees("11.9 V lies outside, and no reason is given");
    assertThat(ben.button("Sign off")).hasCount(0);
    ben.follow("Values").sees("✕ outside");
    Layout.checkFit(page);
    ben.leave(() -> page.locator("tr", outside()).getByRole(com.microsoft.playwright.options.AriaRole.LINK).first().click());
    ben.unfold("Stop, and note what is otherwise");
    page.getByLabel("What it looks like").fill("battery weak after two weeks in the yard");
    page.getByLabel("Reason why it may stay so").fill("charged over night, 12.7 V in the morning");
    ben.press("Note it").sees("Settled: charged over night");
    ben.follow("Sign-off").sees("every step is done");
    page.locator("#words").fill("handed over with the sheet");
    ben.leave(() -> ben.button("Sign off").click());
    ben.sees("Signed off");
    assertThat(store.text(key(job))).contains("\"signed-off\"", "12.1 V", "000017");
  }

  private static Page.LocatorOptions outside() {
    return new Page.LocatorOptions().setHasText("✕ outside");
  }

  private static DocumentKey key(String job) {
    return new DocumentKey("job", job.substring(job.lastIndexOf('/') + 1));
  }
}
