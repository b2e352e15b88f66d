package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.web.edit.EditHref;
import org.loomwright.web.edit.EditPage;
import org.loomwright.web.edit.NewDocument;
import org.loomwright.web.job.JobFinding;
import org.loomwright.web.job.JobView;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;
import tools.jackson.databind.node.ObjectNode;

/** Forms for new documents. */
final class NewRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;
  private final JobAccess jobs;

  NewRoutes(Workbench bench, PageWriter writer, Saver saver, JobAccess jobs) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
    this.jobs = jobs;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/new/{kind}", this::open);
      routes.post("/new/{kind}", this::save);
    }
  }

  private void open(Context ctx) {
    Optional<DocumentKind> kind = DocumentKind.of(ctx.pathParam("kind"));
    if (kind.isEmpty()) {
      writer.nothing(ctx, "kind of document");
      return;
    }
    Map<String, String> given = new LinkedHashMap<>();
    if (kind.get() == DocumentKind.FINDING) {
      given.put("when", LocalDate.now(ZoneId.systemDefault()).toString());
      given.put("by", Cookies.of(ctx, Saver.WHO));
    }
    Optional<JobView> job = job(ctx, kind.get());
    if (job.isPresent()) {
      Map<String, String> asked = PageWriter.asked(ctx);
      ObjectNode known =
          JobFinding.of(job.get(), asked.getOrDefault("step", ""), asked.getOrDefault("was", ""));
      show(ctx, form(ctx, kind.get()).open(bench.now(), Map.of(), known));
      return;
    }
    given.putAll(PageWriter.asked(ctx));
    show(ctx, NewDocument.of(kind.get()).open(bench.now(), given));
  }

  /** The job a new finding was made of. */
  private Optional<JobView> job(Context ctx, DocumentKind kind) {
    Shop shop = bench.now();
    return kind != DocumentKind.FINDING
        ? Optional.empty()
        : Optional.ofNullable(ctx.queryParam("job"))
            .flatMap(
                id -> shop.workspace().jobs().stream().filter(it -> it.id().equals(id)).findFirst())
            .map(it -> jobs.view(shop, it));
  }

  /** The form, which keeps in its address what the document was made of. */
  private static NewDocument form(Context ctx, DocumentKind kind) {
    NewDocument form = NewDocument.of(kind);
    return ctx.queryParam("job") == null
        ? form
        : form.to(EditHref.fresh(kind.word()) + "?" + ctx.queryString());
  }

  /** What was otherwise on a job names the finding that was made of it. */
  private void tell(Context ctx, DocumentKind kind, DocumentKey finding) {
    Optional<Job> job = job(ctx, kind).map(JobView::job).filter(it -> !it.isOver());
    Map<String, String> asked = PageWriter.asked(ctx);
    Optional<Deviation> which =
        job.stream()
            .flatMap(it -> it.deviations().stream())
            .filter(it -> it.step().orElse("").equals(asked.getOrDefault("step", "")))
            .filter(it -> it.was().equals(asked.getOrDefault("was", "")))
            .findFirst();
    if (which.isPresent()) {
      jobs.told(job.orElseThrow(), which.get(), finding.id(), Saver.name(ctx));
    }
  }

  private void save(Context ctx) {
    Optional<DocumentKind> kind = DocumentKind.of(ctx.pathParam("kind"));
    if (kind.isEmpty()) {
      writer.nothing(ctx, "kind of document");
      return;
    }
    NewDocument form = form(ctx, kind.get());
    Map<String, List<String>> sent = ctx.formParamMap();
    String row = ctx.formParam("row");
    if (row != null) {
      show(ctx, form.again(bench.now(), sent, row));
      return;
    }
    NewDocument.Made made = form.make(sent, taken(kind.get()));
    String page = EditHref.page(made.key().kind(), made.key().id());
    List<Problem> problems =
        made.problems().isEmpty()
            ? saver.save(ctx, made.key(), made.text(), 0, page)
            : made.problems();
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(ctx, form.refused(bench.now(), sent, made, problems));
    } else {
      tell(ctx, kind.get(), made.key());
    }
  }

  private Set<String> taken(DocumentKind kind) {
    return saver.store().documents().newest().stream()
        .map(Revision::key)
        .filter(it -> it.kind().equals(kind.word()))
        .map(it -> it.id())
        .collect(Collectors.toSet());
  }

  private void show(Context ctx, EditPage page) {
    writer.show(ctx, bench.now(), page.title(), "edit-page.jte", Map.of("page", page));
  }
}
