package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.BrowserWindow;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** Forms in a browser: each sort of them on a desk and, dark, on a phone, and by keyboard alone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EditBrowserTest {
  private static final List<Manner> MANNERS = List.of(Manner.DESK, Manner.PHONE.inDark());

  private DemoStore demo;
  private BrowserSession session;

  @BeforeAll
  void open(@TempDir Path folder) {
    demo = DemoStore.in(folder);
    session = BrowserSession.start();
  }

  @AfterAll
  void close() {
    session.close();
    demo.close();
  }

  private BrowserWindow window(Manner manner) {
    return session.window(demo.pages().address(), manner);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/edit/vehicle/packer",
        "/edit/vehicle/packer?at=traits%2Fbody",
        "/edit/vehicle/packer?at=runs%2Fpillar-to-quarter",
        "/edit/vehicle/packer?at=circuits%2Fheater-feed",
        "/edit/rules/shop-rules",
        "/edit/kit/trailer",
        "/add/equipment/heater?to=plugs%2Fmain%2Fpins",
        "/remove/vehicle/packer?at=connectors%2Ffloor",
        "/finding/floor-cavity-wire/into",
        "/new/vehicle"
      })
  void formsAreAccessibleAndFit(String path) {
    for (Manner manner : MANNERS) {
      try (BrowserWindow window = window(manner)) {
        Page page = window.go(path);
        Accessibility.check(page);
        Layout.checkFit(page);
        window.assertCalm();
      }
    }
  }

  @Test
  void aRunIsCorrectedByKeyboardAlone() {
    try (BrowserWindow window = window(Manner.DESK.withoutScript())) {
      window.mayFail("/edit/vehicle/packer");
      Page page = window.go("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter");
      page.locator("#who").fill("Anna");
      page.locator("[id='f.length']").focus();
      page.keyboard().press("Control+A");
      page.keyboard().type("1,9 m");
      page.keyboard().press("Enter");
      Locator problems = page.locator(".problems");
      problems.waitFor();
      // Without script the browser moves there by itself, some moments after the page has come.
      page.waitForCondition(
          () -> "problems".equals(page.evaluate("document.activeElement.className")));
      assertThat(page.locator("[id='f.length']").inputValue()).isEqualTo("1,9 m");
      assertThat(page.locator("[id='f.length-wrong']").textContent()).contains("1,9 m");
      page.keyboard().press("Tab");
      page.keyboard().press("Enter");
      assertThat(page.url()).endsWith("#f.length");
      // Some browsers go to the field at once, others stop just before it.
      page.locator("[id='f.length']").focus();
      page.keyboard().press("Control+A");
      page.keyboard().type("1.9 m");
      page.keyboard().press("Enter");
      page.locator(".notice").waitFor();
      assertThat(page.url()).contains("/vehicle/packer?done=vehicle.packer.");
      assertThat(demo.text(DemoStore.VAN)).contains("\"1.9 m\"");
    }
  }

  @Test
  void aRowMoreIsReadyToBeTypedInto() {
    try (BrowserWindow window = window(Manner.PHONE)) {
      Page page = window.go("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter");
      page.locator("button[value='more:f.near']").click();
      page.locator("[id='f.near.0.what']").waitFor();
      page.waitForCondition(
          () -> "f.near.0.what".equals(page.evaluate("document.activeElement.id")));
      Layout.checkFit(page);
      page.locator("button[value='less:f.near.0']").click();
      page.locator("[id='f.near.0.what']")
          .waitFor(
              new Locator.WaitForOptions()
                  .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
      window.assertCalm();
    }
  }
}
