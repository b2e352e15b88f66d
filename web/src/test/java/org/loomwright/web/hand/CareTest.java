package org.loomwright.web.hand;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.hand.Taking;
import org.loomwright.model.json.GuideRecordText;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;
import tools.jackson.databind.JsonNode;

/** What the one-file guide refuses, asks before it does it, and says as it is. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CareTest {
  private static final String FED = "ask/rear-feed";
  private static final String SHORT = "measure/short/rear-block/F7";
  private static final String LINE = "#reading-short-rear-block-F7-line";
  private static final String LAST = "measure/function";

  private final BrowserSession session = BrowserSession.start();
  private final DemoGuides demo = DemoGuides.of("crew-comfort");
  private final Map<String, String> fed =
      build("step-before", "none", "rear-feed", "yes", "tow-prep", "no");
  @TempDir private Path folder;

  @AfterAll
  void close() {
    session.close();
  }

  private BrowserContext offline() {
    return session.offline(Manner.PHONE);
  }

  private Map<String, String> build(String... traitsAndValues) {
    Map<String, String> wanted = new LinkedHashMap<>();
    for (int i = 0; i < traitsAndValues.length; i += 2) {
      wanted.put(traitsAndValues[i], traitsAndValues[i + 1]);
    }
    return demo.builds().stream()
        .filter(it -> it.entrySet().containsAll(wanted.entrySet()))
        .findFirst()
        .orElseThrow();
  }

  private Hand start(BrowserContext context) {
    return Hand.open(context, demo, demo.file(folder));
  }

  @Test
  void anAnswerThatNeedsAnotherPartNumberCanBePutRight() {
    List<String> dead = demo.cases(build("rear-feed", "no")).stream().map(it -> it.id()).toList();
    Map<String, String> right =
        demo.builds().stream()
            .filter(it -> "yes".equals(it.get("rear-feed")))
            .filter(it -> !demo.number(it).cases().containsAll(dead))
            .findFirst()
            .orElseThrow();
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(right, FED);
      hand.type("answer", "0.2").press("forward").says(".danger", "needs another part number");
      hand.press("forward").says("#step-fault", "needs another part number");
      hand.press("back").isAt(FED).type("answer", "12.5").press("forward");
      hand.heading("Change this answer?").press("change-answer");
      assertThat(hand.page().locator("#number-change")).hasCount(0);
      hand.finish(right).heading("Finished");
      assertThat(hand.troubles()).isEmpty();
    }
  }

  @Test
  void aMeasuredAnswerChangesOnlyWithPowerAsItWas() {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, "ask/floor-ground").jumpTo(FED);
      assertThat(hand.page().locator("#answer")).hasCount(0);
      hand.says(".question", "It was measured with power on; now: battery isolated");
      hand.press("not-done").heading("Not done after all?").press("change-answer");
      hand.heading("Before you go on").says(".box", "connect the battery again");
      hand.page().locator("#tick").check();
      hand.press("forward").isAt(FED).says(".facts", "Battery connected, as it has to be");
      hand.finish(fed).heading("Finished").press("to-step").jumpTo(FED);
      assertThat(hand.page().locator("#answer")).isVisible();
    }
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, SHORT).jumpTo(FED).press("not-done");
      hand.says("#take-back", "wiring has been started. Do not connect the battery");
    }
  }

  @Test
  void aDoneStepSaysWhatPowerItHad() {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).finish(fed).press("to-step").jumpTo("land/L1a/rear-block/F7");
      hand.says(".facts", "needed battery isolated; now: battery connected again");
      assertThat(hand.page().locator(".danger")).hasCount(0);
      hand.press("back").press("list").press("to-step");
      hand.jumpTo(SHORT).says("[data-reading]", "is right");
      assertThat(hand.page().locator("[data-reading] input")).hasCount(0);
      hand.press("not-done").says("#take-back", "Take the fuse out again");
      hand.says("#take-back", "Isolate the battery");
      assertThat(hand.page().locator("#again [data-step='act/reconnect']")).hasCount(1);
    }
  }

  @Test
  void lookingThroughAFinishedGuideLeavesItFinished() {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).finish(fed);
      String ended = Hand.read(hand.save(folder)).get("ended").asString();
      hand.press("to-step").jumpTo("measure/rest").press("forward").press("forward").press("back");
      hand.jumpTo(FED).press("forward").press("list").press("to-summary").heading("Finished");
      hand.press("to-step").jumpTo(LAST).press("forward").heading("Finished");
      assertThat(Hand.read(hand.save(folder)).get("ended").asString()).isEqualTo(ended);
      hand.press("to-step").jumpTo(FED).type("answer", "12.1").press("forward");
      hand.press("list").press("to-summary").heading("So far");
      hand.press("to-step").jumpTo(LAST).press("forward").heading("Finished");
      hand.press("to-step").jumpTo(LAST).press("odd").type("odd-words", "A lamp is dark");
      hand.press("odd-keep").isAt(LAST).press("list").press("to-summary").heading("So far");
    }
  }

  @Test
  void wordsOfOneStepDoNotTurnUpAtAnother() {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, FED).press("odd").type("odd-words", "Rust");
      hand.press("odd-drop").isAt(FED).press("odd");
      assertThat(hand.page().locator("#odd-words")).hasValue("");
    }
  }

  @Test
  void anOpenLineIsAValue() throws IOException {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, SHORT);
      hand.type("reading-short-rear-block-F7", "0.2").press("forward").isAt(SHORT);
      hand.says(".stop", "Stop: do not go on").press("again-short-rear-block-F7");
      hand.type("reading-short-rear-block-F7", "40 M\u03a9");
      hand.leaveField();
      hand.says("[data-reading]", "40000 k\u03a9 is right");
      hand.page().locator(LINE).click();
      hand.says("[data-reading]", "Open line is right");
      assertThat(hand.page().locator("#reading-short-rear-block-F7")).hasValue("999999");
      hand.press("forward").finish(fed).heading("Finished").says("main", "Open line");
      String text = Files.readString(hand.save(folder));
      assertThat(text).contains("\"short/rear-block/F7\": \"999999\"");
      assertThat(GuideRecordText.read(text)).isInstanceOf(GuideRecordText.Good.class);
      assertThat(
              GuideRecordTaker.take(
                  ((GuideRecordText.Good) GuideRecordText.read(text)).record(),
                  demo.plan(),
                  GuidePrint.of(demo.plan())))
          .isInstanceOf(Taking.Good.class);
    }
  }

  @Test
  void aTextThatWasEmptiedIsNotTaken() throws IOException {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, "prepare/kit");
      Locator words = hand.page().locator("#reading-faults-before");
      words.fill("U0155");
      hand.leaveField();
      words.fill("   ");
      hand.leaveField();
      hand.press("forward").says("#step-fault", "Still to be taken: stored faults");
      hand.press("list").press("to-start").type("by", "  ").press("begin");
      hand.press("list").press("to-summary");
      String text = Files.readString(hand.save(folder));
      assertThat(text).doesNotContain("faults-before").doesNotContain("\"by\"");
      assertThat(GuideRecordText.read(text)).isInstanceOf(GuideRecordText.Good.class);
    }
  }

  @Test
  void anOlderRecordIsOpenedOnlyWhenThatIsMeant() {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, FED).press("list").press("to-summary");
      Path old = hand.save(folder);
      hand.press("to-step").goTo(fed, SHORT).press("list").press("to-start");
      hand.page().locator("#open-record").setInputFiles(old);
      hand.heading("This record is older").says("#missing", "Steps done: " + hand.number(FED));
      hand.says("#missing", "Answer: ").press("opened-no").isAt(SHORT);
      hand.press("list").press("to-start").page().locator("#open-record").setInputFiles(old);
      hand.press("opened-yes").isAt(FED);
    }
  }

  @Test
  void withoutTheValueBeforeANoteSettlesTheValueAfter() throws IOException {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, LAST).press("list").press("to-summary");
      Path record = hand.save(folder);
      Path less = folder.resolve("less.txt");
      Files.writeString(
          less, Files.readString(record).replaceFirst("\"key-off-before\": \"20\",?\\s*", ""));
      hand.press("to-start").page().locator("#open-record").setInputFiles(less);
      hand.says("#missing", "key-off current before the work").press("opened-yes").isAt(LAST);
      hand.type("reading-key-off-after", "30");
      hand.leaveField();
      hand.says("[data-reading=key-off-after]", "can't be judged");
      hand.choose("no-new-faults", "yes").press("forward").isAt(LAST);
      hand.press("odd").type("odd-words", "Nobody measured before").press("odd-keep").isAt(LAST);
      hand.page().locator("#settled").click();
      hand.finish(fed).heading("Finished");
    }
  }

  @Test
  void aPlanThatIsNotSoundIsForLookingOnly() {
    DemoGuides unsound = demo.unproven();
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, unsound, unsound.file(folder));
      hand.goTo(fed, "open/fuse-flap").says(".danger", "Do not fit this kit");
      hand.press("forward").isAt(FED).says(".danger", "Do not fit this kit");
      hand.type("answer", "12.5").press("forward").isAt("open/bonnet").press("list");
      hand.page().locator("button[data-step='act/isolate']").click();
      hand.isAt("act/isolate").press("forward").press("list");
      JsonNode record = Hand.read(hand.press("to-summary").save(folder));
      assertThat(WalkTest.numbers(record.get("steps").asString()))
          .doesNotContain(
              hand.number("open/fuse-flap"),
              hand.number("open/bonnet"),
              hand.number("act/isolate"));
      assertThat(record.get("state").asString()).isEqualTo("under way");
    }
  }

  @Test
  void aVehicleThatIsNotServedIsToldSo() {
    DemoGuides less = demo.notServing(Condition.of("tow-prep = yes"), "it has a tow bar");
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, less, less.file(folder)).goTo(fed, "ask/tow-prep");
      hand.choose("answer", "yes").press("forward").isAt("ask/tow-prep");
      hand.says(".stop", "this kit does not serve this vehicle").says(".stop", "it has a tow bar");
    }
  }

  @Test
  void aPartNumberThatTheKitDoesNotHaveIsAskedForAgain() {
    try (BrowserContext context = offline()) {
      Hand hand = start(context).goTo(fed, FED);
      hand.page()
          .evaluate(
              "() => { const key = Object.keys(localStorage)[0]; const kept ="
                  + " JSON.parse(localStorage.getItem(key)); kept.partNumber = 'OLD-1';"
                  + " localStorage.setItem(key, JSON.stringify(kept)); }");
      assertThat((String) hand.page().evaluate("() => Object.keys(localStorage)[0]"))
          .contains(demo.plan().kit().id(), demo.plan().kit().revision())
          .contains(demo.plan().design().partNumbers().stream().map(PartNumber::id).toList());
      hand.page().reload();
      hand.press("begin").says("#start-fault", "Choose the part number");
      hand.choose("part-number", demo.number(fed).id()).press("begin").isAt(FED);
    }
  }

  @Test
  void theRecordIsSentAsTextAndNothingIsClaimed() {
    try (BrowserContext context = offline()) {
      context.addInitScript(
          "navigator.canShare = it => it.files[0].type === 'text/plain';"
              + "navigator.share = it => { window.sent = it.files[0]; return Promise.resolve(); };");
      Hand hand = start(context).goTo(fed, FED).press("list").press("to-summary");
      hand.press("share").says("#save-said", "Ask the shop whether it came");
      assertThat((String) hand.page().evaluate("() => window.sent.name"))
          .endsWith(".guide-record.txt");
      Path saved = hand.save(folder);
      hand.says("#save-said", "Look for " + saved.getFileName() + " among the downloads");
      hand.page().locator("summary").click();
      assertThat(hand.page().locator("#save-text")).isVisible();
      assertThat(GuideRecordText.read(hand.page().locator("#save-text").inputValue()))
          .isInstanceOf(GuideRecordText.Good.class);
      hand.press("save-copy");
      hand.press("begin-again").press("again-save");
      hand.says("#again-save-said", "among the downloads before you begin again");
    }
  }
}
