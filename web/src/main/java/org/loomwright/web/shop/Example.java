package org.loomwright.web.shop;

import org.loomwright.store.ImportResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;

/** Example documents with which a person can begin. */
public interface Example {
  /** Takes them into a store. */
  ImportResult into(Store store, Signature by);
}
