package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.stock.Batch;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;

/** Kits that were made: all batches, and one of them. */
final class StockRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;

  StockRoutes(Workbench bench, PageWriter writer) {
    this.bench = bench;
    this.writer = writer;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/stock", this::list);
    routes.get("/batch/{id}", this::show);
  }

  private void list(Context ctx) {
    Shop shop = bench.now();
    List<Batch> newestFirst =
        shop.workspace().batches().stream()
            .sorted(
                Comparator.comparing(Batch::made, Comparator.reverseOrder())
                    .thenComparing(Batch::id))
            .toList();
    writer.show(ctx, shop, "Stock", "stock.jte", Map.of("batches", newestFirst));
  }

  private void show(Context ctx) {
    Shop shop = bench.now();
    Optional<Batch> batch = shop.batch(ctx.pathParam("id"));
    if (batch.isEmpty()) {
      writer.nothing(ctx, "batch");
      return;
    }
    writer.show(ctx, shop, batch.get().name(), "batch.jte", Map.of("batch", batch.get()));
  }
}
