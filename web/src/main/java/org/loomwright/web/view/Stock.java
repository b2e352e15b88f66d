package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockItem;
import org.loomwright.model.stock.StockState;
import org.loomwright.planner.impact.ReleaseImpact;

/**
 * Kits that were made of a release and are in no vehicle yet.
 *
 * @param state where they are, in words
 * @param serials their serial numbers, with the note of each
 * @param batch name of the batch
 */
public record Stock(String state, String serials, String batch) {
  private static final List<StockState> CONCERNED =
      List.of(StockState.ON_THE_SHELF, StockState.SOLD);

  /** Those of a release, batch by batch. */
  public static List<Stock> of(ReleaseImpact release, List<Batch> batches) {
    List<Stock> lines = new ArrayList<>();
    for (Batch batch : batches) {
      if (!batch.kit().equals(release.kit()) || batch.release() != release.number()) {
        continue;
      }
      for (StockState state : CONCERNED) {
        List<String> serials =
            batch.items().stream().filter(it -> it.state() == state).map(Stock::words).toList();
        if (!serials.isEmpty()) {
          lines.add(new Stock(state.words(), String.join(", ", serials), batch.name()));
        }
      }
    }
    return lines;
  }

  private static String words(StockItem item) {
    return item.serial() + item.note().map(it -> " (" + it + ")").orElse("");
  }
}
