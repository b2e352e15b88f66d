package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.json.DocumentKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** What fields may name: the table of which field refers to what, and what of that there is. */
final class Choices {
  private static final Map<String, Function<Choices, List<Choice>>> TABLE =
      Map.ofEntries(
          Map.entry("Vehicle.battery", Choices::places),
          Map.entry("Vehicle.batteryOpenings", Choices::openings),
          Map.entry("Opening.place", Choices::places),
          Map.entry("Opening.behind", Choices::openings),
          Map.entry("Tell.place", Choices::places),
          Map.entry("Tell.openings", Choices::openings),
          Map.entry("Tell.expect", Choices::values),
          Map.entry("Run.from", Choices::places),
          Map.entry("Run.to", Choices::places),
          Map.entry("Connector.housing", it -> it.parts("housings")),
          Map.entry("Connector.place", Choices::places),
          Map.entry("Connector.openings", Choices::openings),
          Map.entry("Connector.presentWhen", Choices::conditions),
          Map.entry("CavityFact.cavity", Choices::cavities),
          Map.entry("CavityFact.pluggedWhen", Choices::conditions),
          Map.entry("CavityFact.blockedWhen", Choices::conditions),
          Map.entry("PhotoPoint.cavity", Choices::cavities),
          Map.entry("FuseBlock.place", Choices::places),
          Map.entry("FuseBlock.openings", Choices::openings),
          Map.entry("FuseBlock.face", it -> it.parts("housings")),
          Map.entry("Section.feed", Choices::feeds),
          Map.entry("Section.fedWhen", Choices::conditions),
          Map.entry("Section.fuseForm", Choices::fuseForms),
          Map.entry("Slot.section", it -> it.inside("FuseBlock", "sections")),
          Map.entry("Slot.form", Choices::fuseForms),
          Map.entry("Slot.metalWhen", Choices::conditions),
          Map.entry("Slot.terminal", it -> it.parts("terminals")),
          Map.entry("GroundStud.place", Choices::places),
          Map.entry("GroundStud.openings", Choices::openings),
          Map.entry("Circuit.feed", Choices::feeds),
          Map.entry("Circuit.from", Choices::spots),
          Map.entry("Circuit.to", Choices::spots),
          Map.entry("Circuit.presentWhen", Choices::conditions),
          Map.entry("Circuit.fuseForm", Choices::fuseForms),
          Map.entry("Circuit.reachedAt", Choices::places),
          Map.entry("Exclusion.exclude", Choices::conditions),
          Map.entry("Evidence.photo", Choices::pictures),
          Map.entry("FacePhoto.file", Choices::pictures),
          Map.entry("PlanPicture.file", Choices::pictures),
          Map.entry("Cavity.terminals", it -> it.parts("terminals")),
          Map.entry("Cavity.plug", it -> it.parts("sundries")),
          Map.entry("Terminal.seal", it -> it.parts("seals")),
          Map.entry("Plug.matesWith", it -> it.parts("housings")),
          Map.entry("Pin.cavity", Choices::cavities),
          Map.entry("Need.feed", Choices::feeds),
          Map.entry("Need.returnsBy", Choices::pins),
          Map.entry("Need.shareWith", Choices::pins),
          Map.entry("Need.apartFrom", Choices::pins),
          Map.entry("Demand.metWhen", Choices::conditions),
          Map.entry("Finding.vehicle", it -> it.documents(DocumentKind.VEHICLE)),
          Map.entry("Finding.at", Choices::things),
          Map.entry("Finding.job", it -> it.documents(DocumentKind.JOB)),
          Map.entry("Finding.kit", Choices::kits),
          Map.entry("Finding.traits", Choices::traits),
          Map.entry("FindingPhoto.file", Choices::pictures),
          Map.entry("Kit.vehicle", it -> it.documents(DocumentKind.VEHICLE)),
          Map.entry("Kit.rules", it -> it.documents(DocumentKind.RULES)),
          Map.entry("Kit.parts", it -> it.documents(DocumentKind.PARTS)),
          Map.entry("Kit.designedAgainst", Choices::allDocuments),
          Map.entry("Mount.equipment", it -> it.documents(DocumentKind.EQUIPMENT)),
          Map.entry("Mount.plug", Choices::plugs),
          Map.entry("Mount.connector", it -> it.ofVehicle("connectors")),
          Map.entry("Mount.place", Choices::places),
          Map.entry("OwnLead.from", Choices::ownEnds),
          Map.entry("OwnLead.to", Choices::ownEnds),
          Map.entry("OwnLead.when", Choices::conditions));

