package org.loomwright.web;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.staticfiles.Location;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.board.BoardTooSmall;
import org.loomwright.model.document.Document;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.KitPages;
import org.loomwright.web.shop.PlanDesk;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Stage;
import org.loomwright.web.sum.QuickSum;
import org.loomwright.web.view.FaceView;
import org.loomwright.web.view.FactTable;
import org.loomwright.web.view.Finds;
import org.loomwright.web.view.KitView;
import org.loomwright.web.view.VehicleView;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Which address shows which page. */
final class Site {
  private static final Logger LOG = LoggerFactory.getLogger(Site.class);

  private static final String RULES =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final int LONGEST_STOP_MS = 3000;

  /** So long a page waits for a plan; most changes are planned by then. */
  private static final Duration PATIENCE = Duration.ofMillis(400);

  private final PageWriter writer = new PageWriter();
  private final Shop.Reader reader;
  private final PlanDesk desk;

  private Site(Shop.Reader reader, PlanDesk desk) {
    this.reader = reader;
    this.desk = desk;
  }

  /** The server, not started yet. */
  static Javalin of(Shop.Reader reader, PlanDesk desk) {
    Site site = new Site(reader, desk);
    return Javalin.create(
        config -> {
          config.startup.showJavalinBanner = false;
          config.startup.showOldJavalinVersionWarning = false;
          config.http.maxRequestSize = 10_000L;
          config.jetty.modifyServer(it -> it.setStopTimeout(LONGEST_STOP_MS));
          config.staticFiles.add(
              files -> {
                files.hostedPath = "/assets";
                files.directory = "/loomwright-assets";
                files.location = Location.CLASSPATH;
              });
          config.staticFiles.enableWebjars();
          config.routes.before(site::guard);
          config.routes.get("/", site::start);
          config.routes.get("/vehicle/{id}", site::vehicle);
          config.routes.get("/vehicle/{id}/face/{face}", site::face);
          config.routes.get("/equipment/{id}", site::equipment);
          config.routes.get("/parts/{id}", site::parts);
          config.routes.get("/rules/{id}", site::rules);
          config.routes.get("/kit/{id}", site::kitStart);
          config.routes.get("/kit/{id}/verdict", site::verdict);
          config.routes.get("/kit/{id}/pack.zip", site::pack);
          config.routes.get("/kit/{id}/sums/{number}", site::trace);
          config.routes.get("/kit/{id}/{stage}", site::kit);
          config.routes.get("/sums", ctx -> ctx.redirect("/sums/resistance"));
          config.routes.get("/sums/{sum}", site::sum);
          config.routes.get("/search", site::search);
          config.routes.post("/look", Site::look);
          config.routes.error(HttpStatus.NOT_FOUND, site::unknown);
          config.routes.exception(Exception.class, site::fault);
        });
  }

  /** Only this computer's own pages are answered, whatever name another page gave this address. */
  private void guard(Context ctx) {
    ctx.header("Content-Security-Policy", RULES)
        .header("X-Content-Type-Options", "nosniff")
        .header("Referrer-Policy", "no-referrer");
    if (!ctx.path().startsWith("/assets/") && !ctx.path().startsWith("/webjars/")) {
      ctx.header("Cache-Control", "no-store");
    }
    String host = String.valueOf(ctx.host()).replaceFirst(":\\d+$", "");
    if (!host.equals("127.0.0.1") && !host.equals("localhost")) {
      ctx.status(HttpStatus.MISDIRECTED_REQUEST)
          .result("These pages are open at 127.0.0.1 only.")
          .skipRemainingHandlers();
    }
  }

  private void start(Context ctx) {
    Shop shop = reader.now();
    List<KitView> kits =
        shop.workspace().kits().stream()
            .flatMap(it -> shop.order(Href.part(it.id())).stream())
            .map(it -> new KitView(it, Stage.GAP, desk.of(it)))
            .toList();
    writer.show(ctx, shop, "Workspace", "start.jte", Map.of("shop", shop, "kits", kits));
  }

