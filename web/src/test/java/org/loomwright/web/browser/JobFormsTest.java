package org.loomwright.web.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.web.DemoStore;
import org.loomwright.web.job.DemoJobs;

/** What scripts do with forms of a job: nothing typed is lost, nothing is sent twice. */
class JobFormsTest {
  /** The page as it is while the kit is planned. */
  private static final String WAITING =
      """
      <section class="waiting" id="waiting" hx-get="/job/half/basis" hx-trigger="load delay:500ms" hx-swap="outerHTML">
      <h2>The kit is being planned</h2><script type="module" src="/assets/job-waiting.js"></script>
      </section>
      """;

  @TempDir private Path folder;

  @Test
  void areKeptWhilePlanningAndSentOnce() {
    try (DemoStore store = DemoStore.in(folder);
        BrowserSession session = BrowserSession.start()) {
      DemoJobs.in(store.store()).underWay("half", 5);
      try (BrowserWindow window = session.window(store.pages().address(), Manner.PHONE)) {
        Page page = window.page();
        page.navigate("/job/half");
        page.waitForCondition(() -> page.locator(".job-next").count() > 0);
        whatIsTypedStays(page);
        anUntouchedPageIsLoadedAnew(page);
        aPhotoIsSentOnce(page);
        window.assertCalm();
      }
    }
  }

  /** A record of less than the job has, of another plate: both are asked about. */
  @Test
  void ofARecordAskWhatCounts() {
    try (DemoStore store = DemoStore.in(folder);
        BrowserSession session = BrowserSession.start()) {
      DemoJobs jobs = DemoJobs.in(store.store()).underWay("half", 34).underWay("less", 20);
      String record = jobs.record(store.text(DemoJobs.key("less"))).replace("OST 417", "NOR 88");
      try (BrowserWindow window = session.window(store.pages().address(), Manner.PHONE)) {
        Page page = window.page();
        page.navigate("/job/half/take-in");
        page.locator("#text").waitFor(new Locator.WaitForOptions().setTimeout(240_000));
        page.locator("#text").fill(record);
        page.getByText("Show what it changes").click();
        assertThat(page.getByText("The record is of NOR 88")).hasCount(1);
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
          window.prefer(scheme);
          Accessibility.check(page);
          Layout.checkFit(page);
          Shots.keep(page, "take-in-" + scheme);
        }
        page.getByText("only what the job lacks is added").click();
        page.getByText("It is the same vehicle").click();
        if (page.locator("#who-accept").count() > 0) {
          page.locator("#who-accept").fill("Ben Ortega");
        }
        page.getByText("Take it in", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.locator(".job-next")).hasCount(1);
        page.getByText("Put vehicle, owner").click();
        Accessibility.check(page);
        Layout.checkFit(page);
        Shots.keep(page, "facts");
        window.assertCalm();
      }
    }
  }

  private static void openWaiting(Page page) {
    page.route("**/job/half", JobFormsTest::waiting, new Page.RouteOptions().setTimes(1));
    page.navigate("/job/half");
    assertThat(page.locator("section.waiting")).hasCount(1);
  }

  private static void waiting(Route route) {
    String body = route.fetch().text().replaceFirst("<section class=\"job-next\"", WAITING + "$0");
    route.fulfill(new Route.FulfillOptions().setContentType("text/html").setBody(body));
  }

  private static void whatIsTypedStays(Page page) {
    openWaiting(page);
    page.getByText("Give the job up").click();
    page.locator("#reason").fill("the owner came back");
    page.locator("h1").click();
    assertThat(page.locator("#waiting[data-ready]")).hasCount(1);
    page.waitForTimeout(500);
    assertThat(page.locator("#reason")).hasValue("the owner came back");
    Accessibility.check(page);
    Layout.checkFit(page);
  }

  private static void anUntouchedPageIsLoadedAnew(Page page) {
    openWaiting(page);
    page.evaluate("window.before = true");
    assertThat(page.locator("#waiting")).hasCount(0);
    page.waitForFunction("() => window.before === undefined");
    assertThat(page.locator(".job-next")).hasCount(1);
  }

  private static void aPhotoIsSentOnce(Page page) {
    AtomicInteger sent = new AtomicInteger();
    page.onRequest(it -> sent.addAndGet(it.method().equals("POST") ? 1 : 0));
    page.locator("#photo")
        .setInputFiles(new FilePayload("IMG_1.jpg", "image/jpeg", DemoJobs.photo()));
    if (page.locator("#who-photo").count() > 0) {
      page.locator("#who-photo").fill("Ben Ortega");
    }
    page.getByText("Keep the photo").evaluate("it => { it.click(); it.click(); it.click(); }");
    assertThat(page.locator("img.found-photo")).hasCount(1);
    assertThat(sent.get()).isEqualTo(1);
  }
}
