package org.loomwright.cli.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.Store;
import org.loomwright.store.WorkspaceContent;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright export}: writes the newest documents as a folder or a zip file. */
@Command(
    name = "export",
    description = "Write the newest state of all documents and pictures as a folder or a zip file.",
    footer = {
      "",
      "Retired documents, earlier revisions and releases stay in the store; backup takes all."
    })
public final class ExportCommand implements Callable<Integer> {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Parameters(
      paramLabel = "FOLDER|ZIP",
      description = "A new or empty folder, or a new file whose name ends in .zip.")
  private Path to;

  @Mixin private StoreOption db = new StoreOption();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Place place = db.place();
    try (Store store = place.openExisting()) {
      if (store.documents().newest().isEmpty()) {
        throw new WrongInput(place.shown() + " holds no documents; nothing was exported.");
      }
      boolean zip =
          to.toString().toLowerCase(Locale.ROOT).endsWith(".zip") && !Files.isDirectory(to);
      WorkspaceContent written =
          zip ? store.workspaces().exportZip(to) : store.workspaces().exportFolder(to);
      spec.commandLine()
          .getOut()
          .println(
              "Exported "
                  + Counts.of(written.documents().size(), "document")
                  + " and "
                  + Counts.of(written.pictures().size(), "picture")
                  + " of "
                  + place.shown()
                  + " to "
                  + to
                  + ".");
    }
    return ExitCode.DONE;
  }
}
