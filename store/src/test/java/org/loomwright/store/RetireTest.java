package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.BEN;
import static org.loomwright.store.Samples.VAN;
import static org.loomwright.store.Samples.draft;
import static org.loomwright.store.Samples.van;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;
import org.loomwright.store.merge.Clash;

/** Documents that are no longer used. */
class RetireTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void aRetiredDocumentIsLeftOutAndItsHistoryStays(Place place) {
    StoreTarget target = place.fresh(folder);
    try (Store store = Store.open(target)) {
      store.documents().save(van(", \"a\": 1"), 0);
      store.documents().save(draft(new DocumentKey("job", "car"), "", ANNA), 0);
      Revision retired = saved(store.documents().retire(VAN, 1, BEN));
      assertThat(retired.number()).isEqualTo(2);
      assertThat(retired.by()).isEqualTo(BEN);
      assertThat(retired.retired()).isTrue();
      assertThat(store.documents().retire(VAN, 2, BEN))
          .isEqualTo(new SaveResult.Unchanged(retired));
      assertThat(store.documents().retire(VAN, 1, BEN))
          .isEqualTo(new SaveResult.Unchanged(retired));
    }
    try (Store store = Store.open(target)) {
      Documents documents = store.documents();
      assertThat(documents.newest()).extracting(it -> it.key().id()).containsExactly("car");
      assertThat(documents.newest(VAN)).isEqualTo(Optional.empty());
      assertThat(documents.retired()).extracting(Revision::key).containsExactly(VAN);
      assertThat(documents.history(VAN)).extracting(Revision::retired).containsExactly(true, false);
      assertThat(documents.version(VAN, 2).orElseThrow().content())
          .isEqualTo(van(", \"a\": 1").content());
      assertThat(store.workspaces().content().revisions()).containsOnlyKeys("car.job.json");
      store.workspaces().exportFolder(folder.resolve("out"));
      assertThat(folder.resolve("out")).isDirectoryNotContaining("glob:**van*");

      Revision back = saved(documents.goBack(VAN, 1, 2, ANNA));
      assertThat(back.number()).isEqualTo(3);
      assertThat(back.retired()).isFalse();
      assertThat(documents.newest(VAN).orElseThrow().content()).contains("\"a\": 1");
      assertThat(documents.retired()).isEmpty();
      assertThat(store.verify()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void retiringWhatSomeoneElseEditedIsAConflict(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1"), 0);
      store.documents().save(van(", \"a\": 2"), 1);
      SaveResult.Conflict conflict = (SaveResult.Conflict) store.documents().retire(VAN, 1, BEN);
      assertThat(conflict.theirs().revision().number()).isEqualTo(2);
      assertThat(conflict.yours()).isEmpty();
      assertThat(conflict.clashes())
          .containsExactly(
              new Clash(
                  "",
                  Optional.of(van(", \"a\": 1").content()),
                  Optional.of(van(", \"a\": 2").content()),
                  Optional.empty()));
      assertThat(store.documents().history(VAN)).hasSize(2);
    }
  }

  @ParameterizedTest
  @EnumSource
  void editingWhatSomeoneElseRetiredIsAConflict(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1, \"b\": 1"), 0);
      store.documents().retire(VAN, 1, BEN);
      // Also where nothing was changed, or the document is thought to be new.
      for (Draft late : List.of(van(", \"a\": 2, \"b\": 1"), van(", \"a\": 1, \"b\": 1"))) {
        for (long basedOn : List.of(0L, 1L)) {
          SaveResult.Conflict conflict =
              (SaveResult.Conflict) store.documents().save(late, basedOn);
          assertThat(conflict.theirs().revision().retired()).isTrue();
          assertThat(conflict.clashes())
              .singleElement()
              .satisfies(it -> assertThat(it.theirs()).isEqualTo(Optional.empty()))
              .satisfies(it -> assertThat(it.yours()).contains(late.content()));
        }
      }
      assertThat(store.documents().goBack(VAN, 1, 1, ANNA)).isInstanceOf(SaveResult.Conflict.class);
      assertThat(store.documents().history(VAN)).hasSize(2);
      // Who has seen that it is retired may bring it back, with or without an edit.
      assertThat(saved(store.documents().save(van(", \"a\": 1, \"b\": 1"), 2)).retired()).isFalse();
    }
  }

  @ParameterizedTest
  @EnumSource
  void anImportBringsItBackAndPicturesCanBeRetiredToo(Place place) throws IOException {
    Path in = Files.createDirectory(folder.resolve("in"));
    Files.writeString(in.resolve("van.json"), van(", \"photo\": \"plan.png\"").content());
    Files.copy(Path.of("../demo/van-plan.png"), in.resolve("plan.png"));
    DocumentKey picture = new DocumentKey(DocumentKey.PICTURE, "plan.png");
    try (Store store = Store.open(place.fresh(folder))) {
      WorkspacesTest.done(store.workspaces().importFolder(in, ANNA));
      saved(store.documents().retire(VAN, 1, ANNA));
      saved(store.documents().retire(picture, 1, ANNA));
      assertThat(store.workspaces().content().pictures()).isEmpty();
      assertThat(store.pictures().named("plan.png")).isEqualTo(Optional.empty());
      ImportResult.Done done = WorkspacesTest.done(store.workspaces().importFolder(in, BEN));
      assertThat(done.changed()).extracting(Revision::number).containsExactly(3L);
      assertThat(done.pictures()).containsExactly("plan.png");
      assertThat(store.workspaces().content().revisions())
          .containsOnlyKeys("plan.png", "van.job.json");
      assertThat(store.verify()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void refusalsNameTheDocument(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      assertThatThrownBy(() -> store.documents().retire(VAN, 1, ANNA))
          .isInstanceOf(StoreException.class)
          .hasMessageStartingWith("job 'van' is not in the store");
      store.documents().save(van(""), 0);
      assertThatThrownBy(() -> store.documents().retire(VAN, 3, ANNA))
          .hasMessage("job 'van' has no revision 3; its newest is 1");
      ReleasesTest.demo(store);
      DocumentKey vehicle = new DocumentKey("vehicle", "packer");
      saved(store.documents().retire(vehicle, 1, ANNA));
      ReleaseDraft good = ReleasesTest.draft(store, Verdict.HOLDS, ANNA);
      List<Pin> pins = new java.util.ArrayList<>(good.pins());
      pins.add(new Pin(vehicle, 2));
      assertThatThrownBy(
              () ->
                  store
                      .releases()
                      .release(new ReleaseDraft("trailer", pins, Verdict.HOLDS, good.pack(), ANNA)))
          .hasMessage(
              "kit 'trailer' can't be released: vehicle 'packer' is retired; bring it back, or plan"
                  + " the kit without it");
    }
  }

  private static Revision saved(SaveResult result) {
    assertThat(result).isInstanceOf(SaveResult.Saved.class);
    return ((SaveResult.Saved) result).revision();
  }
}
