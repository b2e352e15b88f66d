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
  private static final String SOURCE = "invented for the story";

  @TempDir private Path folder;

  @Test
  void fromNothingToAReleasedKit() throws IOException {
    try (DemoStore store = DemoStore.emptyIn(folder);
        BrowserSession session = BrowserSession.start();
        Person anna = new Person(session, store.pages().address(), Manner.DESK, "Anna Brandt")) {
      anna.open("/").sees("This workspace is empty.");
      rules(anna);
      parts(anna);
      vehicle(anna);
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

  private static void parts(Person anna) {
    anna.open("/").follow("New parts list").type("Name", "Bench parts").save();
    anna.follow("Edit the list, or add parts of other sorts");
    wire(anna, "1.5 mm²", "2.4 mm", "0.35 EUR");
    wire(anna, "2.5 mm²", "3.0 mm", "0.60 EUR");
    priced(
        anna.follow("Add terminal")
            .type("Name", "blade terminal")
            .type("Id", "T-1")
            .type("Wire least", "0.5 mm²")
            .type("Wire most", "2.5 mm²")
            .type("Insulation least", "1.2 mm")
            .type("Insulation most", "3.4 mm")
            .type("Current limit", "25 A")
            .type("Strip", "5 mm")
            .type("Tool", "hand tool A")
            .type("Plating", "tin"),
        "0.10 EUR");
    priced(
        anna.follow("Add housing")
            .type("Name", "3-way lamp housing")
            .type("Id", "H-3")
            .type("Width", "30 mm")
            .type("Height", "14 mm")
            .type("Latch", "yes"),
        "1.20 EUR");
    anna.follow("3-way lamp housing (H-3)");
    for (int i = 1; i <= 3; i++) {
      anna.follow("Add cavity")
          .type("Number", Integer.toString(i))
          .type("X, to the right", (8 * i - 1) + " mm")
          .type("Y, downwards", "7 mm")
          .type("Width", "5 mm")
          .type("Height", "5 mm")
          .type("Terminals", "T-1")
          .save();
    }
    anna.follow("Bench parts").follow("Edit the list, or add parts of other sorts");
    priced(
        anna.follow("Add ring")
            .type("Name", "ring M6")
            .type("Thread", "M6")
            .type("Wire least", "0.5 mm²")
            .type("Wire most", "2.5 mm²")
            .type("Strip", "6 mm")
            .type("Tool", "hand tool A"),
        "0.12 EUR");
    priced(
        anna.follow("Add splice")
            .type("Name", "crimp splice")
            .type("Method", "crimp")
            .type("Area least", "0.5 mm²")
            .type("Area most", "6 mm²")
            .type("Strip", "8 mm")
            .type("Tool", "hand tool A"),
        "0.40 EUR");
    for (String rating : List.of("7.5 A", "10 A")) {
      priced(
          anna.follow("Add fuse")
              .type("Name", "blade fuse " + rating)
              .type("Form", "blade")
              .type("Rating", rating)
              .type("Colour", rating.equals("10 A") ? "red" : "brown"),
          "0.18 EUR");
    }
    priced(
        anna.follow("Add covering")
            .type("Name", "cloth tape")
            .type("Bundle most", "15 mm")
            .type("Rating", "125 °C"),
        "0.30 EUR");
    priced(anna.follow("Add sundry").type("Name", "end cap").type("Use", "end-cap"), "0.08 EUR");
  }

  private static void wire(Person anna, String size, String diameter, String price) {
    priced(
        anna.follow("Add wire")
            .type("Name", "wire " + size)
            .type("Size", size)
            .type("Diameter", diameter)
            .type("Insulation", "XLPE")
            .type("Rating", "125 °C")
            .type("Colours", "red\nbrown\nblack")
            .type("Spool", "100 m"),
        price);
  }

  private static void priced(Person anna, String price) {
    anna.type("Price", price).type("Source", SOURCE).save();
  }

  private static void vehicle(Person anna) {
    anna.open("/")
        .follow("New vehicle")
        .type("Name", "Harrow Scout")
        .type("Supply lowest", "11.8 V")
        .type("Splice policy", "crimp")
        .type("Battery place", "Name", "battery tray")
        .type("Battery place", "Ambient", "60 °C")
        .save();
    place(anna, "dash", "50 °C");
    place(anna, "tailgate", "40 °C");
    anna.follow("Add a run")
        .type("From", "battery-tray")
        .type("To", "dash")
        .type("Length", "1200 mm")
        .type("Tolerance", "30 mm")
        .type("Follows", "the loom through the bulkhead")
        .save();
    onTheMap(anna);
    trait(anna);
    block(anna);
    anna.follow("Add a connector")
        .type("Name", "lamp connector")
        .type("Id", "lamp")
        .type("Housing", "H-3")
        .type("Place", "tailgate");
    face(anna).save();
    anna.follow("Add a ground stud")
        .type("Name", "tailgate ground stud")
        .type("Id", "tail-ground")
        .type("Place", "tailgate")
        .type("Thread", "M6")
        .type("Lugs", "1")
        .type("Lugs most", "4")
        .type("Limit", "30 A")
        .type("Base load", "3 A")
        .type("Prepare", "Take the paint off under the ring, brush, 8 Nm.")
        .save();
    anna.follow("Add a circuit")
        .type("Name", "lamp ground")
        .type("Kind", "ground")
        .type("Feed", "31")
        .type("From", "ground tail-ground")
        .type("To", "cavity lamp 2")
        .type("Wire", "1.5 mm²")
        .type("Colour", "brown")
        .type("Present when", "tail = full")
        .save();
    paste(anna);
  }

  private static void place(Person anna, String name, String ambient) {
    anna.follow("Add a place").type("Name", name).type("Ambient", ambient).save();
  }

  private static void onTheMap(Person anna) {
    anna.follow("Work on the map: move, add and measure")
        .type("Length of the view", "4200 mm")
        .type("Width of the view", "1800 mm")
        .save("Save the plan view");
    anna.open("/vehicle/harrow-scout/map").unfold("Add a run");
    anna.page().locator("[id='newRun.from']").selectOption("dash");
    anna.page().locator("[id='newRun.to']").selectOption("tailgate");
    anna.page().locator("[id='newRun.length']").fill("2600");
    anna.page().locator("[id='newRun.tolerance']").fill("50");
    anna.page().locator("[id='newRun.follows']").fill("the left sill");
    anna.sign().page().locator("#map-submit").click();
    anna.sees("Saved as revision");
    anna.open("/vehicle/harrow-scout").sees("the left sill");
  }

  private static void trait(Person anna) {
    anna.follow("Add a trait")
        .type("Name", "tail wiring")
        .type("Id", "tail")
        .oneMore("value", "Values")
        .oneMore("value", "Values")
        .type("Id, value 1", "full")
        .type("Words, value 1", "with tail wiring")
        .type("Share, value 1", "60 %")
        .type("Id, value 2", "none")
        .type("Words, value 2", "without tail wiring")
        .type("Share, value 2", "40 %")
        .type("How to tell", "How", "look")
        .type("How to tell", "Place", "tailgate")
        .type("How to tell", "Effort", "30 s")
        .type("How to tell", "Question", "Is there a brown wire in cavity 2 of the lamp connector?")
        .oneMore("row", "What one finds")
        .oneMore("row", "What one finds")
        .type("What one finds", "For, row 1", "full")
        .type("What one finds", "Text, row 1", "yes, a brown wire")
        .type("What one finds", "For, row 2", "none")
        .type("What one finds", "Text, row 2", "no wire")
        .save()
        .sees("1 trait");
  }

  private static Person face(Person anna) {
    String recipe = "How it is opened, filled and locked";
    return anna.type("As the fitter sees it", "Side", "wire-side")
        .type("As the fitter sees it", "Latch", "up")
        .type(recipe, "Fill", "Push the terminal in until it clicks.")
        .type(recipe, "Filling can be undone", "easily");
  }

  private static void block(Person anna) {
    anna.follow("Add a fuse block")
        .type("Name", "dash fuse block")
        .type("Id", "dash-block")
        .type("Place", "dash");
    face(anna).save().follow("dash fuse block");
    anna.follow("Add a section")
        .type("Name", "section A")
        .type("Id", "A")
        .type("Feed", "30")
        .type("Fed when", "always")
        .type("Limit", "40 A")
        .type("Base load", "8 A")
        .type("Feed resistance", "15 mΩ")
        .save();
    for (String slot : List.of("F1", "F2")) {
      anna.follow("Add a slot")
          .type("Id", slot)
          .type("Section", "A")
          .type("Form", "blade")
          .type("Max rating", "20 A")
          .type("Metal when", "always")
          .type("Fed blade", "left")
          .type("Load blade", "right")
          .type("Terminal", "T-1")
          .save();
    }
    anna.open("/vehicle/harrow-scout");
  }

  private static void paste(Person anna) {
    anna.follow("lamp connector")
        .follow("Paste a pinout")
        .type(
            "Rows of the table",
            """
            Cavity\tColour\tSize\tFunction\tFeed\tFrom
            2\tbrown\t1.5 mm²\tlamp ground\t31\ttail-ground
            3\tblakc\t0.75 mm²\tlamp wake-up\t15\tbody-computer
            """)
        .press("Look at it")
        .sees("1 has a problem");
    Locator wrong = anna.page().locator("input[aria-invalid='true']");
    assertThat(wrong.inputValue()).isEqualTo("blakc");
    assertThat(wrong.getAttribute("aria-describedby")).isNotEmpty();
    wrong.fill("black");
    anna.press("Look again with the corrections").sees("Row 3: new circuit");
    anna.type("What the table is from", "service table of the lamp").save("Accept");
    anna.sees("Lamp wake-up: 0.75 mm², black");
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
