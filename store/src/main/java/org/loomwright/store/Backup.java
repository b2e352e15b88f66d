package org.loomwright.store;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Handle;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a whole store as one zip file: one line of JSON for every revision and release, one entry
 * for every picture, every file of a pack and every paper, and last the counts and the seals by
 * which a reader sees that all of it is there. It does not depend on the database the store is kept
 * in.
 */
final class Backup {
  /**
   * The form that is written; 1 knew no files of packs and no retired documents, 2 no papers of
   * documents.
   */
  static final int FORM = 3;

  static final String REVISIONS = "revisions.jsonl";
  static final String BLOBS = "blobs/";
  static final String PAPERS = "papers/";
  static final String RELEASES = "releases.jsonl";
  static final String SUMMARY = "summary.json";

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final Handle handle;
  private final ZipOutputStream zip;
  private final BackupSummary.Counter counter = new BackupSummary.Counter();

  private Backup(Handle handle, ZipOutputStream zip) {
    this.handle = handle;
    this.zip = zip;
  }

  static BackupSummary write(Handle handle, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    try {
      return new Backup(handle, zip).write();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private BackupSummary write() throws IOException {
    ZipFiles.entry(zip, REVISIONS);
    RevisionRow.forEach(
        handle,
        row -> {
          counter.revision(row.seal());
          line(MAPPER.valueToTree(row));
        });
    zip.closeEntry();
    List<String> hashes =
        handle.createQuery("SELECT hash FROM blob ORDER BY hash").mapTo(String.class).list();
    for (String hash : hashes) {
      ZipFiles.entry(zip, BLOBS + hash);
      zip.write(StoredPictures.bytes(handle, hash).orElseThrow());
      zip.closeEntry();
      counter.blob();
    }
    papers();
    ZipFiles.entry(zip, RELEASES);
    for (ReleaseRows.Sealed row : ReleaseRows.all(handle)) {
      counter.release(row.seal());
      line(tree(row));
    }
    zip.closeEntry();
    BackupSummary summary = counter.summary();
    ZipFiles.entry(zip, SUMMARY);
    line(summary.tree(FORM));
    zip.closeEntry();
    zip.finish();
    return summary;
  }

  private void papers() throws IOException {
    List<String> hashes =
        handle.createQuery("SELECT hash FROM paper ORDER BY hash").mapTo(String.class).list();
    for (String hash : hashes) {
      ZipFiles.entry(zip, PAPERS + hash);
      zip.write(PackFiles.bytes(handle, hash).orElseThrow());
      zip.closeEntry();
      counter.paper();
    }
  }

  private static ObjectNode tree(ReleaseRows.Sealed row) {
    Release release = row.release();
    ObjectNode tree =
        JsonNodeFactory.instance
            .objectNode()
            .put("seq", row.seq())
            .put("kit", release.kit())
            .put("number", release.number())
            .put("verdict", release.verdict().word())
            .put("reason", release.by().why())
            .put("author", release.by().who())
            .put("releasedAt", release.releasedAt().toString())
            .put("seal", row.seal())
            .put("packKept", release.packKept());
    ArrayNode pins = tree.putArray("pins");
    for (Release.PinnedText it : release.pins()) {
      pins.addObject()
          .put("kind", it.pin().key().kind())
          .put("id", it.pin().key().id())
          .put("number", it.pin().number())
          .put("contentHash", it.contentHash());
    }
    ObjectNode pack = tree.putObject("pack");
    release.pack().forEach(pack::put);
    return tree;
  }

  private void line(Object tree) {
    try {
      zip.write(MAPPER.writeValueAsString(tree).getBytes(StandardCharsets.UTF_8));
      zip.write('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
