package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.VAN;
import static org.loomwright.store.Samples.van;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;

/** What pages ask: did anything change, and what is there of one moment. */
class StateTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void everySaveByAnyProgramIsSeen(Place place) {
    StoreTarget target = place.fresh(folder);
    try (Store store = Store.open(target);
        Store other = Store.open(target)) {
      assertThat(store.state()).isZero();
      other.documents().save(van(", \"a\": 1"), 0);
      assertThat(store.state()).isEqualTo(1);
      other.documents().save(van(", \"a\": 1"), 1);
      assertThat(store.state()).as("nothing was written").isEqualTo(1);
      other.documents().retire(VAN, 1, ANNA);
      assertThat(store.state()).isEqualTo(2);
      ReleasesTest.demo(other);
      long before = store.state();
      assertThat(before).isEqualTo(18);
      other.releases().release(ReleasesTest.draft(other, Verdict.HOLDS, ANNA));
      assertThat(store.state()).isEqualTo(before + 1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void contentSaysWhichRevisionEachFileIs(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      ReleasesTest.demo(store);
      store.documents().save(van(", \"a\": 1"), 0);
      store.documents().save(van(", \"a\": 2"), 1);
      WorkspaceContent content = store.workspaces().content();
      assertThat(content.state()).isEqualTo(store.state());
      assertThat(content.revisions().values())
          .containsExactlyInAnyOrderElementsOf(store.documents().newest());
      assertThat(content.revisions()).hasSize(17);
      Map<String, String> hashes = new TreeMap<>();
      content.revisions().forEach((name, it) -> hashes.put(name, it.contentHash()));
      assertThat(content.documents())
          .allSatisfy(it -> assertThat(hashes).containsEntry(it.name(), Hashes.of(it.text())));
      assertThat(content.revisions())
          .hasEntrySatisfying("van.job.json", it -> assertThat(it.number()).isEqualTo(2));
      assertThat(content.revisions().keySet()).containsAll(content.pictures().keySet());
    }
  }
}
