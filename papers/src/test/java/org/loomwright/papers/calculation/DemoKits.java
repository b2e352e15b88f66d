package org.loomwright.papers.calculation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.plan.Planner;

/** The demo kits as they are planned today. */
public final class DemoKits {
  static final List<String> KITS = List.of("crew-comfort", "trailer");

  private static final Map<String, Names> PLANNED = new ConcurrentHashMap<>();

  private DemoKits() {}

  /** A kit with its plan, worked out once. */
  public static Names planned(String kit) {
    return PLANNED.computeIfAbsent(
        kit,
        it -> {
          KitOrder order = order(it);
          return new Names(order, Planner.plan(order));
        });
  }

  private static KitOrder order(String kit) {
    List<NamedText> texts = new ArrayList<>();
    // Tests run in the folder of their module.
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        texts.add(new NamedText(file.getFileName().toString(), Files.readString(file)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (WorkspaceReader.read(texts) instanceof Read.Good good
        && KitOrders.resolve(good.workspace(), kit) instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the demo has no readable kit " + kit);
  }
}
