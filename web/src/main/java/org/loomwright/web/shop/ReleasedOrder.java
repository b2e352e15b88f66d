package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Problem;
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
  /** What came of reading a release. */
  public sealed interface Result {}

  /** Its kit. */
  public record Good(ReleasedOrder released) implements Result {}

  /**
   * It can't be read any more.
   *
   * @param why a clause
   */
  public record Bad(String kit, long number, String why) implements Result {}

  /** A release; empty when its documents can't be read any more. */
  public static Optional<ReleasedOrder> of(Store store, Release release) {
    return read(store, release) instanceof Good good
        ? Optional.of(good.released())
        : Optional.empty();
  }

  /** Reads a release. */
  static Result read(Store store, Release release) {
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
    Read read = WorkspaceReader.read(texts, PastPictures.of(store));
    if (read instanceof Read.Bad bad) {
      return unread(release, bad.problems().get(0));
    }
    KitOrders.Resolved kit = KitOrders.resolve(((Read.Good) read).workspace(), release.kit());
    return kit instanceof KitOrders.Found found
        ? new Good(new ReleasedOrder(release.number(), found.order()))
        : unread(release, ((KitOrders.NotFound) kit).problem());
  }

  private static Bad unread(Release release, Problem problem) {
    return new Bad(
        release.kit(),
        release.number(),
        "its documents can't be read any more (" + problem.words() + ")");
  }
}
