package org.loomwright.web.edit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormShape;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/** The form of a new document: the few facts without which one of its kind can't be read. */
public final class NewDocument {
  private static final String RULES = "/org/loomwright/web/edit/usual-rules.json";
  private static final String OWN_FIGURE = "the shop's own figure";

  private final DocumentKind kind;
  private final String action;
  private final FormShape.Fields shape;

  private NewDocument(DocumentKind kind, String action) {
    this.kind = kind;
    this.action = action;
    this.shape = NewShapes.of(kind);
  }

  /** For a kind of document. */
  public static NewDocument of(DocumentKind kind) {
    return new NewDocument(kind, EditHref.fresh(kind.word()));
  }

  /** The same for a form that is sent to an address of its own. */
  public NewDocument to(String address) {
    return new NewDocument(kind, address);
  }

  /**
   * What a form says.
   *
   * @param key the document it makes; of no use where there are problems
   * @param text the document
   * @param problems what no document can hold
   */
  public record Made(
      DocumentKey key,
      String text,
      List<Problem> problems,
      JsonNode tree,
      Map<String, String> fields) {}

  /** Makes the document. */
  public Made make(Map<String, List<String>> sent, Set<String> taken) {
    FormReader.Result read =
        FormReader.read(shape, MissingNode.getInstance(), Typed.sent(sent), "", taken);
    ObjectNode said = read.record();
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    tree.put("kind", kind.word()).put("format", DocumentBinder.FORMAT);
    tree.set("id", said.path("id"));
    if (said.has("name")) {
      tree.set("name", said.path("name"));
    }
    tree.put("revision", "1");
    Map<String, String> fields = new LinkedHashMap<>(read.fields());
    fill(tree, said, fields);
    String id = said.path("id").asString("new");
    List<Problem> problems = new java.util.ArrayList<>(read.problems());
    if (taken.contains(id)) {
      problems.add(
          new Problem(
              "", "id", id, "there is " + kind.noun() + " '" + id + "' already; choose another"));
    }
    DocumentKey key = new DocumentKey(kind.word(), id.length() > 200 ? "new" : id);
    return new Made(key, tree.toPrettyString() + "\n", problems, tree, fields);
  }

  private void fill(ObjectNode tree, ObjectNode said, Map<String, String> fields) {
    switch (kind) {
      case VEHICLE -> {
        List.of("supply", "supplyLowest", "splicePolicy").forEach(it -> copy(said, tree, it));
        ObjectNode place = tree.putArray("places").addObject();
        JsonNode spot = said.path("batteryPlace");
        String id = NewId.of(spot, "battery", Set.of());
        tree.put("battery", id);
        place.put("id", id);
        copy(spot, place, "name");
        copy(spot, place, "ambient");
        moved(fields, "batteryPlace", "places[0]");
      }
      case EQUIPMENT -> {
        if (said.path("plug") instanceof ObjectNode plug) {
          ObjectNode made = tree.putArray("plugs").addObject();
          made.put("id", NewId.of(plug, "main", Set.of()));
          copy(plug, made, "name");
          copy(plug, made, "matesWith");
          moved(fields, "plug", "plugs[0]");
        }
      }
      case PARTS -> {
        // Parts are added one by one.
      }
      case RULES -> {
        usualRules().properties().forEach(it -> tree.set(it.getKey(), it.getValue()));
        for (String key : List.of("hourlyRate", "numberCarryCost")) {
          ObjectNode rule = tree.putObject(key);
          if (said.has(key)) {
            rule.set("value", said.path(key));
          }
          rule.put("source", OWN_FIGURE);
          fields.put(key + ".value", Typed.ROOT + "." + key);
        }
      }
      case KIT ->
          List.of("vehicle", "rules", "parts", "mounts").forEach(it -> copy(said, tree, it));
      case FINDING -> NewFinding.fill(tree, said);
      case JOB -> throw NewShapes.ownForm();
      case BATCH -> NewBatch.fill(tree, said);
    }
  }

  private static void copy(JsonNode from, ObjectNode to, String key) {
    if (from.has(key)) {
      to.set(key, from.path(key));
    }
  }

  private static void moved(Map<String, String> fields, String from, String to) {
    Map<String, String> more = new LinkedHashMap<>();
    fields.forEach(
        (path, name) -> {
          if (path.startsWith(from)) {
            more.put(to + path.substring(from.length()), name);
          }
        });
    fields.putAll(more);
  }

