package org.loomwright.cli.plan;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.loomwright.cli.shell.ExitCode;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.web.shop.ShopSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright serve}: opens the pages of a folder, for this computer only. */
@Command(
    name = "serve",
    description = "Open the pages of a folder, or of the demo, for this computer only.",
    footer = {
      "",
      "The pages show the documents of the folder and change nothing in it. What is changed there",
      "shows when a page is loaded again."
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
      description = "Folder with the documents; without it, the demo.")
  private Optional<Path> folder;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = OpenPages.PORT,
      description = "Port to listen on, 0 for any that is free (default: ${DEFAULT-VALUE}).")
  private int port;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    OpenPages.untilStopped(source(), port, spec.commandLine().getOut());
    return ExitCode.DONE;
  }

  private ShopSource source() {
    if (folder.isEmpty()) {
      return DemoFiles.find().source();
    }
    if (!Files.isDirectory(folder.get())) {
      throw new WrongInput(
          folder.get()
              + (Files.exists(folder.get()) ? " is a file" : ": there is no such folder")
              + "; name the folder that holds the documents.");
    }
    return ShopSource.folder(folder.get());
  }
}
