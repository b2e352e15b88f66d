package org.loomwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/**
 * One run of the program within the test.
 *
 * @param exitCode what the shell would get
 * @param out what went to standard output
 * @param err what went to standard error
 */
public record Run(int exitCode, String out, String err) {

  /** Runs the program with these words. */
  public static Run of(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), words);
    return new Run(exitCode, out.toString(), err.toString());
  }

  /** Runs the program with these words. */
  public static Run of(List<String> words) {
    return of(words.toArray(String[]::new));
  }
}
