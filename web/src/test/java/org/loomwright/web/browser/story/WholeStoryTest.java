package org.loomwright.web.browser.story;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.DemoStore;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;

/** From an empty workspace to a released kit and its pack, typed into the pages' own forms. */
class WholeStoryTest {
  @TempDir private Path folder;

  @Test
  void fromNothingToAReleasedKit() throws IOException {
    try (DemoStore store = DemoStore.emptyIn(folder);
        BrowserSession session = BrowserSession.start();
        Person anna = new Person(session, store.pages().address(), Manner.DESK, "Anna Brandt")) {
      anna.open("/").sees("This workspace is empty.");
      rules(anna);
      TypedParts.by(anna);
      TypedVehicle.by(anna);
      equipment(anna);
      kit(anna);
      aTraceIsOpened(anna);
      aWayIsForbiddenAndAllowedAgain(anna);
      release(anna, store);
      anna.window().assertCalm();
    }
  }

  private static void rules(Person anna) {
    anna.follow("Rules of the shop")
        .type("Name", "Bench rules")
        .type("Hourly rate", "60 EUR")
        .type("Number carry cost", "5 EUR")
        .save()
        .sees("smallest size in a vehicle maker's body-builder");
  }

  private static void equipment(Person anna) {
    String need = "What it needs";
    anna.open("/")
        .follow("New equipment")
        .type("Name", "Work lamp")
        .unfold("Plug")
        .type("Plug", "Name", "lamp plug")
        .type("Plug", "Mates with", "H-3")
        .save();
    anna.follow("Add a pin").type("Cavity", "1").type("Name", "supply").unfold(need);
    anna.type(need, "Kind", "supply")
        .type(need, "Feed", "30")
        .type(need, "Continuous", "4 A")
        .type(need, "Minimum voltage", "9 V")
        .type(need, "Own fuse", "yes")
        .type(need, "Fuse at most", "10 A")
        .save();
    anna.follow("Add a pin").type("Cavity", "2").type("Name", "ground").unfold(need);
    anna.type(need, "Kind", "ground")
        .type(need, "Feed", "31")
        .type(need, "Continuous", "4 A")
        .save();
    anna.follow("Add a pin").type("Cavity", "3").type("Name", "wake-up").unfold(need);
    anna.type(need, "Kind", "supply")
        .type(need, "Feed", "15")
        .type(need, "Continuous", "0.2 A")
        .type(need, "Minimum voltage", "9 V")
        .save();
  }

  private static void kit(Person anna) {
    anna.open("/")
        .follow("New kit")
        .type("Name", "Work lamp for the Scout")
        .type("Id", "lamp-kit")
        .type("Equipment, mount 1", "work-lamp")
        .type("Plug, mount 1", "lamp-plug")
        .type("Connector, mount 1", "lamp")
        .save()
        .seesThePlan()
        .sees("can be released");
    for (String stage : List.of("Ways", "Leads", "Sums", "Guide", "Proof", "Pack", "Gap")) {
      anna.follow(stage).seesThePlan();
    }
  }

  private static void aTraceIsOpened(Person anna) {
    anna.follow("Sums").seesThePlan();
    Locator line = anna.page().locator("#checks ~ .checks details.check-box").first();
    line.locator("summary").click();
    line.locator(".how table, .how ol, .how dl").first().waitFor();
  }

  private static void aWayIsForbiddenAndAllowedAgain(Person anna) {
    anna.follow("Ways").seesThePlan();
    Locator used = anna.page().locator("li.way.used").filter(has("slot F1")).first();
    anna.forbid(used, "F1 is wanted for a radio.");
    anna.leave(() -> anna.press("Undo"));
    anna.seesThePlan();
    assertThat(anna.page().locator("li.way.wished").count()).isZero();
  }

  private static Locator.FilterOptions has(String words) {
    return new Locator.FilterOptions().setHasText(words);
  }

  private void release(Person anna, DemoStore store) throws IOException {
    anna.follow("Pack").seesThePlan();
    Download draft =
        anna.page().waitForDownload(() -> anna.link("Download the pack (zip)").click());
    assertThat(draft.suggestedFilename()).endsWith(".zip");
    anna.follow("Release this kit").sees("Not released yet.").sign();
    anna.page().locator("#why").fill("First order of the Scout");
    anna.press("Release").sees("Release 1").sees("by Anna Brandt: First order of the Scout.");
    String link = "a[download]";
    Download pack = anna.page().waitForDownload(() -> anna.page().locator(link).first().click());
    Path file = folder.resolve("pack.zip");
    pack.saveAs(file);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Map<String, Integer> heads =
          Map.of("pack.pdf", (int) '%', "parts.xlsx", (int) 'P', "result.json", (int) '{');
      for (Map.Entry<String, Integer> it : heads.entrySet()) {
        ZipEntry entry =
            zip.stream()
                .filter(each -> each.getName().endsWith(it.getKey()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + it.getKey()));
        try (var in = zip.getInputStream(entry)) {
          assertThat(in.read()).as(entry.getName()).isEqualTo(it.getValue());
        }
      }
    }
    assertThat(store.store().releases().of("lamp-kit")).hasSize(1);
    assertThat(store.number(new DocumentKey("kit", "lamp-kit"))).isEqualTo(3);
    // What is changed afterwards leaves the release as it is.
    anna.open("/vehicle/harrow-scout").follow("Edit the vehicle").type("Name", "Harrow Scout II");
    anna.save()
        .open("/kit/lamp-kit/release")
        .sees("Release 1")
        .sees("vehicle 'harrow-scout' revision 15");
  }
}
