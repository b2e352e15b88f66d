package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.ImportResult;
import org.loomwright.store.Signature;
import org.loomwright.store.StoreException;
import org.loomwright.web.shop.Example;
import org.loomwright.web.shop.Workbench;

/** Whole workspaces in and out, and the first visit. */
final class BeginRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  BeginRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.post("/begin", this::begin);
      routes.get("/take-in", ctx -> page(ctx, List.of(), Optional.empty()));
      routes.post("/take-in", this::takeIn);
      routes.get("/workspace.zip", this::handOut);
    }
  }

  private void begin(Context ctx) {
    Optional<Example> example = bench.example();
    if (example.isEmpty()) {
      writer.nothing(ctx, "example");
      return;
    }
    Signature by = Saver.signature(ctx).orElse(new Signature("Loomwright", "the demo"));
    ImportResult result = example.get().into(saver.store(), by);
    if (result instanceof ImportResult.Refused refused) {
      page(ctx, refused.problems(), Optional.empty());
      return;
    }
    ctx.redirect("/", HttpStatus.SEE_OTHER);
  }

  private void takeIn(Context ctx) {
    Optional<Signature> by = Saver.signature(ctx);
    UploadedFile file = ctx.uploadedFile("zip");
    if (by.isEmpty()) {
      refuse(ctx, Saver.NO_NAME);
      return;
    }
    if (file == null || file.size() == 0) {
      refuse(
          ctx,
          new Problem(
              "", "zip", "", "choose the zip file of a workspace, as these pages write one"));
      return;
    }
    try (InputStream in = file.content()) {
      ImportResult result = saver.store().workspaces().importZip(in, file.filename(), by.get());
      if (result instanceof ImportResult.Refused refused) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        page(ctx, refused.problems(), Optional.empty());
      } else {
        page(ctx, List.of(), Optional.of((ImportResult.Done) result));
      }
    } catch (StoreException refusal) {
      refuse(ctx, new Problem("", "zip", "", String.valueOf(refusal.getMessage())));
    } catch (IOException unreadable) {
      refuse(
          ctx,
          new Problem(
              "", "zip", "", "the file did not arrive whole (" + unreadable + "); try again"));
    }
  }

  private void refuse(Context ctx, Problem problem) {
    ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
    page(ctx, List.of(problem), Optional.empty());
  }

  private void page(Context ctx, List<Problem> problems, Optional<ImportResult.Done> done) {
    writer.show(
        ctx,
        bench.now(),
        "Take in and hand out",
        "take-in.jte",
        Map.of("problems", problems, "done", done));
  }

  private void handOut(Context ctx) throws IOException {
    ctx.contentType("application/zip")
        .header("Content-Disposition", "attachment; filename=\"workspace.zip\"");
    saver.store().workspaces().exportZip(ctx.outputStream());
  }
}
