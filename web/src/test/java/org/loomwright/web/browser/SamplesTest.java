package org.loomwright.web.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.loomwright.web.Pages;
import org.loomwright.web.PortTakenException;
import org.loomwright.web.shop.ShopSource;

/** What the style sheet offers for pages that edit, each of it once on a page for this test. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SamplesTest {
  private final Pages pages = open();
  private final BrowserSession session = BrowserSession.start();

  private static Pages open() {
    try {
      return Pages.open(ShopSource.folder(Path.of("..", "demo")), 0);
    } catch (PortTakenException taken) {
      throw new AssertionError(taken);
    }
  }

  @AfterAll
  void close() {
    session.close();
    pages.close();
  }

  @Test
  void samplesAreAccessibleOnADeskAndOnAPhone() {
    for (Manner manner : new Manner[] {Manner.DESK, Manner.PHONE}) {
      try (BrowserWindow window = session.window(pages.address(), manner)) {
        Page page = window.page();
        page.route(
            "**/samples",
            route ->
                route.fulfill(
                    new Route.FulfillOptions()
                        .setContentType("text/html; charset=utf-8")
                        .setBody(Scripts.own("samples.html"))));
        page.navigate("/samples");
        Accessibility.check(page);
        Layout.check(page);
        Accessibility.checkLook(window.prefer(ColorScheme.DARK).page());
        window.assertCalm();
      }
    }
  }
}
