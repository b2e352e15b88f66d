package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import org.loomwright.papers.hand.HandGuide;
import org.loomwright.web.job.JobView;
import org.loomwright.web.shop.KitPages;

/** Papers of a job to keep, hand over and carry along. */
final class JobPaperRoutes implements Routes {
  private final PageWriter writer;
  private final JobAccess jobs;

  JobPaperRoutes(PageWriter writer, JobAccess jobs) {
    this.writer = writer;
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/job/{id}/guide.html", this::guide);
  }

  private void guide(Context ctx) {
    jobs.find(ctx)
        .filter(it -> jobs.isReady(ctx, it))
        .ifPresent(
            it -> {
              KitPages pages = it.work().orElseThrow().pages();
              String text = HandGuide.text(pages.order(), pages.plan(), it.job().release());
              send(
                  ctx,
                  it,
                  "guide.html",
                  "text/html; charset=utf-8",
                  text.getBytes(StandardCharsets.UTF_8));
            });
  }

  /** Always as a file to save: a guide has scripts of its own, which these pages do not run. */
  private static void send(Context ctx, JobView view, String name, String type, byte[] bytes) {
    String stem = view.job().id().replaceAll("[^A-Za-z0-9-]", "_");
    ctx.contentType(type)
        .header("Content-Disposition", "attachment; filename=\"" + stem + "-" + name + "\"")
        .result(bytes);
  }
}
