package org.loomwright.store;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;

/** A row of the table of revisions exactly as it stands there, right or wrong. */
record RevisionRow(
    long seq,
    String kind,
    String id,
    long number,
    long basedOn,
    String author,
    String savedAt,
    String reason,
    String content,
    String contentHash,
    String previousHash,
    String seal,
    boolean retired,
    String papers) {
  private static final int PAGE = 50;

  /** Hands out all rows in the order of saving, never more than a few in memory. */
  static void forEach(Handle handle, Consumer<RevisionRow> taker) {
    long last = Long.MIN_VALUE;
    while (true) {
      List<RevisionRow> page =
          handle
              .createQuery(
                  "SELECT seq, kind, id, number, based_on, author, saved_at, reason, content,"
                      + " content_hash, previous_hash, seal, retired, papers FROM revision WHERE seq > :last"
                      + " ORDER BY seq LIMIT "
                      + PAGE)
              .bind("last", last)
              .map(
                  (row, context) ->
                      new RevisionRow(
                          row.getLong(1),
                          row.getString(2),
                          row.getString(3),
                          row.getLong(4),
                          row.getLong(5),
                          row.getString(6),
                          row.getString(7),
                          row.getString(8),
                          row.getString(9),
                          row.getString(10),
                          row.getString(11),
                          row.getString(12),
                          row.getLong(13) == 1,
                          row.getString(14)))
              .list();
      page.forEach(taker);
      if (page.size() < PAGE) {
        return;
      }
      last = page.get(page.size() - 1).seq();
    }
  }

  /**
   * The revision in it.
   *
   * @throws StoreException or {@link java.time.DateTimeException} when a value can't be one
   */
  Revision revision() {
    return new Revision(
        new DocumentKey(kind, id),
        number,
        basedOn,
        new Signature(author, reason),
        Instant.parse(savedAt),
        contentHash,
        previousHash,
        retired,
        PackFiles.list(papers));
  }

  /** For people. */
  String shown() {
    return kind + " '" + id + "', revision " + number;
  }
}
