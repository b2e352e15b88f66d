package org.loomwright.cli.plan;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.Read;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.StoreTarget;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loomwright demo}: plans the demo kits, writes their packs and opens their pages. */
@Command(
    name = "demo",
    description = "Plan the demo kits, write their packs, and open their pages.")
public final class DemoCommand implements Callable<Integer> {
  /** The kit whose pack goes straight into the folder. */
  private static final String MAIN_KIT = "crew-comfort";

  private static final String STORE = "demo-shop.db";

  @SuppressWarnings("UnusedVariable") // Read by the library.
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "out",
      description = "Write the packs into this folder (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(names = "--no-serve", description = "Write the packs only; open no pages.")
  private boolean noServe;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = OpenPages.PORT,
      description = "Port of the pages, 0 for any that is free (default: ${DEFAULT-VALUE}).")
  private int port;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter results = spec.commandLine().getOut();
    if (!noServe) {
      OpenPages.check(port);
    }
    DemoFiles files = DemoFiles.find();
    Read read = files.read();
    KitOrder main = Orders.of(read, files.where(), Optional.of(MAIN_KIT)).get(0);
    List<KitOrder> all = Orders.of(read, files.where(), Optional.empty());
    PackFolder folder = PackFolder.of(out, Orders.documents(read));

    List<Planned> done = new ArrayList<>();
    done.add(Planned.of(main, false, Optional.of(folder), spec.commandLine().getErr()));
    results.println("The documents of the demo are in " + files.where() + ".");
    results.println();
    results.print(done.get(0).summary());
    for (KitOrder order : all) {
      String id = order.kit().id();
      if (!id.equals(MAIN_KIT)) {
        results.flush();
        Planned other =
            Planned.of(order, false, Optional.of(folder.sub(id)), spec.commandLine().getErr());
        done.add(other);
        results.println();
        results.print(other.brief());
      }
    }
    if (!noServe) {
      results.println();
      openPages(files, results);
    }
    return Planned.exitCode(done);
  }

  /** Pages on a store beside the packs; what was changed on them before is kept. */
  private void openPages(DemoFiles files, PrintWriter results) {
    StoreTarget place = StoreTarget.parse(out.resolve(STORE).toString());
    Store store = Store.open(place);
    try {
      if (store.documents().newest().isEmpty()) {
        files.into(store, new Signature("Loomwright", "the demo"));
      }
      OpenPages.untilStopped(store, place.shown(), files::into, port, results);
    } finally {
      store.close();
    }
  }
}
