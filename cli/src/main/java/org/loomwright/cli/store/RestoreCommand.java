package org.loomwright.cli.store;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.BackupSummary;
import org.loomwright.store.Store;
import org.loomwright.store.StoreTarget;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright restore}: makes a store from a backup. */
@Command(
    name = "restore",
    description = "Make a store from a backup, after a check of all that is in it.",
    footer = {
      "",
      "The place has to be new or empty: a store that holds documents is never written over."
    })
public final class RestoreCommand implements Callable<Integer> {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Parameters(paramLabel = "FILE", description = "The backup.")
  private Path file;

  @Option(
      names = "--only-check",
      description = "Try whether the backup can be restored; keep nothing of it.")
  private boolean onlyCheck;

  @Mixin private StoreOption db = new StoreOption();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (onlyCheck && db.named()) {
      throw new ParameterException(
          spec.commandLine(), "--only-check keeps nothing; leave out --db.");
    }
    if (!Files.isRegularFile(file)) {
      throw new WrongInput(file + ": there is no such file; name the backup.");
    }
    return onlyCheck ? check() : restore();
  }

  private int restore() {
    Place place = db.place();
    try (Store store = Store.restore(file, place.ready())) {
      print("Restored " + file + " to " + place.shown(), store.summary());
    }
    return ExitCode.DONE;
  }

  private int check() {
    try {
      Path folder = Files.createTempDirectory("loomwright-check");
      Path trial = folder.resolve("trial.db");
      try (Store store = Store.restore(file, new StoreTarget.SqliteFile(trial))) {
        print("All is well in " + file, store.summary());
      } finally {
        Files.deleteIfExists(trial);
        Files.deleteIfExists(folder);
      }
      return ExitCode.DONE;
    } catch (IOException failure) {
      throw new WrongInput(
          file + " can't be checked: there is no room for a trial (" + failure + ").");
    }
  }

  private void print(String what, BackupSummary summary) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(what + ": " + Counts.of(summary) + ".");
    out.println(Counts.seals(summary));
  }
}
