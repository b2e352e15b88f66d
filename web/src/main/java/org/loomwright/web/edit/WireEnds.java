package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.json.DocumentKind;
import tools.jackson.databind.JsonNode;

/** Where wires can end, as documents write it. */
final class WireEnds {
  private WireEnds() {}

  /** Ends that a wire of the vehicle that is edited can have. */
  static List<Choice> ofVehicle(Library library) {
    List<Choice> spots = new ArrayList<>();
    JsonNode vehicle = library.own();
    for (JsonNode it : vehicle.path("connectors")) {
      for (JsonNode cavity : library.housing(it.path("housing")).path("cavities")) {
        spots.add(spot("cavity " + id(it) + " " + cavity.path("number").asString(""), it));
      }
    }
    for (JsonNode it : vehicle.path("fuseBlocks")) {
      for (JsonNode slot : it.path("slots")) {
        spots.add(spot("slot " + id(it) + " " + id(slot), it));
      }
    }
    vehicle.path("grounds").forEach(it -> spots.add(spot("ground " + id(it), it)));
    vehicle.path("places").forEach(it -> spots.add(spot("loose " + id(it), it)));
    Set<String> units = new LinkedHashSet<>();
    for (JsonNode it : vehicle.path("circuits")) {
      units.add(it.path("from").asString(""));
      it.path("to").forEach(to -> units.add(to.asString("")));
    }
    units.stream()
        .filter(it -> it.startsWith("unit "))
        .forEach(it -> spots.add(new Choice(it, "")));
    return spots;
  }

  /** Ends that a lead of a kit's own can have. */
  static List<Choice> ofKit(Library library, List<JsonNode> vehicles) {
    List<Choice> ends = new ArrayList<>();
    for (JsonNode vehicle : vehicles) {
      for (JsonNode it : vehicle.path("connectors")) {
        for (JsonNode cavity : library.housing(it.path("housing")).path("cavities")) {
          ends.add(spot("cavity " + id(it) + " " + cavity.path("number").asString(""), it));
        }
      }
      vehicle.path("grounds").forEach(it -> ends.add(spot("ground " + id(it), it)));
      vehicle.path("places").forEach(it -> ends.add(spot("loose " + id(it), it)));
    }
    for (JsonNode it : library.all(DocumentKind.EQUIPMENT)) {
      for (JsonNode plug : it.path("plugs")) {
        for (JsonNode pin : plug.path("pins")) {
          String cavity = pin.path("cavity").asString("");
          ends.add(spot("pin " + id(it) + " " + id(plug) + " " + cavity, pin));
        }
      }
    }
    return ends;
  }

  private static Choice spot(String text, JsonNode named) {
    return new Choice(text, named.path("name").asString(""));
  }

  private static String id(JsonNode node) {
    return node.path("id").asString("");
  }
}
