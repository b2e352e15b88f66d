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
import org.loomwright.web.view.HistoryView;

/** What became of a document over time, and the way back. */
final class HistoryRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  HistoryRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/history/{kind}/{id}", this::show);
      routes.post("/history/{kind}/{id}/back", this::goBack);
      routes.post("/history/{kind}/{id}/undo", this::undo);
      routes.post("/history/{kind}/{id}/retire", this::retire);
    }
  }

  private Optional<DocumentKey> key(Context ctx) {
    return Done.key(saver.store(), ctx.pathParam("kind"), ctx.pathParam("id"));
  }

  private void show(Context ctx) {
    Optional<DocumentKey> key = key(ctx);
    if (key.isEmpty()) {
      writer.nothing(ctx, "document");
      return;
    }
    writer.show(
        ctx,
        bench.now(),
        "History of " + key.get().shown(),
        "history.jte",
        Map.of("history", HistoryView.of(saver.store(), key.get())));
  }

  /** Makes the text of an earlier revision the newest again. */
  private void goBack(Context ctx) {
    Optional<Version> wanted =
        key(ctx)
            .flatMap(it -> saver.store().documents().version(it, PageWriter.number(ctx, "number")));
    if (wanted.isEmpty()) {
      writer.nothing(ctx, "revision");
      return;
    }
    save(ctx, wanted.get(), PageWriter.number(ctx, "seen"));
  }

  /** Takes one revision back, and keeps what was saved after it. */
  private void undo(Context ctx) {
    long number = PageWriter.number(ctx, "number");
    Optional<Version> before =
        key(ctx).flatMap(it -> saver.store().documents().version(it, number - 1));
    if (before.isEmpty()) {
      writer.nothing(ctx, "revision to go back to");
      return;
    }
    save(ctx, before.get(), number);
  }

  /** Takes a document out of use. */
  private void retire(Context ctx) {
    Optional<DocumentKey> key = key(ctx);
    if (key.isEmpty()) {
      writer.nothing(ctx, "document");
      return;
    }
    refused(ctx, saver.retire(ctx, key.get(), PageWriter.number(ctx, "seen"), Back.of(ctx)));
  }

  private void save(Context ctx, Version wanted, long basedOn) {
    List<Problem> problems =
        saver.save(ctx, wanted.revision().key(), wanted.content(), basedOn, Back.of(ctx));
    refused(ctx, problems);
  }

  private void refused(Context ctx, List<Problem> problems) {
    if (!problems.isEmpty()) {
      writer.message(
          ctx,
          HttpStatus.UNPROCESSABLE_CONTENT,
          "Not changed",
          "Nothing was changed: " + problems.get(0).words() + ".");
    }
  }
}