  /** Rules with a published source or from common practice, each with where it comes from. */
  private static JsonNode usualRules() {
    try (InputStream stream = NewDocument.class.getResourceAsStream(RULES)) {
      if (stream != null
          && JsonText.parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8))
              instanceof JsonText.Tree it) {
        return it.node();
      }
      throw new IllegalStateException("the program lacks its own " + RULES);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The form as it is opened.
   *
   * @param given what is known already, by key; keys that the form lacks are passed over
   */
  public EditPage open(Shop shop, Map<String, String> given) {
    return open(shop, given, JsonNodeFactory.instance.objectNode());
  }

  /**
   * The form as it is opened, with parts of the document that are known already.
   *
   * @param given what is known of plain fields, by key; keys that the form lacks are passed over
   * @param usual what is known besides
   */
  public EditPage open(Shop shop, Map<String, String> given, ObjectNode usual) {
    given.forEach(
        (key, text) -> {
          if (!text.isBlank() && shape.field(key).isPresent()) {
            usual.put(key, text);
          }
        });
    if (kind == DocumentKind.VEHICLE) {
      usual.put("supply", "12 V");
    } else if (kind == DocumentKind.KIT) {
      Library library = new Library(shop, kind, usual);
      only(library, DocumentKind.VEHICLE).ifPresent(it -> usual.set("vehicle", it));
      only(library, DocumentKind.RULES).ifPresent(it -> usual.set("rules", it));
      only(library, DocumentKind.PARTS).ifPresent(it -> usual.putArray("parts").add(it));
      usual.putArray("mounts").addObject();
    } else if (kind == DocumentKind.FINDING && !usual.has("vehicle")) {
      only(new Library(shop, kind, usual), DocumentKind.VEHICLE)
          .ifPresent(it -> usual.set("vehicle", it));
    }
    return page(shop, Typed.opened(shape, usual, true), Complaints.none(), "");
  }

  private static java.util.Optional<JsonNode> only(Library library, DocumentKind kind) {
    List<JsonNode> all = library.all(kind);
    return all.size() == 1
        ? java.util.Optional.of(all.get(0).path("id"))
        : java.util.Optional.empty();
  }

  /** The form after a row was added or taken out. */
  public EditPage again(Shop shop, Map<String, List<String>> sent, String row) {
    RowChange change = RowChange.of(row, Typed.sent(sent));
    return page(shop, change.typed(), Complaints.none(), change.focus());
  }

  /** The form with what was typed, and why it was not saved. */
  public EditPage refused(
      Shop shop, Map<String, List<String>> sent, Made made, List<Problem> problems) {
    Map<String, String> words = PartForm.needed(shape);
    Complaints complaints =
        Complaints.of(problems, made.key(), made.tree(), made.fields(), words, shop, "/");
    return page(shop, Typed.sent(sent), complaints, "");
  }

  private EditPage page(Shop shop, Typed typed, Complaints complaints, String focus) {
    Part part = Part.whole(shape, MissingNode.getInstance());
    ObjectNode own = JsonNodeFactory.instance.objectNode();
    String vehicle = typed.get(Typed.ROOT + ".vehicle");
    own.put("vehicle", vehicle);
    Choices choices = new Choices(new Library(shop, kind, own), part);
    String noun = shape.noun();
    String lead =
        switch (kind) {
          case VEHICLE ->
              "The little without which a vehicle can't be read. Places, runs, connectors and the"
                  + " rest are added on its page.";
          case EQUIPMENT -> "Plugs, pins and what they need are added once it is saved.";
          case PARTS -> "It starts empty; parts are added on its page.";
          case RULES ->
              "It starts with limits, allowances and times from published sources and common"
                  + " practice, each with its source; all can be changed.";
          case KIT -> "What is fitted to which vehicle. It is planned as soon as it is saved.";
          case FINDING -> NewFinding.LEAD;
          case JOB -> throw NewShapes.ownForm();
          case BATCH -> NewBatch.LEAD;
        };
    return new EditPage(
        "New " + noun,
        lead,
        kind == DocumentKind.FINDING
            ? List.of(
                new EditPage.Link("Workspace", "/"), new EditPage.Link("Findings", Href.findings()))
            : List.of(new EditPage.Link("Workspace", "/")),
        action,
        0,
        kind == DocumentKind.FINDING ? Href.findings() : "/",
        new FormMaker(typed, choices, complaints.atField()).controls(part),
        complaints,
        List.of(),
        EditPage.Tools.none(),
        focus);
  }
}
