package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.BrowserWindow;
import org.loomwright.web.browser.Manner;

/**
 * A person at the pages, who follows links, presses buttons and fills forms by what stands beside
 * them.
 */
final class Person implements AutoCloseable {
  private static final double PATIENCE_MS = Long.getLong("loomwright.patienceMs", 60_000);
  private static final double PLANNING_MS = 240_000;

  private final BrowserWindow window;
  private final Page page;
  private final String name;

  /**
   * @param address of the pages
   * @param name what the person signs with
   */
  Person(BrowserSession session, String address, Manner manner, String name) {
    this.window = session.window(address, manner);
    this.page = window.page();
    this.name = name;
    page.setDefaultTimeout(PATIENCE_MS);
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
  }

  BrowserWindow window() {
    return window;
  }

  Page page() {
    return page;
  }

  /** Opens an address, and waits for the plan where a kit is still being planned. */
  Person open(String path) {
    window.go(path);
    return this;
  }

  /** Follows the first link of the page that is called just so. */
  Person follow(String link) {
    Locator it = link(link);
    return leave(() -> it.click());
  }

  /** The first link of the page that is called just so. */
  Locator link(String link) {
    return page.locator("main")
        .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName(called(link, "")))
        .first();
  }

  /** Does what leads to another page, and waits until that is there. */
  Person leave(Runnable step) {
    String before = page.url();
    step.run();
    page.waitForURL(it -> !it.equals(before));
    return this;
  }

  /** The first button of the page that is called just so. */
  Locator button(String words) {
    return page.locator("main")
        .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(words).setExact(true))
        .first();
  }

  /** Presses a button that stays on the page or leads to it again. */
  Person press(String words) {
    button(words).click();
    return this;
  }

  /** Opens or closes what is folded. */
  Person unfold(String words) {
    page.locator("main summary").filter(has(words)).first().click();
    return this;
  }

  private static Locator.FilterOptions has(String words) {
    return new Locator.FilterOptions().setHasText(words);
  }

  /** Fills a field that is labelled just so; the first one where there are several. */
  Person type(String label, String text) {
    fill(labelled(page.locator("main"), label), text);
    return this;
  }

  /** Fills a field within a group of fields that is called just so. */
  Person type(String group, String label, String text) {
    fill(labelled(group(group), label), text);
    return this;
  }

  /** A field that is labelled just so. */
  Locator field(String label) {
    return labelled(page.locator("main"), label);
  }

  private Locator group(String words) {
    return page.locator("main")
        .getByRole(AriaRole.GROUP, new Locator.GetByRoleOptions().setName(words).setExact(true))
        .first();
  }

  private static Locator labelled(Locator within, String label) {
    return within.getByLabel(called(label, "( may stay empty)?")).first();
  }

  private static Pattern called(String words, String more) {
    String literal = words.replaceAll("[^\\w ,]", "\\\\$0");
    return Pattern.compile("^\\s*" + literal + more + "\\s*$", Pattern.CASE_INSENSITIVE);
  }

  private static void fill(Locator field, String text) {
    switch (String.valueOf(field.evaluate("it => it.type"))) {
      case "select-one" -> field.selectOption(text);
      case "checkbox" -> field.check();
      default -> field.fill(text);
    }
  }

  /** One more row of a list within the form. */
  Person oneMore(String noun, String list) {
    String button = "One more " + noun + " in " + list;
    int before = rows(list);
    press(button);
    assertThat(group(list).locator(".one-row")).hasCount(before + 1);
    return this;
  }

  private int rows(String list) {
    return group(list).locator(".one-row").count();
  }

  /** Saves the form, which has to be accepted. */
  Person save() {
    return save("Save");
  }

  /** Saves the form by a button, and has to be accepted. */
  Person save(String words) {
    sign();
    Locator submit =
        page.locator("main button").filter(new Locator.FilterOptions().setHasText(words)).last();
    submit.click();
    Locator answer = page.locator("main .notice, main .problems, main .error:not(:empty)").first();
    answer.waitFor();
    if (page.locator("main .notice").count() == 0) {
      throw new AssertionError(page.url() + " was refused: " + page.locator("main").innerText());
    }
    assertThat(page.locator("main .notice")).containsText("Saved as revision");
    return this;
  }

  /** Writes the name where the form asks for it and nobody has yet. */
  Person sign() {
    Locator who = page.locator("main #who");
    if (who.count() > 0 && who.inputValue().isEmpty()) {
      who.fill(name);
    }
    return this;
  }

  /** Forbids a way of a kit for a reason, and waits for what became of the kit. */
  Person forbid(Locator way, String reason) {
    Locator question = way.locator("details.ask").first();
    question.locator("summary").click();
    Locator who = question.getByLabel("Your name");
    if (who.count() > 0) {
      who.fill(name);
    }
    question.getByLabel("Why").fill(reason);
    leave(() -> question.getByText("Forbid this way").click());
    return seesThePlan().sees("What the change did").sees("Your reason: " + reason);
  }

  /** Waits until the page says something. */
  Person sees(String words) {
    assertThat(page.locator("main")).containsText(words);
    return this;
  }

  /** Waits until the kit of the page is planned. */
  Person seesThePlan() {
    page.locator(".standing-box, #stage > section > .error")
        .first()
        .waitFor(new Locator.WaitForOptions().setTimeout(PLANNING_MS));
    return this;
  }

  /** Closes the window; where pictures of the pages are wanted, with one of how it ended. */
  @Override
  public void close() {
    String shots = System.getProperty("loomwright.shots", "");
    if (!shots.isEmpty()) {
      String file = name.replaceAll("\\W", "-") + ".png";
      page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(shots, file)).setFullPage(true));
    }
    window.close();
  }
}
