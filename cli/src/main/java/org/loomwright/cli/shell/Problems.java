package org.loomwright.cli.plan;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.model.workspace.Problem;

/** Tells the user all that is wrong with a folder, one line each, with the count at the end. */
final class Problems {
  private Problems() {}

  /**
   * The problems as one failure of the command.
   *
   * @param where what was read, in words
   */
  static WrongInput asFailure(List<Problem> problems, String where) {
    return new WrongInput(
        problems.stream().map(it -> line(it) + "\n").collect(Collectors.joining())
            + (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
            + " in "
            + where
            + "; nothing was planned.");
  }

  /** Document, path, what is wrong with which value, and what would be right. */
  private static String line(Problem problem) {
    boolean named = problem.value().isEmpty() || problem.message().contains(problem.value());
    return (named ? problem.words() : problem.words() + " (it says '" + problem.value() + "')")
        // A value or a message may hold line ends; the line must stay one.
        .replaceAll("\\s*\\R\\s*", " ");
  }
}
