package org.loomwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.loomwright.cli.plan.DemoCommand;
import org.loomwright.cli.plan.PlanCommand;
import org.loomwright.cli.plan.ServeCommand;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.Failures;
import org.loomwright.cli.shell.Values;
import org.loomwright.cli.store.BackupCommand;
import org.loomwright.cli.store.ExportCommand;
import org.loomwright.cli.store.ImportCommand;
import org.loomwright.cli.store.RestoreCommand;
import org.loomwright.cli.sum.SumCommand;
import picocli.CommandLine;

/** The program: reads the command line, runs the command, hands its exit code to the shell. */
public final class Main {

  private Main() {}

  /**
   * Runs one command and ends the program with its {@link ExitCode}. What it prints is UTF-8; the
   * launcher sees to it that the terminal takes it so.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int exitCode = run(out, err, args);
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
    Loomwright top = new Loomwright();
    Failures failures = new Failures(top::debug);
    int exitCode;
    try {
      exitCode = commandLine(top, failures).setOut(out).setErr(err).execute(args);
    } catch (Error fault) {
      // Out of memory or a broken installation: still one sentence and an exit code.
      exitCode = failures.internalFault(fault, err);
    }
    out.flush();
    err.flush();
    return exitCode;
  }

  private static CommandLine commandLine(Loomwright top, Failures failures) {
    CommandLine line = new CommandLine(top);
    // One line per command, in the order in which the help shows them.
    line.addSubcommand(new DemoCommand());
    line.addSubcommand(new PlanCommand());
    line.addSubcommand(new ServeCommand());
    line.addSubcommand(new ImportCommand());
    line.addSubcommand(new ExportCommand());
    line.addSubcommand(new BackupCommand());
    line.addSubcommand(new RestoreCommand());
    line.addSubcommand(new SumCommand());
    Values.registerWith(line);
    line.setParameterExceptionHandler(failures);
    line.setExecutionExceptionHandler(failures);
    line.setUsageHelpWidth(100);
    return line;
  }
}
