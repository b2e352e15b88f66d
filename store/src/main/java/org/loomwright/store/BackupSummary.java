package org.loomwright.store;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * What a backup holds.
 *
 * @param revisions number of revisions of all documents
 * @param pictures number of pictures
 * @param releases number of releases
 * @param revisionSeal seal of the last revision; it stands for all before it too
 * @param releaseSeal seal of the last release
 */
public record BackupSummary(
    long revisions, long pictures, long releases, String revisionSeal, String releaseSeal) {

  /** Counts while rows go by. */
  static final class Counter {
    private long revisions;
    private long pictures;
    private long releases;
    private String revisionSeal = "";
    private String releaseSeal = "";

    void revision(String seal) {
      revisions++;
      revisionSeal = seal;
    }

    void blob() {
      pictures++;
    }

    void release(String seal) {
      releases++;
      releaseSeal = seal;
    }

    BackupSummary summary() {
      return new BackupSummary(revisions, pictures, releases, revisionSeal, releaseSeal);
    }
  }

  JsonNode tree() {
    return JsonNodeFactory.instance
        .objectNode()
        .put("loomwrightBackup", Backup.FORM)
        .put("revisions", revisions)
        .put("pictures", pictures)
        .put("releases", releases)
        .put("revisionSeal", revisionSeal)
        .put("releaseSeal", releaseSeal);
  }
}
