package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.BEN;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;

/** What a release pins, and when there is none. */
class ReleasesTest {
  private static final byte[] PDF = {'%', 'P', 'D', 'F', 0, -1};
  static final Map<String, byte[]> PACK =
      Map.of("pack.pdf", PDF, "leads.csv", "a,b\r\n".getBytes(StandardCharsets.UTF_8));

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
      // printf 'a,b\r\n' | sha256sum
      assertThat(release.pack())
          .containsOnlyKeys("leads.csv", "pack.pdf")
          .containsEntry(
              "leads.csv", "fbf6b30113a4b6418c623a96ed6844f17ef5751b908a16abaa919d0bcd6b7784");
      assertThat(release.packKept()).isTrue();
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
      assertThat(store.releases().next("trailer")).isEqualTo(1);
      assertRefused(
          store,
          new ReleaseDraft("trailer", good.pins(), Verdict.HOLDS, PACK, BEN, Optional.of(2L)),
          "its papers name number 2, but the next release is number 1");
      byte[] large = new byte[PackFiles.LARGEST_FILE + 1];
      assertRefused(
          store,
          pack(good, Map.of("a.pdf", large)),
          "the pack's file 'a.pdf' has 64000001 bytes; at most 64000000 are kept");
      byte[] half = new byte[51_000_000];
      assertRefused(
          store,
          pack(good, Map.of("a.pdf", half, "b.pdf", half, "c.pdf", half, "d.pdf", half)),
          "its pack has 204000000 bytes; at most 200000000 are kept");
      for (String name : List.of(" ", "../a.pdf", "/a.pdf", "a\0b", "C:a.pdf", "a\\b", "a//b")) {
        assertRefused(
            store,
            pack(good, Map.of(name, PDF)),
            "the pack's file '" + name.replace('\0', '?') + "' can't be kept under this name");
      }
      assertThat(store.releases().of("trailer")).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void itsPackIsThereByteForByte(Place place) {
    StoreTarget target = place.fresh(folder);
    // Larger than what the databases keep in one piece.
    byte[] drawing = new byte[5_000_000];
    new Random(1).nextBytes(drawing);
    try (Store store = Store.open(target)) {
      demo(store);
      ReleaseDraft draft = draft(store, Verdict.HOLDS, BEN);
      store.releases().release(draft);
      store.releases().release(pack(draft, Map.of("pack.pdf", PDF, "drawings/1.dxf", drawing)));
      store.releases().release(pack(draft, Map.of("same.pdf", PDF, "empty.txt", new byte[0])));
      // The same bytes are kept once.
      assertThat(store.summary().files()).isEqualTo(4);
    }
    try (Store store = Store.open(target)) {
      Releases releases = store.releases();
      assertThat(releases.all()).extracting(Release::number).containsExactly(3L, 2L, 1L);
      assertThat(releases.file("trailer", 1, "pack.pdf")).contains(PDF);
      assertThat(releases.file("trailer", 2, "drawings/1.dxf")).contains(drawing);
      assertThat(releases.file("trailer", 3, "same.pdf")).contains(PDF);
      assertThat(releases.file("trailer", 3, "empty.txt")).contains(new byte[0]);
      assertThat(releases.file("trailer", 3, "pack.pdf")).isEqualTo(Optional.empty());
      assertThat(releases.file("trailer", 4, "pack.pdf")).isEqualTo(Optional.empty());
      assertThat(releases.file("van", 1, "pack.pdf")).isEqualTo(Optional.empty());
      assertThat(store.verify()).isEmpty();
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

  private static ReleaseDraft pack(ReleaseDraft draft, Map<String, byte[]> pack) {
    return new ReleaseDraft(draft.kit(), draft.pins(), draft.verdict(), pack, draft.by());
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
