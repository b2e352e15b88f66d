package org.loomwright.cli.plan;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.cli.store.Place;
import org.loomwright.cli.store.StoreOption;
import org.loomwright.web.shop.ShopSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright serve}: opens the pages of a store or a folder, for this computer only. */
@Command(
    name = "serve",
    description = "Open the pages of your store, or of a folder, for this computer only.",
    footer = {
      "",
      "Without a folder the pages work on the store, which is made when it is not there. Of a folder",
      "they show the documents and change nothing; what is changed there shows when a page is loaded",
      "again."
    })
public final class ServeCommand implements Callable<Integer> {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "Folder with documents to look at; without it, the store.")
  private Optional<Path> folder;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = OpenPages.PORT,
      description = "Port to listen on, 0 for any that is free (default: ${DEFAULT-VALUE}).")
  private int port;

  @Spec private CommandSpec spec;

  @Mixin private StoreOption db = new StoreOption();

  @Override
  public Integer call() {
    OpenPages.check(port);
    PrintWriter results = spec.commandLine().getOut();
    if (folder.isPresent()) {
      OpenPages.untilStopped(source(folder.get()), port, results);
    } else {
      Place place = db.place();
      OpenPages.untilStopped(place.open(), place.shown(), DemoFiles.find()::into, port, results);
    }
    return ExitCode.DONE;
  }

  private ShopSource source(Path named) {
    if (db.named()) {
      throw new WrongInput(
          "--db: name either a store or a folder to look at; import takes a folder into a store.");
    }
    if (!Files.isDirectory(named)) {
      throw new WrongInput(
          named
              + (Files.exists(named) ? " is a file" : ": there is no such folder")
              + "; name the folder that holds the documents.");
    }
    return ShopSource.folder(named);
  }
}
