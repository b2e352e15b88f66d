package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.Release;
import org.loomwright.store.Revision;
import org.loomwright.web.job.JobText;
import org.loomwright.web.job.JobView;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Jobs: the list, a new one, and where one stands. */
public final class JobRoutes implements Routes {
  private static final List<String> FIELDS = List.of("kit", "vehicleNote", "owner", "who", "when");

  private static final List<String> FACTS = List.of("vehicleNote", "owner", "when", "by", "serial");
  private static final String WHICH_VEHICLE = "write which vehicle it is, such as its plate";
  private static final String WHO_WORKS = "write who does the work";

  private final PageWriter writer;
  private final JobAccess jobs;

  JobRoutes(PageWriter writer, JobAccess jobs) {
    this.writer = writer;
    this.jobs = jobs;
  }

  /**
   * What the list is cut down to; empty texts for nothing.
   *
   * @param kit id of a kit
   * @param state state, as documents write it
   */
  public record Filter(String kit, String state) {
    private boolean takes(Job it) {
      return (kit.isEmpty() || it.kit().equals(kit))
          && (state.isEmpty() || word(it.state()).equals(state));
    }

    /** A state as documents write it. */
    public static String word(JobState state) {
      return state.words().replace(' ', '-');
    }
  }

  /**
   * A line of the list.
   *
   * @param job the job
   * @param kit name of its kit
   * @param vehicle name of its vehicle
   */
  public record Line(Job job, String kit, String vehicle) {}

  /**
   * What a new job can fit.
   *
   * @param kit the kit
   * @param releases its releases, the newest first
   */
  public record Offer(Kit kit, List<Release> releases) {
    public Offer {
      releases = List.copyOf(releases);
    }

    /** What the form sends for a release of it; 0 for none. */
    public String value(long release) {
      return kit.id() + " " + release;
    }
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/jobs", this::list);
    if (jobs.hasStore()) {
      routes.get("/new/job", this::open);
      routes.post("/new/job", this::make);
      routes.post("/job/{id}/facts", this::facts);
    }
    routes.get("/job/{id}", this::show);
    routes.get("/job/{id}/basis", this::basis);
    routes.get("/job/{id}/values", this::values);
  }

  private void list(Context ctx) {
    Shop shop = jobs.shop();
    Map<String, String> asked = PageWriter.asked(ctx);
    Filter filter = new Filter(asked.getOrDefault("kit", ""), asked.getOrDefault("state", ""));
    List<Job> all = shop.workspace().jobs();
    List<Line> lines =
        all.stream()
            .filter(filter::takes)
            .sorted(
                Comparator.comparing(Job::isOver)
                    .thenComparing(Job::when, Comparator.reverseOrder())
                    .thenComparing(Job::id))
            .map(it -> new Line(it, JobView.kit(shop, it), JobView.vehicle(shop, it)))
            .toList();
    writer.show(
        ctx,
        shop,
        "Jobs",
        "jobs.jte",
        Map.of(
            "kits", shop.workspace().kits(), "filter", filter, "all", all.size(), "lines", lines));
  }

  private void show(Context ctx) {
    jobs.find(ctx).ifPresent(it -> jobs.front(ctx, it));
  }

  /** The part of a page that says how far the plan is, alone. */
  private void basis(Context ctx) {
    jobs.find(ctx)
        .ifPresent(
            it -> jobs.show(ctx, it, it.job().name(), "job-basis.jte", Map.of("apart", true)));
  }

  private void values(Context ctx) {
    jobs.find(ctx)
        .ifPresent(
            it -> jobs.show(ctx, it, "Values of " + it.job().name(), "job-values.jte", Map.of()));
  }

  private void open(Context ctx) {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("when", LocalDate.now(ZoneId.systemDefault()).toString());
    typed.put("who", Cookies.of(ctx, Saver.WHO));
    Optional.ofNullable(ctx.queryParam("kit"))
        .ifPresent(
            kit ->
                typed.put(
                    "kit",
                    kit
                        + " "
                        + jobs.releases(kit).stream().mapToLong(Release::number).max().orElse(0)));
    form(ctx, typed, Map.of());
  }

  private void form(Context ctx, Map<String, String> typed, Map<String, String> wrong) {
    Shop shop = jobs.shop();
    List<Offer> offers =
        shop.workspace().kits().stream().map(it -> new Offer(it, jobs.releases(it.id()))).toList();
    writer.show(
        ctx,
        shop,
        "New job",
        "job-new.jte",
        Map.of("offers", offers, "typed", typed, "wrong", wrong));
  }

