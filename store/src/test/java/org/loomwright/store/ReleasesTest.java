package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.BEN;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;

/** What a release pins, and when there is none. */
class ReleasesTest {
  static final Map<String, String> PACK = Map.of("pack.pdf", "0".repeat(64));

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void aReleasePinsExactRevisions(Place place) {
    StoreTarget target = place.fresh(folder);
    List<Release> made = new ArrayList<>();
    try (Store store = Store.open(target)) {
      demo(store);
      made.add(store.releases().release(draft(store, Verdict.HOLDS, BEN)));
      made.add(0, store.releases().release(draft(store, Verdict.MARGINAL, ANNA)));
    }
    try (Store store = Store.open(target)) {
      assertThat(store.releases().of("trailer")).isEqualTo(made);
      assertThat(store.releases().find("trailer", 1)).contains(made.get(1));
      assertThat(store.releases().of("crew-comfort")).isEmpty();
      Release release = made.get(0);
      assertThat(release.number()).isEqualTo(2);
      assertThat(release.by()).isEqualTo(ANNA);
      assertThat(release.pack()).isEqualTo(PACK);
      assertThat(release.pins())
          .extracting(it -> it.pin().key().kind())
          .containsExactly("equipment", "kit", "parts", "rules", "vehicle");
      for (Release.PinnedText it : release.pins()) {
        Version version =
            store.documents().version(it.pin().key(), it.pin().number()).orElseThrow();
        assertThat(Hashes.of(version.content())).isEqualTo(it.contentHash());
      }
      assertThat(store.verify()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void whatIsNotProvenOrNotCompleteIsNotReleased(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      demo(store);
      ReleaseDraft good = draft(store, Verdict.HOLDS, BEN);
      assertRefused(store, draft(store, Verdict.FAILS, ANNA), "a check or the proof fails");
      assertRefused(store, draft(store, Verdict.MARGINAL, BEN), "a check is marginal; say why");
      assertRefused(store, pins(good, good.pins().subList(1, 5)), "no revision of its equipment");
      List<Pin> later = new ArrayList<>(good.pins());
      later.set(4, new Pin(later.get(4).key(), 7));
      assertRefused(
          store, pins(good, later), "vehicle 'packer' has no revision 7 in the store; save it");
      List<Pin> twice = new ArrayList<>(good.pins());
      twice.add(good.pins().get(0));
      assertRefused(store, pins(good, twice), "equipment 'trailer-socket' is pinned twice");
      ReleaseDraft other = new ReleaseDraft("crew-comfort", good.pins(), Verdict.HOLDS, PACK, BEN);
      assertThatThrownBy(() -> store.releases().release(other))
          .hasMessageContaining("the pinned kit is another one");
      assertRefused(
          store,
          new ReleaseDraft("trailer", good.pins(), Verdict.HOLDS, Map.of(), BEN),
          "its pack has no files; write the pack first");
      assertRefused(
          store,
          new ReleaseDraft("trailer", good.pins(), Verdict.HOLDS, Map.of("a.pdf", "12"), BEN),
          "the pack's file 'a.pdf' has the hash '12'; give its SHA-256");
      assertThat(store.releases().of("trailer")).isEmpty();
    }
  }

  static void demo(Store store) {
    WorkspacesTest.done(store.workspaces().importFolder(Path.of("../demo"), ANNA));
  }

  static ReleaseDraft draft(Store store, Verdict verdict, Signature by) {
    List<Pin> pins =
        store.documents().newest().stream()
            .filter(
                it ->
                    List.of("packer", "shop-rules", "bench-stock", "trailer", "trailer-socket")
                        .contains(it.key().id()))
            .map(it -> new Pin(it.key(), it.number()))
            .toList();
    return new ReleaseDraft("trailer", pins, verdict, PACK, by);
  }

  private static ReleaseDraft pins(ReleaseDraft draft, List<Pin> pins) {
    return new ReleaseDraft(draft.kit(), pins, draft.verdict(), draft.pack(), draft.by());
  }

  private static void assertRefused(Store store, ReleaseDraft draft, String why) {
    assertThatThrownBy(() -> store.releases().release(draft))
        .isInstanceOf(StoreException.class)
        .hasMessageStartingWith("kit 'trailer' can't be released: " + why);
  }
}
