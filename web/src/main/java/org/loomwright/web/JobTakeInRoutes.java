package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.hand.JobParts.Counts;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.workspace.Problem;
import org.loomwright.papers.job.QrReader;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.TakeIn;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/** Takes in the record of a guide that was followed without network. */
final class JobTakeInRoutes implements Routes {
  private static final String NEW = "/jobs/take-in";

  private final PageWriter writer;
  private final JobAccess jobs;
  private final JobRoutes made;

  JobTakeInRoutes(PageWriter writer, JobAccess jobs, JobRoutes made) {
    this.writer = writer;
    this.jobs = jobs;
    this.made = made;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (!jobs.hasStore()) {
      return;
    }
    routes.get(NEW, ctx -> page(ctx, Optional.empty(), Optional.empty(), List.of()));
    routes.post(NEW, this::showNew);
    routes.post(NEW + "/accept", this::acceptNew);
    routes.get(
        "/job/{id}/take-in",
        ctx -> view(ctx).ifPresent(it -> page(ctx, Optional.of(it), Optional.empty(), List.of())));
    routes.post("/job/{id}/take-in", this::show);
    routes.post("/job/{id}/take-in/accept", this::accept);
  }

  private Optional<JobView> view(Context ctx) {
    return jobs.find(ctx).filter(it -> jobs.isReady(ctx, it));
  }

  private void page(
      Context ctx, Optional<JobView> view, Optional<TakeIn> found, List<String> problems) {
    if (!problems.isEmpty() || found.filter(it -> !it.problems().isEmpty()).isPresent()) {
      JobAccess.refuse(ctx);
    }
    Map<String, Object> things = new LinkedHashMap<>();
    things.put("view", view);
    things.put("found", found);
    things.put("problems", problems);
    things.put("typed", Uploads.isUnread(ctx) ? Map.of() : PageWriter.typed(ctx));
    things.put("action", view.map(it -> Href.job(it.job().id(), "take-in")).orElse(NEW));
    writer.show(ctx, jobs.shop(), "Take in a record", "job-take-in.jte", things);
  }

  /** The record that a form brings as file, photo or text. */
  private static TakeIn sent(Context ctx) throws IOException {
    Uploads.Upload upload = Uploads.read(ctx, "file", QrReader.LARGEST_BYTES);
    if (upload instanceof Uploads.Unread unread) {
      return TakeIn.refused("", List.of(unread.words()));
    }
    Uploads.Form form = (Uploads.Form) upload;
    if (form.bytes().isEmpty()) {
      return TakeIn.read(form.field("text"));
    }
    byte[] file = form.bytes().get();
    if (file.length > QrReader.LARGEST_BYTES) {
      return TakeIn.refused("", List.of(Uploads.tooLarge(QrReader.LARGEST_BYTES)));
    }
    if (isPicture(file)) {
      QrReader.Result read = QrReader.read(file);
      return read instanceof QrReader.Text code
          ? TakeIn.read(code.text())
          : TakeIn.refused("", List.of(((QrReader.Nothing) read).why()));
    }
    try {
      return TakeIn.read(
          StandardCharsets.UTF_8.newDecoder().decode(java.nio.ByteBuffer.wrap(file)).toString());
    } catch (CharacterCodingException noText) {
      return TakeIn.refused(
          "", List.of("the file is no text; choose the saved record, or a photo of its code"));
    }
  }

  private static boolean isPicture(byte[] file) {
    return file.length > 3
        && ((file[0] & 0xff) == 0x89 && file[1] == 'P' || (file[0] & 0xff) == 0xff);
  }

  private void show(Context ctx) throws IOException {
    Optional<JobView> view = view(ctx);
    if (view.isPresent()) {
      TakeIn found = sent(ctx).on(view.get().work().orElseThrow());
      page(ctx, view, Optional.of(found), List.of());
    }
  }

