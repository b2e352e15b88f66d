package org.loomwright.web.fit;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.papers.fit.FitCheckPage;
import org.loomwright.papers.page.OneFile;
import org.loomwright.planner.fit.FitAnswer;
import org.loomwright.planner.fit.Outcome;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.BrowserWindow;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The fit check as a customer gets it: a file in a browser on a phone without a network. */
class FitCheckInBrowserTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final FitFile COMFORT = FitFile.of("crew-comfort", 0);
  private static final FitFile TRAILER = FitFile.of("trailer", 3);

  // Vans with a dead section B can't have the heater then, so that the wiring is in question too.
  private static final FitFile WITHOUT_S5 =
      FitFile.of("crew-comfort", 1, FitCheckInBrowserTest::withoutTheSlotThatSavesTheRest);

  /** Says what the page says on its cards after each combination of answers, set by clicks. */
  private static final String CLICK_THROUGH =
      """
      all => {
        const data = JSON.parse(document.getElementById('data').textContent);
        const word = id => {
          const it = document.querySelector('#' + id + ' .verdict span');
          return it ? it.textContent : '';
        };
        return all.map(answers => {
          data.questions.forEach((question, n) => {
            const wanted = answers[question.id] || '';
            [...document.getElementsByName('question-' + (n + 1))]
              .filter(it => it.value === wanted).forEach(it => it.click());
          });
          return ['conflict', 'wiring', 'modules', 'coding', 'number'].map(word);
        });
      }
      """;

  private static final String ANSWER_ALL =
      "all => {\n"
          + OneFile.resource(FitCheckPage.class, "fit-answer.js")
          + """
        const data = JSON.parse(document.getElementById('data').textContent);
        return JSON.stringify(all.map(answers => fitAnswer(data, answers)));
      }
      """;

  private static final String SMALL_TARGETS =
      """
      () => [...document.querySelectorAll('label.option, button, summary, a')]
        .filter(it => it.checkVisibility())
        .map(it => [it.textContent, it.getBoundingClientRect()])
        .filter(it => it[1].height < 48 || it[1].width < 48)
        .map(it => it[0] + ' ' + it[1].width + ' x ' + it[1].height)
      """;

  private static final String WEAK_CONTRAST =
      """
      async () => (await axe.run(document, {runOnly: {type: 'rule',
        values: ['color-contrast-enhanced']}, rules: {'color-contrast-enhanced': {enabled: true}}}))
        .violations.flatMap(it => it.nodes.map(node => node.html + ' ' + node.failureSummary))
      """;

  private static BrowserSession session;

  @TempDir private Path folder;

  @BeforeAll
  static void start() {
    session = BrowserSession.start();
  }

  @AfterAll
  static void stop() {
    session.close();
  }

  @Test
  void saysWhatTheProgramSaysOnEveryCombinationOfAnswers() {
    for (FitFile file : List.of(COMFORT, TRAILER, WITHOUT_S5)) {
      try (BrowserWindow window = open(file.text(), Manner.PHONE)) {
        List<Map<String, String>> all = file.combinations();
        String said = String.valueOf(window.page().evaluate(ANSWER_ALL, all));
        JsonNode answers = JSON.readTree(said);
        List<?> shown = (List<?>) window.page().evaluate(CLICK_THROUGH, all);
        for (int i = 0; i < all.size(); i++) {
          FitAnswer expected = file.check().answer(all.get(i));
          compare(all.get(i), answers.get(i), expected);
          assertThat((List<?>) shown.get(i)).as("%s", all.get(i)).isEqualTo(words(expected));
        }
        assertCalm(window);
      }
    }
  }

  private static void compare(Map<String, String> answers, JsonNode said, FitAnswer expected) {
    ObjectNode wanted = (ObjectNode) JSON.valueToTree(expected);
    ObjectNode got = (ObjectNode) said.deepCopy();
    for (JsonNode line : wanted.path("work").path("lines")) {
      ObjectNode one = (ObjectNode) line;
      one.put(
          "kind",
          one.path("kind").stringValue().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }
    JsonNode minutes = ((ObjectNode) got.path("work")).remove("minutes");
    ((ObjectNode) wanted.path("work")).remove("minutes");
    assertThat(got).as("%s", answers).isEqualTo(wanted);
    if (expected.work().minutes().isEmpty()) {
      assertThat(minutes.isNull()).as("%s", answers).isTrue();
    } else {
      // To the last digit: both do the same sums in the same order.
      assertThat(minutes.doubleValue())
          .as("%s", answers)
          .isEqualTo(expected.work().minutes().get());
    }
  }

  private static List<String> words(FitAnswer answer) {
    if (!answer.conflict().isEmpty()) {
      return List.of("These answers do not go together", "", "", "", "");
    }
    FitAnswer.Number number = answer.number();
    String ids =
        number.possible().size() < 2
            ? number.possible().stream().findFirst().orElse("None")
            : String.join(", ", number.possible().subList(0, number.possible().size() - 1))
                + " or "
                + number.possible().get(number.possible().size() - 1);
    return List.of(
        "",
        word(answer.wiring(), "Fits", "Does not fit"),
        word(answer.modules(), "No further module needed", "Needed beside the kit"),
        word(answer.coding(), "No coding needed", "Coding needed"),
        ids + (number.none() && !number.possible().isEmpty() ? ", if it fits" : ""));
  }

  private static String word(FitAnswer.Part part, String fits, String not) {
    return switch (part.outcome()) {
      case FITS -> fits;
      case DOES_NOT -> not;
      case OPEN ->
          part.deciding().questions().isEmpty()
              ? "Can\u2019t be known before opening"
              : "Can\u2019t be known from these answers";
    };
  }

  @Test
  void canBeReadTouchedAndWalkedByEverybody() {
    for (FitFile file : List.of(COMFORT, WITHOUT_S5)) {
      for (Manner manner : List.of(Manner.PHONE, Manner.DESK.inDark())) {
        try (BrowserWindow window = open(file.text(), manner)) {
          Page page = window.page();
          for (Map<String, String> answers :
              List.of(
                  Map.<String, String>of(),
                  Map.of("body", "panel", "tow-prep", "no", "step-before", "none"),
                  Map.of("tow-prep", "yes", "step-before", "left"))) {
            page.evaluate(CLICK_THROUGH, List.of(answers));
            Accessibility.check(page);
            Layout.check(page);
            assertThat((List<?>) page.evaluate(SMALL_TARGETS)).isEmpty();
            assertThat((List<?>) page.evaluate(WEAK_CONTRAST)).isEmpty();
          }
          window.prefer(manner.dark() ? ColorScheme.LIGHT : ColorScheme.DARK);
          Accessibility.check(page);
          assertThat((List<?>) page.evaluate(WEAK_CONTRAST)).isEmpty();
          assertCalm(window);
        }
      }
    }
  }

  @Test
  void isAnsweredByKeyboardAndSent() throws IOException {
    try (BrowserWindow window = open(WITHOUT_S5.text(), Manner.PHONE)) {
      Page page = window.page();
      assertThat(page.locator(".verified").textContent()).startsWith("Verified on 1 vehicle:");
      page.keyboard().press("Tab");
      page.keyboard().press("Space");
      assertThat(page.locator("[role=status]").first().textContent())
          .startsWith("1 of " + WITHOUT_S5.check().questions().size() + " questions answered.");
      page.keyboard().press("ArrowDown");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Copy the text")).click();
      assertThat(page.getByText("Copied.").count()).isEqualTo(1);
      Download saved =
          page.waitForDownload(
              () ->
                  page.getByRole(
                          AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save as a file"))
                      .click());
      assertThat(saved.suggestedFilename()).isEqualTo("crew-comfort-fit-check.txt");
      String text = Files.readString(saved.path());
      assertThat(text).isEqualTo(page.locator("#message").inputValue());
      assertThat(text).contains("- body: with windows in the load space", "Wiring: ");
      JsonNode record = JSON.readTree(text.substring(text.lastIndexOf("\n{") + 1));
      assertThat(record.path("form").stringValue()).isEqualTo("loomwright fit check");
      assertThat(record.path("answers").toString()).isEqualTo("{\"body\":\"glazed\"}");
      assertThat(record.path("revision").stringValue()).isEqualTo("A");
      assertCalm(window);
    }
  }

  @Test
  void saysHowManyVehiclesItWasVerifiedOn() {
    Map<FitFile, String> words = new LinkedHashMap<>();
    words.put(COMFORT, "Verified on no vehicle yet");
    words.put(WITHOUT_S5, "Verified on 1 vehicle:");
    words.put(TRAILER, "Verified on 3 vehicles:");
    words.forEach(
        (file, start) -> {
          try (BrowserWindow window = open(file.text(), Manner.DESK)) {
            assertThat(window.page().locator(".verified").textContent()).startsWith(start);
          }
        });
  }

  @Test
  void aKitThatIsNotReadyPromisesNothingAnywhere() {
    try (BrowserWindow window = open(FitFile.held("crew-comfort").text(), Manner.PHONE)) {
      Page page = window.page();
      String nothing = "Nothing can be promised yet";
      assertThat(page.locator("#wiring .verdict").innerText()).contains(nothing);
      assertThat(page.locator("#number .verdict").innerText()).contains("Not decided yet");
      assertThat(page.locator(".status").textContent()).contains("Wiring: nothing can be promised");
      assertThat(page.locator("#message").inputValue())
          .contains("- Wiring: " + nothing, "- Part number: Not decided yet");
      assertCalm(window);
    }
  }

  @Test
  void whatShowsFromOutsideCanDecideTheWiring() {
    // The premise of the other tests: with one slot less, all three outcomes come up.
    assertThat(
            WITHOUT_S5.combinations().stream()
                .map(it -> WITHOUT_S5.check().answer(it))
                .filter(it -> it.conflict().isEmpty())
                .map(it -> it.wiring().outcome()))
        .contains(Outcome.FITS, Outcome.OPEN);
  }

  @Test
  void aDamagedFileSaysSo() {
    String whole = COMFORT.text();
    List<String> damaged = new ArrayList<>();
    for (int share = 1; share < 10; share++) {
      damaged.add(whole.substring(0, whole.length() * share / 10));
    }
    int data = whole.indexOf("{\"kit\"");
    int end = whole.lastIndexOf("</script>");
    long seed = 20261126;
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      int at = data + random.nextInt(end - data);
      char other = whole.charAt(at) == 'x' ? 'y' : 'x';
      damaged.add(whole.substring(0, at) + other + whole.substring(at + 1));
    }
    for (String text : damaged) {
      try (BrowserWindow window = open(text, Manner.PHONE)) {
        String seen = window.page().locator("body").innerText();
        boolean shown = seen.contains("Does it fit your vehicle?");
        assertThat(shown).as("seed %s, %s", seed, seen).isFalse();
        // Cut off before its first words nothing is left that could say anything.
        if (text.contains("Do not rely on what is left of it.")) {
          assertThat(seen).as("seed %s", seed).contains("This page is not whole");
        }
      }
    }
  }

  @Test
  void saysThatItNeedsScripts() {
    try (BrowserWindow window = open(COMFORT.text(), Manner.PHONE.withoutScript())) {
      assertThat(window.page().locator("body").innerText()).contains("scripts are turned off");
    }
  }

  private BrowserWindow open(String text, Manner manner) {
    BrowserWindow window = session.window("file:///", manner);
    window.page().context().setOffline(true);
    window.page().navigate(FitFile.write(folder, text));
    return window;
  }

  // The file itself is the only thing that is ever asked for.
  private static void assertCalm(BrowserWindow window) {
    assertThat(window.troubles())
        .filteredOn(it -> !it.equals("asked another machine: " + window.page().url()))
        .isEmpty();
  }

  private static String withoutTheSlotThatSavesTheRest(String van) {
    ObjectNode tree = (ObjectNode) JSON.readTree(van);
    for (JsonNode block : tree.path("fuseBlocks")) {
      var slots = (tools.jackson.databind.node.ArrayNode) block.path("slots");
      for (int i = slots.size() - 1; i >= 0; i--) {
        if (slots.get(i).path("id").stringValue().equals("S5")) {
          slots.remove(i);
        }
      }
    }
    return tree.toString();
  }
}
