package org.loomwright.web.hand;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Step;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One guide opened from its file, and the hand that presses its buttons. */
final class Hand {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final DemoGuides demo;
  private final Page page;
  private final List<String> troubles = new ArrayList<>();

  private Hand(DemoGuides demo, Page page) {
    this.demo = demo;
    this.page = page;
    page.setDefaultTimeout(30_000);
    page.onPageError(troubles::add);
    page.onConsoleMessage(it -> troubles.add(it.text()));
  }

  static Hand open(BrowserContext context, DemoGuides demo, Path file) {
    Hand hand = new Hand(demo, context.newPage());
    hand.page.navigate(file.toUri().toString());
    return hand;
  }

  Page page() {
    return page;
  }

  /** What went wrong in the page so far. */
  List<String> troubles() {
    return List.copyOf(troubles);
  }

  Hand press(String id) {
    page.locator("#" + id).click();
    return this;
  }

  Hand type(String id, String text) {
    page.locator("#" + id).fill(text);
    return this;
  }

  /** Leaves the field that is typed in, and lets the guide draw what that changes. */
  Hand leaveField() {
    page.locator("#heading").click();
    // It draws in the turn after the one in which the press ended.
    page.evaluate("() => new Promise(done => setTimeout(done, 50))");
    return this;
  }

  Hand choose(String name, String value) {
    page.locator("input[name=\"" + name + "\"][value=\"" + value + "\"]").check();
    return this;
  }

  /** Goes on as this build would, from wherever the guide is, as far as a step. */
  Hand goTo(Map<String, String> build, String step) {
    page.evaluate(
        HandScripts.own("walk.js"),
        Map.of(
            "builds", List.of(build), "numbers", List.of(demo.number(build).id()), "until", step));
    return this;
  }

  /** Goes on to the last screen. */
  Hand finish(Map<String, String> build) {
    return goTo(build, "the end");
  }

  /** The printed number of a step. */
  int number(String stepId) {
    return demo.plan().guide().step(stepId).map(Step::number).orElseThrow();
  }

  /** Fails unless this step is shown. */
  Hand isAt(String stepId) {
    assertThat(page.locator("#where b")).hasText("Step " + number(stepId));
    return this;
  }

  Hand heading(String words) {
    assertThat(page.locator("#heading")).hasText(words);
    return this;
  }

  /** Fails unless this is told as a fault. */
  Hand says(String selector, String words) {
    assertThat(page.locator(selector).first()).containsText(words);
    return this;
  }

  /** Jumps to a step that is done. */
  Hand jumpTo(String stepId) {
    press("list");
    page.locator("button[data-step=\"" + stepId + "\"]").click();
    return isAt(stepId);
  }

  /** The record as saved to a file. */
  Path save(Path folder) {
    Download download = page.waitForDownload(() -> press("save"));
    Path file = folder.resolve(download.suggestedFilename());
    download.saveAs(file);
    return file;
  }

  static JsonNode read(Path file) {
    try {
      return JSON.readTree(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
