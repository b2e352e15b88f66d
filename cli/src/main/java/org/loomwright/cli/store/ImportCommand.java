package org.loomwright.cli.store;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.Problems;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.ImportResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright import}: takes the documents of a folder or a zip file into the store. */
@Command(
    name = "import",
    description =
        "Take the documents of a folder or a zip file, and their pictures, into the store.",
    footer = {
      "",
      "All of it is taken in or nothing. A document that is there already gets one more revision;",
      "the ones before stay in its history."
    })
public final class ImportCommand implements Callable<Integer> {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Parameters(paramLabel = "FOLDER|ZIP", description = "Folder or zip file with the documents.")
  private Path from;

  @Mixin private StoreOption db = new StoreOption();

  @Mixin private SignOption sign = new SignOption();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    boolean folder = Files.isDirectory(from);
    if (!folder && !Files.isRegularFile(from)) {
      throw new WrongInput(
          from + ": there is no such folder or file; name the folder or zip with the documents.");
    }
    Place place = db.place();
    Signature by = sign.signature("imported from " + name());
    try (Store store = place.open()) {
      ImportResult result =
          folder
              ? store.workspaces().importFolder(from, by)
              : store.workspaces().importZip(from, by);
      if (result instanceof ImportResult.Refused refused) {
        throw Problems.asFailure(refused.problems(), from.toString(), "nothing was imported");
      }
      print((ImportResult.Done) result, place);
    }
    return ExitCode.DONE;
  }

  private String name() {
    Path name = from.toAbsolutePath().normalize().getFileName();
    return name == null ? from.toString() : name.toString();
  }

  private void print(ImportResult.Done done, Place place) {
    PrintWriter out = spec.commandLine().getOut();
    out.println("Imported from " + from + " into " + place.shown() + ":");
    done.added().forEach(it -> out.println("  new        " + it.key().shown()));
    done.changed()
        .forEach(
            it ->
                out.println("  changed    " + it.key().shown() + ", now revision " + it.number()));
    done.pictures().forEach(it -> out.println("  picture    " + it));
    if (done.unchanged() > 0) {
      out.println("  unchanged  " + Counts.of(done.unchanged(), "document"));
    }
  }
}
