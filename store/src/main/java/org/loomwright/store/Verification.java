package org.loomwright.store;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Recomputes every hash and every chain of a store. */
final class Verification {
  private final Handle handle;
  private final List<Damage> found = new ArrayList<>();
  private String seal = "";
  private long seq;

  private Verification(Handle handle) {
    this.handle = handle;
  }

  static List<Damage> of(Handle handle, Vendor vendor) {
    Verification verification = new Verification(handle);
    if (vendor.isSqlite()) {
      verification.file();
    }
    verification.revisions();
    verification.blobs();
    verification.papers();
    verification.pictures();
    verification.releases();
    return List.copyOf(verification.found);
  }

  private void file() {
    handle
        .createQuery("PRAGMA integrity_check")
        .mapTo(String.class)
        .filter(it -> !it.equals("ok"))
        .forEach(it -> found.add(new Damage("the database file", it)));
    handle
        .createQuery("PRAGMA foreign_key_check")
        .map((row, context) -> row.getString("table"))
        .forEach(it -> found.add(new Damage("table " + it, "a row points to one that is missing")));
  }

  private void revisions() {
    Map<List<String>, RevisionRow> before = new HashMap<>();
    RevisionRow.forEach(handle, row -> revision(row, before));
  }

  private void revision(RevisionRow row, Map<List<String>, RevisionRow> before) {
    follows(row.shown(), row.seq());
    if (!Hashes.of(row.content()).equals(row.contentHash())) {
      found.add(new Damage(row.shown(), "its text is not the one that was saved"));
    }
    RevisionRow last = before.put(List.of(row.kind(), row.id()), withoutText(row));
    if (row.number() != (last == null ? 1 : last.number() + 1)) {
      found.add(new Damage(row.shown(), "the revision before it is missing"));
    } else if (!row.previousHash().equals(last == null ? "" : last.contentHash())) {
      found.add(new Damage(row.shown(), "the text before it is not the one it was saved after"));
    }
    for (String it : PackFiles.list(row.papers())) {
      if (!PackFiles.isThere(handle, it)) {
        found.add(new Damage(row.shown(), "its paper " + it + " is missing"));
      }
    }
    try {
      sealed(row.shown(), row.seal(), Revisions.seal(seal, row.seq(), row.revision()));
    } catch (StoreException | DateTimeException e) {
      found.add(new Damage(row.shown(), String.valueOf(e.getMessage())));
    }
    seal = row.seal();
  }

  private static RevisionRow withoutText(RevisionRow row) {
    return new RevisionRow(
        row.seq(),
        row.kind(),
        row.id(),
        row.number(),
        row.basedOn(),
        "",
        "",
        "",
        "",
        row.contentHash(),
        "",
        "",
        row.retired(),
        "");
  }

  private void follows(String where, long next) {
    if (next != seq + 1) {
      found.add(new Damage(where, "what was saved just before it is missing"));
    }
    seq = next;
  }

  private void sealed(String where, String written, String expected) {
    if (!written.equals(expected)) {
      found.add(
          new Damage(where, "who, when, why or its place in the order is not as it was written"));
    }
  }

  private void blobs() {
    hashes("SELECT hash FROM blob").stream()
        .filter(it -> !Hashes.of(StoredPictures.bytes(handle, it).orElseThrow()).equals(it))
        .forEach(it -> found.add(new Damage("picture " + it, "its bytes are not those saved")));
  }

  private void papers() {
    hashes("SELECT hash FROM paper").stream()
        .filter(it -> !Hashes.of(PackFiles.bytes(handle, it).orElseThrow()).equals(it))
        .forEach(
            it ->
                found.add(
                    new Damage("paper or file of a pack " + it, "its bytes are not those saved")));
  }

  private void pictures() {
    handle
        .createQuery("SELECT id, number, content FROM revision WHERE kind = :kind ORDER BY seq")
        .bind("kind", DocumentKey.PICTURE)
        .map(
            (row, context) ->
                List.of(
                    row.getString(1), row.getString(2), StoredPictures.hashIn(row.getString(3))))
        .list()
        .stream()
        .filter(it -> StoredPictures.find(handle, it.get(2)).isEmpty())
        .forEach(
            it ->
                found.add(
                    new Damage(
                        "picture '" + it.get(0) + "', revision " + it.get(1),
                        "its bytes are missing")));
  }

  private void releases() {
    seal = "";
    seq = 0;
    for (ReleaseRows.Sealed row : ReleaseRows.all(handle)) {
      Release release = row.release();
      String where = "kit '" + release.kit() + "', release " + release.number();
      follows(where, row.seq());
      sealed(where, row.seal(), ReleaseRows.seal(seal, row.seq(), release));
      seal = row.seal();
      pins(where, release);
      if (release.packKept()) {
        pack(where, release);
      }
    }
  }

  private void pins(String where, Release release) {
    for (Release.PinnedText pin : release.pins()) {
      boolean same =
          Revisions.version(handle, pin.pin().key(), pin.pin().number())
              .filter(it -> it.revision().contentHash().equals(pin.contentHash()))
              .isPresent();
      if (!same) {
        found.add(
            new Damage(
                where,
                "it pins a text of "
                    + pin.pin().key().shown()
                    + ", revision "
                    + pin.pin().number()
                    + ", that is no longer there"));
      }
    }
  }

  private void pack(String where, Release release) {
    release
        .pack()
        .forEach(
            (name, hash) -> {
              if (!PackFiles.isThere(handle, hash)) {
                found.add(new Damage(where, "its file '" + name + "' is missing"));
              }
            });
  }

  private List<String> hashes(String sql) {
    return handle.createQuery(sql).mapTo(String.class).list();
  }
}
