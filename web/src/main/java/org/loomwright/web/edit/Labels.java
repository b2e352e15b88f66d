package org.loomwright.web.edit;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;

/** What fields are called where their key alone says too little to who has not read the format. */
final class Labels {
  private static final Map<String, String> FIELDS =
      Map.ofEntries(
          Map.entry("tell", "How to tell"),
          Map.entry("expect", "What one finds"),
          Map.entry("near", "Comes near to"),
          Map.entry("passes", "Passes through"),
          Map.entry("at", "Place in the plan view"),
          Map.entry("along", "From the left edge"),
          Map.entry("down", "From the top edge"),
          Map.entry("alongLoom", "Along a factory loom"),
          Map.entry("recipe", "How it is opened, filled and locked"),
          Map.entry("fillUndo", "Filling can be undone"),
          Map.entry("view", "As the fitter sees it"),
          Map.entry("need", "What it needs"),
          Map.entry("behind", "Open before it"),
          Map.entry("openings", "To be opened"),
          Map.entry("x", "X, to the right"),
          Map.entry("y", "Y, downwards"),
          Map.entry("designedAgainst", "Designed against revisions"));

  /** Where a key says different things in different records. */
  private static final Map<String, String> FIELDS_OF =
      Map.ofEntries(
          Map.entry("Finding.name", "Short title"),
          Map.entry("Finding.at", "What it concerns"),
          Map.entry("Finding.seen", "What was seen"),
          Map.entry("Finding.expected", "What the records say"),
          Map.entry("Finding.how", "How it is known"),
          Map.entry("Finding.when", "Day"),
          Map.entry("Finding.by", "Who saw it"),
          Map.entry("Finding.vehicleNote", "Which vehicle it was"),
          Map.entry("Finding.job", "Job during which it was seen"),
          Map.entry("Finding.kit", "Kit it is about"),
          Map.entry("Finding.lead", "Lead of that kit"),
          Map.entry("Finding.step", "Step of its guide"),
          Map.entry("Finding.traits", "Traits as seen on it"),
          Map.entry("Finding.state", "What became of it"),
          Map.entry("Finding.takenInto", "Taken into revision"),
          Map.entry("TraitValue.counted", "Vehicles counted in the share"));

  private static final Map<String, String> ONE =
      Map.of(
          "TraitValue", "value",
          "Nearby", "hazard",
          "PlanSpot", "point",
          "PhotoPoint", "point",
          "FindingPhoto", "photo",
          "CurrentLimit", "point");

  private Labels() {}

  /** What a field of a type of records is called. */
  static String of(String type, FormField field) {
    String usual = FIELDS.getOrDefault(field.key(), FormMaker.capital(field.label()));
    return FIELDS_OF.getOrDefault(type + "." + field.key(), usual);
  }

  /** What one row is called. */
  static String one(FormShape.Fields shape) {
    return ONE.getOrDefault(shape.type(), shape.noun());
  }

  /** What a field is called by its name in the form, e.g. "near, no. 1, distance". */
  static String ofName(String name) {
    return Stream.of(name.split("\\."))
        .skip(1)
        .map(it -> it.matches("\\d+") ? "no. " + (Integer.parseInt(it) + 1) : FormField.words(it))
        .collect(Collectors.joining(", "));
  }
}
