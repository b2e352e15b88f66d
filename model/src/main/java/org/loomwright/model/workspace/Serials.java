package org.loomwright.model.workspace;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockItem;

/** Each serial number is given once, whichever kit it is for. */
final class Serials {
  private Serials() {}

  static void check(List<Source> sources, List<Problem> problems) {
    Map<String, String> seen = new HashMap<>();
    for (Source source : sources) {
      Scope scope = new Scope(source, problems);
      if (source.bound().document().orElse(null) instanceof Batch batch) {
        for (StockItem item : batch.items()) {
          String here = "batch '" + batch.id() + "', " + scope.path(item);
          String first = item.serial().isEmpty() ? null : seen.putIfAbsent(item.serial(), here);
          if (first != null) {
            scope.problem(
                item,
                "serial",
                item.serial(),
                "serial number '" + item.serial() + "' is already given in " + first);
          }
        }
      }
    }
  }
}
