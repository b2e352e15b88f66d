package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;
import org.loomwright.web.shop.TourStop;

/** The first visit: the demo, and the tour that ends with a changed kit. */
class TourTest {
  private static final DocumentKey KIT = new DocumentKey("kit", "crew-comfort");

  @TempDir private Path folder;

  @Test
  void theTourLeadsFromTheFirstVisitToAChangedKit() {
    try (DemoStore store = DemoStore.emptyIn(folder);
        BrowserSession session = BrowserSession.start();
        Person anna = new Person(session, store.pages().address(), Manner.DESK, "Anna Brandt")) {
      anna.open("/");
      looksGood(anna);
      anna.press("Begin with the demo").sees("New here?");
      looksGood(anna);
      anna.leave(() -> anna.press("Take the tour"));
      for (int i = 1; i <= TourStop.ALL.size(); i++) {
        TourStop stop = TourStop.ALL.get(i - 1);
        Locator tour = anna.page().locator(".tour");
        assertThat(tour).containsText("Tour, " + i + " of " + TourStop.ALL.size());
        assertThat(tour).containsText(stop.title());
        assertThat(anna.page().url()).contains(stop.href());
        if (stop.href().startsWith("/kit/")) {
          anna.seesThePlan();
        }
        Accessibility.check(anna.page());
        if (stop.title().equals("A change")) {
          change(anna);
        }
        if (i < TourStop.ALL.size()) {
          anna.leave(() -> tour.locator("button.main").click());
        }
      }
      anna.sees("no room for it").sees("Anna Brandt");
      anna.leave(() -> anna.press("Go back to revision 1"));
      assertThat(store.text(KIT)).doesNotContain("wishes");
      anna.press("End the tour");
      assertThat(anna.page().locator(".tour")).hasCount(0);
      assertThat(store.number(KIT)).isEqualTo(3);
      anna.window().assertCalm();
    }
  }

  private static void change(Person anna) {
    Locator used = anna.page().locator("li.way.used").first();
    anna.forbid(used, "no room for it");
  }

  private static void looksGood(Person person) {
    Accessibility.check(person.page());
    Layout.check(person.page());
  }
}
