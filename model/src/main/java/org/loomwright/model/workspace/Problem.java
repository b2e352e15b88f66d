package org.loomwright.model.workspace;

/**
 * One thing that is wrong in a workspace, in words a shop owner understands.
 *
 * @param document file name, or the folder for what concerns it as a whole; may be empty
 * @param path where in the document, e.g. {@code traits[2].values[0].share}, or line and column;
 *     may be empty
 * @param value the bad value as text; may be empty
 * @param message what is wrong and what would be right; names the bad value itself where it helps
 */
public record Problem(String document, String path, String value, String message) {
  /** All of it on one line, e.g. "van.json, runs[2].from: there is no place 'rear-flor'; …". */
  public String words() {
    String where = document + (document.isEmpty() || path.isEmpty() ? "" : ", ") + path;
    return where.isEmpty() ? message : where + ": " + message;
  }
}
