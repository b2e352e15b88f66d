package org.loomwright.web.edit;

import java.util.Map;
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

  private static final Map<String, String> ONE =
      Map.of(
          "TraitValue", "value",
          "Nearby", "hazard",
          "PlanSpot", "point",
          "PhotoPoint", "point",
          "CurrentLimit", "point");

  private Labels() {}

  /** What a field is called. */
  static String of(FormField field) {
    return FIELDS.getOrDefault(field.key(), FormMaker.capital(field.label()));
  }

  /** What one row is called. */
  static String one(FormShape.Fields shape) {
    return ONE.getOrDefault(shape.type(), shape.noun());
  }
}
