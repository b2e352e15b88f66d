package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.document.Document;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Stage;
import org.loomwright.web.shop.TourStop;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.view.FaceView;
import org.loomwright.web.view.FactTable;
import org.loomwright.web.view.FindingCount;
import org.loomwright.web.view.Finds;
import org.loomwright.web.view.KitView;
import org.loomwright.web.view.VehicleView;

/** Pages that show documents. */
final class BrowsePages implements Routes {
  private final Workbench bench;
  private final PageWriter writer;

  BrowsePages(Workbench bench, PageWriter writer) {
    this.bench = bench;
    this.writer = writer;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/", this::start);
    routes.get("/vehicle/{id}", this::vehicle);
    routes.get("/vehicle/{id}/face/{face}", this::face);
    routes.get("/equipment/{id}", this::equipment);
    routes.get("/parts/{id}", this::parts);
    routes.get("/rules/{id}", this::rules);
    routes.get("/search", this::search);
  }

  private void start(Context ctx) {
    Shop shop = bench.now();
    List<KitView> kits =
        shop.workspace().kits().stream()
            .flatMap(it -> shop.order(Href.part(it.id())).stream())
            .map(it -> new KitView(it, Stage.GAP, bench.desk().of(it)))
            .toList();
    writer.show(
        ctx,
        shop,
        "Workspace",
        "start.jte",
        Map.of(
            "shop",
            shop,
            "kits",
            kits,
            "keys",
            bench.keys(),
            "example",
            bench.example().isPresent(),
            "tour",
            bench.store().isPresent()
                && TourStop.isIn(shop)
                && Cookies.of(ctx, TourRoutes.TOUR).isEmpty(),
            "retired",
            bench.retired()));
  }

  private void vehicle(Context ctx) {
    Shop shop = bench.now();
    Optional<Vehicle> vehicle = shop.vehicle(ctx.pathParam("id"));
    if (vehicle.isEmpty()) {
      writer.nothing(ctx, "vehicle");
      return;
    }
    writer.show(
        ctx,
        shop,
        vehicle.get().name(),
        "vehicle.jte",
        Map.of(
            "view",
            VehicleView.of(shop, vehicle.get(), PageWriter.units(ctx)),
            "findings",
            FindingCount.of(shop, vehicle.get())));
  }

  private void face(Context ctx) {
    Shop shop = bench.now();
    Map<String, String> wanted = PageWriter.asked(ctx);
    Optional<FaceView> face =
        shop.vehicle(ctx.pathParam("id"))
            .flatMap(
                it -> FaceView.of(shop, it, ctx.pathParam("face"), wanted, PageWriter.units(ctx)));
    if (face.isEmpty()) {
      writer.nothing(ctx, "connector or fuse block");
      return;
    }
    writer.show(
        ctx,
        shop,
        face.get().name(),
        "face.jte",
        Map.of(
            "view",
            face.get(),
            "findings",
            FindingCount.of(shop, face.get().vehicle(), face.get().id())));
  }

  private void equipment(Context ctx) {
    Shop shop = bench.now();
    document(ctx, shop, shop.equipment(ctx.pathParam("id")), "equipment", "equipment.jte");
  }

  private void parts(Context ctx) {
    Shop shop = bench.now();
    tables(
        ctx,
        shop,
        shop.parts(ctx.pathParam("id")),
        "parts list",
        it -> FactTable.of(it, PageWriter.units(ctx)));
  }

  private void rules(Context ctx) {
    Shop shop = bench.now();
    tables(
        ctx,
        shop,
        shop.rules(ctx.pathParam("id")),
        "rules",
        it -> FactTable.of(it, PageWriter.units(ctx)));
  }

  private void document(
      Context ctx, Shop shop, Optional<? extends Document> document, String sort, String page) {
    if (document.isEmpty()) {
      writer.nothing(ctx, sort);
      return;
    }
    writer.show(ctx, shop, document.get().name(), page, Map.of("document", document.get()));
  }

  private <T extends Document> void tables(
      Context ctx, Shop shop, Optional<T> document, String sort, Function<T, List<FactTable>> of) {
    if (document.isEmpty()) {
      writer.nothing(ctx, sort);
      return;
    }
    writer.show(
        ctx,
        shop,
        document.get().name(),
        "tables.jte",
        Map.of("sort", sort, "document", document.get(), "tables", of.apply(document.get())));
  }

  private void search(Context ctx) {
    Shop shop = bench.now();
    String sought = Optional.ofNullable(ctx.queryParam("q")).orElse("");
    writer.show(ctx, shop, "Search", "search.jte", Map.of("finds", Finds.of(shop, sought)));
  }
}
