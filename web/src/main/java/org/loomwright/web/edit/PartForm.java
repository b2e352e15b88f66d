package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.shop.Shop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The form of one record of a document, on file or new. */
public final class PartForm {
  private final DocumentKey key;
  private final DocumentKind kind;
  private final ObjectNode tree;
  private final Part part;
  private final boolean fresh;

  private PartForm(DocumentKey key, DocumentKind kind, ObjectNode tree, Part part, boolean fresh) {
    this.key = key;
    this.kind = kind;
    this.tree = tree;
    this.part = part;
    this.fresh = fresh;
  }

  /**
   * What a form says.
   *
   * @param text the whole document with it
   * @param problems what no document can hold; then it must not be saved
   * @param tree the document
   * @param fields names of the fields, by path
   */
  public record Written(
      String text, List<Problem> problems, JsonNode tree, Map<String, String> fields) {}

  /**
   * The form of a record on file.
   *
   * @param text the document's text
   * @return empty when there is no such record
   */
  public static Optional<PartForm> edit(DocumentKey key, String text, PartPath at) {
    return of(key, text, at, false).filter(it -> !it.part.node().isMissingNode());
  }

  /**
   * The form of a new item of a list, or of a record that is not there yet.
   *
   * @param text the document's text
   * @return empty when there is no such place, or something stands there
   */
  public static Optional<PartForm> add(DocumentKey key, String text, PartPath to) {
    return of(key, text, to, true).filter(it -> it.part.node().isMissingNode());
  }

  private static Optional<PartForm> of(DocumentKey key, String text, PartPath at, boolean fresh) {
    Optional<DocumentKind> kind = DocumentKind.of(key.kind());
    if (kind.isEmpty()
        || !(JsonText.parse(text) instanceof JsonText.Tree parsed)
        || !(parsed.node() instanceof ObjectNode tree)) {
      return Optional.empty();
    }
    return Part.find(DocumentFields.of(kind.get()), tree, at)
        .map(it -> fresh && it.shape() instanceof FormShape.Items ? it.fresh() : it)
        .filter(it -> it.fields().isPresent())
        .map(it -> new PartForm(key, kind.get(), tree, it, fresh));
  }

  private FormShape.Fields fields() {
    return part.fields().orElseThrow();
  }

  /** Puts what was sent into the document. */
  public Written write(Map<String, List<String>> sent) {
    FormReader.Result read =
        FormReader.read(fields(), part.node(), Typed.sent(sent), part.path(), taken());
    ObjectNode whole = tree.deepCopy();
    if (part.at().isWhole()) {
      whole = read.record();
    } else {
      part.put(whole, read.record());
    }
    return new Written(whole.toPrettyString() + "\n", read.problems(), whole, read.fields());
  }

  /** Ids a new item can't have: those of its list, and those of the whole document for short. */
  private Set<String> taken() {
    Set<String> taken = new HashSet<>();
    if (!part.within().isEmpty()) {
      part.parent().node().forEach(it -> taken.add(it.path("id").asString("")));
      if (part.within().size() == 2) {
        tree.forEach(list -> list.forEach(it -> taken.add(it.path("id").asString(""))));
      }
    }
    return taken;
  }

  /** The form as it is opened. */
  public EditPage open(Shop shop, long basedOn, String back) {
    Typed typed = Typed.opened(fields(), part.node(), part.at().isWhole());
    return page(shop, typed, Complaints.none(), basedOn, back, "");
  }

  /** The form with what was typed, after a row was added or taken out. */
  public EditPage again(
      Shop shop, Map<String, List<String>> sent, String row, long basedOn, String back) {
    RowChange change = RowChange.of(row, Typed.sent(sent));
    return page(shop, change.typed(), Complaints.none(), basedOn, back, change.focus());
  }

  /** The form with what was typed, and why it was not saved. */
  public EditPage refused(
      Shop shop,
      Map<String, List<String>> sent,
      Written written,
      List<Problem> problems,
      long basedOn,
      String back) {
    Complaints complaints =
        Complaints.of(
            problems, key, written.tree(), written.fields(), needed(fields()), shop, back);
    return page(shop, Typed.sent(sent), complaints, basedOn, back, "");
  }

