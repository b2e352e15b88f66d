package org.loomwright.store;

import java.util.List;
import org.loomwright.model.workspace.Problem;

/** What became of taking a workspace in. */
public sealed interface ImportResult {

  /**
   * All of it is in the store.
   *
   * @param added documents that were not there before
   * @param changed documents that got a new revision; the ones before are in their history
   * @param unchanged how many documents were there with the same text
   * @param pictures names of pictures that are new or show something else now
   */
  record Done(List<Revision> added, List<Revision> changed, int unchanged, List<String> pictures)
      implements ImportResult {
    public Done {
      added = List.copyOf(added);
      changed = List.copyOf(changed);
      pictures = List.copyOf(pictures);
    }
  }

  /** Nothing of it was taken in, because of these. */
  record Refused(List<Problem> problems) implements ImportResult {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