  /** Fields that can name nothing but what is there. */
  private static final Set<String> ONLY =
      Set.of(
          "Vehicle.battery",
          "Opening.place",
          "Tell.place",
          "Run.from",
          "Run.to",
          "Connector.housing",
          "Connector.place",
          "FuseBlock.place",
          "FuseBlock.face",
          "Slot.section",
          "Slot.terminal",
          "GroundStud.place",
          "Cavity.plug",
          "Terminal.seal",
          "Plug.matesWith",
          "Finding.vehicle",
          "Finding.job",
          "Finding.kit",
          "Kit.vehicle",
          "Kit.rules",
          "Mount.equipment",
          "Mount.connector",
          "Mount.place");

  /** Terminal designations of DIN 72552-2 that feeds are named by. */
  private static final List<Choice> TERMINALS =
      List.of(
          new Choice("30", "always live from the battery"),
          new Choice("15", "live with the ignition on"),
          new Choice("31", "ground"),
          new Choice("50", "live while starting"),
          new Choice("58", "side and rear lamps"),
          new Choice("54", "stop lamps"),
          new Choice("L", "left turn signal"),
          new Choice("R", "right turn signal"));

  private final Library library;
  private final Part part;

  /**
   * @param part the part that is being edited
   */
  Choices(Library library, Part part) {
    this.library = library;
    this.part = part;
  }

  /** What a field may name; empty when it names nothing, or nothing is there. */
  List<Choice> of(String type, String key) {
    Function<Choices, List<Choice>> known = TABLE.get(type + "." + key);
    return known == null ? List.of() : known.apply(this);
  }

  /** Whether only what is there makes sense. */
  boolean isOnly(String type, String key) {
    return ONLY.contains(type + "." + key);
  }

  private List<JsonNode> vehicles() {
    if (library.ownKind() == DocumentKind.KIT || library.ownKind() == DocumentKind.FINDING) {
      String id = library.own().path("vehicle").asString("");
      List<JsonNode> all = library.all(DocumentKind.VEHICLE);
      return id.isEmpty()
          ? all
          : all.stream().filter(it -> it.path("id").asString("").equals(id)).toList();
    }
    return library.all(DocumentKind.VEHICLE);
  }

  private List<JsonNode> nearestVehicles() {
    return library.ownKind() == DocumentKind.VEHICLE ? List.of(library.own()) : vehicles();
  }

  private List<Choice> ofVehicle(String list) {
    return named(Library.items(nearestVehicles(), list));
  }

  private List<Choice> places() {
    return ofVehicle("places");
  }

  private List<Choice> openings() {
    return ofVehicle("openings");
  }

  private List<Choice> parts(String list) {
    return named(Library.items(library.all(DocumentKind.PARTS), list));
  }

  private List<Choice> documents(DocumentKind kind) {
    return named(library.all(kind).stream());
  }

  private List<Choice> allDocuments() {
    return named(Stream.of(DocumentKind.values()).flatMap(it -> library.all(it).stream()));
  }

  private List<Choice> inside(String type, String list) {
    return around(type).map(it -> named(it.path(list).valueStream())).orElse(List.of());
  }

  private Optional<JsonNode> around(String type) {
    boolean self = part.fields().map(it -> it.type().equals(type)).orElse(false);
    return self ? Optional.of(part.node()) : part.around(type);
  }

  /** Values of the trait around a way to tell; of what is no trait, yes and no. */
  private List<Choice> values() {
    List<Choice> values = inside("Trait", "values");
    return values.isEmpty() ? List.of(new Choice("yes", ""), new Choice("no", "")) : values;
  }

  /** Cavities of the housing at hand. */
  private List<Choice> cavities() {
    JsonNode housing =
        around("Housing")
            .or(() -> around("Connector").map(it -> library.housing(it.path("housing"))))
            .or(() -> around("FuseBlock").map(it -> library.housing(it.path("face"))))
            .or(() -> around("Plug").map(it -> library.housing(it.path("matesWith"))))
            .orElse(MissingNode.getInstance());
    return housing
        .path("cavities")
        .valueStream()
        .map(it -> new Choice(it.path("number").asString(""), ""))
        .filter(it -> !it.value().isEmpty())
        .toList();
  }

  private List<Choice> plugs() {
    return Library.items(library.all(DocumentKind.EQUIPMENT), "plugs")
        .map(it -> new Choice(it.path("id").asString(""), it.path("name").asString("")))
        .distinct()
        .toList();
  }

