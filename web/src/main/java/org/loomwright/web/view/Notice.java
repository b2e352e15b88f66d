package org.loomwright.web.view;

import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;

/**
 * What was just done.
 *
 * @param css class of the notice
 * @param words what was done, in a sentence
 * @param kind kind of the document
 * @param id id of the document
 * @param number the revision it speaks of; 0 when nothing was saved
 * @param canUndo whether it can be undone from here
 */
public record Notice(
    String css, String words, String kind, String id, long number, boolean canUndo) {

  /** Nothing was saved, as nothing was different. */
  public static Notice same(DocumentKey key) {
    return new Notice(
        "same", "Nothing to save: this is what is on file.", key.kind(), key.id(), 0, false);
  }

  /** A revision was saved. */
  public static Notice saved(Store store, Revision revision, Revision newest) {
    DocumentKey key = revision.key();
    boolean merged = revision.basedOn() < revision.number() - 1;
    String others =
        merged
            ? store
                .documents()
                .version(key, revision.number() - 1)
                .map(
                    it ->
                        " "
                            + it.revision().by().who()
                            + " had saved in the meantime; both changes are in it.")
                .orElse("")
            : "";
    String since =
        newest.number() == revision.number()
            ? ""
            : " Since then there is revision " + newest.number() + ".";
    return new Notice(
        merged ? "merged" : "saved",
        "Saved as revision " + revision.number() + "." + others + since,
        key.kind(),
        key.id(),
        revision.number(),
        revision.number() > 1);
  }
}
