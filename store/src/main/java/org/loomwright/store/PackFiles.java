package org.loomwright.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The table of papers, by the hash of their bytes: files of packs, and papers of documents. */
final class PackFiles {
  /** Largest file kept, bytes. */
  static final int LARGEST_FILE = 64_000_000;

  /** Most bytes of all files of one pack. */
  static final long MOST_BYTES = 200_000_000;

  private static final int LONGEST_NAME = 200;

  private PackFiles() {}

  /** What stands against keeping a pack, with what would be right; empty when nothing does. */
  static Optional<String> fault(Map<String, byte[]> pack) {
    if (pack.isEmpty()) {
      return Optional.of("its pack has no files; write the pack first");
    }
    long total = 0;
    for (Map.Entry<String, byte[]> file : pack.entrySet()) {
      String name = file.getKey().replaceAll("\\p{Cntrl}", "?");
      if (!isName(file.getKey())) {
        return Optional.of(
            "the pack's file '"
                + name
                + "' can't be kept under this name; names are relative, have no characters that some"
                + " system does not take, and at most "
                + LONGEST_NAME
                + " of them");
      }
      int length = file.getValue().length;
      if (length > LARGEST_FILE) {
        return Optional.of(
            "the pack's file '"
                + name
                + "' has "
                + length
                + " bytes; at most "
                + LARGEST_FILE
                + " are kept, so use smaller pictures or fewer pages");
      }
      total += length;
    }
    if (total > MOST_BYTES) {
      return Optional.of(
          "its pack has "
              + total
              + " bytes; at most "
              + MOST_BYTES
              + " are kept, so use smaller pictures or fewer pages");
    }
    return Optional.empty();
  }

  private static boolean isName(String name) {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      return false;
    }
    for (String part : name.split("/", -1)) {
      if (part.isBlank() || part.equals(".") || part.equals("..")) {
        return false;
      }
    }
    return name.chars().noneMatch(c -> Character.isISOControl(c) || "\\:*?\"<>|".indexOf(c) >= 0);
  }

  /** Keeps a file; one that is there already is not written again. */
  static void keep(Handle handle, String hash, byte[] bytes) {
    if (!isThere(handle, hash)) {
      insert(handle, hash, bytes);
    }
  }

  static void insert(Handle handle, String hash, byte[] bytes) {
    handle
        .createUpdate("INSERT INTO paper (hash, bytes) VALUES (:hash, :bytes)")
        .bind("hash", hash)
        .bind("bytes", bytes)
        .execute();
  }

  static boolean isThere(Handle handle, String hash) {
    return handle
            .createQuery("SELECT count(*) FROM paper WHERE hash = :hash")
            .bind("hash", hash)
            .mapTo(Long.class)
            .one()
        > 0;
  }

  /** Hashes as a row of another table names them. */
  static List<String> list(String hashes) {
    return hashes.isEmpty() ? List.of() : List.of(hashes.split(" "));
  }

  static Optional<byte[]> bytes(Handle handle, String hash) {
    return handle
        .createQuery("SELECT bytes FROM paper WHERE hash = :hash")
        .bind("hash", hash)
        .map((row, context) -> row.getBytes(1))
        .findFirst();
  }
}
