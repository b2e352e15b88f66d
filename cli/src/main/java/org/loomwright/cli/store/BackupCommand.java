package org.loomwright.cli.store;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.store.BackupSummary;
import org.loomwright.store.Damage;
import org.loomwright.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright backup}: checks the store and writes all of it into one file. */
@Command(
    name = "backup",
    description = "Check the store and write all of it, with its history, into one file.",
    footer = {
      "",
      "Others can go on saving meanwhile; the backup is one moment of the store. It can be restored",
      "into either kind of database. A damaged store is not backed up."
    })
public final class BackupCommand implements Callable<Integer> {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "A file that is not there yet.")
  private Optional<Path> file;

  @Option(
      names = "--only-check",
      description = "Check every text, picture, release and seal; write nothing.")
  private boolean onlyCheck;

  @Mixin private StoreOption db = new StoreOption();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (file.isEmpty() && !onlyCheck) {
      throw new ParameterException(
          spec.commandLine(), "Name the FILE to write, or check with --only-check.");
    }
    if (file.isPresent() && onlyCheck) {
      throw new ParameterException(
          spec.commandLine(), "--only-check writes nothing; leave out the FILE.");
    }
    Place place = db.place();
    try (Store store = place.openExisting()) {
      return file.isPresent() ? write(store, place, file.get()) : check(store, place);
    }
  }

  private int write(Store store, Place place, Path to) {
    BackupSummary summary = store.backup(to);
    PrintWriter out = spec.commandLine().getOut();
    out.println("Backed up " + place.shown() + " to " + to + ": " + Counts.of(summary) + ".");
    out.println(Counts.seals(summary));
    return ExitCode.DONE;
  }

  private int check(Store store, Place place) {
    PrintWriter out = spec.commandLine().getOut();
    List<Damage> damages = store.verify();
    if (damages.isEmpty()) {
      BackupSummary summary = store.summary();
      out.println("All is well in " + place.shown() + ": " + Counts.of(summary) + ".");
      out.println(Counts.seals(summary));
      return ExitCode.DONE;
    }
    damages.forEach(it -> out.println(it.words()));
    out.println(
        Counts.of(damages.size(), "fault")
            + " in "
            + place.shown()
            + "; restore the newest good backup to a new place.");
    return ExitCode.CHECK_FAILS;
  }
}
