package org.loomwright.web.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;

/**
 * What the page of a vehicle's map shows.
 *
 * @param vehicle the vehicle as it is on file
 * @param basedOn revision it was read from; 0 where it can't be changed
 * @param plan the ground of the map; absent when the vehicle has none yet
 * @param places its places, in their order
 * @param runs its runs, in their order
 * @param newPlace a place to add, as typed
 * @param newRun a run to add, as typed
 * @param problems why nothing was saved
 */
public record MapView(
    Vehicle vehicle,
    long basedOn,
    Optional<PlanGround> plan,
    List<PlaceRow> places,
    List<RunRow> runs,
    NewPlace newPlace,
    NewRun newRun,
    List<Problem> problems) {
  public MapView {
    places = List.copyOf(places);
    runs = List.copyOf(runs);
    problems = List.copyOf(problems);
  }

  /**
   * A place.
   *
   * @param number its number on this page
   * @param place the place as on file
   * @param at where it is drawn; absent when it is not on the map
   * @param along distance from the left edge, as typed
   * @param down distance from the top edge, as typed
   * @param wasAlong the same on file; may be empty
   * @param wasDown the same on file; may be empty
   */
  public record PlaceRow(
      int number,
      Place place,
      Optional<MapPoint> at,
      String along,
      String down,
      String wasAlong,
      String wasDown) {
    /** Name without its article. */
    public String name() {
      return MapWords.bare(place.name());
    }

    /** Class of its sign: engine bay, wet or dry. */
    public String sign() {
      return place.engineBay() ? "hot" : place.wet() ? "wet" : "dry";
    }

    /** What it is like there. */
    public String manner() {
      return (place.engineBay() ? "engine bay, " : "")
          + (place.wet() ? "wet, " : "dry, ")
          + place.ambient().text();
    }

    /** Where it is, for who does not see the map. */
    public String where(Display units) {
      return at.map(
              it ->
                  MapWords.length(it.alongMm(), units)
                      + " from the left edge, "
                      + MapWords.length(it.downMm(), units)
                      + " from the top edge")
          .orElse("not on the map");
    }
  }

  /**
   * A run.
   *
   * @param run the run as on file
   * @param from number of the place at one end
   * @param to number of the place at the other end
   * @param names names of both
   * @param line its line; absent when a place at its ends is not on the map
   * @param bends its bends, as typed
   * @param wasBends the same on file
   * @param check its stated length beside the drawn one
   */
  public record RunRow(
      Run run,
      int from,
      int to,
      String names,
      Optional<List<MapPoint>> line,
      String bends,
      String wasBends,
      RunCheck check) {
    /** Points of the line as markup wants them. */
    public String points() {
      return String.join(
          " ",
          line.orElse(List.of()).stream()
              .map(it -> MapWords.number(it.alongMm()) + "," + MapWords.number(it.downMm()))
              .toList());
    }

    /** Classes of its line. */
    public String css() {
      return check.verdict().css()
          + (run.restraint() || run.highVoltage() ? " barred" : "")
          + (run.alongLoom() ? " loom" : "");
    }

    /** Stated length with its tolerance. */
    public String stated(Display units) {
      return MapWords.length(run.length().mm(), units)
          + " ± "
          + MapWords.length(run.tolerance().mm(), units);
    }

    /** What is to be known of it besides. */
    public String manner() {
      List<String> words = new ArrayList<>();
      if (run.restraint()) {
        words.add("along restraint wiring: not used");
      }
      if (run.highVoltage()) {
        words.add("along high-voltage wiring: not used");
      }
      if (run.alongLoom()) {
        words.add("along a factory loom");
      }
      if (run.moving()) {
        words.add("bends in use");
      }
      return String.join(", ", words);
    }
  }

  /**
   * The page.
   *
   * @param basedOn revision the vehicle was read from; 0 where it can't be changed
   * @param picture finds a picture by its file name
   * @param typed what was typed in a field; empty when nothing was
   * @param problems why nothing was saved
   */
  public static MapView of(
      Vehicle vehicle,
      long basedOn,
      Function<String, Optional<Picture>> picture,
      Function<String, Optional<String>> typed,
      List<Problem> problems) {
    Optional<PlanView> view = vehicle.planView();
    Map<String, PlaceRow> places = new LinkedHashMap<>();
    for (Place it : vehicle.places()) {
      places.put(it.id(), row(places.size() + 1, it, view, typed));
    }
    List<RunRow> runs = vehicle.runs().stream().map(it -> row(vehicle, it, places, typed)).toList();
    return new MapView(
        vehicle,
        basedOn,
        view.map(it -> PlanGround.of(it, it.picture().flatMap(file -> picture.apply(file.file())))),
        List.copyOf(places.values()),
        runs,
        NewPlace.read(typed),
        NewRun.read(typed),
        problems);
  }

  private static PlaceRow row(
      int number, Place place, Optional<PlanView> view, Function<String, Optional<String>> typed) {
    String wasAlong = place.at().map(it -> MapEdit.bare(it.along())).orElse("");
    String wasDown = place.at().map(it -> MapEdit.bare(it.down())).orElse("");
    String along = typed.apply(MapEdit.along(place.id())).orElse(wasAlong);
    String down = typed.apply(MapEdit.down(place.id())).orElse(wasDown);
    SpotReader reader = new SpotReader();
    Optional<MapPoint> at = view.flatMap(it -> reader.spot(it, "", along, down)).map(MapPoint::of);
    // What can't be read is kept in its field, and the map shows what is on file.
    return new PlaceRow(
        number,
        place,
        reader.problems().isEmpty() ? at : place.at().map(MapPoint::of),
        along,
        down,
        wasAlong,
        wasDown);
  }

  private static RunRow row(
      Vehicle vehicle,
      Run run,
      Map<String, PlaceRow> places,
      Function<String, Optional<String>> typed) {
    String was = MapEdit.written(run.bends());
    String bends = typed.apply(MapEdit.bends(run.id())).orElse(was);
    Optional<List<MapPoint>> over =
        vehicle
            .planView()
            .flatMap(it -> new SpotReader().bends(it, "", bends))
            .map(it -> it.stream().map(MapPoint::of).toList());
    Optional<MapPoint> from = at(places, run.from());
    Optional<MapPoint> to = at(places, run.to());
    Optional<List<MapPoint>> line = Optional.empty();
    if (from.isPresent() && to.isPresent()) {
      List<MapPoint> points = new ArrayList<>();
      points.add(from.get());
      points.addAll(over.orElse(run.bends().stream().map(MapPoint::of).toList()));
      points.add(to.get());
      line = Optional.of(points);
    }
    return new RunRow(
        run,
        number(places, run.from()),
        number(places, run.to()),
        MapEdit.ends(vehicle, run.from(), run.to()),
        line,
        bends,
        was,
        RunCheck.of(line, run));
  }

  private static Optional<MapPoint> at(Map<String, PlaceRow> places, String id) {
    return Optional.ofNullable(places.get(id)).flatMap(PlaceRow::at);
  }

  private static int number(Map<String, PlaceRow> places, String id) {
    return Optional.ofNullable(places.get(id)).map(PlaceRow::number).orElse(0);
  }

  /** Places that nobody has put on the map. */
  public List<PlaceRow> unplaced() {
    return places.stream().filter(it -> it.at().isEmpty()).toList();
  }

  /** What is wrong with a field; empty when nothing is. */
  public String wrong(String field) {
    return problems.stream()
        .filter(it -> it.path().equals(field))
        .map(Problem::message)
        .findFirst()
        .orElse("");
  }
}
