package org.loomwright.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.Failures;
import org.loomwright.cli.shell.Values;
import org.loomwright.cli.sum.SumCommand;
import picocli.CommandLine;

/** The program: reads the command line, runs the command, hands its exit code to the shell. */
public final class Main {

  private Main() {}

  /**
   * Runs one command and ends the program with its {@link ExitCode}.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    Charset charset = outputCharset();
    int exitCode;
    try (PrintWriter out = new PrintWriter(System.out, false, charset);
        PrintWriter err = new PrintWriter(System.err, true, charset)) {
      exitCode = run(out, err, args);
    }
    System.exit(exitCode);
  }

  /**
   * Runs one command with the given streams. Nothing is thrown: every error ends as a message and
   * an exit code.
   *
   * @param out takes results
   * @param err takes messages
   * @param args the words of the command line
   * @return the {@link ExitCode}
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = commandLine().setOut(out).setErr(err);
    int exitCode = line.execute(args);
    out.flush();
    err.flush();
    return exitCode;
  }

  private static CommandLine commandLine() {
    Loomwright top = new Loomwright();
    CommandLine line = new CommandLine(top);
    // One line per command, in the order in which the help shows them.
    line.addSubcommand(new SumCommand());
    Values.registerWith(line);
    Failures failures = new Failures(top::debug);
    line.setParameterExceptionHandler(failures);
    line.setExecutionExceptionHandler(failures);
    line.setUsageHelpWidth(100);
    return line;
  }

  /** A terminal is written to in its own character set; a file or a pipe always in UTF-8. */
  private static Charset outputCharset() {
    Console console = System.console();
    return console == null ? StandardCharsets.UTF_8 : console.charset();
  }
}
