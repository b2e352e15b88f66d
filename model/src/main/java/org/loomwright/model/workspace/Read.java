package org.loomwright.model.workspace;

import java.util.List;

/** What came of reading a workspace. */
public sealed interface Read {
  /**
   * All is well; no reference dangles.
   *
   * @param workspace the documents
   * @param files where each of them was read from, sorted by name
   */
  record Good(Workspace workspace, List<LoadedFile> files) implements Read {
    public Good {
      files = List.copyOf(files);
    }
  }

  /**
   * Something is wrong.
   *
   * @param problems all that is wrong, sorted by document, at least one
   */
  record Bad(List<Problem> problems) implements Read {
    public Bad {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a bad workspace has at least one problem");
      }
    }
  }
}
