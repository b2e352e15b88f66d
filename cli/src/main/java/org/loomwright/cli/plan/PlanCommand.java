package org.loomwright.cli.plan;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.PlanJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loomwright plan FOLDER}: plans the kits of a folder. */
@Command(
    name = "plan",
    description = "Plan the kits of a folder: gap, cases, leads, checks, guide and proof.",
    footer = {
      "",
      "The folder holds the documents as JSON files. Everything that is wrong with them is listed in",
      "one go, with the file, the place in it, and what would be right."
    })
public final class PlanCommand implements Callable<Integer> {

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Parameters(paramLabel = "FOLDER", description = "Folder with the documents.")
  private Path folder;

  @Option(
      names = "--kit",
      paramLabel = "ID",
      description = "Plan this kit only; without it each kit of the folder is planned.")
  private Optional<String> kit;

  @Option(names = "--json", description = "Print one JSON object and nothing else.")
  private boolean json;

  @Option(
      names = "--verify",
      description =
          "Solve every network a second time and check it: node balance, law of each part, energy.")
  private boolean verify;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Write the pack into this folder; of several kits, each into a folder of its own in it.")
  private Optional<Path> out;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter results = spec.commandLine().getOut();
    Read read = WorkspaceReader.read(folder);
    List<KitOrder> orders = Orders.of(read, folder.toString(), kit);
    Optional<PackFolder> packs = out.map(it -> PackFolder.of(it, Orders.documents(read)));
    boolean several = orders.size() > 1;
    if (several && !json) {
      results.println(
          "The folder holds "
              + orders.size()
              + " kits and each is planned: "
              + orders.stream().map(it -> it.kit().id()).collect(Collectors.joining(", "))
              + ". Use --kit ID to plan one.");
      results.flush();
    }
    List<Planned> done = new ArrayList<>();
    for (KitOrder order : orders) {
      Optional<PackFolder> pack = packs.map(it -> several ? it.sub(order.kit().id()) : it);
      Planned planned = Planned.of(order, verify, pack, spec.commandLine().getErr());
      done.add(planned);
      if (!json) {
        results.print((several ? "\n" : "") + planned.summary());
        results.flush();
      }
    }
    if (json) {
      results.print(several ? jsonOfAll(done) : PlanJson.text(done.get(0).plan()));
    }
    return Planned.exitCode(done);
  }

  /** Joined as text, so that each plan stands in it exactly as it stands alone. */
  private static String jsonOfAll(List<Planned> all) {
    return all.stream()
        .map(it -> PlanJson.text(it.plan()).strip())
        .collect(Collectors.joining(",\n", "{\"plans\": [\n", "\n]}\n"));
  }
}
