package org.loomwright.intake;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** The ends of wires that a vehicle has on file, by all the words a table may use for them. */
final class FarEnd {
  private final Vehicle vehicle;
  private final Map<String, List<Spot>> spots = new LinkedHashMap<>();

  FarEnd(Vehicle vehicle) {
    this.vehicle = vehicle;
    for (FuseBlock block : vehicle.fuseBlocks()) {
      for (Slot slot : block.slots()) {
        Spot spot = new Spot.OfSlot(block.id(), slot.id());
        add(slot.id(), spot);
        add("fuse " + slot.id(), spot);
        add("slot " + slot.id(), spot);
        for (String name : List.of(block.id(), block.name())) {
          add(name + " " + slot.id(), spot);
          add(slot.id() + " " + name, spot);
        }
      }
    }
    for (GroundStud stud : vehicle.grounds()) {
      add(stud.id(), new Spot.OfGround(stud.id()));
      add(stud.name(), new Spot.OfGround(stud.id()));
      add("ground " + stud.id(), new Spot.OfGround(stud.id()));
    }
    for (Circuit circuit : vehicle.circuits()) {
      Stream.concat(Stream.of(circuit.from()), circuit.to().stream()).forEach(this::addEnd);
    }
    for (Place place : vehicle.places()) {
      add("loose " + place.id(), new Spot.Loose(place.id()));
    }
  }

  private void addEnd(Spot spot) {
    add(spot.text(), spot);
    if (spot instanceof Spot.OfUnit unit) {
      add(unit.unit(), spot);
    }
  }

  private void add(String words, Spot spot) {
    List<Spot> known = spots.computeIfAbsent(key(words), it -> new ArrayList<>());
    if (!known.contains(spot)) {
      known.add(spot);
    }
  }

  /** The end on file that a text names; empty when it names none. */
  Optional<Fact<Spot>> find(String text) {
    if (key(text).isEmpty()) {
      return Optional.empty();
    }
    List<Spot> found = new ArrayList<>(spots.getOrDefault(key(text), List.of()));
    if (found.isEmpty()) {
      cavity(text).ifPresent(found::add);
    }
    if (found.isEmpty()) {
      return Optional.empty();
    }
    if (found.size() > 1) {
      return Optional.of(
          new Fact.Wrong<>(
              CellText.shown(text)
                  + " can be "
                  + String.join(" or ", found.stream().map(it -> "'" + it.text() + "'").toList())
                  + "; write one of these"));
    }
    return Optional.of(new Fact.Known<>(found.get(0)));
  }

  /** The end a text names; a text that is like nothing on file names a unit of its own. */
  Fact<Spot> read(String text) {
    Optional<Fact<Spot>> found = find(text);
    if (found.isPresent()) {
      return found.get();
    }
    String key = key(text);
    if (key.length() > 60 || !key.matches(".*[a-z].*")) {
      return new Fact.Wrong<>(
          CellText.shown(text)
              + " names no end of a wire; write e.g. 'rear-block F7' or the name of a control unit");
    }
    // Units have free names, so that one more is no mistake for being like another.
    Optional<String> near = Nearest.to(key, names(false));
    if (near.isPresent() || names(key, vehicle.connectors()).isPresent()) {
      return new Fact.Wrong<>(
          CellText.shown(text)
              + " is not on file"
              + near.map(it -> "; did you mean '" + it + "'?")
                  .orElse("; a connector needs the number of its cavity, e.g. 'floor 3'"));
    }
    return new Fact.Known<>(new Spot.OfUnit(key.replace(' ', '-')));
  }

  private TreeSet<String> names(boolean units) {
    TreeSet<String> names = new TreeSet<>();
    spots.forEach(
        (name, named) -> {
          if (named.get(0) instanceof Spot.OfUnit == units) {
            names.add(name);
          }
        });
    if (!units) {
      vehicle.connectors().forEach(it -> names.add(key(it.id())));
    }
    return names;
  }

  /** A unit on file with a name like this one. */
  Optional<String> like(String text) {
    return Nearest.to(key(text), names(true));
  }

  /** Whether an end is not on file yet. */
  boolean isNew(Spot spot) {
    return spot instanceof Spot.OfUnit unit && !spots.containsKey(key(unit.unit()));
  }

  private static Optional<Connector> names(String key, List<Connector> connectors) {
    return connectors.stream()
        .filter(it -> key.equals(key(it.id())) || key.equals(key(it.name())))
        .findFirst();
  }

  /** "floor 3", "floor pin 3", "cavity floor 3": the last word is the cavity. */
  private Optional<Spot> cavity(String text) {
    String line = CellText.line(text);
    int cut =
        Math.max(line.lastIndexOf(' '), Math.max(line.lastIndexOf('/'), line.lastIndexOf(':')));
    if (cut <= 0) {
      return Optional.empty();
    }
    String number = line.substring(cut + 1);
    String name =
        key(line.substring(0, cut))
            .replaceFirst(" (?:pin|cavity|cav|terminal)$", "")
            .replaceFirst("^cavity ", "");
    if (number.isEmpty()) {
      return Optional.empty();
    }
    // Whether the connector has such a cavity is judged where its housing is known.
    return names(name, vehicle.connectors()).map(it -> new Spot.OfCavity(it.id(), number));
  }

  private static String key(String words) {
    return slug(words).replace('-', ' ').replaceFirst("^(?:the|to|from|unit) ", "");
  }

  /** A name for references: lower-case letters, digits and hyphens; empty when nothing is left. */
  static String slug(String text) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "");
    String slug = plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.length() > 48 ? slug.substring(0, 48).replaceAll("-$", "") : slug;
  }
}
