package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.sum.QuickSum;

/** Quick sums. */
final class SumRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;

  SumRoutes(Workbench bench, PageWriter writer) {
    this.bench = bench;
    this.writer = writer;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/sums", ctx -> ctx.redirect("/sums/resistance"));
    routes.get("/sums/{sum}", this::sum);
  }

  private void sum(Context ctx) {
    Optional<QuickSum> sum = QuickSum.of(ctx.pathParam("sum"));
    if (sum.isEmpty()) {
      writer.nothing(ctx, "sum");
      return;
    }
    Map<String, String> typed = PageWriter.asked(ctx);
    writer.show(
        ctx,
        bench.now(),
        sum.get().title(),
        "sum.jte",
        Map.of("sum", sum.get(), "typed", typed, "result", sum.get().answer(typed, PageWriter.units(ctx))));
  }
}
