package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.JobPhoto;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.StoreException;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.shop.Href;

/** Photos taken during a job, straight from the camera of a phone. */
final class JobPhotoRoutes implements Routes {
  /** What the id of a step can look like. */
  private static final Pattern STEP = Pattern.compile("[^\\s\\p{Cntrl}]{1,200}");

  private final JobAccess jobs;

  JobPhotoRoutes(JobAccess jobs) {
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (jobs.hasStore()) {
      routes.post("/job/{id}/photo", this::put);
    }
  }

  private void put(Context ctx) throws IOException {
    Optional<JobView> found = jobs.find(ctx);
    if (found.isEmpty()) {
      return;
    }
    JobView view = found.get();
    Uploads.Upload upload = Uploads.read(ctx, "photo", Picture.LARGEST_BYTES);
    if (upload instanceof Uploads.Unread unread) {
      refuse(ctx, view, Optional.empty(), Map.of("photo", unread.words()));
      return;
    }
    Uploads.Form form = (Uploads.Form) upload;
    String sent = form.field("step");
    Optional<Step> step = view.work().flatMap(it -> it.guide().step(sent));
    // While there is no plan the step can't be looked up; the photo is not to lose it for that.
    Optional<String> at =
        view.work().isPresent()
            ? step.map(Step::id)
            : Optional.of(sent).filter(it -> STEP.matcher(it).matches());
    Map<String, String> wrong = new LinkedHashMap<>();
    if (!sent.isEmpty() && at.isEmpty()) {
      wrong.put("", "the guide has no such step");
    }
    Optional<Signature> by = Saver.signature(ctx);
    if (view.job().isOver()) {
      wrong.put("", JobAccess.OVER.message());
    }
    if (by.isEmpty()) {
      wrong.put(Saver.WHO, Saver.NO_NAME.message());
    }
    if (form.bytes().isEmpty()) {
      wrong.put("photo", "take or choose a photo");
    } else if (form.bytes().get().length > Picture.LARGEST_BYTES) {
      wrong.put("photo", Uploads.tooLarge(Picture.LARGEST_BYTES));
    }
    if (wrong.isEmpty()) {
      try {
        keep(ctx, view, step, at, form, by.orElseThrow(), wrong);
      } catch (StoreException refusal) {
        wrong.put("photo", String.valueOf(refusal.getMessage()));
      }
    }
    if (!wrong.isEmpty()) {
      refuse(ctx, view, step, wrong);
    }
  }

  private void keep(
      Context ctx,
      JobView view,
      Optional<Step> step,
      Optional<String> at,
      Uploads.Form form,
      Signature by,
      Map<String, String> wrong) {
    byte[] file = form.bytes().orElseThrow();
    String name = unused(view.job().id(), file);
    if (!(jobs.store().pictures().put(name, file, 0, by) instanceof SaveResult.Saved)) {
      wrong.put("photo", "another photo came in at the same moment; send it again");
      return;
    }
    Optional<String> shows = Optional.of(form.field("shows").strip()).filter(it -> !it.isEmpty());
    JobPhoto photo = new JobPhoto(name, shows, at);
    String back =
        step.map(it -> Href.jobStep(view.job().id(), it.number()))
            .orElseGet(() -> Href.job(view.job().id()) + "#photos");
    List<Problem> problems =
        jobs.save(
            ctx, view.job(), view.basedOn(), (JobText it) -> it.photo(photo), back, "a photo");
    problems.forEach(it -> wrong.merge("photo", it.words(), (a, b) -> a + "; " + b));
  }

  /** A name for a photo that says whose it is, and that no picture has. */
  private String unused(String job, byte[] file) {
    String end = file.length > 1 && file[1] == 'P' ? ".png" : ".jpg";
    String plain = job.replaceAll("[^A-Za-z0-9-]+", "-").replaceFirst("^-+", "");
    for (int n = 1; ; n++) {
      String name = "jobs/" + (plain.isEmpty() ? "job" : plain) + "-" + n + end;
      if (jobs.store().pictures().named(name).isEmpty()) {
        return name;
      }
    }
  }

  private void refuse(Context ctx, JobView view, Optional<Step> step, Map<String, String> wrong) {
    JobAccess.refuse(ctx);
    if (step.isPresent()) {
      JobStepRoutes.page(jobs, ctx, view, step, Map.of(), wrong);
      return;
    }
    jobs.front(ctx, view, List.copyOf(wrong.values()));
  }
}
