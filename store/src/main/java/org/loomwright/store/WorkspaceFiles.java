package org.loomwright.store;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The files of a workspace that may matter: documents and pictures of its folder and of the folders
 * directly in it.
 *
 * @param byName bytes by name relative to the workspace, with "/" before a sub-folder's file
 */
record WorkspaceFiles(Map<String, byte[]> byName) {
  /** Most files read; a workspace with more is a mistake. */
  static final int MOST_FILES = 5_000;

  /** Largest file read, bytes; a document in UTF-8 may take three for a character. */
  static final int LARGEST_FILE = 3 * Draft.LONGEST;

  /** Most bytes read in all; they are held in memory. */
  static final long MOST_BYTES = 400_000_000;

  WorkspaceFiles {
    byName = new TreeMap<>(byName);
  }

  static boolean isDocument(String name) {
    return name.endsWith(".json");
  }

  static boolean isPicture(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".png") || lower.endsWith(".jpg") || lower.endsWith(".jpeg");
  }

  /** Whether a file of this name belongs to a workspace; others are passed over. */
  static boolean matters(String name) {
    String[] parts = name.split("/", -1);
    for (String part : parts) {
      if (part.startsWith(".") || part.isEmpty()) {
        return false;
      }
    }
    return parts.length <= 2 && (isDocument(name) || isPicture(name));
  }

  static StoreException tooMuch(String place) {
    return new StoreException(
        place
            + " holds more than "
            + MOST_FILES
            + " files or more than "
            + MOST_BYTES / 1_000_000
            + " MB; a workspace is smaller, so take out what does not belong to it");
  }

  static StoreException tooLarge(String place, String name) {
    return new StoreException(
        place
            + ", "
            + name
            + ": the file has more than "
            + LARGEST_FILE
            + " bytes; a document or picture is smaller");
  }
}
