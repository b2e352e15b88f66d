package org.loomwright.web.map;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.Vehicle;
import tools.jackson.databind.node.ObjectNode;

/**
 * A place that the form of the map wants to be added, as typed.
 *
 * @param name its name; with none no place is wanted
 * @param ambient highest temperature of the air there
 * @param wet whether water reaches it
 * @param engineBay whether it is in the engine bay
 * @param along distance from the left edge; may be empty
 * @param down distance from the top edge; may be empty
 */
public record NewPlace(
    String name, String ambient, boolean wet, boolean engineBay, String along, String down) {
  /** Nothing typed. */
  public static final NewPlace NONE = new NewPlace("", "", false, false, "", "");

  static NewPlace read(Function<String, Optional<String>> typed) {
    return new NewPlace(
        typed.apply("newPlace.name").orElse("").strip(),
        typed.apply("newPlace.ambient").orElse("").strip(),
        typed.apply("newPlace.wet").isPresent(),
        typed.apply("newPlace.engineBay").isPresent(),
        typed.apply("newPlace.along").orElse("").strip(),
        typed.apply("newPlace.down").orElse("").strip());
  }

  /** Whether anything is typed. */
  public boolean isWanted() {
    return !equals(NONE);
  }

  void add(ObjectNode tree, Vehicle vehicle, SpotReader reader, List<String> changes) {
    if (!isWanted()) {
      return;
    }
    int before = reader.problems().size();
    if (name.isEmpty()) {
      reader.wrong("newPlace.name", "", "write a name that people know the place by");
    }
    Optional<Temperature> air =
        reader.temperature("newPlace.ambient", ambient, "the highest temperature of the air there");
    Optional<PlanSpot> spot =
        vehicle.planView().flatMap(it -> reader.spot(it, "newPlace", along, down));
    if (air.isEmpty() || reader.problems().size() > before) {
      return;
    }
    Set<String> taken = vehicle.places().stream().map(Place::id).collect(Collectors.toSet());
    ObjectNode item = MapEdit.list(tree, "places").addObject();
    item.put("id", NewIds.of(name, "place", taken));
    item.put("name", name);
    item.put("ambient", air.get().text());
    item.put("wet", wet);
    item.put("engineBay", engineBay);
    spot.ifPresent(it -> item.set("at", MapEdit.node(tree, it)));
    changes.add("place " + MapWords.bare(name) + " added");
  }
}
