package org.loomwright.web.hand;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.design.Step;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/**
 * The guide can be read in the sun and in the dark, touched with gloves, used by keyboard, printed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LookTest {
  private static final String LAND = "land/L1a/rear-block/F7";

  private final BrowserSession session = BrowserSession.start();
  private final DemoGuides demo = DemoGuides.of("crew-comfort");
  private final Map<String, String> build =
      demo.builds().stream()
          .filter(
              it ->
                  "none".equals(it.get("step-before"))
                      && "no".equals(it.get("tow-prep"))
                      && "yes".equals(it.get("rear-feed")))
          .findFirst()
          .orElseThrow();
  @TempDir private Path folder;

  @AfterAll
  void close() {
    session.close();
  }

  private static void check(Page page, String screen, boolean keyboard, List<String> faults) {
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
      ((List<?>) page.evaluate(HandScripts.own("look.js")))
          .forEach(it -> faults.add(screen + ", " + scheme + ": " + it));
      Accessibility.faults(page).forEach(it -> faults.add(screen + ", " + scheme + ": " + it));
    }
    if (keyboard) {
      Layout.checkKeyboard(page);
    }
  }

  @ParameterizedTest
  @CsvSource({"390, 844", "1280, 900", "320, 640"})
  void everyScreenCanBeReadAndTouched(int width, int height) {
    List<String> faults = new ArrayList<>();
    try (BrowserContext context = session.offline(new Manner(width, height, false, true))) {
      Hand hand = Hand.open(context, demo, demo.file(folder));
      Page page = hand.page();
      boolean keyboard = width == 390;
      check(page, "start", keyboard, faults);
      hand.goTo(build, "measure/rest");
      check(page, "measure", keyboard, faults);
      page.locator("#reading-rest-voltage").fill("11");
      hand.leaveField();
      check(page, "outside", false, faults);
      hand.press("again-rest-voltage").goTo(build, "ask/step-before");
      check(page, "question", keyboard, faults);
      hand.goTo(build, "ask/rear-feed");
      page.locator("#answer").fill("5");
      hand.leaveField();
      check(page, "between", false, faults);
      hand.goTo(build, "caution/battery");
      check(page, "caution", false, faults);
      hand.goTo(build, LAND).press("forward");
      check(page, "land", keyboard, faults);
      hand.press("odd");
      check(page, "odd", false, faults);
      hand.type("odd-words", "A wire is there").press("odd-keep");
      check(page, "odd noted", false, faults);
      page.locator("#settled").click();
      hand.press("list");
      check(page, "list", false, faults);
      hand.press("to-step").goTo(build, "measure/drop");
      check(page, "drops", false, faults);
      hand.goTo(build, "measure/function").finish(build).heading("Finished");
      check(page, "summary", keyboard, faults);
      hand.press("to-step").jumpTo("ask/step-before").choose("answer", "left").press("forward");
      check(page, "change", false, faults);
      hand.press("change-answer");
      check(page, "take back", false, faults);
      assertThat(faults).isEmpty();
      assertThat(hand.troubles()).isEmpty();
    }
  }

  @Test
  void textsGrowWithTheReadersWish() {
    try (BrowserContext context = session.offline(Manner.PHONE)) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).goTo(build, LAND);
      Page page = hand.page();
      String size = "() => parseFloat(getComputedStyle(document.querySelector('.text')).fontSize)";
      double before = ((Number) page.evaluate(size)).doubleValue();
      // As a browser does whose reader has set twice the usual size.
      page.evaluate("() => { document.documentElement.style.fontSize = '225%'; }");
      assertThat(((Number) page.evaluate(size)).doubleValue()).isGreaterThan(1.9 * before);
      assertThat(page.evaluate("() => document.documentElement.scrollWidth")).isEqualTo(390);
    }
  }

  @Test
  void paperHasEveryStep() throws IOException {
    try (BrowserContext context = session.offline(Manner.DESK)) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).goTo(build, "measure/rest");
      Page page = hand.page();
      byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4"));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        String text = new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0]", "");
        for (Step step : demo.plan().guide().steps()) {
          assertThat(text).contains(step.number() + "." + step.title().replaceAll("\\s", ""));
        }
        assertThat(text).contains("gotostep").contains("12.4Vormore");
        assertThat(document.getNumberOfPages()).isBetween(5, 20);
      }
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(page.locator(".paper-step").count()).isEqualTo(demo.plan().guide().steps().size());
      assertThat(page.locator("#app").isVisible()).isFalse();
    }
  }
}
