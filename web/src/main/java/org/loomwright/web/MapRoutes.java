package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.map.MapEdit;
import org.loomwright.web.map.MapView;
import org.loomwright.web.map.MapWords;
import org.loomwright.web.map.PlanSetup;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;

/** The map of a vehicle's places and runs, to be worked on. */
final class MapRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  MapRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/vehicle/{id}/map", this::show);
    if (bench.store().isPresent()) {
      routes.post("/vehicle/{id}/map", this::save);
    }
  }

  private void show(Context ctx) {
    Shop shop = bench.now();
    Optional<Vehicle> known = shop.vehicle(ctx.pathParam("id"));
    if (known.isEmpty()) {
      writer.nothing(ctx, "vehicle");
      return;
    }
    Optional<VehicleText> text = bench.store().flatMap(it -> VehicleText.newest(it, known.get()));
    page(
        ctx,
        shop,
        text.map(VehicleText::vehicle).orElse(known.get()),
        text.map(VehicleText::number).orElse(0L),
        it -> Optional.empty(),
        List.of());
  }

  private void save(Context ctx) {
    Shop shop = bench.now();
    long basedOn = PageWriter.number(ctx, "basedOn");
    Optional<Vehicle> known = shop.vehicle(ctx.pathParam("id"));
    Optional<VehicleText> text =
        known.flatMap(it -> VehicleText.version(saver.store(), it, basedOn));
    if (text.isEmpty()) {
      writer.nothing(ctx, "vehicle");
      return;
    }
    Function<String, Optional<String>> typed = it -> Optional.ofNullable(ctx.formParam(it));
    Vehicle vehicle = text.get().vehicle();
    MapEdit edit = MapEdit.of(text.get().text(), vehicle, typed, Saver.name(ctx));
    List<Problem> problems =
        edit.problems().isEmpty()
            ? saver.save(
                ctx,
                text.get().key(),
                edit.text(),
                basedOn,
                Href.map(vehicle.id()),
                MapWords.done(edit.changes()))
            : edit.problems();
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      page(ctx, shop, vehicle, basedOn, typed, problems);
    }
  }

  private void page(
      Context ctx,
      Shop shop,
      Vehicle vehicle,
      long basedOn,
      Function<String, Optional<String>> typed,
      List<Problem> problems) {
    writer.show(
        ctx,
        shop,
        "Map of " + vehicle.name(),
        "map.jte",
        Map.of(
            "view",
            MapView.of(vehicle, basedOn, shop::picture, typed, problems),
            "setup",
            PlanSetup.of(vehicle)));
  }
}
