package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.BEN;
import static org.loomwright.store.Samples.VAN;
import static org.loomwright.store.Samples.draft;
import static org.loomwright.store.Samples.van;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Saving, history, merging and conflicts. */
class DocumentsTest {
  private static final Instant NOON = Instant.parse("2026-03-01T12:00:00.123456Z");

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void everySaveIsOneMoreRevision(Place place) {
    StoreTarget target = place.fresh(folder);
    try (Store store = Store.open(target, Clock.fixed(NOON, ZoneOffset.UTC))) {
      Revision one = saved(store.documents().save(van(", \"a\": 1"), 0));
      Revision two = saved(store.documents().save(van(", \"a\": 2"), 1));
      assertThat(one.number()).isEqualTo(1);
      assertThat(one.by()).isEqualTo(ANNA);
      assertThat(one.savedAt()).isEqualTo("2026-03-01T12:00:00.123Z");
      assertThat(one.previousHash()).isEmpty();
      // printf '{"kind": "job", "id": "van", "a": 1}' | sha256sum
      assertThat(one.contentHash())
          .isEqualTo("63da01ff4a345faadb0575b10db4b7c168e71835b2e1f97e8aee036b38e0c6fd");
      assertThat(two.previousHash()).isEqualTo(one.contentHash());
    }
    try (Store store = Store.open(target)) {
      List<Revision> history = store.documents().history(VAN);
      assertThat(history).extracting(Revision::number).containsExactly(2L, 1L);
      assertThat(content(store, 1)).isEqualTo(van(", \"a\": 1").content());
      assertThat(content(store, 2)).isEqualTo(van(", \"a\": 2").content());
      assertThat(store.documents().version(VAN, 3)).isEqualTo(Optional.empty());
      assertThat(store.documents().newest()).isEqualTo(history.subList(0, 1));
    }
  }

