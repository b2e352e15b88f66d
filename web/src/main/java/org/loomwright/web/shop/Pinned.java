package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Pin;
import org.loomwright.store.Store;
import org.loomwright.store.WorkspaceContent;

/**
 * A kit with the exact revisions it is made of, all of one moment.
 *
 * @param order the kit with its documents
 * @param pins their revisions
 */
public record Pinned(KitOrder order, List<Pin> pins) {
  public Pinned {
    pins = List.copyOf(pins);
  }

  /** The newest state of a kit; empty when it can't be read. */
  public static Optional<Pinned> of(Store store, String kitId) {
    WorkspaceContent content = store.workspaces().content();
    if (!(WorkspaceReader.read(content.documents(), content.pictures()) instanceof Read.Good good)
        || !(KitOrders.resolve(good.workspace(), kitId) instanceof KitOrders.Found found)) {
      return Optional.empty();
    }
    Kit kit = found.order().kit();
    List<DocumentKey> keys = new ArrayList<>();
    keys.add(new DocumentKey("kit", kit.id()));
    keys.add(new DocumentKey("vehicle", kit.vehicle()));
    keys.add(new DocumentKey("rules", kit.rules()));
    kit.parts().forEach(it -> keys.add(new DocumentKey("parts", it)));
    found.order().equipment().stream()
        .map(Equipment::id)
        .forEach(it -> keys.add(new DocumentKey("equipment", it)));
    List<Pin> pins =
        content.revisions().values().stream()
            .filter(it -> keys.contains(it.key()))
            .map(it -> new Pin(it.key(), it.number()))
            .toList();
    return Optional.of(new Pinned(found.order(), pins));
  }
}
