package org.loomwright.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.loomwright.model.design.Verdict;

/** The tables of releases. */
final class ReleaseRows {
  private ReleaseRows() {}

  /** A row with its place in the chain. */
  record Sealed(long seq, Release release, String seal) {}

  static void insert(Handle handle, long seq, Release release, String seal) {
    handle
        .createUpdate(
            "INSERT INTO release (seq, kit, number, verdict, reason, author, released_at, seal,"
                + " pack_kept)"
                + " VALUES (:seq, :kit, :number, :verdict, :reason, :author, :at, :seal, :kept)")
        .bind("seq", seq)
        .bind("kit", release.kit())
        .bind("number", release.number())
        .bind("verdict", release.verdict().word())
        .bind("reason", release.by().why())
        .bind("author", release.by().who())
        .bind("at", release.releasedAt().toString())
        .bind("seal", seal)
        .bind("kept", release.packKept() ? 1L : 0L)
        .execute();
    for (Release.PinnedText it : release.pins()) {
      handle
          .createUpdate(
              "INSERT INTO release_pin (kit, release_number, kind, id, number, content_hash)"
                  + " VALUES (:kit, :release, :kind, :id, :number, :hash)")
          .bind("kit", release.kit())
          .bind("release", release.number())
          .bind("kind", it.pin().key().kind())
          .bind("id", it.pin().key().id())
          .bind("number", it.pin().number())
          .bind("hash", it.contentHash())
          .execute();
    }
    release
        .pack()
        .forEach(
            (name, hash) ->
                handle
                    .createUpdate(
                        "INSERT INTO release_file (kit, release_number, name, hash)"
                            + " VALUES (:kit, :release, :name, :hash)")
                    .bind("kit", release.kit())
                    .bind("release", release.number())
                    .bind("name", name)
                    .bind("hash", hash)
                    .execute());
  }

  static List<Release> of(Handle handle, String kit) {
    return all(handle).stream()
        .map(Sealed::release)
        .filter(it -> it.kit().equals(kit))
        .sorted(java.util.Comparator.comparingLong(Release::number).reversed())
        .toList();
  }

  /** All releases in the order they were made; a shop has some hundreds at most. */
  static List<Sealed> all(Handle handle) {
    Map<String, List<Release.PinnedText>> pins = new TreeMap<>();
    handle
        .createQuery("SELECT kit, release_number, kind, id, number, content_hash FROM release_pin")
        .map(
            (row, context) -> {
              Pin pin =
                  new Pin(new DocumentKey(row.getString(3), row.getString(4)), row.getLong(5));
              return Map.entry(
                  name(row.getString(1), row.getLong(2)),
                  new Release.PinnedText(pin, row.getString(6)));
            })
        .forEach(
            it -> pins.computeIfAbsent(it.getKey(), k -> new ArrayList<>()).add(it.getValue()));
    pins.values().forEach(it -> it.sort(java.util.Comparator.comparing(pin -> pin.pin().key())));
    Map<String, Map<String, String>> packs = new TreeMap<>();
    handle
        .createQuery("SELECT kit, release_number, name, hash FROM release_file")
        .map(
            (row, context) ->
                List.of(name(row.getString(1), row.getLong(2)), row.getString(3), row.getString(4)))
        .forEach(
            it -> packs.computeIfAbsent(it.get(0), k -> new TreeMap<>()).put(it.get(1), it.get(2)));
    return handle
        .createQuery(
            "SELECT seq, kit, number, verdict, reason, author, released_at, seal, pack_kept"
                + " FROM release ORDER BY seq")
        .map(
            (row, context) -> {
              String name = name(row.getString("kit"), row.getLong("number"));
              Release release =
                  new Release(
                      row.getString("kit"),
                      row.getLong("number"),
                      pins.getOrDefault(name, List.of()),
                      Verdict.valueOf(row.getString("verdict").toUpperCase(Locale.ROOT)),
                      packs.getOrDefault(name, Map.of()),
                      row.getLong("pack_kept") == 1,
                      new Signature(row.getString("author"), row.getString("reason")),
                      Instant.parse(row.getString("released_at")));
              return new Sealed(row.getLong("seq"), release, row.getString("seal"));
            })
        .list();
  }

  static Optional<String> fileHash(Handle handle, String kit, long number, String name) {
    return handle
        .createQuery(
            "SELECT hash FROM release_file"
                + " WHERE kit = :kit AND release_number = :release AND name = :name")
        .bind("kit", kit)
        .bind("release", number)
        .bind("name", name)
        .mapTo(String.class)
        .findFirst();
  }

  private static String name(String kit, long number) {
    return number + " " + kit;
  }

  /** Binds a release to all before it and to all it pins. */
  static String seal(String before, long seq, Release release) {
    List<String> fields =
        new ArrayList<>(
            List.of(
                before,
                Long.toString(seq),
                release.kit(),
                Long.toString(release.number()),
                release.verdict().word(),
                release.by().who(),
                release.by().why(),
                release.releasedAt().toString()));
    for (Release.PinnedText it : release.pins()) {
      fields.addAll(
          List.of(
              it.pin().key().kind(),
              it.pin().key().id(),
              Long.toString(it.pin().number()),
              it.contentHash()));
    }
    release.pack().forEach((name, hash) -> fields.addAll(List.of(name, hash)));
    // One field more only here, so that seals from before packs were kept still hold.
    if (release.packKept()) {
      fields.add("kept");
    }
    return Hashes.seal(fields);
  }
}
