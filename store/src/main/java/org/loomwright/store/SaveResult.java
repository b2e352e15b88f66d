package org.loomwright.store;

import java.util.List;
import java.util.Optional;
import org.loomwright.store.merge.Clash;

/** What became of a save. */
public sealed interface SaveResult {

  /** It is the new revision. */
  record Saved(Revision revision) implements SaveResult {}

  /**
   * Someone else had saved since, elsewhere in the document; the new revision holds both edits.
   *
   * @param merged the new revision with its text
   * @param theirs the revision that had been saved since
   */
  record Merged(Version merged, Revision theirs) implements SaveResult {}

  /** The newest revision says the same already; nothing was written. */
  record Unchanged(Revision newest) implements SaveResult {}

  /**
   * Someone else had saved since, in the same part; nothing was written, and all texts are here.
   *
   * @param base what both started from; empty when both made the document new
   * @param theirs the newest revision; it may say that the document is retired
   * @param yours the text that was to be saved; empty when the document was to be retired
   * @param clashes the parts in which both differ; one with an empty path stands for the whole, and
   *     the side that retires the document has nothing there
   */
  record Conflict(Optional<Version> base, Version theirs, String yours, List<Clash> clashes)
      implements SaveResult {
    public Conflict {
      clashes = List.copyOf(clashes);
    }
  }
}
