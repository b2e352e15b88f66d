package org.loomwright.web.shop;

import java.util.List;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.store.Store;
import org.loomwright.store.WorkspaceContent;

/** The documents of a store. */
record StoreSource(Store store, String where) implements ShopSource {

  @Override
  public Read read() {
    WorkspaceContent content = store.workspaces().content();
    if (content.documents().isEmpty()) {
      return new Read.Good(Workspace.empty(), List.of());
    }
    return WorkspaceReader.read(content.documents(), content.pictures());
  }

  @Override
  public Object state() {
    return store.state();
  }
}
