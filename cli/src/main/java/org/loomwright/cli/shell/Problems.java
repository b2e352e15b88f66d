package org.loomwright.cli.shell;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.workspace.Problem;

/** Tells the user all that is wrong with a folder, one line each, with the count at the end. */
public final class Problems {
  private Problems() {}

  /**
   * The problems as one failure of the command.
   *
   * @param where what was read, in words
   * @param outcome what came of it, e.g. "nothing was planned"
   */
  public static WrongInput asFailure(List<Problem> problems, String where, String outcome) {
    return new WrongInput(
        problems.stream().map(it -> line(it) + "\n").collect(Collectors.joining())
            + (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
            + " in "
            + where
            + "; "
            + outcome
            + ".");
  }

  /** Document, path, what is wrong with which value, and what would be right. */
  private static String line(Problem problem) {
    boolean named = problem.value().isEmpty() || problem.message().contains(problem.value());
    return (named ? problem.words() : problem.words() + " (it says '" + problem.value() + "')")
        // A value or a message may hold line ends; the line must stay one.
        .replaceAll("\\s*\\R\\s*", " ");
  }
}
