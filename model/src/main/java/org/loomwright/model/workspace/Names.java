package org.loomwright.model.workspace;

import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.json.Nearest;

/** The ids that references may name, by what they name. */
final class Names {
  private final Map<Sort, Set<String>> ids = new EnumMap<>(Sort.class);
  private final boolean complete;

  /**
   * @param complete false when documents could not be read, so that an id that is not found may
   *     well stand in one of them
   */
  Names(boolean complete) {
    this.complete = complete;
  }

  void add(Sort sort, Collection<String> more) {
    ids.computeIfAbsent(sort, key -> new LinkedHashSet<>()).addAll(more);
  }

  Set<String> of(Sort sort) {
    return ids.getOrDefault(sort, Set.of());
  }

  boolean has(Sort sort, String id) {
    return of(sort).contains(id);
  }

  /** What is wrong with a reference; empty for a good one, and for one that was refused before. */
  Optional<String> wrong(Sort sort, String id) {
    if (id.isEmpty() || has(sort, id)) {
      return Optional.empty();
    }
    String none = "there is no " + sort.bare() + " '" + id + "'";
    Optional<Sort> other = ids.keySet().stream().filter(it -> has(it, id)).findFirst();
    if (other.isPresent()) {
      return Optional.of(none + "; '" + id + "' is " + other.get().noun() + ", not " + sort.noun());
    }
    if (!complete) {
      return Optional.empty();
    }
    return Optional.of(
        of(sort).isEmpty()
            ? none + "; there are no " + sort.plural() + " at all"
            : none + Nearest.hint(id, "the " + sort.plural() + " are", of(sort)));
  }
}
