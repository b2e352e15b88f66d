package org.loomwright.store;

import org.jdbi.v3.core.Handle;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a store or a backup of it holds.
 *
 * @param revisions number of revisions of all documents
 * @param pictures number of pictures
 * @param releases number of releases
 * @param files number of different files in the packs of all releases and papers of documents
 * @param revisionSeal seal of the last revision; it stands for all before it too
 * @param releaseSeal seal of the last release
 */
public record BackupSummary(
    long revisions,
    long pictures,
    long releases,
    long files,
    String revisionSeal,
    String releaseSeal) {

  /** Counts while rows go by. */
  static final class Counter {
    private long revisions;
    private long pictures;
    private long releases;
    private long files;
    private String revisionSeal = "";
    private String releaseSeal = "";

    void revision(String seal) {
      revisions++;
      revisionSeal = seal;
    }

    void blob() {
      pictures++;
    }

    void paper() {
      files++;
    }

    void release(String seal) {
      releases++;
      releaseSeal = seal;
    }

    BackupSummary summary() {
      return new BackupSummary(revisions, pictures, releases, files, revisionSeal, releaseSeal);
    }
  }

  /** Of a store as it stands. */
  static BackupSummary of(Handle handle) {
    return new BackupSummary(
        count(handle, "revision"),
        count(handle, "blob"),
        count(handle, "release"),
        count(handle, "paper"),
        Revisions.tail(handle, "revision").seal(),
        Revisions.tail(handle, "release").seal());
  }

  private static long count(Handle handle, String table) {
    return handle.createQuery("SELECT count(*) FROM " + table).mapTo(Long.class).one();
  }

  /**
   * As it stands in a backup.
   *
   * @param form form of the backup
   */
  JsonNode tree(int form) {
    ObjectNode tree =
        JsonNodeFactory.instance
            .objectNode()
            .put("loomwrightBackup", form)
            .put("revisions", revisions)
            .put("pictures", pictures)
            .put("releases", releases)
            .put("revisionSeal", revisionSeal)
            .put("releaseSeal", releaseSeal);
    return form == 1 ? tree : tree.put("files", files);
  }
}
