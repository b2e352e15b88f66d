package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;

/** Work done by keyboard alone; the focus is seen wherever it stops. */
class KeyboardOnlyTest {
  private static final DocumentKey KIT = new DocumentKey("kit", "crew-comfort");
  private static final int MOST_STOPS = 400;

  /** What has the focus is called, and whether a ring shows it. */
  private static final String STOP =
      """
      () => {
        const it = document.activeElement;
        // Behind the last stop the browser's own come, then the page begins anew.
        if (it === document.body) return ['', ''];
        const label = it.labels && it.labels[0];
        const name = it.getAttribute('aria-label') || (label || it).textContent || '';
        const style = getComputedStyle(it);
        const drawn = style.outlineStyle === 'auto'
          || (style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2);
        const box = it.getBoundingClientRect();
        const inSight = box.bottom > 0 && box.top < innerHeight;
        const seen = it.matches(':focus-visible') && drawn && inSight;
        return [name.trim().replace(/\\s+/g, ' '), seen ? '' : 'not seen'];
      }
      """;

  private final List<String> unseen = new ArrayList<>();

  @TempDir private Path folder;

  @Test
  void aKitAndARunAreChangedWithoutAMouse() {
    try (DemoStore store = DemoStore.in(folder);
        BrowserSession session = BrowserSession.start();
        Person anna = new Person(session, store.pages().address(), Manner.DESK, "Anna Brandt")) {
      anna.window().mayFail("/edit/vehicle/packer");
      Page page = anna.open("/").page();
      page.keyboard().press("Tab");
      assertThat(page.locator(":focus")).hasText("Skip to the content");
      page.keyboard().press("Enter");
      go(anna, "Rear-cabin heater and powered side steps", "Enter");
      anna.seesThePlan();
      go(anna, "Ways", "Enter");
      anna.seesThePlan();
      forbid(anna, store);
      go(anna, "Undo", "Space");
      anna.seesThePlan();
      assertThat(store.text(KIT)).doesNotContain("wishes");
      go(anna, "Ostveld Packer", "Enter");
      changeARun(anna, store);
      compare(anna);
      assertThat(unseen).as("stops without a ring that is seen").isEmpty();
      anna.window().assertCalm();
    }
  }

  private void forbid(Person anna, DemoStore store) {
    Page page = anna.page();
    tabTo(page, "Forbid: Factory slot F7");
    page.keyboard().press("Space");
    tabTo(page, "Your name");
    page.keyboard().type("Anna Brandt");
    tabTo(page, "Why");
    page.keyboard().type("no room");
    go(anna, "Forbid this way", "Enter");
    anna.seesThePlan().sees("What the change did");
    assertThat(store.text(KIT)).contains("no room");
  }

  private void changeARun(Person anna, DemoStore store) {
    Page page = anna.page();
    go(anna, "Edit the run from the foot of the left B-pillar to", "Enter");
    tabTo(page, "Length");
    page.keyboard().press("Control+A");
    page.keyboard().type("1,9 m");
    page.keyboard().press("Enter");
    page.locator(".problems").waitFor();
    assertThat(page.locator(".problems")).isFocused();
    page.keyboard().press("Tab");
    assertThat(page.locator(":focus")).hasAttribute("href", "#f.length");
    page.keyboard().press("Enter");
    page.waitForURL(it -> it.endsWith("#f.length"));
    // Some browsers go to the field at once, others stop just before it.
    if (!"f.length".equals(page.evaluate("document.activeElement.id"))) {
      page.keyboard().press("Tab");
    }
    assertThat(page.locator("[id='f.length']")).isFocused();
    assertThat(page.locator(":focus")).hasValue("1,9 m");
    page.keyboard().press("Control+A");
    page.keyboard().type("1.95 m");
    anna.leave(() -> page.keyboard().press("Enter"));
    anna.sees("Saved as revision 2.");
    assertThat(store.text(DemoStore.VAN)).contains("\"1.95 m\"");
    go(anna, "Undo", "Enter");
    anna.sees("Saved as revision 3.");
    assertThat(store.text(DemoStore.VAN)).doesNotContain("\"1.95 m\"");
  }

  private void compare(Person anna) {
    Page page = anna.page();
    go(anna, "History", "Enter");
    tabTo(page, "Compare revision");
    page.keyboard().press("ArrowDown");
    assertThat(page.locator("#from")).hasValue("1");
    go(anna, "Compare", "Enter");
    anna.sees("Revision 1 beside revision 3").sees("Nothing differs.");
  }

  /** Goes on by Tab to what is called so, and leaves the page by it. */
  private void go(Person anna, String name, String key) {
    tabTo(anna.page(), name);
    anna.leave(() -> anna.page().keyboard().press(key));
  }

  /** Presses Tab until what has the focus is called so, or begins so where it says more. */
  private void tabTo(Page page, String name) {
    List<String> passed = new ArrayList<>();
    for (int i = 0; i < MOST_STOPS; i++) {
      page.keyboard().press("Tab");
      List<?> stop = (List<?>) page.evaluate(STOP);
      String at = String.valueOf(stop.get(0));
      if (!String.valueOf(stop.get(1)).isEmpty()) {
        unseen.add(page.url() + ": " + at);
      }
      passed.add(at);
      boolean begins = name.length() > 12 && at.startsWith(name);
      if (at.equals(name) || begins) {
        return;
      }
    }
    throw new AssertionError("no stop called " + name + " among " + passed);
  }
}
