package org.loomwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.BrowserWindow;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** The map of a vehicle as people work on it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MapInBrowserTest {
  private static final String MAP = "/vehicle/packer/map";
  private static final String ALONG = "input[name='place.left-step.along']";
  private static final String DOWN = "input[name='place.left-step.down']";

  private final BrowserSession session = BrowserSession.start();
  private DemoStore demo;

  @BeforeEach
  void open(@TempDir Path own) {
    demo = DemoStore.in(own);
  }

  @AfterEach
  void shut() {
    demo.close();
  }

  @AfterAll
  void close() {
    session.close();
  }

  private BrowserWindow window(Manner manner) {
    return session.window(demo.pages().address(), manner);
  }

  private static double[] middle(Locator it) {
    BoundingBox box = it.boundingBox();
    return new double[] {box.x + box.width / 2, box.y + box.height / 2};
  }

  private static double[] sign(Page page, String place) {
    return middle(page.locator(".handle[data-place='" + place + "'] .sign"));
  }

  private void save(Page page) {
    page.locator("#who").fill("Anna");
    page.locator("#map-submit").click();
    assertThat(page.locator(".notice")).containsText("Saved as revision 2");
  }

  @Test
  void aPlaceIsDraggedSavedAndTakenBackByTheNotice() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      double[] at = sign(page, "left-step");
      page.mouse().move(at[0], at[1]);
      page.mouse().down();
      page.mouse().move(at[0] + 30, at[1] - 20);
      page.mouse().move(at[0] + 60, at[1] - 40);
      page.mouse().up();
      assertThat(Double.parseDouble(page.locator(ALONG).inputValue())).isBetween(3150.0, 3350.0);
      assertThat(page.locator("#map-submit")).hasText("Save 1 change");
      page.locator("#take-back").click();
      assertThat(page.locator(ALONG)).hasValue("2900");
      page.locator(".handle[data-place='left-step']").focus();
      page.keyboard().press("ArrowRight");
      save(page);
      assertThat(demo.text(DemoStore.VAN)).contains("\"along\": \"2910 mm\"");
      page.locator(".notice button").click();
      assertThat(page.locator(ALONG)).hasValue("2900");
      window.assertCalm();
    }
  }

  @Test
  void aPlaceIsMovedByKeys() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      page.locator(".handle[data-place='left-step']").focus();
      page.keyboard().press("ArrowRight");
      page.keyboard().press("Shift+ArrowUp");
      assertThat(page.locator(ALONG)).hasValue("2910");
      assertThat(page.locator(DOWN)).hasValue("1850");
      page.keyboard().press("Escape");
      assertThat(page.locator(ALONG)).hasValue("2900");
      assertThat(page.locator(DOWN)).hasValue("1950");
      page.keyboard().press("ArrowLeft");
      page.keyboard().press("Enter");
      page.keyboard().press("Escape");
      assertThat(page.locator(ALONG)).hasValue("2890");
      window.assertCalm();
    }
  }

  @Test
  void aPlaceIsDraggedByTouch() {
    try (BrowserWindow window = window(Manner.PHONE)) {
      Page page = window.go(MAP);
      page.locator("#plan-map").scrollIntoViewIfNeeded();
      double[] at = sign(page, "right-step");
      CDPSession touch = page.context().newCDPSession(page);
      touch(touch, "touchStart", at[0], at[1]);
      touch(touch, "touchMove", at[0] + 15, at[1] + 10);
      touch(touch, "touchMove", at[0] + 30, at[1] + 20);
      touch(touch, "touchEnd", 0, 0);
      String along = page.locator("input[name='place.right-step.along']").inputValue();
      assertThat(Double.parseDouble(along)).isGreaterThan(3100);
      window.assertCalm();
    }
  }

  private static void touch(CDPSession session, String type, double x, double y) {
    JsonObject event = new JsonObject();
    event.addProperty("type", type);
    com.google.gson.JsonArray points = new com.google.gson.JsonArray();
    if (!type.equals("touchEnd")) {
      JsonObject point = new JsonObject();
      point.addProperty("x", x);
      point.addProperty("y", y);
      points.add(point);
    }
    event.add("touchPoints", points);
    session.send("Input.dispatchTouchEvent", event);
  }

  @Test
  void aBendIsMadeAndTakenOut() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      page.locator("[data-run='lamp-to-lamp'] .badge").click();
      page.locator(".bend.middle").focus();
      page.keyboard().press("Shift+ArrowLeft");
      Locator bends = page.locator("input[name='run.lamp-to-lamp.bends']");
      assertThat(bends).hasValue("4130, 1200");
      page.keyboard().press("Delete");
      assertThat(bends).hasValue("");
      window.assertCalm();
    }
  }

  @Test
  void distancesAreMeasuredAlongPlaces() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      page.locator("[data-mode=measure]").click();
      double[] one = sign(page, "left-lamp-bay");
      double[] other = sign(page, "right-lamp-bay");
      page.mouse().click(one[0], one[1]);
      page.mouse().click(other[0], other[1]);
      assertThat(page.locator(".measured-sum")).hasText("1\u00a0500\u00a0mm (59\u00a0in)");
      assertThat(page.getByText("Impossible")).hasCount(0);
      window.assertCalm();
    }
  }

  @Test
  void aPlaceAndARunAreAdded() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      page.locator("[data-mode=place]").click();
      double[] near = sign(page, "engine-bay");
      page.mouse().click(near[0] + 60, near[1] - 90);
      page.keyboard().type("Shelf");
      page.locator("[id='newPlace.ambient']").fill("45 °C");
      page.locator("[data-mode=run]").click();
      double[] one = sign(page, "left-lamp-bay");
      page.mouse().click(one[0], one[1]);
      double[] moved = sign(page, "rear-bumper");
      page.mouse().click(moved[0], moved[1]);
      assertThat(page.locator("#drawn-hint")).containsText("measure the real path");
      assertThat(page.locator("[id='newRun.length']")).hasValue("");
      page.locator("[id='newRun.length']").fill("720");
      page.locator("[id='newRun.tolerance']").fill("30");
      page.locator("[id='newRun.follows']").fill("the sill");
      assertThat(page.locator("#map-submit")).hasText("Save 2 changes");
      save(page);
      assertThat(demo.text(DemoStore.VAN)).contains("\"shelf\"", "left-lamp-bay-to-rear-bumper");
      window.assertCalm();
    }
  }

  @Test
  void listAndMapMarkTheSame() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      double[] at = sign(page, "left-seat-box");
      page.mouse().click(at[0], at[1]);
      assertThat(page.locator("#place-left-seat-box")).hasAttribute("aria-current", "true");
      page.locator("[data-place='rear-bumper'] .badge").click();
      assertThat(page.locator(".handle[data-place='rear-bumper']"))
          .hasClass(Pattern.compile(".*chosen.*"));
      window.assertCalm();
    }
  }

  @Test
  void aRefusedSaveKeepsTheMoves() {
    try (BrowserWindow window = window(Manner.DESK).mayFail(MAP)) {
      Page page = window.go(MAP);
      page.locator(".handle[data-place='left-step']").focus();
      page.keyboard().press("ArrowRight");
      page.locator("#map-submit").click();
      assertThat(page.locator(".problems")).containsText("write your name");
      assertThat(page.locator(ALONG)).hasValue("2910");
      assertThat(page.locator("#map-submit")).hasText("Save 1 change");
      window.assertCalm();
    }
  }

  @Test
  void withoutScriptsDistancesAreTyped() {
    try (BrowserWindow window = window(Manner.DESK.withoutScript())) {
      Page page = window.go(MAP);
      page.locator(ALONG).fill("2950");
      save(page);
      assertThat(demo.text(DemoStore.VAN)).contains("\"along\": \"2950 mm\"");
    }
  }

  @Test
  void theSumsOfThePageAreThoseOfTheServer() {
    try (BrowserWindow window = window(Manner.DESK)) {
      Page page = window.go(MAP);
      Object sums =
          page.evaluate(
              "async () => { const g = await import('/assets/map-geometry.js');"
                  + " const l = [{x: 100, y: 100}, {x: 500, y: 100}, {x: 500, y: 400}];"
                  + " return [g.showMm(g.length(l)), g.showMm(1839.6),"
                  + " ...[934, 933, 560, 559, 499].map(it => g.check(it, l))]; }");
      assertThat((List<?>) sums)
          .asString()
          .isEqualTo("[700\u00a0mm, 1\u00a0840\u00a0mm, apart, agrees, agrees, apart, impossible]");
    }
  }

  @Test
  void isAccessibleAndFits() {
    for (Manner manner : List.of(Manner.DESK, Manner.PHONE, Manner.PHONE.inDark())) {
      try (BrowserWindow window = window(manner)) {
        Page page = window.go(MAP);
        page.locator("[data-run='cross-to-right-step'] .badge").click();
        Accessibility.check(page);
        Layout.checkFit(page);
        Accessibility.check(window.go(MAP + "/view"));
        Layout.checkFit(page);
        window.assertCalm();
      }
    }
  }

  @Test
  void scriptsAreWellFormed() throws Exception {
    Path folder = Path.of("src", "main", "resources", "loomwright-assets");
    try (var files = java.nio.file.Files.list(folder)) {
      for (Path it : files.filter(file -> file.toString().endsWith(".js")).sorted().toList()) {
        Process node =
            new ProcessBuilder("node", "--check", it.toString()).redirectErrorStream(true).start();
        assertThat(
                new String(
                    node.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
            .isEmpty();
        assertThat(node.waitFor()).as(it.toString()).isZero();
      }
    }
  }
}
