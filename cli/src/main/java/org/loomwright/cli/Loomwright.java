package org.loomwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The word {@code loomwright} alone: help, version, and options that every command understands. */
@Command(
    name = "loomwright",
    description =
        "From a vehicle, a piece of equipment and the shop's rules to a wiring kit that is proven"
            + " on every build.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = Loomwright.Version.class,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done, all checks hold or are marginal",
      "1:done, but a check or the proof fails",
      "2:wrong usage",
      "3:a value or a document can't be read or is wrong",
      "4:a fault of the program itself"
    })
final class Loomwright implements Runnable {

  @Spec private CommandSpec spec;

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      order = 102,
      description = "Show the details of an internal fault.")
  private boolean debug;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "A command is missing.");
  }

  boolean debug() {
    return debug;
  }

  /** The version written into the jar when it was built. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Loomwright.class.getPackage().getImplementationVersion();
      return new String[] {"loomwright " + (version == null ? "(not packaged)" : version)};
    }
  }
}
