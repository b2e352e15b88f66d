package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Workbench;

/** A whole document as text, for what no form offers and for what can't be read any more. */
final class TextRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  TextRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/text/{kind}/{id}", this::show);
      routes.post("/text/{kind}/{id}", this::save);
    }
  }

  private Optional<DocumentKey> key(Context ctx) {
    return Done.key(saver.store(), ctx.pathParam("kind"), ctx.pathParam("id"));
  }

  private void show(Context ctx) {
    Optional<Version> newest = key(ctx).flatMap(it -> saver.store().documents().newest(it));
    if (newest.isEmpty()) {
      writer.nothing(ctx, "document");
      return;
    }
    page(
        ctx,
        newest.get().revision().key(),
        newest.get().content(),
        newest.get().revision().number(),
        List.of());
  }

  private void save(Context ctx) {
    Optional<DocumentKey> key = key(ctx);
    if (key.isEmpty()) {
      writer.nothing(ctx, "document");
      return;
    }
    String text = Optional.ofNullable(ctx.formParam("text")).orElse("");
    long basedOn = PageWriter.number(ctx, "basedOn");
    List<Problem> problems = saver.save(ctx, key.get(), text, basedOn, Back.of(ctx));
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      page(ctx, key.get(), text, basedOn, problems);
    }
  }

  private void page(
      Context ctx, DocumentKey key, String text, long basedOn, List<Problem> problems) {
    writer.show(
        ctx,
        bench.now(),
        "Text of " + key.shown(),
        "text.jte",
        Map.of("key", key, "text", text, "basedOn", basedOn, "problems", problems));
  }
}
