package org.loomwright.benchmarks;

import java.nio.file.Path;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;

/** Kits of the demo, in the folder it is run from or the one given as the property {@code demo}. */
public final class DemoKit {
  private DemoKit() {}

  /**
   * The order for a kit.
   *
   * @throws IllegalStateException if the demo can't be read or has no such kit
   */
  public static KitOrder order(String kit) {
    Path folder = Path.of(System.getProperty("demo", "demo"));
    Read read = WorkspaceReader.read(folder);
    if (!(read instanceof Read.Good good)) {
      throw new IllegalStateException("the demo at " + folder + " can't be read: " + read);
    }
    if (!(KitOrders.resolve(good.workspace(), kit) instanceof KitOrders.Found found)) {
      throw new IllegalStateException("the demo at " + folder + " has no kit " + kit);
    }
    return found.order();
  }
}
