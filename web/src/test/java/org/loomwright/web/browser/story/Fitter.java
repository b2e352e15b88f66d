package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Works a job on the phone, step by step, on a vehicle that answers as it is. */
final class Fitter {
  private static final Pattern LEAST = Pattern.compile("([\\d.]+) \\S+ or more");
  private static final Pattern MOST = Pattern.compile("([\\d.]+) \\S+ or less");

  private final Person person;
  private final Page page;
  private final Map<String, String> answers;
  private final Map<String, String> values = new LinkedHashMap<>();
  private String reason = "";

  /**
   * @param answers part of a question's title to the answer to press, or the number to type
   */
  Fitter(Person person, Map<String, String> answers) {
    this.person = person;
    this.page = person.page();
    this.answers = answers;
  }

  /** Types this where the guide asks for a value, and gives the reason why it may lie outside. */
  Fitter measures(String name, String value, String why) {
    values.put(name, value);
    reason = why;
    return this;
  }

  /** Ticks what has to be read and seen to before the question that is shown. */
  void first() {
    for (Locator it : page.locator(".job-first input[type=checkbox]").all()) {
      it.check();
    }
  }

  /** Answers the question that is shown. */
  void answer() {
    String title = page.locator("#question").innerText();
    String answer =
        answers.entrySet().stream()
            .filter(it -> title.contains(it.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElseThrow(() -> new AssertionError("no answer to " + title));
    first();
    if (page.locator("#number").count() > 0) {
      page.locator("#number").fill(answer);
      person.leave(() -> page.getByText("Take this value").click());
    } else {
      person.leave(
          () ->
              page.locator(".job-answer")
                  .filter(new Locator.FilterOptions().setHasText(answer))
                  .first()
                  .click());
    }
  }

  /** Does the step that is shown. */
  void step() {
    Locator fields = page.locator(".job-take input:not([type=hidden]):not([type=radio])");
    Locator yes = page.locator(".job-take input[value=yes]");
    if (fields.count() + yes.count() > 0 && page.locator(".job-done").count() == 0) {
      for (Locator it : fields.all()) {
        it.fill(value(it));
      }
      for (Locator it : yes.all()) {
        it.check();
      }
      String before = page.locator("input[name=basedOn]").first().inputValue();
      person.button("Write the values down").click();
      assertThat(page.locator("input[name=basedOn]").first()).not().hasValue(before);
      if (page.locator(".job-done").count() == 0) {
        person.unfold("A value has to stay outside");
        page.locator("#reason").fill(reason);
        person.press("Give the reason").sees("Settled: " + reason);
      }
    }
    String now = page.locator("#step").innerText() + page.locator(".job-where").innerText();
    page.locator(".job-done").click();
    page.waitForFunction(
        // A page that is still coming has no step either.
        "was => document.readyState === 'complete' && (document.querySelector('#step') === null"
            + " || document.querySelector('#step').innerText +"
            + " document.querySelector('.job-where').innerText !== was)",
        now);
  }

  private String value(Locator field) {
    String name = page.locator("label[for='" + field.getAttribute("id") + "']").innerText();
    for (Map.Entry<String, String> it : values.entrySet()) {
      if (name.contains(it.getKey())) {
        return it.getValue();
      }
    }
    String band =
        String.valueOf(field.evaluate("it => it.closest('.field').nextElementSibling.innerText"));
    Matcher least = LEAST.matcher(band);
    Matcher most = MOST.matcher(band);
    if (least.find()) {
      return least.group(1);
    }
    return most.find() ? most.group(1) : name.contains("fault") ? "none" : "20";
  }

  /** Goes on from step to step until none is left; returns how many were done. */
  int toTheEnd() {
    int done = 0;
    while (page.locator("#step, #question").count() > 0) {
      if (page.locator("#question").count() > 0) {
        answer();
      } else {
        step();
      }
      if (++done > 300) {
        throw new AssertionError("the guide does not end: " + page.url());
      }
    }
    return done;
  }
}
