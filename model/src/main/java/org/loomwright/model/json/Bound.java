package org.loomwright.model.json;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.document.Document;

/**
 * What became of a JSON tree.
 *
 * @param kind kind of the document, as far as it says one
 * @param document the document; when there are faults it holds stand-ins for refused values and
 *     lacks refused list items, so it is good for further checks only
 * @param faults everything that is wrong, empty for a good document
 * @param paths where each record of the document was read from, by identity
 * @param faulty records with a fault in or below them, by identity
 */
public record Bound(
    Optional<DocumentKind> kind,
    Optional<Document> document,
    List<Fault> faults,
    IdentityHashMap<Object, String> paths,
    Set<Object> faulty) {
  public Bound {
    faults = List.copyOf(faults);
  }

  /** The document, only when nothing is wrong with it. */
  public Optional<Document> good() {
    return faults.isEmpty() ? document : Optional.empty();
  }
}
