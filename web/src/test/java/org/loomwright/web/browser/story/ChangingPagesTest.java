package org.loomwright.web.browser.story;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.Accessibility;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Layout;
import org.loomwright.web.browser.Manner;

/** Pages that change something, each in light and dark, on a desk and on a phone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ChangingPagesTest {
  private List<String> faults = new ArrayList<>();
  private DemoStore store;
  private BrowserSession session;

  @BeforeAll
  void open(@TempDir Path folder) {
    store = DemoStore.in(folder);
    session = BrowserSession.start();
    // Something for the histories to tell.
    store.edit(
        DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"11.7 V\"", "Ben");
    store.edit(DemoStore.VAN, "long wheelbase", "short wheelbase", "Anna Brandt");
  }

  @AfterAll
  void close() {
    session.close();
    store.close();
  }

  /** Pages by what they are for; those of one kind share a window. */
  enum Kind {
    BEGINNING("/", "/take-in", "/new/vehicle", "/new/equipment", "/new/parts", "/new/rules"),
    EDITING(
        "/new/kit",
        "/edit/parts/bench-stock",
        "/edit/parts/bench-stock?at=housings%2FOV-6S",
        "/edit/equipment/heater?at=plugs%2Fmain%2Fpins%2F1",
        "/edit/vehicle/packer?at=fuseBlocks%2Frear-block%2Fslots%2FF3",
        "/add/vehicle/packer?to=traits",
        "/add/kit/trailer?to=ownLeads",
        "/remove/vehicle/packer?at=runs%2Fpillar-to-quarter"),
    KEEPING(
        "/history/vehicle/packer",
        "/history/kit/trailer",
        "/compare/vehicle/packer?from=1&to=3",
        "/text/kit/trailer",
        "/pictures",
        "/vehicle/packer/map",
        "/vehicle/packer/map/view",
        "/vehicle/packer/face/tow-socket/paste"),
    SHOWING("/vehicle/packer", "/vehicle/packer/face/rear-block", "/equipment/heater"),
    KIT("/kit/trailer/ways", "/kit/trailer/pack", "/kit/trailer/release");

    private final List<String> paths;

    Kind(String... paths) {
      this.paths = List.of(paths);
    }
  }

  @ParameterizedTest
  @EnumSource
  void areAccessibleCalmAndFit(Kind kind) {
    try (Person anna = person(store)) {
      for (String path : kind.paths) {
        anna.page().setViewportSize(Manner.DESK.widthPx(), Manner.DESK.heightPx());
        anna.window().prefer(ColorScheme.LIGHT);
        look(anna.open(path), path);
      }
      faults.addAll(anna.window().troubles());
    }
    assertThat(faults).isEmpty();
  }

  /** Pages that come after something was sent; they are looked at as they stand. */
  @Test
  void refusalsAreAccessibleToo() {
    try (Person anna = person(store)) {
      anna.window().mayFail("/text/kit/trailer", "/take-in", "/edit/vehicle/packer", "/new/kit");
      look(anna.open("/new/kit").press("Save").sees("Not saved"), "a new kit refused");
      look(anna.open("/take-in").press("Take in").sees("write your name"), "taking in refused");
      anna.open("/text/kit/trailer").type("Text", "{\"kind\": ").sign();
      look(anna.press("Save").sees("Not saved"), "a text refused");
      anna.open("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter").type("Length", "12,5").sign();
      look(anna.press("Save").sees("Not saved"), "a run refused");
      faults.addAll(anna.window().troubles());
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void theFirstVisitIsAccessible(@TempDir Path folder) {
    try (DemoStore empty = DemoStore.emptyIn(folder);
        Person anna = person(empty)) {
      look(anna.open("/").sees("Welcome"), "welcome");
      look(anna.press("Begin with the demo").sees("New here?"), "start with the tour's offer");
      anna.leave(() -> anna.press("Take the tour"));
      look(anna.sees("Tour, 1 of"), "a stop of the tour");
      faults.addAll(anna.window().troubles());
    }
    assertThat(faults).isEmpty();
  }

  @BeforeEach
  void forget() {
    faults = new ArrayList<>();
  }

  private Person person(DemoStore of) {
    return new Person(session, of.pages().address(), Manner.DESK, "Anna Brandt");
  }

  private void look(Person person, String what) {
    Page page = person.page();
    note(what + ", desk", Accessibility.faults(page));
    try {
      Layout.check(page);
    } catch (AssertionError fault) {
      note(what + ", desk", List.of(String.valueOf(fault.getMessage())));
    }
    person.window().prefer(ColorScheme.DARK);
    page.setViewportSize(Manner.PHONE.widthPx(), Manner.PHONE.heightPx());
    note(what + ", phone, dark", Accessibility.faults(page));
    try {
      Layout.checkFit(page);
    } catch (AssertionError fault) {
      note(what + ", phone", List.of(String.valueOf(fault.getMessage())));
    }
    person.window().prefer(ColorScheme.LIGHT);
    page.setViewportSize(Manner.DESK.widthPx(), Manner.DESK.heightPx());
  }

  private void note(String where, List<String> found) {
    found.forEach(it -> faults.add(where + ": " + it));
  }
}
