package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.loomwright.drawing.board.BoardTooSmall;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.fit.FitCheckPage;
import org.loomwright.papers.hand.HandGuide;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.planner.difference.Change;
import org.loomwright.planner.difference.PlanDifference;
import org.loomwright.planner.fit.FitCheck;
import org.loomwright.web.shop.KitPages;
import org.loomwright.web.shop.PlanDesk;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Stage;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.view.Comeback;
import org.loomwright.web.view.KitView;

/** The stages of a kit. */
final class KitRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;

  KitRoutes(Workbench bench, PageWriter writer) {
    this.bench = bench;
    this.writer = writer;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/kit/{id}", this::kitStart);
    routes.post("/kit/{id}/stop", ctx -> desk(ctx, bench.desk()::stop));
    routes.post("/kit/{id}/again", ctx -> desk(ctx, bench.desk()::again));
    routes.get("/kit/{id}/verdict", this::verdict);
    routes.get("/kit/{id}/pack.zip", this::pack);
    routes.get(
        "/kit/{id}/guide.html",
        ctx -> single(ctx, "guide", it -> HandGuide.text(it.order(), it.plan(), Optional.empty())));
    routes.get("/kit/{id}/fit-check.html", ctx -> single(ctx, "fit-check", this::fitCheck));
    routes.get("/kit/{id}/sums/{number}", this::trace);
    routes.get("/kit/{id}/{stage}", this::kit);
  }

  private void kitStart(Context ctx) {
    ctx.redirect("/kit/" + ctx.pathParam("id") + "/gap");
  }

  private void kit(Context ctx) {
    Shop shop = bench.now();
    Optional<KitOrder> order = shop.order(ctx.pathParam("id"));
    Optional<Stage> stage = Stage.of(ctx.pathParam("stage"));
    if (order.isEmpty() || stage.isEmpty()) {
      writer.nothing(ctx, order.isEmpty() ? "kit" : "stage of a kit");
      return;
    }
    KitView view =
        new KitView(order.get(), stage.get(), bench.desk().soon(order.get(), PlanDesk.PATIENCE));
    writer.show(
        ctx,
        shop,
        stage.get().title() + " of " + order.get().kit().name(),
        "kit.jte",
        Map.of(
            "view",
            view,
            "basedOn",
            bench.number(order.get().kit()),
            "changes",
            changes(ctx, view),
            "comebacks",
            Comeback.of(
                shop, order.get().kit().id(), stage.get(), view.pages().map(KitPages::plan))));
  }

  /** What a change did to the plan before; nothing where no change was made just now. */
  private List<Change> changes(Context ctx, KitView view) {
    if (ctx.queryParam("done") == null || view.pages().isEmpty()) {
      return List.of();
    }
    KitPages now = view.pages().get();
    return bench
        .desk()
        .before(now.order().kit().id())
        .map(it -> PlanDifference.between(it.plan(), now.plan()))
        .orElse(List.of());
  }

  private void desk(Context ctx, Consumer<String> what) {
    Optional<Kit> kit = bench.now().kit(ctx.pathParam("id"));
    if (kit.isEmpty()) {
      writer.nothing(ctx, "kit");
      return;
    }
    what.accept(kit.get().id());
    ctx.redirect(Back.of(ctx), HttpStatus.SEE_OTHER);
  }

  private void verdict(Context ctx) {
    Optional<KitOrder> order = bench.now().order(ctx.pathParam("id"));
    if (order.isEmpty()) {
      writer.nothing(ctx, "kit");
      return;
    }
    KitView view = new KitView(order.get(), Stage.GAP, bench.desk().of(order.get()));
    ctx.html(writer.render("verdict.jte", Map.of("view", view)));
  }

  private void trace(Context ctx) {
    Shop shop = bench.now();
    Optional<KitOrder> order = shop.order(ctx.pathParam("id"));
    Optional<KitPages> pages =
        order.flatMap(it -> new KitView(it, Stage.SUMS, bench.desk().of(it)).pages());
    Optional<CheckRow> row =
        pages.flatMap(
            it ->
                it.checks().stream()
                    .filter(line -> Integer.toString(line.number()).equals(ctx.pathParam("number")))
                    .findFirst());
    if (pages.isEmpty() || row.isEmpty()) {
      writer.nothing(ctx, "check");
      return;
    }
    KitView.Line line = KitView.line(pages.get(), row.get(), PageWriter.units(ctx));
    writer.show(
        ctx,
        shop,
        "How a figure was found",
        "trace.jte",
        Map.of("order", pages.get().order(), "line", line, "trace", KitView.trace(row.get())));
  }

  private void pack(Context ctx) throws IOException {
    Shop shop = bench.now();
    Optional<KitOrder> order = shop.order(ctx.pathParam("id"));
    Optional<KitPages> pages =
        order.flatMap(it -> new KitView(it, Stage.PACK, bench.desk().of(it)).pages());
    if (pages.isEmpty()) {
      writer.nothing(ctx, "finished pack");
      return;
    }
    try {
      String kit = pages.get().order().kit().id();
      PackFile.send(
          ctx,
          kit + "-pack",
          PackFile.files(pages.get(), PackFile.stamp(shop, pages.get(), Optional.empty())));
    } catch (BoardTooSmall small) {
      writer.message(
          ctx,
          HttpStatus.CONFLICT,
          "The pack can't be made",
          "The build board of the rules is too small: " + small.getMessage() + ".");
    }
  }

  private String fitCheck(KitPages it) {
    int fitted = PackFile.stamp(bench.now(), it, Optional.empty()).verifiedOn();
    return FitCheckPage.text(it.order(), it.plan(), FitCheck.of(it.order(), it.plan()), fitted);
  }

  /** One paper as a file to save: it has scripts of its own, which these pages do not run. */
  private void single(Context ctx, String name, Function<KitPages, String> paper) {
    Optional<KitPages> pages =
        bench
            .now()
            .order(ctx.pathParam("id"))
            .flatMap(it -> new KitView(it, Stage.PACK, bench.desk().of(it)).pages());
    if (pages.isEmpty()) {
      writer.nothing(ctx, "finished " + name);
      return;
    }
    String stem = pages.get().order().kit().id().replaceAll("[^A-Za-z0-9-]", "_");
    ctx.contentType("text/html; charset=utf-8")
        .header("Content-Disposition", "attachment; filename=\"" + stem + "-" + name + ".html\"")
        .result(paper.apply(pages.get()));
  }
}
