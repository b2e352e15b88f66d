package org.loomwright.web.hand;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Step;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The one-file guide in use: wrong values, second thoughts, closing and coming back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandTest {
  private static final String FED = "ask/rear-feed";
  private static final String STEPS = "ask/step-before";

  private final BrowserSession session = BrowserSession.start();
  private final DemoGuides demo = DemoGuides.of("crew-comfort");
  @TempDir private Path folder;

  @AfterAll
  void close() {
    session.close();
  }

  private BrowserContext offline() {
    return session.offline(Manner.PHONE);
  }

  /** A build with these values, and the first that goes with them of all other traits. */
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

  @Test
  void aWholeGuideIsWalkedByRealPresses() {
    Map<String, String> build = build("step-before", "left", "floor-ground", "yes");
    List<Step> steps = demo.walk(build);
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder));
      hand.choose("part-number", demo.number(build).id()).press("begin");
      for (Step step : steps) {
        hand.isAt(step.id());
        step.ask()
            .ifPresent(
                ask -> {
                  if (hand.page().locator("#answer").count() > 0) {
                    ask.answers().stream()
                        .filter(it -> it.value().equals(build.get(ask.trait())))
                        .flatMap(it -> it.band().stream())
                        .forEach(
                            it ->
                                hand.type(
                                    "answer",
                                    it.low().or(it::high).orElseThrow() + " " + it.unit()));
                  } else {
                    hand.choose("answer", build.getOrDefault(ask.trait(), ""));
                  }
                });
        readings(hand, step, build);
        if (hand.page().locator("#tick").count() > 0) {
          hand.page().locator("#tick").check();
        }
        hand.press("forward");
      }
      hand.heading("Finished");
      JsonNode record = Hand.read(hand.save(folder));
      assertThat(record.get("cases").size()).isEqualTo(demo.cases(build).size());
      assertThat(hand.troubles()).isEmpty();
    }
  }

  private static void readings(Hand hand, Step step, Map<String, String> build) {
    step.readings().stream()
        .filter(it -> it.when().holds(build))
        .forEach(
            it -> {
              Locator form = hand.page().locator("[data-reading=\"" + it.id() + "\"]");
              switch (it.kind()) {
                case WORKS -> form.locator("input[value=yes]").check();
                case WORDS -> form.locator("button").first().click();
                case NUMBER ->
                    form.locator("input[type=text]")
                        .fill(
                            it.band()
                                .flatMap(band -> band.low().or(band::high))
                                .map(String::valueOf)
                                .orElse("20"));
              }
              form.locator("label").first().click();
            });
  }

  @Test
  void aWrongValueStops() {
    Map<String, String> build = build("step-before", "none", "rear-feed", "yes");
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).goTo(build, "measure/rest");
      Locator voltage = hand.page().locator("#reading-rest-voltage");
      hand.type("reading-key-off-before", "18");
      for (String wrong : List.of("", "abc", "12.6.1", "1,234", "-12.6", "12.6 A", "1e1")) {
        voltage.fill(wrong);
        hand.press("forward").isAt("measure/rest");
        assertThat(hand.page().locator("#step-fault")).isVisible();
      }
      voltage.fill("11.9");
      hand.press("forward").isAt("measure/rest").says(".stop", "Stop: do not go on");
      hand.says(".stop", "11.9").says(".stop", "12.4").says(".stop", "Charge the battery");
      hand.press("forward").isAt("measure/rest");
      assertThat(hand.page().locator("#list")).isVisible();
      hand.press("list");
      assertThat(hand.page().locator("button[data-step=\"" + STEPS + "\"]")).hasCount(0);
      hand.press("to-step").press("again-rest-voltage");
      assertThat(voltage).hasValue("");
      voltage.fill("12,6");
      hand.press("forward");
      assertThat(hand.page().locator("#where b"))
          .not()
          .hasText("Step " + hand.number("measure/rest"));
      hand.press("back")
          .isAt("measure/rest")
          .says("[data-reading=rest-voltage]", "12.6 V is right");
      assertThat(voltage).hasCount(0);
      hand.press("not-done");
      assertThat(voltage).hasValue("12.6");
      voltage.fill("12610");
      hand.page().locator("#reading-rest-voltage-unit").selectOption("mV");
      assertThat(voltage).hasValue("12.61");
      voltage.fill("11.0");
      hand.leaveField();
      hand.press("end-rest-voltage").heading("Stopped");
      JsonNode record = Hand.read(hand.save(folder));
      assertThat(record.get("state").asString()).isEqualTo("stopped");
      assertThat(record.get("taken").get("rest-voltage").asString()).isEqualTo("11.0");
      assertThat(record.get("odd").get(0).get("step").asInt())
          .isEqualTo(hand.number("measure/rest"));
      assertThat(hand.troubles()).isEmpty();
    }
  }

  @Test
  void whatDoesNotWorkOrIsWorseThanBeforeStops() {
    Map<String, String> build = build("step-before", "none", "rear-feed", "yes", "tow-prep", "no");
    String last = "measure/function";
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).goTo(build, last);
      hand.choose("works-together", "no").says(".stop", "Stop: do not go on");
      hand.press("forward").isAt(last).choose("works-together", "yes");
      assertThat(hand.page().locator(".stop")).hasCount(0);
      hand.type("reading-key-off-after", "85").press("forward").isAt(last);
      hand.says("[data-reading=key-off-after]", "85 mA is 65 mA more than before the work (20 mA)");
      hand.says(".stop", "Pull the added fuses");
      hand.press("forward").isAt(last);
      assertThat(hand.page().locator("#step-fault")).isVisible();
      hand.press("again-key-off-after").type("reading-key-off-after", "0,024");
      hand.page().locator("#reading-key-off-after-unit").selectOption("A");
      assertThat(hand.page().locator("#reading-key-off-after")).hasValue("24");
      hand.finish(build).heading("Finished");
      assertThat(hand.troubles()).isEmpty();
    }
  }

  @Test
  void aStepThatWasNotDoneAfterAllBringsBackWhatHangsOnIt() {
    Map<String, String> build = build("step-before", "none", "rear-feed", "yes", "tow-prep", "no");
    String land = "land/L1a/rear-block/F7";
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).finish(build).press("to-step");
      hand.jumpTo(land).press("not-done").heading("Not done after all?");
      List<String> again =
          hand.page().locator("#again li").all().stream()
              .map(it -> it.getAttribute("data-step"))
              .toList();
      assertThat(again)
          .contains("act/isolate", "act/reconnect", "open/rear-trim", "close/rear-trim")
          .contains("confirm/L1a/rear-block/F7", "measure/short/rear-block/F7", "measure/drop")
          .contains("fuse/rear-block/F7")
          .doesNotContain("lay/L1", "land/L3b/cross-ground", "open/left-seat");
      hand.says("#take-back", "Take the fuse out again").press("change-answer");
      while (hand.page().locator("#where").count() == 0) {
        hand.page().locator("#tick").check();
        hand.press("forward");
      }
      hand.finish(build).heading("Finished");
      assertThat(WalkTest.numbers(Hand.read(hand.save(folder)).get("steps").asString()))
          .isEqualTo(demo.walk(build).stream().map(Step::number).sorted().toList());
    }
  }

  @Test
  void aNumberBetweenTheAnswersPicksNone() {
    Map<String, String> build = build("step-before", "none", "rear-feed", "yes");
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).goTo(build, FED);
      hand.press("forward").isAt(FED).says("#step-fault", "Type what the meter shows");
      hand.type("answer", "6.2").press("forward").isAt(FED);
      hand.says("#answer-fault", "fits none of the answers");
      hand.type("answer", "0,4").press("forward");
      assertThat(hand.page().locator("#where b")).not().hasText("Step " + hand.number(FED));
      hand.jumpTo(FED);
      assertThat(hand.page().locator("#answer")).hasValue("0.4");
      assertThat(hand.page().locator(".meanings .chosen")).containsText("dead");
    }
  }

  @Test
  void closingAndReopeningKeepsEverything() {
    Map<String, String> build = build("step-before", "right");
    Path file = demo.file(folder);
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, file).goTo(build, "act/isolate");
      hand.press("list").press("to-start").type("by", "M. Orrin").press("begin");
      hand.isAt("act/isolate");
      hand.page().close();
      Hand again = Hand.open(context, demo, file).isAt("act/isolate");
      again.press("list").press("to-start");
      assertThat(again.page().locator("#by")).hasValue("M. Orrin");
      again.press("begin").isAt("act/isolate").finish(build).heading("Finished");
      again.page().close();
      Hand last = Hand.open(context, demo, file).heading("Finished");
      JsonNode record = Hand.read(last.save(folder));
      assertThat(record.get("by").asString()).isEqualTo("M. Orrin");
      assertThat(record.get("taken").get("rest-voltage").asString()).isNotEmpty();
      assertThat(record.get("answers").get("step-before").asString()).isEqualTo("right");
      last.press("begin-again").press("again-no").heading("Finished");
      last.press("begin-again").press("again-yes").heading("Really begin again?");
      last.press("again-really");
      assertThat(last.page().locator("#begin")).hasText("Begin");
    }
  }

  @Test
  void aChangedAnswerNamesTheStepsItTouches() {
    Map<String, String> before = build("step-before", "none", "rear-feed", "yes", "tow-prep", "no");
    Map<String, String> after = new LinkedHashMap<>(before);
    after.put("step-before", "left");
    assertThat(demo.builds()).contains(after);
    List<String> old = demo.walk(before).stream().map(Step::id).toList();
    List<String> now = demo.walk(after).stream().map(Step::id).toList();
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).finish(before).heading("Finished");
      hand.press("to-step").jumpTo(STEPS).choose("answer", "left").press("forward");
      hand.heading("Change this answer?");
      List<String> gone =
          hand.page().locator("#gone li").all().stream()
              .map(it -> it.getAttribute("data-step"))
              .toList();
      assertThat(gone)
          .containsExactlyElementsOf(old.stream().filter(it -> !now.contains(it)).toList());
      hand.says("#take-back", "Isolate the battery before you touch any wiring");
      // Nothing is changed before it is said to be.
      hand.press("keep-answer").isAt(STEPS);
      assertThat(hand.page().locator("input[value=none]")).isChecked();
      hand.choose("answer", "left").press("forward").press("change-answer");
      int left = hand.page().locator("#tick").count();
      assertThat(left).isEqualTo(1);
      hand.press("forward").says("#step-fault", "Tick it first");
      hand.page().reload();
      int taken = 0;
      while (hand.page().locator("#where").count() == 0) {
        hand.page().locator("#tick").check();
        hand.press("forward");
        taken++;
      }
      assertThat(taken).isGreaterThan(3);
      // The battery is isolated again before anything else is done to the wiring, and the bonnet
      // opened for that.
      hand.isAt("open/bonnet").goTo(after, "act/isolate").isAt("act/isolate");
      hand.finish(after).heading("Finished");
      JsonNode record = Hand.read(hand.save(folder));
      assertThat(WalkTest.numbers(record.get("steps").asString()))
          .isEqualTo(demo.walk(after).stream().map(Step::number).sorted().toList());
      assertThat(record.get("cases"))
          .extracting(JsonNode::asString)
          .containsExactlyElementsOf(demo.cases(after).stream().map(Case::id).toList());
    }
  }

  @Test
  void whereNothingCanBeKeptTheRecordCarriesTheWorkOn() throws IOException {
    Map<String, String> build = build("step-before", "none", "tow-prep", "yes");
    Path file = demo.file(folder);
    try (BrowserContext context = offline()) {
      context.addInitScript(
          "Storage.prototype.setItem = () => { throw new Error('refused'); };"
              + "Storage.prototype.getItem = () => { throw new Error('refused'); };");
      Hand hand = Hand.open(context, demo, file);
      hand.says(".warn", "does not let the guide keep anything");
      hand.goTo(build, "act/isolate").says(".warn", "does not let the guide keep anything");
      hand.press("list").press("to-summary");
      Path record = hand.save(folder);
      hand.page().close();
      Hand again = Hand.open(context, demo, file);
      again.page().locator("#open-record").setInputFiles(record);
      again.isAt("act/isolate").finish(build).heading("Finished");
      Path other = folder.resolve("other.json");
      Files.writeString(
          other, Files.readString(record).replaceFirst("\"guide\": \"....", "\"guide\": \"0000"));
      again.press("to-start").page().locator("#open-record").setInputFiles(other);
      again.says("#start-fault", "belongs to another guide");
    }
  }

  @Test
  void whatLooksOddStopsUntilItIsSettled() {
    Map<String, String> build = build("step-before", "none", "rear-feed", "yes", "tow-prep", "no");
    String land = "land/L1a/rear-block/F7";
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder)).goTo(build, land);
      hand.press("forward").isAt(land).says("#step-fault", "Tick");
      hand.press("odd").press("odd-keep").says("#step-fault", "Write down what you see");
      hand.type("odd-words", "A wire is in F7 already").press("odd-keep").isAt(land);
      hand.says("#odd-open", "Ask the shop").says("#odd-open", "Photograph");
      hand.page().locator("#tick").check();
      hand.press("forward").isAt(land).says("#step-fault", "Stop until it is settled");
      hand.page().reload();
      hand.isAt(land).says("#odd-open", "A wire is in F7 already");
      hand.page().locator("#settled").click();
      hand.finish(build).heading("Finished");
      JsonNode odd = Hand.read(hand.save(folder)).get("odd");
      assertThat(odd.size()).isEqualTo(1);
      assertThat(odd.get(0).get("step").asInt()).isEqualTo(hand.number(land));
      assertThat(odd.get(0).get("words").asString()).isEqualTo("A wire is in F7 already");
    }
  }

  @Test
  void theWrongPartNumberStops() {
    Map<String, String> dead = build("rear-feed", "no");
    String right = demo.number(dead).id();
    String wrong =
        demo.plan().design().partNumbers().stream()
            .map(it -> it.id())
            .filter(it -> !it.equals(right))
            .findFirst()
            .orElseThrow();
    try (BrowserContext context = offline()) {
      Hand hand = Hand.open(context, demo, demo.file(folder));
      hand.press("begin").says("#start-fault", "Choose the part number");
      hand.choose("part-number", wrong).press("begin").goTo(dead, FED);
      hand.type("answer", "0.2").press("forward");
      hand.says(".danger", "this vehicle needs another part number").says(".danger", right);
      hand.press("forward").says("#step-fault", "needs another part number");
      hand.press("number-change").choose("part-number", right).press("begin");
      assertThat(hand.page().locator("#number-change")).hasCount(0);
    }
  }

  @Test
  void aRecordTooLongForACodeSaysSo() throws IOException {
    Map<String, String> build = build("step-before", "left");
    try (BrowserContext context = offline()) {
      Path file = demo.file(folder);
      Hand hand = Hand.open(context, demo, file).goTo(build, "act/isolate");
      hand.press("list").press("to-summary");
      Path record = hand.save(folder);
      Path longer = folder.resolve("longer.json");
      Files.writeString(
          longer,
          Files.readString(record)
              .replace(
                  "\"odd\": []",
                  "\"odd\": [{\"step\": 1, \"words\": \"" + "rust ".repeat(700) + "\"}]"));
      hand.press("to-start").page().locator("#open-record").setInputFiles(longer);
      hand.isAt("act/isolate").press("list").press("to-summary");
      hand.says("#code-too-long", "too long for a code").says("#save", "Save the record");
    }
  }

  @Test
  void theCodeOnTheScreenIsTheRecord() throws Exception {
    for (String kit : DemoGuides.KITS) {
      DemoGuides other = DemoGuides.of(kit);
      for (Map<String, String> build : other.oneOfEachCase()) {
        try (BrowserContext context = offline()) {
          Hand hand = Hand.open(context, other, other.file(folder));
          hand.finish(build)
              .press("to-start")
              .type("vehicle-note", "Zoë's van, Ü-7")
              .press("begin");
          hand.heading("Finished");
          JsonNode saved = Hand.read(hand.save(folder));
          // The bar with the buttons would lie over the code.
          hand.page().setViewportSize(390, 3000);
          byte[] shot = hand.page().locator("#code svg").screenshot();
          String text =
              new QRCodeReader()
                  .decode(
                      new BinaryBitmap(
                          new HybridBinarizer(
                              new BufferedImageLuminanceSource(
                                  ImageIO.read(new ByteArrayInputStream(shot))))),
                      Map.of(DecodeHintType.TRY_HARDER, true))
                  .getText();
          assertThat(JsonMapper.builder().build().readTree(text)).isEqualTo(saved);
          assertThat(saved.get("vehicleNote").asString()).isEqualTo("Zoë's van, Ü-7");
        }
      }
    }
  }
}
