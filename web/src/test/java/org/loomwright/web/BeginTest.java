package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.shop.TourStop;

/** The first visit, the tour, and wishes about ways. */
class BeginTest {
  @TempDir private Path folder;

  @Test
  void anEmptyWorkspaceOffersTheDemoOrABeginningOfOnesOwn() {
    try (DemoStore empty = DemoStore.emptyIn(folder)) {
      Browser browser = new Browser(empty.pages());
      assertThat(browser.get("/").body())
          .contains("Begin with the demo", "href=\"/new/vehicle\"", "/take-in");
      HttpResponse<String> begun = browser.post("/begin", "");
      assertThat(begun.statusCode()).isEqualTo(303);
      assertThat(browser.get("/").body()).contains("crew-comfort", "Take the tour");
      HttpResponse<byte[]> zip = browser.bytes("/workspace.zip");
      assertThat(new String(zip.body(), 0, 2, java.nio.charset.StandardCharsets.US_ASCII))
          .isEqualTo("PK");
    }
  }

  @Test
  void theTourLeadsFromStopToStopAndEnds() {
    try (DemoStore demo = DemoStore.in(folder)) {
      Browser browser = new Browser(demo.pages());
      for (int stop = 1; stop <= TourStop.ALL.size(); stop++) {
        HttpResponse<String> next = browser.post("/tour", "stop=" + stop + "&back=/");
        String href = next.headers().firstValue("Location").orElseThrow();
        assertThat(href).isEqualTo(TourStop.ALL.get(stop - 1).href());
        HttpResponse<String> page = browser.get(href, "Cookie", "tour=" + stop);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
            .contains("Tour, " + stop + " of 6: " + TourStop.ALL.get(stop - 1).title());
        Markup.elements(page.body());
      }
      HttpResponse<String> over = browser.post("/tour", "stop=over&back=/sums/drop");
      assertThat(over.headers().firstValue("Location")).contains("/sums/drop");
      assertThat(browser.get("/", "Cookie", "tour=over").body()).doesNotContain("Tour,");
    }
  }

  @Test
  void aWayIsForbiddenAllowedAgainAndPreferred() {
    DocumentKey kit = new DocumentKey("kit", "crew-comfort");
    try (DemoStore demo = DemoStore.in(folder)) {
      Browser browser = new Browser(demo.pages());
      String page = browser.planned("/kit/crew-comfort/ways");
      Markup.elements(page);
      assertThat(page).contains("✓ used on", "– not used", "Forbid this way");
      String way =
          page.replaceAll("(?s).*?✓ used on.*?name=\"way\" value=\"([^\"]*)\".*", "$1")
              .replace("&amp;", "&");
      String form = "basedOn=1&way=" + way + "&who=Anna&reason=no+room&wish=";
      HttpResponse<String> saved = browser.post("/kit/crew-comfort/wish", form + "forbid");
      assertThat(saved.statusCode()).isEqualTo(303);
      assertThat(demo.text(kit)).contains("\"forbid\"", way, "no room");
      String after = browser.planned(saved.headers().firstValue("Location").orElseThrow());
      assertThat(after).contains("✕ forbidden by you", "Your reason: no room", "Allow again");
      browser.post("/kit/crew-comfort/wish", form.replace("basedOn=1", "basedOn=2") + "prefer");
      assertThat(demo.text(kit)).contains("\"prefer\"").doesNotContain("\"forbid\"");
      browser.post("/kit/crew-comfort/wish", form.replace("basedOn=1", "basedOn=3") + "none");
      assertThat(demo.text(kit)).doesNotContain("wishes");
      assertThat(browser.post("/kit/crew-comfort/wish", "way=x&wish=nonsense").statusCode())
          .isEqualTo(404);
    }
  }
}
