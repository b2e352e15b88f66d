package org.loomwright.web.browser.story;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** Two persons at the same vehicle: nothing that either of them typed is lost. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TwoPeopleTest {
  private static final String EDIT = "/edit/vehicle/packer";
  private static final String RUN = EDIT + "?at=runs%2Fpillar-to-quarter";
  private static final String HISTORY = "/history/vehicle/packer";

  private DemoStore store;
  private BrowserSession session;
  private Person anna;
  private Person ben;

  @BeforeAll
  void open(@TempDir Path folder) {
    store = DemoStore.in(folder);
    session = BrowserSession.start();
    anna = new Person(session, store.pages().address(), Manner.DESK, "Anna Brandt");
    ben = new Person(session, store.pages().address(), Manner.PHONE, "Ben Ortega");
  }

  @AfterAll
  void close() {
    anna.close();
    ben.close();
    session.close();
    store.close();
  }

  private void assertCalm() {
    anna.window().assertCalm();
    ben.window().assertCalm();
  }

  @Test
  @Order(1)
  void changesOfDifferentFieldsAreBothKept() {
    anna.open(RUN).type("Length", "1950 mm");
    ben.open(RUN).type("Tolerance", "80 mm").save();
    anna.save().sees("Ben Ortega had saved in the meantime; both changes are in it.");
    assertThat(store.text(DemoStore.VAN)).contains("\"1950 mm\"", "\"80 mm\"");
    anna.open(HISTORY).sees("Anna Brandt").sees("Ben Ortega").sees("merged with what others");
    assertCalm();
  }

  @Test
  @Order(2)
  void changesOfTheSameFieldAreShownSideBySide() {
    anna.window().mayFail(EDIT);
    anna.open(RUN).type("Length", "1960 mm");
    ben.open(RUN).type("Length", "1970 mm").save();
    anna.sign().press("Save").sees("Two changes of the same part");
    Locator texts = anna.page().locator(".two-texts");
    assertThat(texts).containsText("On file, by Ben Ortega");
    assertThat(texts).containsText("1970 mm");
    assertThat(texts).containsText("1960 mm");
    Accessibility.check(anna.page());
    Layout.check(anna.page());
    assertThat(store.text(DemoStore.VAN)).contains("1970 mm").doesNotContain("1960 mm");
    anna.save("Save mine over it");
    assertThat(store.text(DemoStore.VAN)).contains("1960 mm").doesNotContain("1970 mm");
    // What gave way is in the history still.
    anna.open(HISTORY).sees("1970 mm").sees("1960 mm");
    assertCalm();
  }

  @Test
  @Order(3)
  void whoeverKeepsWhatIsOnFileLosesNothingElse() {
    ben.window().mayFail(EDIT);
    long before = store.number(DemoStore.VAN);
    ben.open(RUN).type("Follows", "the roof rail");
    anna.open(RUN).type("Follows", "the sill").save();
    ben.press("Save").sees("Two changes of the same part");
    Accessibility.check(ben.page());
    Layout.checkFit(ben.page());
    ben.follow("Keep what is on file");
    assertThat(store.text(DemoStore.VAN)).contains("the sill").doesNotContain("the roof rail");
    assertThat(store.number(DemoStore.VAN)).isEqualTo(before + 1);
    assertCalm();
  }

  @Test
  @Order(4)
  void whatOneRemovesTheOtherIsAskedAbout() {
    anna.open("/add/vehicle/packer?to=places")
        .type("Name", "spare shelf")
        .type("Ambient", "40 °C")
        .save();
    String shelf = "?at=places%2Fspare-shelf";
    ben.open(EDIT + shelf).type("Ambient", "45 °C");
    anna.open("/remove/vehicle/packer" + shelf).sees("spare shelf").save("Take out");
    ben.press("Save").sees("Two changes of the same part").sees("(taken out)").sees("45 °C");
    assertThat(store.text(DemoStore.VAN)).doesNotContain("spare-shelf");
    ben.save("Save mine over it");
    assertThat(store.text(DemoStore.VAN)).contains("spare-shelf", "45 °C");
    assertCalm();
  }
}
