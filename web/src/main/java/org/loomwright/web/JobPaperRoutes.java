package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.papers.hand.HandGuide;
import org.loomwright.papers.job.AsFitted;
import org.loomwright.papers.job.DisclosureSheet;
import org.loomwright.web.job.JobView;
import org.loomwright.web.shop.KitPages;

/** Papers of a job to keep, hand over and carry along. */
final class JobPaperRoutes implements Routes {
  /** Name of the guide among the files of a pack. */
  private static final String GUIDE = "guide.html";

  private final PageWriter writer;
  private final JobAccess jobs;

  JobPaperRoutes(PageWriter writer, JobAccess jobs) {
    this.writer = writer;
    this.jobs = jobs;
  }

  /** Makes a paper. */
  private interface Maker {
    byte[] make(Job job, KitPages pages) throws IOException;
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get(
        "/job/{id}/as-fitted.pdf",
        ctx ->
            pdf(
                ctx,
                "as-fitted",
                (job, it) ->
                    AsFitted.pdf(job, it.order(), it.plan(), jobs.shop().workspace().pictures())));
    routes.get(
        "/job/{id}/disclosure.pdf",
        ctx ->
            pdf(ctx, "disclosure", (job, it) -> DisclosureSheet.pdf(job, it.order(), it.plan())));
    routes.get("/job/{id}/guide.html", this::guide);
  }

  private void pdf(Context ctx, String name, Maker maker) throws IOException {
    Optional<JobView> view = jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
    if (view.isEmpty()) {
      return;
    }
    if (view.get().job().state() == JobState.SURVEY) {
      writer.nothing(ctx, "paper, as nothing is fitted yet,");
      return;
    }
    byte[] paper = maker.make(view.get().job(), view.get().work().orElseThrow().pages());
    send(ctx, view.get(), name + ".pdf", "application/pdf", paper);
  }

  private void guide(Context ctx) {
    jobs.find(ctx)
        .filter(it -> jobs.isReady(ctx, it))
        .ifPresent(
            it -> {
              byte[] guide = released(it.job()).orElseGet(() -> made(it));
              send(ctx, it, GUIDE, "text/html; charset=utf-8", guide);
            });
  }

  /** The guide as it was released, where its bytes are kept. */
  private Optional<byte[]> released(Job job) {
    return jobs.hasStore()
        ? job.release().flatMap(it -> jobs.store().releases().file(job.kit(), it, GUIDE))
        : Optional.empty();
  }

  private static byte[] made(JobView view) {
    KitPages pages = view.work().orElseThrow().pages();
    return HandGuide.text(pages.order(), pages.plan(), view.job().release())
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Always as a file to save: a guide has scripts of its own, which these pages do not run. */
  private static void send(Context ctx, JobView view, String name, String type, byte[] bytes) {
    String stem = view.job().id().replaceAll("[^A-Za-z0-9-]", "_");
    ctx.contentType(type)
        .header("Content-Disposition", "attachment; filename=\"" + stem + "-" + name + "\"")
        .result(bytes);
  }
}
