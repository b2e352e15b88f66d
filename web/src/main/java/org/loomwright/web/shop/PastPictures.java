package org.loomwright.web.shop;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.model.json.JsonText;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;

/** Pictures for documents of the past, which may name some that are no longer used. */
final class PastPictures {
  private PastPictures() {}

  /** The pictures in use and those retired, by file name. */
  static Map<String, byte[]> of(Store store) {
    Map<String, byte[]> pictures = new TreeMap<>(store.workspaces().content().pictures());
    for (Revision it : store.documents().retired()) {
      if (it.key().kind().equals(DocumentKey.PICTURE)) {
        store
            .documents()
            .version(it.key(), it.number())
            .flatMap(named -> bytes(store, named))
            .ifPresent(bytes -> pictures.putIfAbsent(it.key().id(), bytes));
      }
    }
    return pictures;
  }

  private static Optional<byte[]> bytes(Store store, Version named) {
    return JsonText.parse(named.content()) instanceof JsonText.Tree tree
        ? store.pictures().bytes(tree.node().path("blob").asString(""))
        : Optional.empty();
  }
}
