package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.web.job.JobView;
import org.loomwright.web.shop.Href;

/** Part number and serial number of the kit, written anew while it is fitted. */
final class JobNumberRoutes implements Routes {
  private static final String PART_NUMBER = "partNumber";
  private static final String SERIAL = "serial";
  private static final String ADDRESS = "/job/{id}/number";

  private final JobAccess jobs;

  JobNumberRoutes(JobAccess jobs) {
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (jobs.hasStore()) {
      routes.get(ADDRESS, this::show);
      routes.post(ADDRESS, this::change);
    }
  }

  private Optional<JobView> view(Context ctx) {
    return jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
  }

  private void show(Context ctx) {
    view(ctx)
        .ifPresent(
            it ->
                page(
                    ctx,
                    it,
                    Map.of(
                        PART_NUMBER, it.job().partNumber().orElse(""),
                        SERIAL, it.job().serial().orElse("")),
                    Map.of()));
  }

  private void page(
      Context ctx, JobView view, Map<String, String> typed, Map<String, String> wrong) {
    jobs.show(
        ctx,
        view,
        "Part number: " + view.job().name(),
        "job-number.jte",
        Map.of("typed", typed, "wrong", wrong));
  }

  private void change(Context ctx) {
    Optional<JobView> found = view(ctx);
    if (found.isEmpty()) {
      return;
    }
    JobView view = found.get();
    Job job = view.job();
    String number = JobAccess.said(ctx, PART_NUMBER);
    Map<String, String> typed = Map.of(PART_NUMBER, number, SERIAL, JobAccess.said(ctx, SERIAL));
    Map<String, String> wrong = new LinkedHashMap<>();
    List<String> numbers = view.numbers().stream().map(PartNumber::id).toList();
    if (job.state() != JobState.UNDER_WAY) {
      wrong.put("", "the job is not under way");
    } else if (!numbers.contains(number)) {
      wrong.put(
          PART_NUMBER,
          "choose the part number on the kit; it has to be "
              + (numbers.isEmpty() ? "one of this kit" : String.join(" or ", numbers)));
    } else {
      wrong.putAll(
          JobAccess.wrong(
              jobs.save(
                  ctx,
                  job,
                  PageWriter.number(ctx, "basedOn"),
                  it ->
                      it.with(PART_NUMBER, Optional.of(number))
                          .with(SERIAL, JobAccess.typed(ctx, SERIAL)),
                  Href.job(job.id(), "steps"),
                  "part number " + number),
              List.of(PART_NUMBER, SERIAL)));
    }
    if (!wrong.isEmpty()) {
      JobAccess.refuse(ctx);
      page(ctx, view, typed, wrong);
    }
  }
}
