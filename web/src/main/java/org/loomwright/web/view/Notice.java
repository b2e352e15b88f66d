package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;

/**
 * What was just done.
 *
 * @param css class of the notice
 * @param words what was done, in a sentence
 * @param details what differs now, in words; not all where there is much
 * @param kind kind of the document
 * @param id id of the document
 * @param number the revision it speaks of; 0 when nothing was saved
 * @param canUndo whether it can be undone from here
 */
public record Notice(
    String css,
    String words,
    List<String> details,
    String kind,
    String id,
    long number,
    boolean canUndo) {
  private static final int MOST = 4;

  public Notice {
    details = List.copyOf(details);
  }

  /** Nothing was saved, as nothing was different. */
  public static Notice same(DocumentKey key) {
    return new Notice(
        "same",
        "Nothing to save: this is what is on file.",
        List.of(),
        key.kind(),
        key.id(),
        0,
        false);
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
        details(store, revision),
        key.kind(),
        key.id(),
        revision.number(),
        revision.number() > 1);
  }

  private static List<String> details(Store store, Revision revision) {
    DocumentKey key = revision.key();
    Optional<Version> before = store.documents().version(key, revision.number() - 1);
    Optional<Version> after = store.documents().version(key, revision.number());
    if (before.isEmpty() || after.isEmpty()) {
      return List.of();
    }
    List<String> all = HistoryView.differences(before.get(), after.get());
    if (all.size() <= MOST) {
      return all;
    }
    List<String> first = new ArrayList<>(all.subList(0, MOST - 1));
    first.add((all.size() - MOST + 1) + " more changes");
    return first;
  }
}
