package org.loomwright.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobPhoto;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.Release;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.web.job.JobPapers;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.job.JobWork;
import org.loomwright.web.job.SignedPapers;
import org.loomwright.web.shop.Edits;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.JobDesk;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;

/** Jobs for the pages: found, held against their guide, and changed. */
final class JobAccess {
  /** So long a page of a job waits for the plan. */
  private static final Duration PATIENCE = Duration.ofMillis(1500);

  static final Problem OVER = Edits.OVER;

  private static final Problem TOO_OLD =
      new Problem("", "", "", "this page is too old to be saved; load it again and repeat it");

  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  JobAccess(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  /** The documents as they are now. */
  Shop shop() {
    return bench.now();
  }

  /** The store; pages that change something are there only where there is one. */
  Store store() {
    return saver.store();
  }

  /** Whether there is a store. */
  boolean hasStore() {
    return bench.store().isPresent();
  }

  /** The job of the address; says so when there is none. */
  Optional<JobView> find(Context ctx) {
    Shop shop = shop();
    Optional<Job> job = shop.job(ctx.pathParam("id"));
    if (job.isEmpty()) {
      writer.nothing(ctx, "job");
    }
    return job.map(it -> view(shop, it));
  }

  /** What pages show of a job. */
  JobView view(Shop shop, Job job) {
    JobDesk.Basis basis = bench.jobs().soon(job, shop, bench.store(), PATIENCE);
    return new JobView(
        job,
        JobView.vehicle(shop, job),
        JobView.kit(shop, job),
        bench.number(job),
        basis,
        basis instanceof JobDesk.Known known
            ? Optional.of(JobWork.of(job, known.pages()))
            : Optional.empty(),
        job.photos().stream().map(it -> photo(shop, it)).toList());
  }

  private JobView.Photo photo(Shop shop, JobPhoto it) {
    String source =
        bench
            .store()
            .flatMap(store -> store.pictures().named(it.file()))
            .map(hash -> Href.pictureFile(it.file(), hash))
            .or(() -> shop.picture(it.file()).map(Picture::dataUri))
            .orElse("");
    return new JobView.Photo(it.file(), it.shows().orElse(""), it.step().orElse(""), source);
  }

  /** Shows a page of a job; it knows as "typed" what a form said, if not told otherwise. */
  void show(Context ctx, JobView view, String title, String page, Map<String, Object> things) {
    Map<String, Object> all = new LinkedHashMap<>(things);
    all.put("view", view);
    all.putIfAbsent("typed", sent(ctx));
    writer.show(ctx, shop(), title, page, all);
  }

  /** Shows a job's own page. */
  void front(Context ctx, JobView view) {
    front(ctx, view, List.of(), Map.of());
  }

  private static Map<String, String> sent(Context ctx) {
    return ctx.method() == HandlerType.POST && !Uploads.isUnread(ctx)
        ? PageWriter.typed(ctx)
        : Map.of();
  }

  /**
   * Shows a job's own page with what a refused form of it said.
   *
   * @param problems why something asked for on it was not done
   */
  void front(Context ctx, JobView view, List<String> problems) {
    front(ctx, view, problems, Map.of());
  }

  /**
   * The same with what is wrong by field.
   *
   * @param wrong what is wrong, by field; "" for what concerns none
   */
  void front(Context ctx, JobView view, List<String> problems, Map<String, String> wrong) {
    Job job = view.job();
    Map<String, String> typed = sent(ctx);
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("vehicleNote", job.vehicleNote());
    facts.put("owner", job.owner().orElse(""));
    facts.put("when", job.when());
    facts.put("by", job.by());
    facts.put("serial", job.serial().orElse(""));
    if (typed.containsKey("vehicleNote")) {
      facts.putAll(typed);
    }
    show(
        ctx,
        view,
        job.name(),
        "job.jte",
        Map.of(
            "problems",
            problems,
            "wrong",
            wrong,
            "facts",
            facts,
            "releases",
            needsRelease(view) ? releases(job.kit()) : List.of(),
            "papers",
            JobPapers.of(view, bench.store())));
  }

  /** Whether a job names no release, or one whose guide is not the one it was begun by. */
  static boolean needsRelease(JobView view) {
    boolean other = view.work().filter(JobWork::isOfOtherGuide).isPresent();
    return !view.job().isOver() && (view.job().release().isEmpty() || other);
  }

  /** Releases of a kit, newest first; none where there is no store. */
  List<Release> releases(String kit) {
    return bench.store().map(it -> it.releases().of(kit)).orElse(List.of());
  }

  /** A page that needs the plan; while there is none, the page that says so. */
  boolean isReady(Context ctx, JobView view) {
    if (view.work().isPresent()) {
      return true;
    }
    if (ctx.method() == HandlerType.POST) {
      writer.message(
          ctx,
          HttpStatus.CONFLICT,
          "Not saved",
          view.isWaiting()
              ? "The kit is just being planned. Go back in the browser and send it again in a"
                  + " moment; what was typed is still there."
              : view.trouble());
    } else {
      show(ctx, view, view.job().name(), "job-waiting.jte", Map.of());
    }
    return false;
  }

  /**
   * Changes the text a form was made from, and answers.
   *
   * @param basedOn number of that revision
   * @param back page to show after it
   * @param done what was done, for the history
   * @return problems because of which nothing was saved
   */
  List<Problem> save(
      Context ctx, Job job, long basedOn, UnaryOperator<JobText> change, String back, String done) {
    Optional<Version> base = store().documents().version(key(job.id()), basedOn);
    if (base.isEmpty()) {
      return List.of(TOO_OLD);
    }
    String text = change.apply(JobText.of(base.get().content())).text();
    return saver.save(ctx, key(job.id()), text, basedOn, back, done);
  }

  /**
   * Signs a job off: what it says then is put on paper, and the papers are kept with it.
   *
   * @return problems because of which nothing was saved
   * @throws IOException when a paper can't be made
   */
  List<Problem> sign(Context ctx, JobView view, SignOff signOff) throws IOException {
    Job job = view.job();
    Optional<Version> base = store().documents().version(key(job.id()), view.basedOn());
    if (base.isEmpty()) {
      return List.of(TOO_OLD);
    }
    SignedPapers signed =
        SignedPapers.of(
            base.get().content(),
            signOff,
            view.work().orElseThrow().pages(),
            shop().workspace().pictures());
    return saver.save(
        ctx,
        key(job.id()),
        signed.text(),
        List.copyOf(signed.papers().values()),
        view.basedOn(),
        Href.job(job.id()),
        "signed off");
  }

  /** Saves a new job, and answers. */
  List<Problem> create(Context ctx, String id, String text, String back) {
    return saver.save(ctx, key(id), text, 0, back, "a new job");
  }

  /**
   * Writes down which finding was made of a deviation. Where that can't be kept just now, because
   * somebody is at work on the same line, the finding stands all the same and names the job.
   */
  void told(Job job, Deviation which, String finding, String who) {
    Optional<Version> newest = store().documents().newest(key(job.id()));
    if (newest.isPresent() && !who.isBlank()) {
      String text = JobText.of(newest.get().content()).finding(which, finding).text();
      Draft draft = new Draft(key(job.id()), text, new Signature(who, "made a finding of it"));
      var unused = new Edits(store()).save(draft, newest.get().revision().number());
    }
  }

  /** Answers 422 with a page, what is wrong on it. A name that was typed is kept all the same. */
  static void refuse(Context ctx) {
    ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
    if (!Uploads.isUnread(ctx)) {
      typed(ctx, Saver.WHO).ifPresent(it -> Cookies.keep(ctx, Saver.WHO, it));
    }
  }

  /** The document of a job. */
  static DocumentKey key(String id) {
    return new DocumentKey(DocumentKind.JOB.word(), id);
  }

  /** What a form says in a field; empty when nothing. */
  static String said(Context ctx, String field) {
    return Optional.ofNullable(ctx.formParam(field)).orElse("").strip();
  }

  /** The same, absent when nothing. */
  static Optional<String> typed(Context ctx, String field) {
    return Optional.of(said(ctx, field)).filter(it -> !it.isEmpty());
  }

  /** Problems by the field they are about; "" for what has none. */
  static Map<String, String> wrong(List<Problem> problems, List<String> fields) {
    Map<String, String> wrong = new LinkedHashMap<>();
    for (Problem it : problems) {
      boolean field = fields.contains(it.path()) || it.path().equals(Saver.WHO);
      wrong.merge(
          field ? it.path() : "", field ? it.message() : it.words(), (a, b) -> a + "; " + b);
    }
    return wrong;
  }
}