  /** What must stand in each field of a record, and of the records in it. */
  static Map<String, String> needed(FormShape.Fields shape) {
    Map<String, String> words = new LinkedHashMap<>();
    needed(Typed.ROOT, shape, words);
    return words;
  }

  private static void needed(String name, FormShape.Fields shape, Map<String, String> words) {
    for (FormField field : shape.fields()) {
      String at = name + "." + field.key();
      words.put(at, field.shape().words());
      if (field.shape() instanceof FormShape.Fields inner) {
        needed(at, inner, words);
      }
    }
  }

  private EditPage page(
      Shop shop, Typed typed, Complaints complaints, long basedOn, String back, String focus) {
    Choices choices = new Choices(new Library(shop, kind, tree), part);
    List<Control> controls = new FormMaker(typed, choices, complaints.atField()).controls(part);
    String noun = Titles.noun(part);
    String title = fresh ? "New " + noun : FormMaker.capital(noun) + ": " + Titles.of(part);
    return new EditPage(
        part.at().isWhole() ? kind.noun().replaceFirst("^an? ", "") + ": " + name() : title,
        fresh && hasLists() ? "What it consists of is added once it is saved." : "",
        crumbs(back),
        fresh
            ? EditHref.add(key.kind(), key.id(), target(), back)
            : EditHref.edit(key.kind(), key.id(), part.at(), back),
        basedOn,
        back,
        controls,
        complaints,
        fresh ? List.of() : lists(back),
        fresh ? EditPage.Tools.none() : tools(back),
        focus);
  }

  private String name() {
    return tree.path("name").asString(key.id());
  }

  private PartPath target() {
    return part.isItem() ? part.at().parent() : part.at();
  }

  private List<EditPage.Link> crumbs(String back) {
    List<EditPage.Link> crumbs = new ArrayList<>();
    crumbs.add(new EditPage.Link("Workspace", "/"));
    crumbs.add(new EditPage.Link(name(), EditHref.page(key.kind(), key.id())));
    for (Part it : part.within()) {
      if (it.fields().isPresent() && !it.at().isWhole()) {
        crumbs.add(
            new EditPage.Link(Titles.of(it), EditHref.edit(key.kind(), key.id(), it.at(), back)));
      }
    }
    return crumbs;
  }

  private boolean hasLists() {
    return fields().fields().stream().anyMatch(it -> isOwn(it));
  }

  private boolean isOwn(FormField field) {
    Sorts sort = Sorts.of(field, part.at().isWhole());
    return sort == Sorts.OWN_FORM || sort == Sorts.OWN_FORMS;
  }

  private List<EditPage.PartList> lists(String back) {
    String here = EditHref.edit(key.kind(), key.id(), part.at(), back);
    List<EditPage.PartList> lists = new ArrayList<>();
    for (FormField field : fields().fields()) {
      if (isOwn(field)) {
        lists.add(list(part.of(field), field, here));
      }
    }
    return lists;
  }

  private EditPage.PartList list(Part of, FormField field, String here) {
    boolean many = field.shape() instanceof FormShape.Items;
    List<EditPage.Link> items = new ArrayList<>();
    List<Part> there = many ? of.items() : of.node().isMissingNode() ? List.of() : List.of(of);
    for (Part it : there) {
      String words = many ? Titles.of(it) : field.label();
      items.add(new EditPage.Link(words, EditHref.edit(key.kind(), key.id(), it.at(), here)));
    }
    String noun =
        many && of.fresh().shape() instanceof FormShape.Fields it ? it.noun() : field.label();
    boolean room = many || items.isEmpty();
    return new EditPage.PartList(
        "part-" + field.key(),
        Labels.of(fields().type(), field),
        field.meaning(),
        items,
        new EditPage.Link(
            room ? "Add " + noun : "", EditHref.add(key.kind(), key.id(), of.at(), here)));
  }

  private EditPage.Tools tools(String back) {
    String remove = part.mayGo() ? EditHref.remove(key.kind(), key.id(), part.at(), back) : "";
    if (!part.isItem()) {
      return new EditPage.Tools(remove, "", "", false, false);
    }
    int last = part.parent().node().size() - 1;
    return new EditPage.Tools(
        remove,
        EditHref.move(key.kind(), key.id()),
        part.at().text(),
        part.index() > 0,
        part.index() < last);
  }
}
