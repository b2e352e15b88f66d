package org.loomwright.web.shop;

import java.util.Optional;
import org.loomwright.store.Store;

/** What the pages work with: the documents, the plans of the kits, and the store behind both. */
public final class Workbench implements AutoCloseable {
  private final Shop.Reader reader;
  private final PlanDesk desk = new PlanDesk();
  private final Optional<Store> store;

  private Workbench(ShopSource source, Optional<Store> store) {
    this.reader = new Shop.Reader(source);
    this.store = store;
  }

  /** Documents that can be looked at only. */
  public static Workbench reading(ShopSource source) {
    return new Workbench(source, Optional.empty());
  }

  /** Documents of a store, which pages can change. The store is closed by who opened it. */
  public static Workbench on(Store store, String where) {
    return new Workbench(new StoreSource(store, where), Optional.of(store));
  }

  /** The documents as they are now. */
  public Shop now() {
    return reader.now();
  }

  /** Plans of the kits. */
  public PlanDesk desk() {
    return desk;
  }

  /** The store; absent where documents can be looked at only. */
  public Optional<Store> store() {
    return store;
  }

  /** Stops planning. */
  @Override
  public void close() {
    desk.close();
  }
}
