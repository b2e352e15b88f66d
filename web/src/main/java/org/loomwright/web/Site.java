package org.loomwright.web;

import io.javalin.Javalin;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.staticfiles.Location;
import java.util.List;
import org.loomwright.store.StoreException;
import org.loomwright.web.shop.Workbench;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The server: who is answered, what is served as it is, and what happens where something fails. */
final class Site {
  private static final Logger LOG = LoggerFactory.getLogger(Site.class);

  private static final String RULES =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final int LONGEST_STOP_MS = 3000;
  private static final long LARGEST_FORM = 20_000_000;
  private static final long LARGEST_UPLOAD_MB = 200;

  private final PageWriter writer;

  private Site(PageWriter writer) {
    this.writer = writer;
  }

  /** The server, not started yet. */
  static Javalin of(Workbench bench) {
    PageWriter writer = new PageWriter(bench);
    Site site = new Site(writer);
    Saver saver = new Saver(bench, writer);
    JobAccess jobs = new JobAccess(bench, writer, saver);
    JobRoutes jobList = new JobRoutes(writer, jobs);
    List<Routes> groups =
        List.of(
            new BrowsePages(bench, writer),
            // Before the stages, whose addresses would take in all others of a kit.
            new ReleaseRoutes(bench, writer, saver),
            new KitRoutes(bench, writer),
            new WishRoutes(bench, writer, saver),
            new SumRoutes(bench, writer),
            new SettingRoutes(),
            new TourRoutes(),
            new BeginRoutes(bench, writer, saver),
            new TextRoutes(bench, writer, saver),
            new EditRoutes(bench, writer, saver),
            // Before the forms of new documents, whose addresses would take theirs in.
            jobList,
            new JobTakeInRoutes(writer, jobs, jobList),
            new JobPaperRoutes(writer, jobs),
            new JobStateRoutes(jobs),
            new JobSurveyRoutes(jobs),
            new JobStepRoutes(jobs),
            new JobDeviationRoutes(jobs),
            new JobNumberRoutes(jobs),
            new JobPhotoRoutes(jobs),
            new StockRoutes(bench, writer),
            new NewRoutes(bench, writer, saver, jobs),
            new CompareRoutes(bench, writer, saver),
            new FindingRoutes(bench, writer, saver),
            new FindingIntoRoutes(bench, writer, saver),
            new CountRoutes(bench, writer, saver),
            new ImpactRoutes(bench, writer),
            new HistoryRoutes(bench, writer, saver),
            new PasteRoutes(bench, writer, saver),
            new PictureRoutes(bench, writer, saver),
            new PhotoRoutes(bench, writer, saver),
            new MapRoutes(bench, writer, saver),
            new PlanRoutes(bench, writer, saver));
    return Javalin.create(
        config -> {
          config.startup.showJavalinBanner = false;
          config.startup.showOldJavalinVersionWarning = false;
          config.http.maxRequestSize = LARGEST_FORM;
          config.jetty.multipartConfig.maxFileSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
          config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_UPLOAD_MB + 1, SizeUnit.MB);
          config.jetty.modifyServletContextHandler(
              it -> it.setMaxFormContentSize((int) LARGEST_FORM));
          config.jetty.modifyServer(it -> it.setStopTimeout(LONGEST_STOP_MS));
          config.staticFiles.add(
              files -> {
                files.hostedPath = "/assets";
                files.directory = "/loomwright-assets";
                files.location = Location.CLASSPATH;
              });
          config.staticFiles.enableWebjars();
          config.routes.before(site::guard);
          groups.forEach(it -> it.add(config.routes));
          config.routes.error(HttpStatus.NOT_FOUND, site::unknown);
          config.routes.exception(StoreException.class, site::notKept);
          config.routes.exception(Exception.class, site::fault);
        });
  }

  /** Only this computer's own pages are answered, whatever name another page gave this address. */
  private void guard(Context ctx) {
    ctx.header("Content-Security-Policy", RULES)
        .header("X-Content-Type-Options", "nosniff")
        .header("Referrer-Policy", "same-origin");
    if (!ctx.path().startsWith("/assets/") && !ctx.path().startsWith("/webjars/")) {
      ctx.header("Cache-Control", "no-store");
    }
    String host = String.valueOf(ctx.host()).replaceFirst(":\\d+$", "");
    if (!host.equals("127.0.0.1") && !host.equals("localhost")) {
      refuse(ctx, HttpStatus.MISDIRECTED_REQUEST, "These pages are open at 127.0.0.1 only.");
    } else if (!ctx.method().name().equals("GET") && !isOwn(ctx)) {
      refuse(ctx, HttpStatus.FORBIDDEN, "Only these pages themselves can change something here.");
    }
  }

  /** Whether a change was asked for by one of these pages; browsers always say which asks. */
  private static boolean isOwn(Context ctx) {
    String origin = ctx.header("Origin");
    String site = ctx.header("Sec-Fetch-Site");
    return (origin == null || origin.equals("http://" + ctx.host()))
        && (site == null || site.equals("same-origin"));
  }

  private static void refuse(Context ctx, HttpStatus status, String words) {
    ctx.status(status).result(words).skipRemainingHandlers();
  }

  private void unknown(Context ctx) {
    if (!PageWriter.hasSpoken(ctx)) {
      writer.nothing(ctx, "page");
    }
  }

  private void notKept(StoreException refusal, Context ctx) {
    LOG.warn("The store refused {}.", ctx.path(), refusal);
    writer.message(
        ctx,
        HttpStatus.CONFLICT,
        "The store refused",
        "Nothing was changed: "
            + refusal.getMessage()
            + ". Go back in the browser; what was typed is still there.");
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
