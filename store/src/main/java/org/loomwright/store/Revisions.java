package org.loomwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The table of revisions. */
final class Revisions {
  private static final String HEAD =
      "SELECT kind, id, number, based_on, author, saved_at, reason, content_hash, previous_hash,"
          + " retired, papers";

  private static final String NEWEST =
      " FROM revision r WHERE number = (SELECT max(number) FROM revision n"
          + " WHERE n.kind = r.kind AND n.id = r.id) AND retired = :retired";

  /** Stands for the seal of the last row while a table is empty. */
  private static final String FIRST_SEAL = "";

  private Revisions() {}

  static Revision insert(
      Handle handle,
      Draft draft,
      String content,
      long basedOn,
      Optional<Revision> newest,
      Instant at,
      boolean retired,
      List<String> papers) {
    Revision revision =
        new Revision(
            draft.key(),
            newest.map(Revision::number).orElse(0L) + 1,
            basedOn,
            draft.by(),
            at,
            Hashes.of(content),
            newest.map(Revision::contentHash).orElse(""),
            retired,
            papers);
    Tail tail = tail(handle, "revision");
    insert(handle, tail.seq() + 1, revision, content, seal(tail.seal(), tail.seq() + 1, revision));
    return revision;
  }

  static void insert(Handle handle, long seq, Revision revision, String content, String seal) {
    handle
        .createUpdate(
            "INSERT INTO revision (seq, kind, id, number, based_on, author, saved_at, reason,"
                + " content, content_hash, previous_hash, seal, retired, papers) VALUES (:seq, :kind, :id, :number,"
                + " :basedOn, :author, :savedAt, :reason, :content, :contentHash, :previousHash,"
                + " :seal, :retired, :papers)")
        .bind("seq", seq)
        .bind("kind", revision.key().kind())
        .bind("id", revision.key().id())
        .bind("number", revision.number())
        .bind("basedOn", revision.basedOn())
        .bind("author", revision.by().who())
        .bind("savedAt", revision.savedAt().toString())
        .bind("reason", revision.by().why())
        .bind("content", content)
        .bind("contentHash", revision.contentHash())
        .bind("previousHash", revision.previousHash())
        .bind("seal", seal)
        .bind("retired", revision.retired() ? 1L : 0L)
        .bind("papers", String.join(" ", revision.papers()))
        .execute();
  }

  /** Binds a row to all rows before it: none can be changed, moved or taken out unnoticed. */
  static String seal(String before, long seq, Revision revision) {
    List<String> fields =
        new ArrayList<>(
            List.of(
                before,
                Long.toString(seq),
                revision.key().kind(),
                revision.key().id(),
                Long.toString(revision.number()),
                Long.toString(revision.basedOn()),
                revision.by().who(),
                revision.savedAt().toString(),
                revision.by().why(),
                revision.contentHash(),
                revision.previousHash()));
    // More fields only here, so that seals from before there were such revisions still hold.
    if (revision.retired()) {
      fields.add("retired");
    }
    if (!revision.papers().isEmpty()) {
      fields.add("papers");
      fields.addAll(revision.papers());
    }
    return Hashes.seal(fields);
  }

  /** The last row of a sealed table. */
  record Tail(long seq, String seal) {}

  static Tail tail(Handle handle, String table) {
    return handle
        .createQuery("SELECT seq, seal FROM " + table + " ORDER BY seq DESC LIMIT 1")
        .map((row, context) -> new Tail(row.getLong(1), row.getString(2)))
        .findFirst()
        .orElse(new Tail(0, FIRST_SEAL));
  }

  /** Grows by one with every revision and every release. */
  static long state(Handle handle) {
    return tail(handle, "revision").seq() + tail(handle, "release").seq();
  }

  /** The newest revision of a document, also one that says it is retired. */
  static Optional<Version> newest(Handle handle, DocumentKey key) {
    return handle
        .createQuery(
            HEAD
                + ", content FROM revision WHERE kind = :kind AND id = :id"
                + " ORDER BY number DESC LIMIT 1")
        .bind("kind", key.kind())
        .bind("id", key.id())
        .map((row, context) -> new Version(revision(row), row.getString("content")))
        .findFirst();
  }

  static Optional<Version> version(Handle handle, DocumentKey key, long number) {
    return handle
        .createQuery(
            HEAD + ", content FROM revision WHERE kind = :kind AND id = :id AND number = :number")
        .bind("kind", key.kind())
        .bind("id", key.id())
        .bind("number", number)
        .map((row, context) -> new Version(revision(row), row.getString("content")))
        .findFirst();
  }

  static List<Revision> history(Handle handle, DocumentKey key) {
    return handle
        .createQuery(HEAD + " FROM revision WHERE kind = :kind AND id = :id ORDER BY number DESC")
        .bind("kind", key.kind())
        .bind("id", key.id())
        .map((row, context) -> revision(row))
        .list();
  }

  /** The newest revision of every document that is in use, or that is retired, by key. */
  static List<Revision> newest(Handle handle, boolean retired) {
    return handle
        .createQuery(HEAD + NEWEST)
        .bind("retired", retired ? 1L : 0L)
        .map((row, context) -> revision(row))
        .list()
        .stream()
        // Databases sort text in ways of their own.
        .sorted(Comparator.comparing(Revision::key))
        .toList();
  }

  /** The newest text of every document that is in use, by key. */
  static List<Version> newestVersions(Handle handle) {
    return handle
        .createQuery(HEAD + ", content" + NEWEST)
        .bind("retired", 0L)
        .map((row, context) -> new Version(revision(row), row.getString("content")))
        .list()
        .stream()
        .sorted(Comparator.comparing(it -> it.revision().key()))
        .toList();
  }

  static Revision revision(ResultSet row) throws SQLException {
    return new Revision(
        new DocumentKey(row.getString("kind"), row.getString("id")),
        row.getLong("number"),
        row.getLong("based_on"),
        new Signature(row.getString("author"), row.getString("reason")),
        Instant.parse(row.getString("saved_at")),
        row.getString("content_hash"),
        row.getString("previous_hash"),
        row.getLong("retired") == 1,
        PackFiles.list(row.getString("papers")));
  }
}
