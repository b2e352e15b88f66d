package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Release;
import org.loomwright.store.Store;

/**
 * A release with the documents it was made of.
 *
 * @param number number of the release
 * @param order the kit with the revisions it was released with
 */
public record ReleasedOrder(long number, KitOrder order) {
  /** A release; empty when its documents can't be read any more. */
  public static Optional<ReleasedOrder> of(Store store, Release release) {
    List<NamedText> texts = new ArrayList<>();
    for (Release.PinnedText it : release.pins()) {
      DocumentKey key = it.pin().key();
      store
          .documents()
          .version(key, it.pin().number())
          .ifPresent(
              text ->
                  texts.add(new NamedText(key.id() + "." + key.kind() + ".json", text.content())));
    }
    return WorkspaceReader.read(texts, store.workspaces().content().pictures())
                instanceof Read.Good good
            && KitOrders.resolve(good.workspace(), release.kit()) instanceof KitOrders.Found found
        ? Optional.of(new ReleasedOrder(release.number(), found.order()))
        : Optional.empty();
  }
}
