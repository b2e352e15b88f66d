package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;

/** Kits that were made, over the pages. */
class StockTest {
  private static final DocumentKey BATCH = new DocumentKey("batch", "spring");

  @TempDir private Path folder;

  @Test
  void batchesAreListedMadeAndFound() {
    try (DemoStore demo = DemoStore.in(folder)) {
      Browser browser = new Browser(demo.pages());
      String stock = browser.get("/stock").body();
      Markup.elements(stock);
      assertThat(stock).contains("Six heater and step kits of autumn", "on the shelf");
      String batch = browser.get("/batch/heater-autumn").body();
      Markup.elements(batch);
      assertThat(batch).contains("CC1-0008", "/job/van-0417", "to the workshop at the old mill");
      assertThat(browser.get("/batch/nothing").statusCode()).isEqualTo(404);
      assertThat(browser.get("/search?q=CC1-0008").body()).contains("/batch/heater-autumn");
      assertThat(browser.get("/search?q=0417").body()).contains("/job/van-0417");

      FormOnPage form =
          FormOnPage.of(browser.get("/new/batch").body())
              .with("who", "Anna")
              .with("f.name", "Spring")
              .with("f.kit", "crew-comfort")
              .with("f.release", "2")
              .with("f.partNumber", "CREW-COMFORT-2")
              .with("f.made", "2026-03-02")
              .with("f.by", "J. Pell")
              .with("f.items~rows", "1")
              .with("f.items.0.serial", "CC2-0001")
              .with("f.items.0.state", "on-the-shelf");
      HttpResponse<String> made = browser.post(form.action(), form.body());
      assertThat(made.statusCode()).as(made.body()).isEqualTo(303);
      String next = made.headers().firstValue("Location").orElseThrow();
      assertThat(next).startsWith("/batch/spring?done=");
      assertThat(browser.get(next).body()).contains("CREW-COMFORT-2", "CC2-0001");
      assertThat(demo.text(BATCH)).contains("\"release\": 2");
    }
  }
}
