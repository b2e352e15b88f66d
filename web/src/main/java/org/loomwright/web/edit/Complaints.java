package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.workspace.LoadedFile;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.shop.Shop;
import tools.jackson.databind.JsonNode;

/**
 * Brings problems to the fields they are about; the others into a list with links to where they can
 * be put right.
 *
 * @param atField what is wrong, by name of the field
 * @param all all problems, in order
 * @param noName what is said about the missing name of who saves; empty when it is not missing
 */
public record Complaints(Map<String, String> atField, List<Complaint> all, String noName) {
  private static final Pattern FILE = Pattern.compile("(.+)\\.([a-z]+)(\\.\\d+)?\\.json");
  private static final String MISSING = "the key '";

  /** Stands for the record as a whole among the names of fields. */
  static final String FORM = "form";

  public Complaints {
    atField = Map.copyOf(atField);
    all = List.copyOf(all);
  }

  /** None. */
  public static Complaints none() {
    return new Complaints(Map.of(), List.of(), "");
  }

  /**
   * Sorts problems.
   *
   * @param key document that was to be saved
   * @param tree its text as it was to be
   * @param fields names of the fields shown, by path
   * @param words what must stand in a field that can't be empty, by its name
   * @param back where links come back to
   */
  static Complaints of(
      List<Problem> problems,
      DocumentKey key,
      JsonNode tree,
      Map<String, String> fields,
      Map<String, String> words,
      Shop shop,
      String back) {
    Map<String, String> atField = new LinkedHashMap<>();
    List<Complaint> all = new ArrayList<>();
    String noName = "";
    for (Problem it : problems) {
      if (it.path().equals("who") && it.document().isEmpty()) {
        noName = it.message();
        all.add(new Complaint("your name", noName, "#who"));
        continue;
      }
      Optional<DocumentKey> of = it.document().isEmpty() ? Optional.of(key) : key(it, shop, key);
      boolean own = of.equals(Optional.of(key));
      Optional<String> field = own ? field(it.path(), fields) : Optional.empty();
      String message = it.message();
      if (own && FORM.equals(fields.get(it.path()))) {
        all.add(new Complaint("", message, ""));
      } else if (field.isPresent()) {
        boolean blank = it.value().isEmpty() && message.startsWith(MISSING);
        String needed = words.get(field.get());
        message = blank && needed != null ? "this is needed: " + needed : message;
        atField.merge(field.get(), message, (one, two) -> one + "; " + two);
        all.add(new Complaint(Labels.ofName(field.get()), message, "#" + field.get()));
      } else {
        String where = own ? it.path() : (it.document() + ", " + it.path());
        all.add(new Complaint(where, message, href(it.path(), of, own, tree, back)));
      }
    }
    return new Complaints(atField, all, noName);
  }

  private static String href(
      String path, Optional<DocumentKey> of, boolean own, JsonNode tree, String back) {
    if (of.isEmpty()) {
      return "";
    }
    Optional<DocumentKind> kind = DocumentKind.of(of.get().kind());
    if (kind.isEmpty()) {
      return "";
    }
    PartPath at = own ? MessagePath.find(kind.get(), tree, path) : PartPath.whole();
    return EditHref.edit(of.get().kind(), of.get().id(), at, back);
  }

  /** The field at a path, or the one whose value holds it. */
  private static Optional<String> field(String path, Map<String, String> fields) {
    String at = path;
    while (!at.isEmpty()) {
      String name = fields.get(at);
      if (name != null && !name.equals(FORM)) {
        return Optional.of(name);
      }
      at = at.substring(0, Math.max(0, Math.max(at.lastIndexOf('.'), at.lastIndexOf('['))));
    }
    return Optional.empty();
  }

  private static Optional<DocumentKey> key(Problem problem, Shop shop, DocumentKey own) {
    for (LoadedFile file : shop.files()) {
      if (file.file().equals(problem.document())) {
        return Optional.of(
            new DocumentKey(DocumentKind.of(file.document()).word(), file.document().id()));
      }
    }
    if (problem.document().equals(own.id() + "." + own.kind() + ".json")) {
      return Optional.of(own);
    }
    Matcher file = FILE.matcher(problem.document());
    return file.matches() && DocumentKind.of(file.group(2)).isPresent()
        ? Optional.of(new DocumentKey(file.group(2), file.group(1)))
        : Optional.empty();
  }

  /** Finds parts by the paths that messages give. */
  private static final class MessagePath {
    private MessagePath() {}

    /** The smallest part with a form of its own at or around a path. */
    static PartPath find(DocumentKind kind, JsonNode tree, String path) {
      Part part = Part.whole(DocumentFields.of(kind), tree);
      PartPath best = part.at();
      boolean deeper = true;
      while (deeper) {
        deeper = false;
        for (Part inner : inside(part)) {
          if (isAround(inner.path(), path)) {
            part = inner;
            best = inner.fields().isPresent() ? inner.at() : best;
            deeper = true;
            break;
          }
        }
      }
      return best;
    }

    private static List<Part> inside(Part part) {
      return part.fields()
          .map(it -> it.fields().stream().map(part::of).toList())
          .orElseGet(
              () ->
                  part.shape() instanceof org.loomwright.model.json.FormShape.Items
                      ? part.items()
                      : List.of());
    }

    private static boolean isAround(String outer, String path) {
      return path.startsWith(outer)
          && (path.length() == outer.length() || ".[".indexOf(path.charAt(outer.length())) >= 0);
    }
  }
}
