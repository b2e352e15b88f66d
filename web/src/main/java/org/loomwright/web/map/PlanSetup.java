package org.loomwright.web.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Size and picture of a plan view, as typed.
 *
 * @param along length of the view
 * @param down width of the view
 * @param withPicture whether what is marked moves with the picture when the size changes
 */
public record PlanSetup(String along, String down, boolean withPicture) {

  /** What is on file. */
  public static PlanSetup of(Vehicle vehicle) {
    return new PlanSetup(
        vehicle.planView().map(it -> it.along().text()).orElse(""),
        vehicle.planView().map(it -> it.down().text()).orElse(""),
        false);
  }

  /** What becomes of the picture. */
  public sealed interface Picture {
    /** It stays as it is, or none. */
    record Same() implements Picture {}

    /** None from now on. */
    record None() implements Picture {}

    /** Another one, by the name of its file. */
    record Named(String file) implements Picture {}
  }

  /** What is wrong with the size, at its field. */
  public List<Problem> problems() {
    SpotReader reader = new SpotReader();
    size(reader, "along", along, "how long the view is, from its left edge to its right edge");
    size(reader, "down", down, "how wide the view is, from its top edge to its bottom edge");
    return reader.problems();
  }

  private static Optional<Length> size(SpotReader reader, String field, String typed, String what) {
    Optional<Length> length = reader.length(field, typed, what);
    if (length.isPresent() && length.get().mm() <= 0) {
      reader.wrong(field, typed, "the view needs a size above zero");
    }
    return length;
  }

  /** The text with this view in it. */
  public MapEdit apply(String text, Vehicle vehicle, Picture picture) {
    List<Problem> problems = problems();
    if (!problems.isEmpty()) {
      return new MapEdit(text, List.of(), problems);
    }
    if (!(JsonText.parse(text) instanceof JsonText.Tree parsed)
        || !(parsed.node().deepCopy() instanceof ObjectNode tree)) {
      throw new IllegalArgumentException("the text of " + vehicle.id() + " is no JSON object");
    }
    SpotReader reader = new SpotReader();
    Length newAlong = size(reader, "along", along, "").orElseThrow();
    Length newDown = size(reader, "down", down, "").orElseThrow();
    ObjectNode view = tree.get("planView") instanceof ObjectNode it ? it : tree.objectNode();
    List<String> changes = new ArrayList<>();
    if (picture instanceof Picture.Named named) {
      view.putObject("picture").put("file", named.file());
      changes.add("picture of the plan view replaced");
    } else if (picture instanceof Picture.None && view.remove("picture") != null) {
      changes.add("picture of the plan view taken out");
    }
    Optional<PlanView> before = vehicle.planView();
    boolean otherAlong = before.map(it -> it.along().mm() != newAlong.mm()).orElse(true);
    boolean otherDown = before.map(it -> it.down().mm() != newDown.mm()).orElse(true);
    if (otherAlong) {
      view.put("along", newAlong.text());
    }
    if (otherDown) {
      view.put("down", newDown.text());
    }
    if (otherAlong || otherDown) {
      changes.add(
          before.isEmpty()
              ? "plan view set up"
              : "plan view is " + newAlong.text() + " by " + newDown.text());
    }
    if (withPicture && before.isPresent() && (otherAlong || otherDown)) {
      scale(
          tree, newAlong.mm() / before.get().along().mm(), newDown.mm() / before.get().down().mm());
      changes.add("places and bends moved with it");
    }
    tree.set("planView", view);
    return new MapEdit(tree.toString(), changes, List.of());
  }

  private static void scale(ObjectNode tree, double factorAlong, double factorDown) {
    for (JsonNode place : MapEdit.list(tree, "places")) {
      scale(place.path("at"), factorAlong, factorDown);
    }
    for (JsonNode run : MapEdit.list(tree, "runs")) {
      if (run.path("bends") instanceof ArrayNode bends) {
        bends.forEach(it -> scale(it, factorAlong, factorDown));
      }
    }
  }

  private static void scale(JsonNode spot, double factorAlong, double factorDown) {
    if (spot instanceof ObjectNode point) {
      scale(point, "along", factorAlong);
      scale(point, "down", factorDown);
    }
  }

  /** A tenth of a millimetre is finer than anyone marks a place. */
  private static void scale(ObjectNode point, String key, double factor) {
    double mm = Length.of(point.path(key).asString("")).mm() * factor;
    point.put(key, Length.ofMm(Math.floor(mm * 10) / 10).text());
  }
}
