package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.workspace.NamedText;

/** The documents of a moment with one of them changed. */
class WorkspaceContentTest {
  @TempDir Path folder;

  @Test
  void oneTextIsReplacedAddedOrLeftOut() {
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      ReleasesTest.demo(store);
      WorkspaceContent content = store.workspaces().content();
      DocumentKey kit = new DocumentKey("kit", "trailer");
      NamedText changed = new NamedText("trailer.kit.json", "{}");

      assertThat(content.with(kit, "{}"))
          .hasSameSizeAs(content.documents())
          .contains(changed)
          .filteredOn(it -> !it.equals(changed))
          .isSubsetOf(content.documents());
      assertThat(content.without(kit))
          .isSubsetOf(content.documents())
          .hasSize(content.documents().size() - 1)
          .noneMatch(it -> it.name().equals("trailer.kit.json"));

      DocumentKey fresh = new DocumentKey("kit", "other");
      assertThat(content.with(fresh, "{}"))
          .containsAll(content.documents())
          .hasSize(content.documents().size() + 1)
          .endsWith(new NamedText("other.kit.json", "{}"));
      assertThat(content.without(fresh)).isEqualTo(content.documents());
    }
  }
}
