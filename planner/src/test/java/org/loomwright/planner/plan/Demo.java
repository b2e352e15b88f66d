package org.loomwright.planner.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.model.workspace.WorkspaceReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The project's own demo documents, as they are or with a fault planted into their JSON. */
public final class Demo {
  /** The van's heater and steps. */
  public static final String COMFORT = "crew-comfort";

  /** The trailer socket. */
  public static final String TRAILER = "trailer";

  public static final String VAN = "van.vehicle.json";
  public static final String HEATER = "heater.equipment.json";
  public static final String PARTS = "parts.parts.json";

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Map<String, Plan> PLANS = new ConcurrentHashMap<>();

  private final Map<String, String> texts;

  private Demo(Map<String, String> texts) {
    this.texts = texts;
  }

  /** The documents of the demo. */
  public static Demo copy() {
    // Tests run in the folder of their module.
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      Map<String, String> texts = new TreeMap<>();
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
      return new Demo(texts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A kit of the demo as it is. */
  public static KitOrder order(String kit) {
    return copy().kit(kit);
  }

  /** Its plan, worked out once. */
  public static Plan plan(String kit) {
    return PLANS.computeIfAbsent(kit, id -> Planner.plan(order(id)));
  }

  /** Changes a document. */
  public Demo edit(String file, Consumer<ObjectNode> change) {
    ObjectNode tree = (ObjectNode) JSON.readTree(texts.getOrDefault(file, ""));
    change.accept(tree);
    texts.put(file, tree.toString());
    return this;
  }

  /** Leaves documents out whose file names end so. */
  public Demo without(String ending) {
    texts.keySet().removeIf(it -> it.endsWith(ending));
    return this;
  }

  /** Changes the item with an id in a list of a document. */
  public Demo item(String file, String list, String id, Consumer<ObjectNode> change) {
    return edit(file, tree -> change.accept(find(tree.path(list), "id", id)));
  }

  /** A kit of the changed documents, which must still be sound. */
  public KitOrder kit(String kit) {
    Workspace workspace = workspace();
    if (KitOrders.resolve(workspace, kit) instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the changed demo has no kit " + kit);
  }

  /** The changed documents, which must still be sound. */
  public Workspace workspace() {
    List<NamedText> named = new ArrayList<>();
    texts.forEach((name, text) -> named.add(new NamedText(name, text)));
    Read read = WorkspaceReader.read(named);
    if (read instanceof Read.Good good) {
      return good.workspace();
    }
    throw new IllegalStateException("the changed demo can't be read: " + read);
  }

  /** The object of a list whose field has a value. */
  public static ObjectNode find(JsonNode list, String field, String value) {
    for (JsonNode one : list) {
      if (one.path(field).stringValue().equals(value)) {
        return (ObjectNode) one;
      }
    }
    throw new IllegalArgumentException("no " + field + " " + value);
  }

  /** Takes the objects out of a list whose field has one of some values. */
  public static void remove(JsonNode list, String field, List<String> values) {
    ArrayNode array = (ArrayNode) list;
    for (int i = array.size() - 1; i >= 0; i--) {
      if (values.contains(array.get(i).path(field).stringValue())) {
        array.remove(i);
      }
    }
  }
}
