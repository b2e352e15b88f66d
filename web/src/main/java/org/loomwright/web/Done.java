package org.loomwright.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.web.shop.Href;
import org.loomwright.web.view.Notice;

/** What was done, as the address of the page that comes next says it. */
final class Done {
  private static final String SAME = "same";

  private Done() {}

  /** For an address. */
  static String text(Revision revision, boolean same) {
    return Href.part(revision.key().kind())
        + "."
        + Href.part(revision.key().id())
        + "."
        + (same ? SAME : Long.toString(revision.number()));
  }

  /** What the page says of it; empty when the address says nothing that was done. */
  static Optional<Notice> notice(Store store, String text) {
    String[] parts = text.split("\\.", -1);
    if (parts.length != 3) {
      return Optional.empty();
    }
    Optional<DocumentKey> key = key(store, parts[0], parts[1]);
    if (key.isEmpty()) {
      return Optional.empty();
    }
    if (parts[2].equals(SAME)) {
      return Optional.of(Notice.same(key.get()));
    }
    List<Revision> history = store.documents().history(key.get());
    return history.stream()
        .filter(it -> Long.toString(it.number()).equals(parts[2]))
        .findFirst()
        .map(it -> Notice.saved(store, it, history.get(0)));
  }

  /** A document of the store by the parts of its address, one that is no longer used too. */
  static Optional<DocumentKey> key(Store store, String kind, String id) {
    return Stream.concat(store.documents().newest().stream(), store.documents().retired().stream())
        .map(Revision::key)
        .filter(it -> Href.part(it.kind()).equals(kind) && Href.part(it.id()).equals(id))
        .findFirst();
  }
}
