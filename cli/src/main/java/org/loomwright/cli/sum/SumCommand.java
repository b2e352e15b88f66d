package org.loomwright.cli.sum;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code loomwright sum NAME}: single sums, for the bench and for anyone who wants to check us. */
@Command(
    name = "sum",
    description = "Single sums, for the bench and for anyone who wants to check us.",
    synopsisSubcommandLabel = "NAME",
    subcommands = {
      ResistanceSum.class,
      DropSum.class,
      AmpacitySum.class,
      TemperatureSum.class,
      WithstandSum.class,
      FuseSum.class,
      BundleSum.class,
      CutSum.class,
      GaugeSum.class
    },
    footer = {
      "",
      "Quantities are written as people write them, with their unit: \"2.5 mm²\", \"14 AWG\",",
      "\"7 ft\", \"820 mm\", \"22 A\", \"12.5 V\", \"60 °C\", \"140 °F\", \"500 ms\", \"3 %%\"."
    })
public final class SumCommand implements Runnable {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "The name of a sum is missing.");
  }
}
