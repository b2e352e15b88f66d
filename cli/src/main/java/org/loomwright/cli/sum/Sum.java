package org.loomwright.cli.sum;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all sums have in common: work out the answer, print it, say whether its checks hold. */
abstract class Sum implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(names = "--json", order = 100, description = "Print one JSON object and nothing else.")
  private boolean json;

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      order = 101,
      description = "Show this help and exit.")
  private boolean help;

  /** Works the sum out from the options. */
  abstract Answer answer();

  @Override
  public final Integer call() {
    Answer answer = answer();
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? JsonAnswer.of(answer) : PlainAnswer.of(answer));
    return answer.fails() ? ExitCode.CHECK_FAILS : ExitCode.DONE;
  }
}
