package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.BrowserWindow;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** A pinout and a photo, put in as a person does it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PasteInBrowserTest {
  private final BrowserSession session = BrowserSession.start();

  @TempDir private Path folder;
  private DemoStore demo;

  @BeforeEach
  void open() {
    demo = DemoStore.in(folder);
  }

  @AfterEach
  void close() {
    demo.close();
  }

  @AfterAll
  void end() {
    session.close();
  }

  private static Manner manner(boolean phone, boolean script) {
    Manner manner = phone ? Manner.PHONE : Manner.DESK;
    return script ? manner : manner.withoutScript();
  }

  /** Where pictures of the pages are wanted, to be looked at. */
  private static void shot(Page page, String name) {
    String to = System.getProperty("loomwright.shots", "");
    if (!to.isEmpty()) {
      page.screenshot(
          new Page.ScreenshotOptions().setPath(Path.of(to, name + ".png")).setFullPage(true));
    }
  }

  private static void check(Page page, boolean script) {
    if (script) {
      Accessibility.check(page);
      Layout.check(page);
    }
  }

  @ParameterizedTest
  @CsvSource({"false, true", "true, true", "false, false", "true, false"})
  void aPinoutIsPastedCorrectedAndAccepted(boolean phone, boolean script) {
    String name = (phone ? "phone" : "desk") + (script ? "" : "-no-script");
    try (BrowserWindow window =
        session.window(demo.pages().address(), manner(phone, script)).mayFail(PasteTest.PASTE)) {
      Page page = window.go(PasteTest.SOCKET);
      page.getByText("Paste a pinout").click();
      check(page, script);
      page.getByText("Look at it").click();
      assertThat(page.locator("#text-wrong").textContent()).contains("there is nothing in it");
      shot(page, "paste-refused-" + name);
      page.getByLabel("Rows of the table").fill(PasteTest.TABLE);
      page.getByText("Look at it").click();
      shot(page, "paste-preview-" + name);
      check(page, script);
      assertThat(page.locator(".counts").textContent()).contains("2 have a problem");

      // A changed column refreshes the preview where it stands.
      if (script) {
        page.locator("#m3").selectOption("NOTE");
        page.locator("#why3").getByText("You said so").waitFor();
        page.locator("#m3").selectOption("NAME");
        // A button that an answer under way replaces between press and release is not pressed.
        page.waitForFunction("() => !document.querySelector('[class*=htmx-]')");
        page.locator("#row-5 .comes").waitFor();
      }
      page.locator("#present").fill("tow-prep = yes");
      page.locator("[name=c-4-1]").fill("red");
      page.locator("[name=c-7-0]").fill("");
      page.getByText("Look again with the corrections").click();
      page.locator("#row-4.is-new").waitFor();
      shot(page, "paste-corrected-" + name);
      assertThat(page.locator("#c-4-1").inputValue()).isEqualTo("red");
      assertThat(page.locator(".doing").textContent()).contains("Row 4: new circuit");
      page.locator("#note").fill("service table, sheet 2");

      // A save without a name is refused, and nothing typed is lost.
      page.locator("button[value=accept]").click();
      assertThat(page.locator("#who-wrong").textContent()).contains("write your name");
      assertThat(page.locator("#note").inputValue()).isEqualTo("service table, sheet 2");
      check(page, script);
      page.locator("#who").fill("Anna");
      page.locator("button[value=accept]").click();
      assertThat(page.locator(".notice").textContent()).contains("Saved as revision 2.");
      assertThat(demo.text(DemoStore.VAN)).contains("service table, sheet 2");
      shot(page, "paste-accepted-" + name);
      page.getByText("Undo").click();
      assertThat(demo.text(DemoStore.VAN)).doesNotContain("service table, sheet 2");
      window.assertCalm();
    }
  }

  @Test
  void theWayBackInTheBrowserIsOpen() {
    try (BrowserWindow window = session.window(demo.pages().address(), Manner.DESK)) {
      Page page = window.go(PasteTest.PASTE);
      page.getByLabel("Rows of the table").fill(PasteTest.TABLE);
      page.getByText("Look at it").click();
      page.locator("#preview").waitFor();
      page.goBack();
      assertThat(page.getByLabel("Rows of the table").inputValue()).contains("permanent feed");
      page.goForward();
      page.locator("#preview").waitFor();
      window.assertCalm();
    }
  }

  private static FilePayload photo() throws java.io.IOException {
    return new FilePayload(
        "photo.png",
        "image/png",
        Files.readAllBytes(Path.of("..", "demo", "rear-block-wire-side.png")));
  }

  @ParameterizedTest
  @CsvSource({"false, true", "true, true", "false, false"})
  void aPhotoIsPutInAndMarked(boolean phone, boolean script) throws java.io.IOException {
    String name = (phone ? "phone" : "desk") + (script ? "" : "-no-script");
    try (BrowserWindow window = session.window(demo.pages().address(), manner(phone, script))) {
      Page page = window.go("/vehicle/packer/face/rear-block");
      page.getByText("Photo and its marks").click();
      assertThat(page.locator(".verdict-line").textContent()).contains("fits worst");
      shot(page, "photo-marked-" + name);
      check(page, script);
      page.locator("#file").setInputFiles(photo());
      page.locator("#who-new").fill("Anna");
      page.getByText("Put it in and mark it").click();
      page.getByText("3 more points at least").waitFor();
      int[][] points = {{193, 133}, {460, 182}, {136, 459}, {437, 475}};
      String[] cavities = {"F1", "F4", "F9", "F12"};
      for (int i = 0; i < points.length; i++) {
        if (script) {
          click(page, points[i]);
          page.locator("#what" + i).selectOption("cavity " + cavities[i]);
          page.locator("#marking .marks text").nth(i).waitFor();
          page.waitForFunction(
              "n => document.querySelectorAll('#marking fieldset').length >= n",
              Math.max(4, i + 2));
        } else {
          page.locator("#what" + i).selectOption("cavity " + cavities[i]);
          page.locator("#x" + i).fill(Integer.toString(points[i][0]));
          page.locator("#y" + i).fill(Integer.toString(points[i][1]));
        }
      }
      page.getByText("Show the marks").click();
      page.getByText("The face is laid on the photo").waitFor();
      shot(page, "photo-new-" + name);
      assertThat(Integer.parseInt(page.locator("#x1").inputValue())).isBetween(456, 464);
      page.getByText("Save the photo and its marks").click();
      assertThat(page.locator(".notice").textContent()).contains("Saved as revision 2.");
      assertThat(demo.text(DemoStore.VAN)).contains("rear-block-wire-side-2.png");
      window.go("/pictures");
      shot(page, "pictures-" + name);
      check(page, script);
      window.go("/pictures/of/van-plan_2e_png");
      check(page, script);
      window.assertCalm();
    }
  }

  /** Clicks a place of the photo given in its own pixels. */
  private static void click(Page page, int[] point) {
    Locator svg = page.locator("#marking .marks > svg");
    svg.scrollIntoViewIfNeeded();
    var box = svg.boundingBox();
    double width = Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]);
    double scale = box.width / width;
    svg.click(
        new Locator.ClickOptions().setPosition(point[0] * scale, point[1] * scale).setForce(true));
  }
}
