package org.loomwright.web.browser.story;

import java.util.List;

/** A parts list that a person types: just enough for a lamp. */
final class TypedParts {
  private static final String SOURCE = "invented for the story";

  private TypedParts() {}

  /** Types the list, from the first page on. */
  static void by(Person anna) {
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
}
