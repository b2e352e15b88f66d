package org.loomwright.model.stock;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.document.Document;

/**
 * A number of kits made in one go: of one release and one part number.
 *
 * @param id name used in addresses and references
 * @param name a few words that tell it from others in a list
 * @param revision revision as the shop writes it
 * @param kit kit document
 * @param release number of the release they were made from
 * @param partNumber part number they have
 * @param made day they were made, such as 2026-03-04
 * @param by who made them
 * @param items each kit made, by serial number
 */
public record Batch(
    String id,
    String name,
    String revision,
    String kit,
    int release,
    String partNumber,
    String made,
    String by,
    List<StockItem> items)
    implements Document {
  public Batch {
    items = List.copyOf(items);
  }

  /** The kit with this serial number. */
  public Optional<StockItem> item(String serial) {
    return items.stream().filter(it -> it.serial().equals(serial)).findFirst();
  }

  /** How many of them are in a state. */
  public long count(StockState state) {
    return items.stream().filter(it -> it.state() == state).count();
  }
}
