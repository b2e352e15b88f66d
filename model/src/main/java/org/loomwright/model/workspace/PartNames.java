package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;

/** The parts of all parts lists, by number. */
final class PartNames {
  private static final Map<String, Sort> LISTS = new LinkedHashMap<>();

  static {
    LISTS.put("wires", Sort.WIRE);
    LISTS.put("housings", Sort.HOUSING);
    LISTS.put("terminals", Sort.TERMINAL);
    LISTS.put("seals", Sort.SEAL);
    LISTS.put("rings", Sort.RING);
    LISTS.put("splices", Sort.SPLICE);
    LISTS.put("fuses", Sort.FUSE);
    LISTS.put("coverings", Sort.COVERING);
    LISTS.put("sundries", Sort.SUNDRY);
  }

  private final Names names;
  private final List<Source> lists;

  PartNames(List<Source> lists, boolean complete) {
    this.names = new Names(complete);
    this.lists = new ArrayList<>(lists);
    for (Source list : lists) {
      LISTS.forEach((key, sort) -> names.add(sort, Tree.ids(list.tree(), key)));
    }
  }

  Names names() {
    return names;
  }

  /** The fuse forms there are. */
  List<String> fuseForms() {
    return lists.stream()
        .flatMap(list -> Tree.texts(list.tree(), "fuses", "form").stream())
        .distinct()
        .toList();
  }

  /** The cavity numbers of a housing; empty when there is no such housing. */
  Optional<List<String>> cavities(String housing) {
    return lists.stream()
        .flatMap(list -> Tree.find(list.tree(), "housings", housing).stream())
        .findFirst()
        .map(node -> Tree.texts(node, "cavities", "number"));
  }

  /** The housing as read; empty when there is none or something is wrong with it. */
  Optional<Housing> housing(String id) {
    return lists.stream()
        .flatMap(list -> list.bound().document().stream().map(it -> found(list, it, id)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Housing> found(Source list, Document document, String id) {
    return document instanceof Parts parts
        ? parts.housing(id).filter(it -> !list.bound().faulty().contains(it))
        : Optional.empty();
  }

  /** What is wrong with a cavity as the end of a wire; empty when right or not known. */
  Optional<String> wrongEnd(String housing, String cavity) {
    return wrongCavity(housing, cavity)
        .or(
            () ->
                housing(housing)
                    .flatMap(it -> it.cavity(cavity))
                    .filter(Cavity::closed)
                    .map(
                        it ->
                            "cavity '"
                                + cavity
                                + "' of housing '"
                                + housing
                                + "' is moulded closed, so no wire can end in it; correct the"
                                + " cavity, or the part's \"closed\""));
  }

  /**
   * What is wrong with a cavity of a housing; empty when right or when the housing is not known.
   */
  Optional<String> wrongCavity(String housing, String cavity) {
    Optional<List<String>> cavities = cavities(housing);
    if (cavity.isEmpty() || cavities.isEmpty() || cavities.get().contains(cavity)) {
      return Optional.empty();
    }
    return Optional.of(
        "housing '"
            + housing
            + "' has no cavity '"
            + cavity
            + "'; its cavities are "
            + Nearest.list(cavities.get()));
  }
}
