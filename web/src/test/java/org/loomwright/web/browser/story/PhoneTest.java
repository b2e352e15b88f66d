package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** Work done on a phone, by touch. */
class PhoneTest {
  private static final DocumentKey KIT = new DocumentKey("kit", "crew-comfort");

  @TempDir private Path folder;

  @Test
  void aKitAndARunAreChangedByTouch() {
    try (DemoStore store = DemoStore.in(folder);
        BrowserSession session = BrowserSession.start();
        Person ben = new Person(session, store.pages().address(), Manner.PHONE, "Ben Ortega")) {
      ben.window().mayFail("/edit/vehicle/packer");
      Page page = ben.open("/").page();
      Layout.checkFit(page);
      tap(ben, page.locator(".card h3 a").filter(has("Rear-cabin heater")));
      ben.seesThePlan();
      Layout.checkFit(page);
      tap(ben, ben.link("Ways"));
      ben.seesThePlan();
      Layout.checkFit(page);
      forbid(ben, store);
      tap(ben, ben.button("Undo"));
      ben.seesThePlan();
      assertThat(store.text(KIT)).doesNotContain("wishes");
      tap(ben, page.locator(".crumb a").filter(has("Ostveld Packer")));
      Layout.checkFit(page);
      changeARun(ben, store);
      ben.window().assertCalm();
    }
  }

  private static void forbid(Person ben, DemoStore store) {
    Page page = ben.page();
    Locator way = page.locator("li.way.used").first();
    Locator question = way.locator("details.ask").first();
    question.locator("summary").tap();
    question.getByLabel("Your name").fill("Ben Ortega");
    question.getByLabel("Why").fill("no room");
    Layout.checkFit(page);
    tap(ben, question.getByText("Forbid this way"));
    ben.seesThePlan().sees("What the change did");
    Layout.checkFit(page);
    assertThat(store.text(KIT)).contains("no room");
  }

  private static void changeARun(Person ben, DemoStore store) {
    Page page = ben.page();
    tap(
        ben,
        page.locator("main a.edit-link").filter(has("the run from the foot of the left B-pillar")));
    Layout.checkFit(page);
    Locator length = page.locator("[id='f.length']");
    length.tap();
    length.fill("1,9 m");
    ben.button("Save").tap();
    page.locator(".problems").waitFor();
    Layout.checkFit(page);
    length.fill("1.95 m");
    tap(ben, ben.button("Save"));
    ben.sees("Saved as revision 2.");
    Layout.checkFit(page);
    assertThat(store.text(DemoStore.VAN)).contains("\"1.95 m\"");
    tap(ben, ben.button("Undo"));
    ben.sees("Saved as revision 3.");
    tap(ben, ben.link("History"));
    Layout.checkFit(page);
    assertThat(page.locator(".history > li")).hasCount(3);
  }

  private static Locator.FilterOptions has(String words) {
    return new Locator.FilterOptions().setHasText(words);
  }

  /** Touches what leads to another page. */
  private static void tap(Person person, Locator it) {
    person.leave(() -> it.first().tap());
  }
}
