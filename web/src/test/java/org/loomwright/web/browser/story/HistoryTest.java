package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Signature;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** What became of a document, told in words, and the ways back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HistoryTest {
  private static final DocumentKey STEPS = new DocumentKey("equipment", "side-steps");
  private static final DocumentKey TRAILER = new DocumentKey("kit", "trailer");

  private DemoStore store;
  private BrowserSession session;
  private Person anna;

  @BeforeAll
  void open(@TempDir Path folder) {
    store = DemoStore.in(folder);
    session = BrowserSession.start();
    anna = new Person(session, store.pages().address(), Manner.DESK, "Anna Brandt");
  }

  @AfterAll
  void close() {
    anna.close();
    session.close();
    store.close();
  }

  private void looksGood() {
    Accessibility.check(anna.page());
    Layout.check(anna.page());
  }

  @Test
  void changesAreToldInWordsComparedAndTakenBack() {
    String first = store.text(STEPS);
    anna.open("/equipment/side-steps").follow("Edit the equipment");
    anna.type("Name", "Powered steps, both sides")
        .type("What the change is for (if it helps the next reader)", "clearer")
        .save();
    String second = store.text(STEPS);
    anna.follow("Edit the equipment").type("Name", "Powered side steps").save();

    anna.follow("History").sees("Revision 3").sees("clearer").sees("Powered steps, both sides");
    looksGood();
    anna.type("Compare revision", "1").type("with revision", "2");
    anna.leave(() -> anna.press("Compare"));
    anna.sees("Revision 1 beside revision 2").sees("Powered steps, both sides");
    looksGood();

    // Back to the second revision, as a revision of its own.
    anna.follow("History of equipment 'side-steps'");
    anna.leave(() -> anna.press("Go back to revision 2"));
    anna.sees("Saved as revision 4.").sees("back to revision 2");
    assertThat(store.text(STEPS)).isEqualTo(second);
    assertThat(store.number(STEPS)).isEqualTo(4);

    // Undo takes back the going back, and going back to the first ends where it began.
    anna.leave(() -> anna.press("Undo"));
    assertThat(store.text(STEPS)).contains("Powered side steps");
    anna.leave(() -> anna.press("Go back to revision 1"));
    assertThat(store.text(STEPS)).isEqualTo(first);
    anna.window().assertCalm();
  }

  @Test
  void aDocumentIsTakenOutOfUseAndBroughtBack() {
    // A kit that a job still needs stays in use.
    store
        .store()
        .documents()
        .retire(new DocumentKey("job", "van-0288-trailer"), 1, new Signature("Ben", "given up"));
    anna.open("/history/kit/trailer").type("Why", "not sold any more");
    anna.sign();
    if (anna.field("Your name").count() > 0) {
      anna.type("Your name", "Anna Brandt");
    }
    anna.leave(() -> anna.press("Take it out of use"));
    anna.sees("no longer used").sees("not sold any more");
    looksGood();
    anna.open("/").sees("No longer used:");
    assertThat(anna.page().locator(".card h3 a")).not().containsText(new String[] {"trailer"});
    looksGood();
    anna.follow("kit 'trailer'");
    anna.leave(() -> anna.press("Go back to revision 1"));
    anna.sees("what is used now");
    assertThat(store.store().documents().newest(TRAILER)).isPresent();
    anna.open("/kit/trailer").seesThePlan();
    anna.window().assertCalm();
  }

  @Test
  void whatOthersNeedStaysInUse() {
    anna.window().mayFail("/history/vehicle/packer/retire");
    anna.open("/history/vehicle/packer");
    if (anna.field("Your name").count() > 0) {
      anna.type("Your name", "Anna Brandt");
    }
    anna.press("Take it out of use").sees("Nothing was changed").sees("packer");
    looksGood();
    assertThat(store.number(DemoStore.VAN)).isEqualTo(1);
    anna.window().assertCalm();
  }
}
