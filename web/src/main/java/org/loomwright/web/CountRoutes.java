package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.finding.ShareCount;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** How often builds of a vehicle were met, and the shares on file brought up to date with that. */
final class CountRoutes implements Routes {
  private static final Problem NOTHING_NEW =
      new Problem("", "", "", "the shares on file take in all vehicles of this trait already");

  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  CountRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/vehicle/{id}/counts", ctx -> page(ctx, List.of()));
    if (bench.store().isPresent()) {
      routes.post("/vehicle/{id}/counts", this::take);
    }
  }

  private void page(Context ctx, List<Problem> problems) {
    Shop shop = bench.now();
    Optional<Vehicle> vehicle = shop.vehicle(ctx.pathParam("id"));
    if (vehicle.isEmpty()) {
      writer.nothing(ctx, "vehicle");
      return;
    }
    writer.show(
        ctx,
        shop,
        "How common: " + vehicle.get().name(),
        "counts.jte",
        Map.of(
            "vehicle",
            vehicle.get(),
            "counts",
            counts(shop, vehicle.get()),
            "basedOn",
            bench.number(vehicle.get()),
            "problems",
            problems));
  }

  private static List<ShareCount> counts(Shop shop, Vehicle vehicle) {
    return ShareCount.of(vehicle, shop.workspace().jobs(), shop.workspace().findings());
  }

  private void take(Context ctx) {
    Shop shop = bench.now();
    Optional<Vehicle> vehicle = shop.vehicle(ctx.pathParam("id"));
    Optional<ShareCount> count =
        vehicle.stream()
            .flatMap(it -> counts(shop, it).stream())
            .filter(it -> it.trait().id().equals(ctx.formParam("trait")))
            .findFirst();
    long basedOn = PageWriter.number(ctx, "basedOn");
    Optional<Version> base =
        vehicle.flatMap(
            it ->
                saver
                    .store()
                    .documents()
                    .version(new DocumentKey(DocumentKind.VEHICLE.word(), it.id()), basedOn));
    if (count.isEmpty() || base.isEmpty()) {
      writer.nothing(ctx, "trait");
      return;
    }
    if (!count.get().isNew()) {
      page(ctx.status(HttpStatus.UNPROCESSABLE_CONTENT), List.of(NOTHING_NEW));
      return;
    }
    List<Problem> problems =
        saver.save(
            ctx,
            base.get().revision().key(),
            with(base.get().content(), count.get()),
            basedOn,
            Href.counts(vehicle.get().id()),
            "shares of \""
                + count.get().trait().name()
                + "\" from "
                + count.get().seen()
                + " seen");
    if (!problems.isEmpty()) {
      page(ctx.status(HttpStatus.UNPROCESSABLE_CONTENT), problems);
    }
  }

  /** The vehicle's text with the shares of one trait. */
  private static String with(String text, ShareCount count) {
    if (!(JsonText.parse(text) instanceof JsonText.Tree tree)) {
      return text;
    }
    for (JsonNode trait : tree.node().path("traits")) {
      if (trait.path("id").asString("").equals(count.trait().id())) {
        for (JsonNode value : trait.path("values")) {
          count.lines().stream()
              .filter(it -> it.value().id().equals(value.path("id").asString("")))
              .forEach(
                  it ->
                      ((ObjectNode) value)
                          .put("share", it.percent() + " %")
                          .put("counted", it.count()));
        }
      }
    }
    return tree.node().toPrettyString() + "\n";
  }
}