  private List<Choice> pins() {
    List<Choice> pins = new ArrayList<>();
    for (JsonNode plug : library.own().path("plugs")) {
      for (JsonNode pin : plug.path("pins")) {
        pins.add(
            new Choice(
                plug.path("id").asString("") + " " + pin.path("cavity").asString(""),
                pin.path("name").asString("")));
      }
    }
    return pins;
  }

  private List<Choice> spots() {
    return WireEnds.ofVehicle(library);
  }

  private List<Choice> ownEnds() {
    return WireEnds.ofKit(library, nearestVehicles());
  }

  /** What of a vehicle a finding can concern. */
  private List<Choice> things() {
    List<Choice> things = new ArrayList<>();
    for (JsonNode vehicle : vehicles()) {
      for (JsonNode it : vehicle.path("connectors")) {
        things.add(spot("connector " + id(it), it));
        for (JsonNode cavity : library.housing(it.path("housing")).path("cavities")) {
          things.add(spot("cavity " + id(it) + " " + cavity.path("number").asString(""), it));
        }
      }
      for (JsonNode it : vehicle.path("fuseBlocks")) {
        things.add(spot("block " + id(it), it));
        it.path("slots").forEach(slot -> things.add(spot("slot " + id(it) + " " + id(slot), it)));
      }
      vehicle.path("grounds").forEach(it -> things.add(spot("ground " + id(it), it)));
      vehicle.path("circuits").forEach(it -> things.add(spot("circuit " + id(it), it)));
      vehicle.path("places").forEach(it -> things.add(spot("place " + id(it), it)));
      for (JsonNode it : vehicle.path("runs")) {
        String ends = it.path("from").asString("") + " to " + it.path("to").asString("");
        things.add(new Choice("run " + id(it), ends));
      }
    }
    return things.stream().distinct().toList();
  }

  /** Kits on the vehicle of a finding. */
  private List<Choice> kits() {
    String vehicle = library.own().path("vehicle").asString("");
    return named(
        library.all(DocumentKind.KIT).stream()
            .filter(it -> vehicle.isEmpty() || it.path("vehicle").asString("").equals(vehicle)));
  }

  /** Traits with the values they can have. */
  private List<Choice> traits() {
    return Library.items(vehicles(), "traits")
        .map(
            it ->
                new Choice(
                    id(it),
                    it.path("values")
                        .valueStream()
                        .map(Choices::id)
                        .collect(Collectors.joining(", "))))
        .filter(it -> !it.value().isEmpty())
        .distinct()
        .toList();
  }

  private static Choice spot(String text, JsonNode named) {
    return new Choice(text, named.path("name").asString(""));
  }

  private static String id(JsonNode node) {
    return node.path("id").asString("");
  }

  private List<Choice> conditions() {
    List<Choice> conditions = new ArrayList<>();
    conditions.add(new Choice("always", "on every build"));
    conditions.add(new Choice("never", "on no build"));
    if (library.ownKind() == DocumentKind.VEHICLE) {
      conditions.add(new Choice("unknown", "becomes a question of the guide"));
    }
    Library.items(nearestVehicles(), "traits")
        .forEach(
            trait -> {
              for (JsonNode value : trait.path("values")) {
                conditions.add(
                    new Choice(
                        id(trait) + " = " + id(value),
                        trait.path("name").asString("") + ": " + value.path("words").asString("")));
              }
            });
    return conditions.stream().distinct().toList();
  }

  private List<Choice> feeds() {
    Set<Choice> feeds = new LinkedHashSet<>(TERMINALS);
    Set<String> known = new LinkedHashSet<>(TERMINALS.stream().map(Choice::value).toList());
    Library.items(library.all(DocumentKind.VEHICLE), "circuits")
        .map(it -> it.path("feed").asString(""))
        .filter(it -> !it.isEmpty() && known.add(it))
        .forEach(it -> feeds.add(new Choice(it, "")));
    return List.copyOf(feeds);
  }

  private List<Choice> fuseForms() {
    return Library.items(library.all(DocumentKind.PARTS), "fuses")
        .map(it -> it.path("form").asString(""))
        .filter(it -> !it.isEmpty())
        .distinct()
        .map(it -> new Choice(it, ""))
        .toList();
  }

  private List<Choice> pictures() {
    return library.pictures().stream().map(it -> new Choice(it, "")).toList();
  }

  private static List<Choice> named(Stream<JsonNode> things) {
    return things
        .map(it -> new Choice(id(it), it.path("name").asString("")))
        .filter(it -> !it.value().isEmpty())
        .distinct()
        .toList();
  }
}
