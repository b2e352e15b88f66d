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
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.Revision;
import org.loomwright.web.edit.EditHref;
import org.loomwright.web.edit.EditPage;
import org.loomwright.web.edit.NewDocument;
import org.loomwright.web.shop.Workbench;

/** Forms for new documents. */
final class NewRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  NewRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
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
    given.putAll(PageWriter.asked(ctx));
    show(ctx, NewDocument.of(kind.get()).open(bench.now(), given));
  }

  private void save(Context ctx) {
    Optional<DocumentKind> kind = DocumentKind.of(ctx.pathParam("kind"));
    if (kind.isEmpty()) {
      writer.nothing(ctx, "kind of document");
      return;
    }
    NewDocument form = NewDocument.of(kind.get());
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