  private void vehicle(Context ctx) {
    Shop shop = reader.now();
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
        Map.of("view", VehicleView.of(shop, vehicle.get())));
  }

  private void face(Context ctx) {
    Shop shop = reader.now();
    Map<String, String> wanted = PageWriter.asked(ctx);
    Optional<FaceView> face =
        shop.vehicle(ctx.pathParam("id"))
            .flatMap(it -> FaceView.of(shop, it, ctx.pathParam("face"), wanted));
    if (face.isEmpty()) {
      writer.nothing(ctx, "connector or fuse block");
      return;
    }
    writer.show(ctx, shop, face.get().name(), "face.jte", Map.of("view", face.get()));
  }

  private void equipment(Context ctx) {
    Shop shop = reader.now();
    document(ctx, shop, shop.equipment(ctx.pathParam("id")), "equipment", "equipment.jte");
  }

  private void parts(Context ctx) {
    Shop shop = reader.now();
    tables(ctx, shop, shop.parts(ctx.pathParam("id")), "parts list", it -> FactTable.of(it));
  }

  private void rules(Context ctx) {
    Shop shop = reader.now();
    tables(ctx, shop, shop.rules(ctx.pathParam("id")), "rules", it -> FactTable.of(it));
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
      Context ctx,
      Shop shop,
      Optional<T> document,
      String sort,
      java.util.function.Function<T, List<FactTable>> of) {
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

  private void kitStart(Context ctx) {
    ctx.redirect("/kit/" + ctx.pathParam("id") + "/gap");
  }

  private void kit(Context ctx) {
    Shop shop = reader.now();
    Optional<KitOrder> order = shop.order(ctx.pathParam("id"));
    Optional<Stage> stage = Stage.of(ctx.pathParam("stage"));
    if (order.isEmpty() || stage.isEmpty()) {
      writer.nothing(ctx, order.isEmpty() ? "kit" : "stage of a kit");
      return;
    }
    KitView view = new KitView(order.get(), stage.get(), desk.soon(order.get(), PATIENCE));
    writer.show(
        ctx,
        shop,
        stage.get().title() + " of " + order.get().kit().name(),
        "kit.jte",
        Map.of("view", view));
  }

  private void verdict(Context ctx) {
    Optional<KitOrder> order = reader.now().order(ctx.pathParam("id"));
    if (order.isEmpty()) {
      writer.nothing(ctx, "kit");
      return;
    }
    KitView view = new KitView(order.get(), Stage.GAP, desk.of(order.get()));
    ctx.html(writer.render("verdict.jte", Map.of("view", view)));
  }

  private void trace(Context ctx) {
    Shop shop = reader.now();
    Optional<KitOrder> order = shop.order(ctx.pathParam("id"));
    Optional<KitPages> pages =
        order.flatMap(it -> new KitView(it, Stage.SUMS, desk.of(it)).pages());
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
    KitView.Line line = KitView.line(pages.get(), row.get());
    writer.show(
        ctx,
        shop,
        "How a figure was found",
        "trace.jte",
        Map.of("order", pages.get().order(), "line", line, "trace", KitView.trace(row.get())));
  }

  private void pack(Context ctx) throws IOException {
    Shop shop = reader.now();
    Optional<KitOrder> order = shop.order(ctx.pathParam("id"));
    Optional<KitPages> pages =
        order.flatMap(it -> new KitView(it, Stage.PACK, desk.of(it)).pages());
    if (pages.isEmpty()) {
      writer.nothing(ctx, "finished pack");
      return;
    }
    try {
      byte[] zip = PackFile.zip(pages.get());
      ctx.contentType("application/zip")
          .header(
              "Content-Disposition",
              "attachment; filename=\""
                  + pages.get().order().kit().id().replaceAll("[^A-Za-z0-9-]", "_")
                  + "-pack.zip\"")
          .result(zip);
    } catch (BoardTooSmall small) {
      writer.message(
          ctx,
          HttpStatus.CONFLICT,
          "The pack can't be made",
          "The build board of the rules is too small: " + small.getMessage() + ".");
    }
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
        reader.now(),
        sum.get().title(),
        "sum.jte",
        Map.of("sum", sum.get(), "typed", typed, "result", sum.get().answer(typed)));
  }

  private void search(Context ctx) {
    Shop shop = reader.now();
    String sought = Optional.ofNullable(ctx.queryParam("q")).orElse("");
    writer.show(ctx, shop, "Search", "search.jte", Map.of("finds", Finds.of(shop, sought)));
  }

  private static void look(Context ctx) {
    String look = String.valueOf(ctx.formParam("look"));
    if (PageWriter.LOOKS.contains(look)) {
      ctx.res()
          .addHeader("Set-Cookie", "look=" + look + "; Path=/; Max-Age=31536000; SameSite=Strict");
    }
    String back = String.valueOf(ctx.formParam("back"));
    boolean here = back.matches("/([A-Za-z0-9_?].*)?") && !back.contains("\\");
    ctx.redirect(here ? back : "/", HttpStatus.SEE_OTHER);
  }

  private void unknown(Context ctx) {
    if (!PageWriter.hasSpoken(ctx)) {
      writer.nothing(ctx, "page");
    }
  }

  private void fault(Exception fault, Context ctx) {
    LOG.error("The page {} failed.", ctx.path(), fault);
    writer.message(
        ctx,
        HttpStatus.INTERNAL_SERVER_ERROR,
        "A fault of the program",
        "This page could not be made. That is not your doing; the program's log has the details.");
  }
}
