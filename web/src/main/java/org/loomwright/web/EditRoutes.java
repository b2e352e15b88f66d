package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Version;
import org.loomwright.web.edit.Complaints;
import org.loomwright.web.edit.EditHref;
import org.loomwright.web.edit.EditPage;
import org.loomwright.web.edit.PartChange;
import org.loomwright.web.edit.PartForm;
import org.loomwright.web.edit.PartPath;
import org.loomwright.web.shop.Workbench;

/** Forms for each part of each document: change it, add one, take one out, move one. */
final class EditRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  EditRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/edit/{kind}/{id}", ctx -> open(ctx, this::edited));
      routes.post("/edit/{kind}/{id}", ctx -> save(ctx, this::edited));
      routes.get("/add/{kind}/{id}", ctx -> open(ctx, this::added));
      routes.post("/add/{kind}/{id}", ctx -> save(ctx, this::added));
      routes.get("/remove/{kind}/{id}", this::askToRemove);
      routes.post("/remove/{kind}/{id}", this::remove);
      routes.post("/move/{kind}/{id}", this::move);
    }
  }

  /** A form on a revision of a document. */
  private interface Maker extends BiFunction<Context, Version, Optional<PartForm>> {}

  private Optional<PartForm> edited(Context ctx, Version on) {
    return PartForm.edit(on.revision().key(), on.content(), path(ctx.queryParam("at")));
  }

  private Optional<PartForm> added(Context ctx, Version on) {
    return PartForm.add(on.revision().key(), on.content(), path(ctx.queryParam("to")));
  }

  private static PartPath path(@org.jspecify.annotations.Nullable String text) {
    return PartPath.parse(text == null ? "" : text);
  }

  private Optional<DocumentKey> key(Context ctx) {
    return Done.key(saver.store(), ctx.pathParam("kind"), ctx.pathParam("id"));
  }

  private Optional<Version> newest(Context ctx) {
    return key(ctx).flatMap(it -> saver.store().documents().newest(it));
  }

  /** The revision a form was opened on. */
  private Optional<Version> base(Context ctx) {
    long number = PageWriter.number(ctx, "basedOn");
    return key(ctx).flatMap(it -> saver.store().documents().version(it, number));
  }

  private void open(Context ctx, Maker maker) {
    Optional<Version> on = newest(ctx);
    Optional<PartForm> form = on.flatMap(it -> maker.apply(ctx, it));
    if (form.isEmpty()) {
      writer.nothing(ctx, "part of a document");
      return;
    }
    String back = back(ctx, on.get());
    show(ctx, form.get().open(bench.now(), on.get().revision().number(), back));
  }

  private static String back(Context ctx, Version on) {
    String asked = Optional.ofNullable(ctx.queryParam("back")).orElse("");
    DocumentKey key = on.revision().key();
    return !asked.isEmpty() && Back.isHere(asked) ? asked : EditHref.page(key.kind(), key.id());
  }

  private void save(Context ctx, Maker maker) {
    Optional<Version> on = base(ctx);
    Optional<PartForm> form = on.flatMap(it -> maker.apply(ctx, it));
    if (form.isEmpty()) {
      writer.nothing(ctx, "part of a document");
      return;
    }
    long basedOn = on.get().revision().number();
    String back = Back.of(ctx);
    Map<String, List<String>> sent = ctx.formParamMap();
    String row = ctx.formParam("row");
    if (row != null) {
      show(ctx, form.get().again(bench.now(), sent, row, basedOn, back));
      return;
    }
    PartForm.Written written = form.get().write(sent);
    List<Problem> problems =
        written.problems().isEmpty()
            ? saver.save(ctx, on.get().revision().key(), written.text(), basedOn, back)
            : written.problems();
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(ctx, form.get().refused(bench.now(), sent, written, problems, basedOn, back));
    }
  }

  private void show(Context ctx, EditPage page) {
    writer.show(ctx, bench.now(), page.title(), "edit-page.jte", Map.of("page", page));
  }

  private static Optional<PartChange> change(Version on, String at) {
    return PartChange.of(on.revision().key(), on.content(), PartPath.parse(at));
  }

  private void askToRemove(Context ctx) {
    Optional<Version> on = newest(ctx);
    Optional<PartChange> change =
        on.flatMap(it -> change(it, Optional.ofNullable(ctx.queryParam("at")).orElse("")));
    if (change.isEmpty()) {
      writer.nothing(ctx, "part of a document that could be taken out");
      return;
    }
    ask(ctx, on.get(), change.get(), Complaints.none(), back(ctx, on.get()));
  }

  private void ask(Context ctx, Version on, PartChange change, Complaints complaints, String back) {
    DocumentKey key = on.revision().key();
    PartPath at = path(ctx.queryParam("at"));
    writer.show(
        ctx,
        bench.now(),
        "Take out " + change.title(),
        "edit-remove.jte",
        Map.of(
            "change",
            change,
            "complaints",
            complaints,
            "action",
            EditHref.remove(key.kind(), key.id(), at, back),
            "document",
            EditHref.page(key.kind(), key.id()),
            "basedOn",
            on.revision().number(),
            "back",
            back));
  }

  private void remove(Context ctx) {
    Optional<Version> on = base(ctx);
    Optional<PartChange> change =
        on.flatMap(it -> change(it, Optional.ofNullable(ctx.queryParam("at")).orElse("")));
    if (change.isEmpty()) {
      writer.nothing(ctx, "part of a document that could be taken out");
      return;
    }
    String back = Back.of(ctx);
    Version version = on.get();
    List<Problem> problems =
        saver.save(
            ctx,
            version.revision().key(),
            change.get().without(),
            version.revision().number(),
            back);
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      ask(ctx, version, change.get(), change.get().refused(problems, bench.now(), back), back);
    }
  }

  private void move(Context ctx) {
    Optional<Version> on = base(ctx);
    Optional<PartChange> change =
        on.flatMap(it -> change(it, Optional.ofNullable(ctx.formParam("at")).orElse("")));
    if (change.isEmpty()) {
      writer.nothing(ctx, "part of a document that could be moved");
      return;
    }
    int by = "-1".equals(ctx.formParam("by")) ? -1 : 1;
    List<Problem> problems =
        saver.save(
            ctx,
            on.get().revision().key(),
            change.get().moved(by),
            on.get().revision().number(),
            Back.of(ctx));
    if (!problems.isEmpty()) {
      writer.message(
          ctx,
          HttpStatus.UNPROCESSABLE_CONTENT,
          "Not moved",
          "Nothing was changed: " + problems.get(0).words() + ".");
    }
  }
}