  @ParameterizedTest
  @EnumSource
  void editsOfDifferentPartsAreMerged(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1, \"b\": 1"), 0);
      store.documents().save(van(", \"a\": 2, \"b\": 1"), 1);
      SaveResult result = store.documents().save(draft(VAN, ", \"a\": 1, \"b\": 9", BEN), 1);
      assertThat(result).isInstanceOf(SaveResult.Merged.class);
      SaveResult.Merged merged = (SaveResult.Merged) result;
      assertThat(merged.merged().content()).contains("\"a\" : 2").contains("\"b\" : 9");
      assertThat(merged.merged().revision().basedOn()).isEqualTo(1);
      assertThat(merged.merged().revision().number()).isEqualTo(3);
      assertThat(merged.theirs().number()).isEqualTo(2);
      assertThat(store.documents().newest(VAN)).contains(merged.merged());
    }
  }

  @ParameterizedTest
  @EnumSource
  void editsOfTheSamePartAreShownAndNothingIsWritten(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1"), 0);
      store.documents().save(van(", \"a\": 2"), 1);
      Draft late = draft(VAN, ", \"a\": 3", BEN);
      SaveResult.Conflict conflict = (SaveResult.Conflict) store.documents().save(late, 1);
      assertThat(conflict.base().orElseThrow().content()).contains("\"a\": 1");
      assertThat(conflict.theirs().content()).contains("\"a\": 2");
      assertThat(conflict.yours()).isEqualTo(late.content());
      assertThat(conflict.clashes()).hasSize(1);
      assertThat(conflict.clashes().get(0).path()).isEqualTo("a");
      assertThat(conflict.clashes().get(0).yours()).contains("3");
      assertThat(store.documents().history(VAN)).hasSize(2);
    }
  }

  /** Papers say what one text says; what others saved meanwhile would not be in them. */
  @ParameterizedTest
  @EnumSource
  void papersAreKeptWithTheTextTheyWereMadeOf(Place place) {
    byte[] paper = "as fitted".getBytes(StandardCharsets.UTF_8);
    byte[] sheet = "for the owner".getBytes(StandardCharsets.UTF_8);
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1, \"b\": 1"), 0);
      store.documents().save(van(", \"a\": 2, \"b\": 1"), 1);
      Draft signed =
          new Draft(VAN, van(", \"a\": 1, \"b\": 9").content(), BEN, List.of(paper, sheet));
      assertThat(store.documents().save(signed, 1)).isInstanceOf(SaveResult.Conflict.class);
      assertThat(store.papers().find(Papers.hash(paper))).isEqualTo(Optional.empty());
      Revision kept = saved(store.documents().save(signed, 2));
      assertThat(kept.papers())
          .containsExactlyInAnyOrder(Papers.hash(paper), Papers.hash(sheet))
          .isSorted();
      assertThat(store.papers().find(Papers.hash(paper))).contains(paper);
      // The same paper again is kept once, and stays when the text goes on.
      store.documents().save(new Draft(VAN, signed.content() + " ", BEN, List.of(paper)), 3);
      store.documents().save(van(", \"a\": 5"), 4);
      assertThat(store.documents().history(VAN).get(0).papers()).isEmpty();
      assertThat(store.papers().find(Papers.hash(paper))).contains(paper);
      assertThat(store.verify()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void twoNewDocumentsOfOneNameConflict(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1"), 0);
      assertThat(store.documents().save(van(", \"a\": 1"), 0))
          .isInstanceOf(SaveResult.Unchanged.class);
      SaveResult.Conflict conflict =
          (SaveResult.Conflict) store.documents().save(van(", \"a\": 2"), 0);
      assertThat(conflict.base()).isEqualTo(Optional.empty());
      assertThat(conflict.clashes().get(0).path()).isEmpty();
    }
  }

  /** What two people changed alike is there once, and no revision says it again. */
  @ParameterizedTest
  @EnumSource
  void anEditThatIsThereAlreadyMakesNoRevision(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1, \"b\": 1"), 0);
      store.documents().save(van(", \"a\": 2, \"b\": 2"), 1);
      assertThat(store.documents().save(van(", \"a\": 2, \"b\": 1"), 1))
          .isInstanceOf(SaveResult.Unchanged.class);
      assertThat(store.documents().history(VAN)).hasSize(2);
    }
  }

  @ParameterizedTest
  @EnumSource
  void goingBackIsOneMoreRevision(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      store.documents().save(van(", \"a\": 1"), 0);
      store.documents().save(van(", \"a\": 2"), 1);
      Revision back = saved(store.documents().goBack(VAN, 1, 2, BEN));
      assertThat(back.number()).isEqualTo(3);
      assertThat(content(store, 3)).isEqualTo(content(store, 1));
      assertThat(content(store, 2)).contains("\"a\": 2");
    }
  }

  @ParameterizedTest
  @EnumSource
  void refusalsNameTheDocumentAndWhatWouldBeRight(Place place) {
    try (Store store = Store.open(place.fresh(folder))) {
      Documents documents = store.documents();
      assertThatThrownBy(() -> documents.save(van(""), 4))
          .hasMessage("job 'van' is not in the store; save it as new, based on revision 0");
      documents.save(van(""), 0);
      assertThatThrownBy(() -> documents.save(van(", \"a\": 1"), 4))
          .hasMessage("job 'van' has no revision 4; its newest is 1");
      assertThatThrownBy(() -> documents.save(new Draft(VAN, "{\"kind\": ", ANNA), 1))
          .hasMessageStartingWith("job 'van', line 1, column ")
          .hasMessageContaining("this is not JSON");
      DocumentKey other = new DocumentKey("job", "car");
      assertThatThrownBy(() -> documents.save(new Draft(other, van("").content(), ANNA), 0))
          .hasMessage(
              "job 'car': the text says it is job 'van'; its \"kind\" must be \"job\" and its"
                  + " \"id\" \"car\"");
      assertThat(documents.newest()).hasSize(1);
    }
  }

  /** What was saved as a good document is kept as the model writes it, whatever its layout. */
  @ParameterizedTest
  @EnumSource
  void layoutMakesNoRevision(Place place) throws IOException {
    String given = Files.readString(Path.of("../demo/van.vehicle.json"));
    DocumentKey key = new DocumentKey("vehicle", "packer");
    try (Store store = Store.open(place.fresh(folder))) {
      saved(store.documents().save(new Draft(key, given, ANNA), 0));
      String kept = store.documents().newest(key).orElseThrow().content();
      String wide = kept.replace("\n", "\n   ");
      assertThat(store.documents().save(new Draft(key, wide, ANNA), 1))
          .isInstanceOf(SaveResult.Unchanged.class);
    }
  }

  @Test
  void namesThatCanNotBeKeptAreRefused() {
    assertThatThrownBy(() -> new DocumentKey("Job", "a")).hasMessageContaining("lower case");
    assertThatThrownBy(() -> new DocumentKey("job", " ")).hasMessageContaining("1 to 200");
    assertThatThrownBy(() -> new DocumentKey("job", "a\nb")).hasMessageContaining("'a?b'");
    assertThatThrownBy(() -> new Signature(" ", "")).hasMessageContaining("name of the person");
  }

  private static Revision saved(SaveResult result) {
    assertThat(result).isInstanceOf(SaveResult.Saved.class);
    return ((SaveResult.Saved) result).revision();
  }

  private static String content(Store store, long number) {
    return store.documents().version(VAN, number).orElseThrow().content();
  }
}
