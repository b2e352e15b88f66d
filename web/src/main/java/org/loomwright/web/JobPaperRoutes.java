package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.papers.hand.HandGuide;
import org.loomwright.papers.job.AsFitted;
import org.loomwright.papers.job.DisclosureSheet;
import org.loomwright.store.Store;
import org.loomwright.web.job.JobPapers;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.SignedPapers;
import org.loomwright.web.shop.KitPages;

/** Papers of a job to keep, hand over and carry along. */
final class JobPaperRoutes implements Routes {
  /** Name of the guide among the files of a pack. */
  private static final String GUIDE = "guide.html";

  private static final String PDF = "application/pdf";

  /** Query parameter: the revision of the job that is an earlier sign-off. */
  private static final String REVISION = "revision";

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
        "/job/{id}/" + SignedPapers.AS_FITTED,
        ctx ->
            pdf(
                ctx,
                SignedPapers.AS_FITTED,
                (job, it) ->
                    AsFitted.pdf(job, it.order(), it.plan(), jobs.shop().workspace().pictures())));
    routes.get(
        "/job/{id}/" + SignedPapers.DISCLOSURE,
        ctx ->
            pdf(
                ctx,
                SignedPapers.DISCLOSURE,
                (job, it) -> DisclosureSheet.pdf(job, it.order(), it.plan())));
    routes.get("/job/{id}/guide.html", this::guide);
  }

  private void pdf(Context ctx, String name, Maker maker) throws IOException {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    String revision = PageWriter.asked(ctx).getOrDefault(REVISION, "");
    if (!revision.isEmpty()) {
      earlier(ctx, job, revision, name);
      return;
    }
    if (job.state() == JobState.SURVEY) {
      writer.nothing(ctx, "paper, as nothing is fitted yet,");
      return;
    }
    Optional<byte[]> kept =
        job.state() == JobState.SIGNED_OFF
            ? JobPapers.bytes(job.signOff(), name, store())
            : Optional.empty();
    if (kept.isPresent()) {
      send(ctx, job, name, PDF, kept.get());
    } else if (isPlanned(ctx, view.get())) {
      send(ctx, job, name, PDF, maker.make(job, view.get().work().orElseThrow().pages()));
    }
  }

  /** A paper of an earlier sign-off, as it was signed then. */
  private void earlier(Context ctx, Job job, String revision, String name) {
    store()
        .filter(it -> revision.matches("\\d{1,15}"))
        .flatMap(it -> JobPapers.signOff(it, job.id(), Long.parseLong(revision)))
        .flatMap(it -> JobPapers.bytes(Optional.of(it), name, store()))
        .ifPresentOrElse(
            it -> send(ctx, job, revision + "-" + name, PDF, it),
            () -> writer.nothing(ctx, "paper of an earlier sign-off"));
  }

  private void guide(Context ctx) {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    Optional<byte[]> released = released(job);
    if (released.isPresent() || isPlanned(ctx, view.get())) {
      byte[] guide = released.orElseGet(() -> made(view.get()));
      send(ctx, job, GUIDE, "text/html; charset=utf-8", guide);
    }
  }

  private Optional<Store> store() {
    return jobs.hasStore() ? Optional.of(jobs.store()) : Optional.empty();
  }

  /** Whether there is a plan; says so in words when not, so that no page is saved as a paper. */
  private boolean isPlanned(Context ctx, JobView view) {
    if (view.work().isEmpty()) {
      writer.message(
          ctx,
          HttpStatus.CONFLICT,
          "No paper yet",
          view.isWaiting()
              ? "The kit is just being planned. Go back in the browser and ask for the paper again"
                  + " in a moment."
              : view.trouble());
    }
    return view.work().isPresent();
  }

  /** The guide as it was released, where its bytes are kept. */
  private Optional<byte[]> released(Job job) {
    return store()
        .flatMap(store -> job.release().flatMap(it -> store.releases().file(job.kit(), it, GUIDE)));
  }

  private static byte[] made(JobView view) {
    KitPages pages = view.work().orElseThrow().pages();
    return HandGuide.text(pages.order(), pages.plan(), view.job().release())
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Always as a file to save: a guide has scripts of its own, which these pages do not run. */
  private static void send(Context ctx, Job job, String name, String type, byte[] bytes) {
    String stem = job.id().replaceAll("[^A-Za-z0-9-]", "_");
    ctx.contentType(type)
        .header("Content-Disposition", "attachment; filename=\"" + stem + "-" + name + "\"")
        .result(bytes);
  }
}
