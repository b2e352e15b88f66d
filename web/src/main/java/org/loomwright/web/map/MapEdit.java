package org.loomwright.web.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the form of the map asks to be changed in a vehicle. Only what was typed differently from
 * the text is changed in it, so that it can be brought together with what others save.
 *
 * @param text the text with the changes; the given one when something is wrong
 * @param changes each change in words
 * @param problems what is wrong, at the field of the form
 */
public record MapEdit(String text, List<String> changes, List<Problem> problems) {
  public MapEdit {
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
  }

  /** Field of the form with the distance of a place from the left edge. */
  public static String along(String place) {
    return "place." + place + ".along";
  }

  /** Field of the form with the distance of a place from the top edge. */
  public static String down(String place) {
    return "place." + place + ".down";
  }

  /** Field of the form with the bends of a run. */
  public static String bends(String run) {
    return "run." + run + ".bends";
  }

  /** Bends as they are typed. */
  public static String written(List<PlanSpot> bends) {
    return String.join(
        "; ", bends.stream().map(it -> bare(it.along()) + ", " + bare(it.down())).toList());
  }

  /** A length as it is typed: without its unit where that is mm. */
  static String bare(org.loomwright.model.quantity.Length length) {
    return length.text().replaceFirst("^(\\d+(\\.\\d+)?) mm$", "$1");
  }

  /**
   * Reads a form.
   *
   * @param text the vehicle's text, as it was when the form was opened
   * @param vehicle the vehicle in that text
   * @param typed what stands in a field; empty when the form has no such field
   * @param who who fills it in, for the evidence of what is new
   */
  public static MapEdit of(
      String text, Vehicle vehicle, Function<String, Optional<String>> typed, String who) {
    if (!(JsonText.parse(text) instanceof JsonText.Tree parsed)
        || !(parsed.node().deepCopy() instanceof ObjectNode tree)) {
      throw new IllegalArgumentException("the text of " + vehicle.id() + " is no JSON object");
    }
    SpotReader reader = new SpotReader();
    List<String> changes = new ArrayList<>();
    vehicle
        .planView()
        .ifPresent(
            view -> {
              vehicle.places().forEach(it -> move(tree, view, it, typed, reader, changes));
              vehicle.runs().forEach(it -> bend(tree, view, vehicle, it, typed, reader, changes));
            });
    NewPlace.read(typed).add(tree, vehicle, reader, changes);
    NewRun.read(typed).add(tree, vehicle, reader, changes, who);
    List<Problem> problems = reader.problems();
    return new MapEdit(problems.isEmpty() ? tree.toString() : text, changes, problems);
  }

  private static void move(
      ObjectNode tree,
      PlanView view,
      Place place,
      Function<String, Optional<String>> typed,
      SpotReader reader,
      List<String> changes) {
    Optional<String> along = typed.apply(along(place.id()));
    Optional<String> down = typed.apply(down(place.id()));
    if (along.isEmpty() || down.isEmpty()) {
      return;
    }
    int before = reader.problems().size();
    Optional<PlanSpot> spot = reader.spot(view, "place." + place.id(), along.get(), down.get());
    boolean same =
        spot.map(MapPoint::of).equals(place.at().map(MapPoint::of))
            || reader.problems().size() > before;
    if (same) {
      return;
    }
    ObjectNode item = item(tree, "places", place.id());
    String name = MapWords.bare(place.name());
    if (spot.isEmpty()) {
      item.remove("at");
      changes.add("place " + name + " taken off the map");
      return;
    }
    item.set("at", node(tree, spot.get()));
    changes.add("place " + name + (place.at().isPresent() ? " moved" : " put on the map"));
  }

  private static void bend(
      ObjectNode tree,
      PlanView view,
      Vehicle vehicle,
      Run run,
      Function<String, Optional<String>> typed,
      SpotReader reader,
      List<String> changes) {
    Optional<List<PlanSpot>> bends =
        typed.apply(bends(run.id())).flatMap(it -> reader.bends(view, bends(run.id()), it));
    if (bends.isEmpty() || points(bends.get()).equals(points(run.bends()))) {
      return;
    }
    ObjectNode item = item(tree, "runs", run.id());
    if (bends.get().isEmpty()) {
      item.remove("bends");
    } else {
      item.set("bends", node(tree, bends.get()));
    }
    changes.add("run " + ends(vehicle, run.from(), run.to()) + " drawn anew");
  }

  private static List<MapPoint> points(List<PlanSpot> spots) {
    return spots.stream().map(MapPoint::of).toList();
  }

  /** The places at a run's ends in words. */
  static String ends(Vehicle vehicle, String from, String to) {
    Function<String, String> name =
        id -> vehicle.place(id).map(it -> MapWords.bare(it.name())).orElse(id);
    return name.apply(from) + " to " + name.apply(to);
  }

  static ObjectNode node(ObjectNode tree, PlanSpot spot) {
    return tree.objectNode().put("along", spot.along().text()).put("down", spot.down().text());
  }

  static ArrayNode node(ObjectNode tree, List<PlanSpot> spots) {
    ArrayNode list = tree.arrayNode();
    spots.forEach(it -> list.add(node(tree, it)));
    return list;
  }

  /** A list of a document, made where it is left out. */
  static ArrayNode list(ObjectNode tree, String key) {
    return tree.get(key) instanceof ArrayNode list ? list : tree.putArray(key);
  }

  private static ObjectNode item(ObjectNode tree, String key, String id) {
    for (JsonNode it : list(tree, key)) {
      if (it instanceof ObjectNode item && item.path("id").asString("").equals(id)) {
        return item;
      }
    }
    throw new IllegalArgumentException("the text has no '" + id + "' in its " + key);
  }
}
