package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.StoreTarget;
import org.loomwright.web.Pages;
import org.loomwright.web.PortTakenException;

/** A finding typed on a phone beside the vehicle, set aside, and found again. */
class FindingsTest {
  @TempDir private Path folder;

  @Test
  void isTypedSetAsideAndFound() throws PortTakenException {
    Signature by = new Signature("Test", "the demo");
    try (Store store = Store.open(StoreTarget.parse(folder.resolve("shop.db").toString()));
        BrowserSession session = BrowserSession.start()) {
      store.workspaces().importFolder(Path.of("..", "demo"), by);
      try (Pages pages =
              Pages.open(
                  store,
                  "the test",
                  (into, who) -> into.workspaces().importFolder(Path.of("..", "demo"), who),
                  0);
          BrowserWindow window = session.window(pages.address(), Manner.PHONE)) {
        walk(window.mayFail("/finding/cap-missing/decide"));
        window.assertCalm();
      }
    }
  }

  private static void walk(BrowserWindow window) {
    Page page = window.go("/vehicle/packer/face/floor");
    page.locator(".finding-count").getByText("Add one").click();
    assertThat(page.getByLabel("What it concerns").inputValue()).isEqualTo("connector floor");
    check(window, page);
    page.getByLabel("Short title").fill("Cap missing");
    page.getByLabel("What was seen").fill("The cap of the connector was gone, water in it.");
    page.getByLabel("How it is known").selectOption("seen");
    page.getByLabel("Who saw it").fill("T. Halvard");
    page.getByLabel("Your name").fill("Anna");
    button(page, "Save");
    PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Cap missing");
    check(window, page);

    button(page, "Set aside");
    PlaywrightAssertions.assertThat(page.locator(".problems"))
        .containsText("says why nothing follows from it");
    PlaywrightAssertions.assertThat(page.locator(".problems")).isFocused();
    check(window, page);
    page.locator("#outcome").fill("One van, left outside without its floor cover.");
    button(page, "Set aside");
    PlaywrightAssertions.assertThat(page.locator(".chip").first()).hasText("set aside");
    check(window, page);

    page.locator("#q").fill("water set aside");
    button(page, "Find");
    page.locator(".finds").getByText("Cap missing").click();
    PlaywrightAssertions.assertThat(page.locator("dl.facts")).containsText("left outside");
    page.locator("header").getByText("Findings").click();
    PlaywrightAssertions.assertThat(page.locator(".finding-list li")).hasCount(3);
    check(window, page);
    window.go("/findings/cap-missing/impact");
    check(window, page);
  }

  private static void button(Page page, String name) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true))
        .last()
        .click();
  }

  private static void check(BrowserWindow window, Page page) {
    Accessibility.check(page);
    Layout.check(page);
    window.prefer(ColorScheme.DARK);
    Accessibility.checkLook(page);
    window.prefer(ColorScheme.LIGHT);
  }
}