  private void accept(Context ctx) {
    Optional<JobView> found = view(ctx);
    if (found.isEmpty()) {
      return;
    }
    JobView view = found.get();
    TakeIn record = TakeIn.read(JobAccess.said(ctx, "record")).on(view.work().orElseThrow());
    Optional<Counts> counts = counts(record, JobAccess.said(ctx, "counts"));
    List<String> unsaid = new ArrayList<>();
    if (counts.isEmpty()) {
      unsaid.add("say which of the two counts");
    }
    if (!record.otherVehicle().isEmpty() && !JobAccess.said(ctx, "same").equals("yes")) {
      unsaid.add("say that it is the same vehicle, or take it in on the job it belongs to");
    }
    if (record.parts().isEmpty() || !unsaid.isEmpty()) {
      page(ctx, found, Optional.of(record), record.parts().isEmpty() ? List.of() : unsaid);
      return;
    }
    List<Problem> problems =
        jobs.save(
            ctx,
            view.job(),
            PageWriter.number(ctx, "basedOn"),
            (JobText it) -> record.onto(it, counts.orElseThrow()),
            Href.job(view.job().id()),
            "took in the record of a guide");
    if (!problems.isEmpty()) {
      page(ctx, found, Optional.of(record), words(problems));
    }
  }

  /** Which of the two counts; where they do not differ nobody is asked. */
  private static Optional<Counts> counts(TakeIn record, String said) {
    return record.isChoice()
        ? Stream.of(Counts.values())
            .filter(it -> it.name().toLowerCase(Locale.ROOT).equals(said))
            .findFirst()
        : Optional.of(Counts.RECORD);
  }

  private void showNew(Context ctx) throws IOException {
    TakeIn sent = sent(ctx);
    page(ctx, Optional.empty(), Optional.of(fresh(sent).found()), List.of());
  }

  private void acceptNew(Context ctx) {
    New fresh = fresh(TakeIn.read(JobAccess.said(ctx, "record")));
    if (fresh.found().parts().isEmpty() || fresh.job().isEmpty()) {
      page(ctx, Optional.empty(), Optional.of(fresh.found()), List.of());
      return;
    }
    Job job = fresh.job().get();
    String text = fresh.found().onto(JobText.of(fresh.text()), Counts.RECORD).text();
    List<Problem> problems = jobs.create(ctx, job.id(), text, Href.job(job.id()));
    if (!problems.isEmpty()) {
      page(ctx, Optional.empty(), Optional.of(fresh.found()), words(problems));
    }
  }

  private static List<String> words(List<Problem> problems) {
    return problems.stream().map(Problem::words).toList();
  }

  /**
   * A job that is made of a record.
   *
   * @param job the job, empty but for what names it; absent when none can be made
   * @param text its text
   * @param found the record held against it
   */
  private record New(Optional<Job> job, String text, TakeIn found) {
    static New none(TakeIn found) {
      return new New(Optional.empty(), "", found);
    }

    static New none(TakeIn found, String why) {
      return none(TakeIn.refused(found.text(), List.of(why)));
    }
  }

  private New fresh(TakeIn sent) {
    if (sent.record().isEmpty()) {
      return New.none(sent);
    }
    GuideRecord record = sent.record().get();
    Shop shop = jobs.shop();
    Optional<Kit> kit =
        shop.workspace().kits().stream().filter(it -> it.id().equals(record.kit())).findFirst();
    if (kit.isEmpty()) {
      return New.none(sent, "kit: there is no kit '" + record.kit() + "' in this workspace");
    }
    String day = record.begun().atZone(ZoneId.systemDefault()).toLocalDate().toString();
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("when", day);
    typed.put("vehicleNote", record.vehicleNote().orElse("vehicle of " + day));
    typed.put("who", record.by().orElse("not said"));
    String id = made.id(day, typed.getOrDefault("vehicleNote", ""));
    String text = JobRoutes.text(id, kit.get(), record.release().orElse(0), typed);
    Job job = JobText.of(text).job();
    JobView view = jobs.view(shop, job);
    if (view.work().isEmpty()) {
      return New.none(
          sent,
          view.isWaiting()
              ? "the kit is just being planned; send the record again in a moment"
              : view.trouble());
    }
    return new New(Optional.of(job), text, sent.on(view.work().get()));
  }
}
