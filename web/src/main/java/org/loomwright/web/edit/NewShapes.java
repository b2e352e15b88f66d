package org.loomwright.web.edit;

import java.util.List;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;

/** What the forms of new documents ask for. */
final class NewShapes {
  private NewShapes() {}

  /** The few fields without which a document of a kind can't be read. */
  static FormShape.Fields of(DocumentKind kind) {
    FormField name = field("name", true, "name for people", new FormShape.Text());
    FormField id = field("id", false, "name used in references", new FormShape.Text());
    FormShape money = new FormShape.Formed("Money", "a sum of money", "48 EUR");
    FormShape voltage = new FormShape.Formed("Voltage", "a voltage", "12 V");
    return switch (kind) {
      case VEHICLE ->
          fields(
              "NewVehicle",
              kind,
              name,
              id,
              field("supply", true, "nominal supply voltage", voltage),
              field(
                  "supplyLowest",
                  true,
                  "lowest voltage at the fuse blocks with the engine off, for drop checks",
                  new FormShape.Formed("Voltage", "a voltage", "11.8 V")),
              field(
                  "splicePolicy",
                  true,
                  "what the maker allows on its wires",
                  new FormShape.Words(List.of("none", "crimp", "crimp-or-solder"))),
              field(
                  "batteryPlace",
                  true,
                  "the place where the battery is isolated",
                  new FormShape.Fields(
                      "NewPlace",
                      "place",
                      List.of(
                          field("name", true, "such as battery tray", new FormShape.Text()),
                          field(
                              "ambient",
                              true,
                              "highest temperature of the air there",
                              new FormShape.Formed("Temperature", "a temperature", "60 °C"))))));
      case EQUIPMENT ->
          fields(
              "NewEquipment",
              kind,
              name,
              id,
              field(
                  "plug",
                  false,
                  "its first plug, if its housing is on a parts list already",
                  new FormShape.Fields(
                      "Plug",
                      "plug",
                      List.of(
                          field("name", true, "such as main plug", new FormShape.Text()),
                          field(
                              "matesWith",
                              true,
                              "housing part, on the harness side",
                              new FormShape.Text())))));
      case PARTS -> fields("NewParts", kind, name, id);
      case RULES ->
          fields(
              "NewRules",
              kind,
              name,
              id,
              field("hourlyRate", true, "price of an hour of work", money),
              field(
                  "numberCarryCost",
                  true,
                  "cost per kit sold of carrying one more part number",
                  new FormShape.Formed("Money", "a sum of money", "5 EUR")));
      case KIT ->
          fields(
              "Kit",
              kind,
              name,
              id,
              field("vehicle", true, "the vehicle it is for", new FormShape.Text()),
              field("rules", true, "rules it is planned by", new FormShape.Text()),
              field(
                  "parts",
                  true,
                  "parts lists, searched in this order",
                  new FormShape.Items(new FormShape.Text())),
              field(
                  "mounts",
                  true,
                  "where each plug goes: to a connector of the vehicle, or to a place",
                  new FormShape.Items(
                      new FormShape.Fields(
                          "Mount",
                          "mount",
                          List.of(
                              field("equipment", true, "", new FormShape.Text()),
                              field("plug", true, "", new FormShape.Text()),
                              field("connector", false, "", new FormShape.Text()),
                              field("place", false, "", new FormShape.Text()))))));
      case FINDING -> NewFinding.shape();
      case JOB -> throw ownForm();
      case BATCH -> NewBatch.shape();
    };
  }

  /** A new job begins with the release it fits, on a page of its own. */
  static IllegalStateException ownForm() {
    return new IllegalStateException("a new job has a form of its own");
  }

  private static FormShape.Fields fields(String type, DocumentKind kind, FormField... fields) {
    return new FormShape.Fields(type, kind.noun().replaceFirst("^an? ", ""), List.of(fields));
  }

  private static FormField field(String key, boolean required, String meaning, FormShape shape) {
    return FormField.of(key, required, meaning, shape);
  }
}
