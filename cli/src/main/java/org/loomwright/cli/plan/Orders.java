package org.loomwright.cli.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.cli.shell.Problems;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.LoadedFile;
import org.loomwright.model.workspace.Problem;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.Workspace;

/** Finds the kits to be planned. */
final class Orders {
  private static final String OUTCOME = "nothing was planned";

  private Orders() {}

  /**
   * The kit with the wanted id, or all kits of the workspace in the order of their files.
   *
   * @param where where the workspace was read from, in words
   * @param wanted kit id, empty for all kits
   * @return at least one kit; the rules of their vehicles leave at least one build each
   * @throws WrongInput with every problem, when there are any
   */
  static List<KitOrder> of(Read read, String where, Optional<String> wanted) {
    if (read instanceof Read.Bad bad) {
      throw Problems.asFailure(bad.problems(), where, OUTCOME);
    }
    Read.Good good = (Read.Good) read;
    List<KitOrders.Resolved> resolved = new ArrayList<>();
    if (wanted.isPresent()) {
      resolved.add(KitOrders.resolve(good.workspace(), wanted.get()));
    } else if (good.workspace().kits().isEmpty()) {
      resolved.add(KitOrders.only(good.workspace()));
    } else {
      for (Kit kit : good.workspace().kits()) {
        resolved.add(KitOrders.resolve(good.workspace(), kit.id()));
      }
    }
    List<Problem> problems = new ArrayList<>();
    List<KitOrder> orders = new ArrayList<>();
    for (KitOrders.Resolved it : resolved) {
      if (it instanceof KitOrders.Found found) {
        orders.add(found.order());
      } else {
        problems.add(((KitOrders.NotFound) it).problem());
      }
    }
    orders.stream()
        .map(KitOrder::vehicle)
        .distinct()
        .forEach(it -> RuleConflict.in(file(good, it), it).ifPresent(problems::add));
    if (!problems.isEmpty()) {
      throw Problems.asFailure(problems, where, OUTCOME);
    }
    return orders;
  }

  /** The documents of a workspace whose kits were found. */
  static Workspace documents(Read read) {
    return read instanceof Read.Good good ? good.workspace() : Workspace.empty();
  }

  private static String file(Read.Good good, Vehicle vehicle) {
    return good.files().stream()
        .filter(it -> it.document() instanceof Vehicle)
        .filter(it -> it.document().id().equals(vehicle.id()))
        .map(LoadedFile::file)
        .findFirst()
        .orElse(vehicle.id());
  }
}