  private void make(Context ctx) {
    Map<String, String> typed = new LinkedHashMap<>();
    FIELDS.forEach(it -> typed.put(it, JobAccess.said(ctx, it)));
    String[] chosen = typed.getOrDefault("kit", "").split(" ", -1);
    Optional<Kit> kit =
        jobs.shop().workspace().kits().stream().filter(it -> it.id().equals(chosen[0])).findFirst();
    int release =
        chosen.length == 2 && chosen[1].matches("\\d{1,9}") ? Integer.parseInt(chosen[1]) : 0;
    Map<String, String> wrong = new LinkedHashMap<>();
    if (kit.isEmpty()) {
      wrong.put("kit", "choose the kit that goes in");
    } else if (release != 0
        && jobs.releases(kit.get().id()).stream().noneMatch(it -> it.number() == release)) {
      wrong.put("kit", "there is no such release; choose one of the list");
    }
    if (typed.getOrDefault("vehicleNote", "").isEmpty()) {
      wrong.put("vehicleNote", WHICH_VEHICLE);
    }
    if (typed.getOrDefault("who", "").isEmpty()) {
      wrong.put("who", WHO_WORKS);
    }
    if (!wrong.isEmpty()) {
      JobAccess.refuse(ctx);
      form(ctx, typed, wrong);
      return;
    }
    String id = id(typed.getOrDefault("when", ""), typed.getOrDefault("vehicleNote", ""));
    String text = text(id, kit.get(), release, typed);
    List<Problem> problems = jobs.create(ctx, id, text, Href.job(id));
    if (!problems.isEmpty()) {
      JobAccess.refuse(ctx);
      form(ctx, typed, JobAccess.wrong(problems, FIELDS));
    }
  }

  /** Puts right what a job says of its vehicle, its owner and the people and the day. */
  private void facts(Context ctx) {
    Optional<JobView> view = jobs.find(ctx);
    if (view.isEmpty()) {
      return;
    }
    Job job = view.get().job();
    Map<String, String> wrong = new LinkedHashMap<>();
    if (job.isOver()) {
      wrong.put("", JobAccess.OVER.message());
    }
    if (JobAccess.said(ctx, "vehicleNote").isEmpty()) {
      wrong.put("vehicleNote", WHICH_VEHICLE);
    }
    if (JobAccess.said(ctx, "by").isEmpty()) {
      wrong.put("by", WHO_WORKS);
    }
    if (wrong.isEmpty()) {
      wrong.putAll(
          JobAccess.wrong(
              jobs.save(
                  ctx,
                  job,
                  PageWriter.number(ctx, "basedOn"),
                  it -> facts(ctx, it),
                  Href.job(job.id()),
                  "facts put right"),
              FACTS));
    }
    if (!wrong.isEmpty()) {
      JobAccess.refuse(ctx);
      jobs.front(ctx, view.get(), List.of(), wrong);
    }
  }

  private static JobText facts(Context ctx, JobText text) {
    Job old = text.job();
    FACTS.forEach(it -> text.with(it, JobAccess.typed(ctx, it)));
    // A name that begins with the vehicle goes on doing so.
    String before = old.vehicleNote() + ": ";
    return old.name().startsWith(before)
        ? text.with(
            "name",
            Optional.of(
                JobAccess.said(ctx, "vehicleNote") + ": " + old.name().substring(before.length())))
        : text;
  }

  /** The text of a new job; its lists are there from the first, so that additions merge. */
  static String text(String id, Kit kit, int release, Map<String, String> typed) {
    ObjectNode job = JsonNodeFactory.instance.objectNode();
    String note = typed.getOrDefault("vehicleNote", "");
    job.put("kind", DocumentKind.JOB.word()).put("format", DocumentBinder.FORMAT).put("id", id);
    job.put("name", note + ": " + kit.name()).put("revision", "1").put("kit", kit.id());
    if (release != 0) {
      job.put("release", release);
    }
    job.put("vehicle", kit.vehicle()).put("vehicleNote", note);
    if (!typed.getOrDefault("owner", "").isEmpty()) {
      job.put("owner", typed.get("owner"));
    }
    job.put("when", typed.getOrDefault("when", "")).put("by", typed.getOrDefault("who", ""));
    job.put("state", Filter.word(JobState.SURVEY));
    job.putObject("answers");
    List.of("done", "taken", "deviations", "photos").forEach(job::putArray);
    return job.toPrettyString() + "\n";
  }

  /** An id that says day and vehicle, and that no job has or had. */
  String id(String when, String note) {
    Set<String> taken =
        java.util.stream.Stream.concat(
                jobs.store().documents().newest().stream(),
                jobs.store().documents().retired().stream())
            .map(Revision::key)
            .filter(it -> it.kind().equals(DocumentKind.JOB.word()))
            .map(it -> it.id())
            .collect(Collectors.toSet());
    String plain =
        (when + "-" + note)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    String stem = plain.isEmpty() ? "job" : plain.substring(0, Math.min(60, plain.length()));
    String id = stem;
    for (int n = 2; taken.contains(id); n++) {
      id = stem + "-" + n;
    }
    return id;
  }
}
