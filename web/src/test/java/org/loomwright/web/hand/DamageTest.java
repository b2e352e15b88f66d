package org.loomwright.web.hand;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;

/** A guide that was cut off or altered says so and shows no step. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DamageTest {
  private static final String DAMAGED =
      "This file is damaged or incomplete: do not work from it; ask for a new one.";
  private static final long SEED = 20_261_126;

  private final BrowserSession session = BrowserSession.start();
  private final DemoGuides demo = DemoGuides.of("trailer");
  @TempDir private Path folder;

  @AfterAll
  void close() {
    session.close();
  }

  @Test
  void everyDamageIsSeen() throws IOException {
    byte[] whole = Files.readAllBytes(demo.file(folder));
    String text = new String(whole, StandardCharsets.US_ASCII);
    Map<String, byte[]> damaged = new LinkedHashMap<>();
    int data = text.indexOf("id=\"data\">") + 10;
    int script = text.indexOf("<script>(function") + 8;
    int end = text.indexOf("</script>", script);
    int picture = text.indexOf("\\u003csvg", data);
    for (int at :
        List.of(
            data - 240,
            data + 10,
            (data + script) / 2,
            script - 12,
            script + 5,
            (script + end) / 2,
            end - 1,
            end + 5,
            end + 12,
            text.indexOf("id=\"end\"") - 2)) {
      damaged.put("cut off at " + at, Arrays.copyOf(whole, at));
    }
    System.out.println("damage seed " + SEED);
    Random random = new Random(SEED);
    List<Integer> spots = new ArrayList<>(List.of(data, data + 1, picture + 40, picture + 500));
    for (int i = 0; i < 12; i++) {
      spots.add(data + random.nextInt(script - 20 - data));
      spots.add(script + random.nextInt(end - script));
    }
    for (int at : spots) {
      byte[] flipped = whole.clone();
      flipped[at] ^= 1;
      damaged.put("flipped at " + at + ", after " + text.substring(at - 15, at), flipped);
    }
    // A number that still reads well: the worst that can happen.
    damaged.put(
        "another limit",
        text.replaceFirst("\"low\":12.4", "\"low\":11.4").getBytes(StandardCharsets.US_ASCII));
    damaged.put(
        "a line taken out of the script",
        text.replaceFirst("  if \\(openOdd\\(step\\)\\) [^\\n]*\\n", "")
            .getBytes(StandardCharsets.US_ASCII));
    try (BrowserContext context = session.offline(Manner.PHONE)) {
      Page page = context.newPage();
      Path file = folder.resolve("damaged.html");
      for (Map.Entry<String, byte[]> one : damaged.entrySet()) {
        assertThat(one.getValue()).as(one.getKey()).isNotEqualTo(whole);
        Files.write(file, one.getValue());
        page.navigate(file.toUri().toString());
        boolean told = page.locator("#damaged").isVisible();
        assertThat(told && page.locator("#damaged").innerText().contains(DAMAGED))
            .as(one.getKey() + ": " + page.locator("body").innerText())
            .isTrue();
        assertThat(page.locator("#where, #begin").count()).as(one.getKey()).isZero();
        assertThat(page.locator("#app").isVisible()).as(one.getKey()).isFalse();
      }
      // Whole, and with other ends of line as some mail programs make them, it works.
      for (String good : List.of(text, text.replace("\n", "\r\n"))) {
        Files.writeString(file, good);
        page.navigate(file.toUri().toString());
        assertThat(page.locator("#begin")).isVisible();
        assertThat(page.locator("#damaged")).hasCount(0);
      }
    }
  }

  @Test
  void withoutScriptsNoStepIsShown() {
    try (BrowserContext context = session.offline(Manner.PHONE.withoutScript())) {
      Page page = context.newPage();
      page.navigate(demo.file(folder).toUri().toString());
      assertThat(page.locator("#damaged")).containsText("scripts are switched off");
      assertThat(page.locator("#app")).not().isVisible();
    }
  }

  @Test
  void nothingCanBeAskedOfTheOutside() {
    try (BrowserContext context = session.offline(Manner.PHONE)) {
      Page page = context.newPage();
      List<String> refused = new ArrayList<>();
      page.onConsoleMessage(it -> refused.add(it.text()));
      page.navigate(demo.file(folder).toUri().toString());
      page.evaluate(
          "async () => { const it = new Image(); it.src = 'https://guide.invalid/a.png';"
              + " try { await fetch('https://guide.invalid/'); } catch (e) { return; } }");
      assertThat(refused).anyMatch(it -> it.contains("Content Security Policy"));
    }
  }
}
