package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.web.Pages;
import org.loomwright.web.PortTakenException;
import org.loomwright.web.shop.ShopSource;

/** Pages in inches, switched as a person does, without scripts; longer figures have room too. */
class UnitsPagesTest {
  private static final List<String> PATHS =
      List.of(
          "/vehicle/packer",
          "/equipment/heater",
          "/parts/bench-stock",
          "/kit/trailer/leads",
          "/sums/gauge?current=9+A&length=4+m&supply=12+V&max-drop=3+%25&ambient=40+%C2%B0C"
              + "&insulation-rating=105+%C2%B0C",
          "/sums/cut?stock=5600+mm&pieces=1380x22%2C+150x9&kerf=2+mm");

  @Test
  void isAccessibleAndFits() throws PortTakenException {
    try (Pages pages = Pages.open(ShopSource.folder(Path.of("..", "demo")), 0);
        BrowserSession session = BrowserSession.start();
        BrowserWindow window = session.window(pages.address(), Manner.DESK.withoutScript())) {
      Page page = window.go("/vehicle/packer");
      page.locator("button[name=units][value=inch]").focus();
      page.keyboard().press("Enter");
      PlaywrightAssertions.assertThat(page.locator("button[value=inch]"))
          .hasAttribute("aria-pressed", "true");
      assertThat(page.url()).endsWith("/vehicle/packer");
    }
    try (Pages pages = Pages.open(ShopSource.folder(Path.of("..", "demo")), 0);
        BrowserSession session = BrowserSession.start();
        BrowserWindow window = session.window(pages.address(), Manner.DESK)) {
      window.go("/").locator("button[value=inch]").click();
      List<String> faults = new ArrayList<>();
      for (String path : PATHS) {
        Page page = window.go(path);
        page.setViewportSize(Manner.DESK.widthPx(), Manner.DESK.heightPx());
        window.prefer(ColorScheme.LIGHT);
        note(faults, path + " desk", Accessibility.faults(page));
        note(faults, path + " desk", Layout.fitFaults(page));
        page.setViewportSize(Manner.PHONE.widthPx(), Manner.PHONE.heightPx());
        window.prefer(ColorScheme.DARK);
        note(faults, path + " phone, dark", Accessibility.faults(page));
        note(faults, path + " phone", Layout.fitFaults(page));
      }
      faults.addAll(window.troubles());
      assertThat(faults).isEmpty();
    }
  }

  private static void note(List<String> faults, String where, List<String> found) {
    found.forEach(it -> faults.add(where + ": " + it));
  }
}
