package org.loomwright.web.browser.story;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.util.List;

/**
 * A vehicle that a person types: places and runs, one of them on the map, a trait, a fuse block, a
 * connector, a stud, and circuits, of which one is pasted with a mistake in it.
 */
final class TypedVehicle {
  private TypedVehicle() {}

  /** Types the vehicle, from the first page on. */
  static void by(Person anna) {
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
}
