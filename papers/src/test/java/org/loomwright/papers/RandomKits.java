package org.loomwright.papers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Kits drawn at random: the demo's van and equipment with other lengths, currents, names, places in
 * the plan view, and with any of the equipment's pins.
 */
public final class RandomKits {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final List<String> WORDS =
      List.of(
          "left",
          "lower",
          "rear",
          "cross",
          "member",
          "B-pillar",
          "behind",
          "foot",
          "well",
          "lamp",
          "wheel-arch",
          "sill",
          "of",
          "the",
          "load",
          "space",
          "upper",
          "bracket",
          "at",
          "i");

  private final Random random;
  private final Map<String, ObjectNode> documents = new TreeMap<>();

  private RandomKits(long seed) {
    this.random = new Random(seed);
  }

  /** The kit of a seed. */
  public static KitOrder of(long seed) {
    return new RandomKits(seed).order();
  }

  private KitOrder order() {
    // Tests run in the folder of their module.
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        documents.put(
            file.getFileName().toString(), (ObjectNode) JSON.readTree(Files.readString(file)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    van(document("van.vehicle.json"));
    for (String name :
        List.of(
            "heater.equipment.json",
            "side-steps.equipment.json",
            "trailer-socket.equipment.json")) {
      equipment(document(name));
    }
    kit(document("crew-comfort.kit.json"));
    List<NamedText> texts = new ArrayList<>();
    documents.forEach((name, tree) -> texts.add(new NamedText(name, tree.toString())));
    Read read = WorkspaceReader.read(texts);
    if (read instanceof Read.Good good
        && KitOrders.resolve(good.workspace(), "crew-comfort") instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the random kit can't be read: " + read);
  }

  private ObjectNode document(String name) {
    ObjectNode tree = documents.get(name);
    if (tree == null) {
      throw new IllegalStateException("the demo has no " + name);
    }
    return tree;
  }

  private void van(ObjectNode van) {
    boolean view = random.nextBoolean();
    // The picture is a file, which does not come along.
    ((ObjectNode) van.path("planView")).remove("picture");
    if (!view) {
      van.remove("planView");
    }
    for (JsonNode place : van.path("places")) {
      ObjectNode it = (ObjectNode) place;
      it.put("name", name(1 + random.nextInt(6)));
      if (!view || random.nextInt(5) == 0) {
        it.remove("at");
      } else {
        it.set("at", spot());
      }
    }
    for (JsonNode run : van.path("runs")) {
      ObjectNode it = (ObjectNode) run;
      int mm = 200 + random.nextInt(2500);
      it.put("length", mm + " mm");
      it.put("tolerance", random.nextInt(Math.min(100, mm)) + " mm");
      it.remove("bends");
      for (int i = random.nextInt(3); view && i > 0; i--) {
        it.withArray("bends").add(spot());
      }
    }
    if (random.nextInt(3) == 0) {
      van.remove("rules");
      van.putArray("rules");
    }
  }

  private ObjectNode spot() {
    ObjectNode spot = JSON.createObjectNode();
    spot.put("along", 100 + random.nextInt(4400) + " mm");
    spot.put("down", 100 + random.nextInt(2200) + " mm");
    return spot;
  }

  private void equipment(ObjectNode equipment) {
    for (JsonNode plug : equipment.path("plugs")) {
      ArrayNode pins = (ArrayNode) plug.path("pins");
      for (JsonNode pin : pins) {
        if (random.nextInt(3) == 0) {
          ((ObjectNode) pin).put("name", name(1 + random.nextInt(4)));
        }
        String current = pin.path("need").path("continuous").asString("");
        if (pin.path("need") instanceof ObjectNode need
            && current.endsWith(" A")
            && need.path("draws").isMissingNode()
            && need.path("peak").isMissingNode()) {
          double ampere = Double.parseDouble(current.substring(0, current.length() - 2));
          need.put(
              "continuous",
              String.format(Locale.ROOT, "%.1f A", ampere * (0.3 + 0.7 * random.nextDouble())));
        }
      }
    }
  }

  private void kit(ObjectNode kit) {
    ArrayNode mounts = (ArrayNode) kit.path("mounts");
    // Everything at once takes long to plan, so it is drawn now and then only.
    int draw = random.nextInt(12);
    if (draw < 4) {
      mounts.removeAll();
    }
    if (draw < 5) {
      ObjectNode socket = mounts.addObject();
      socket.put("equipment", "trailer-socket");
      socket.put("plug", "socket");
      socket.put("connector", "tow-socket");
    }
    for (int i = mounts.size() - 1; i >= 0 && mounts.size() > 1; i--) {
      if (random.nextInt(4) == 0) {
        mounts.remove(i);
      }
    }
    kit.put("name", name(2 + random.nextInt(9)));
  }

  private String name(int words) {
    List<String> some = new ArrayList<>();
    for (int i = 0; i < words; i++) {
      some.add(WORDS.get(random.nextInt(WORDS.size())));
    }
    return String.join(" ", some);
  }
}
