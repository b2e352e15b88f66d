package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.board.BoardTooSmall;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.Kit;
import org.loomwright.papers.PackStamp;
import org.loomwright.papers.words.Standing;
import org.loomwright.store.Release;
import org.loomwright.store.ReleaseDraft;
import org.loomwright.store.Signature;
import org.loomwright.store.StoreException;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.KitPages;
import org.loomwright.web.shop.Pinned;
import org.loomwright.web.shop.Planned;
import org.loomwright.web.shop.Workbench;

/** Releases a kit, and hands out the packs of its releases. */
final class ReleaseRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  ReleaseRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/kit/{id}/release", this::show);
      routes.post("/kit/{id}/release", this::release);
      routes.get("/kit/{id}/release/{number}/pack.zip", this::pack);
    }
  }

  private void show(Context ctx) {
    page(ctx, "", "");
  }

  private void page(Context ctx, String noName, String refusal) {
    Optional<Kit> kit = bench.now().kit(ctx.pathParam("id"));
    if (kit.isEmpty()) {
      writer.nothing(ctx, "kit");
      return;
    }
    Optional<Pinned> pinned = Pinned.of(saver.store(), kit.get().id());
    Optional<Planned> planned = pinned.map(it -> bench.desk().of(it.order()));
    writer.show(
        ctx,
        bench.now(),
        "Releases of " + kit.get().name(),
        "release.jte",
        Map.of(
            "kit",
            kit.get(),
            "standing",
            planned.flatMap(ReleaseRoutes::pages).map(KitPages::standing),
            "waiting",
            planned.filter(Planned.Working.class::isInstance).isPresent(),
            "pins",
            pinned.map(Pinned::pins).orElse(List.of()),
            "releases",
            saver.store().releases().of(kit.get().id()),
            "noName",
            noName,
            "refusal",
            refusal));
  }

  private static Optional<KitPages> pages(Planned planned) {
    return planned instanceof Planned.Done done ? Optional.of(done.pages()) : Optional.empty();
  }

  private void release(Context ctx) {
    Optional<Pinned> pinned =
        bench.now().kit(ctx.pathParam("id")).flatMap(it -> Pinned.of(saver.store(), it.id()));
    Optional<KitPages> pages =
        pinned.map(it -> bench.desk().of(it.order())).flatMap(ReleaseRoutes::pages);
    if (pinned.isEmpty() || pages.isEmpty()) {
      page(ctx.status(HttpStatus.CONFLICT), "", "The kit is being planned; try again in a moment.");
      return;
    }
    Optional<Signature> by = Saver.signature(ctx);
    Standing standing = pages.get().standing();
    Optional<String> against =
        standing.releasable()
            ? standing.marginal().isEmpty() || !by.map(Signature::why).orElse("").isEmpty()
                ? Optional.empty()
                : Optional.of("A check is marginal: say below why the kit may go out all the same.")
            : Optional.of("The kit can't be released: " + standing.reasons().get(0));
    if (by.isEmpty() || against.isPresent()) {
      page(
          ctx.status(HttpStatus.UNPROCESSABLE_CONTENT),
          by.isEmpty() ? Saver.NO_NAME.message() : "",
          against.orElse(""));
      return;
    }
    Verdict verdict = standing.marginal().isEmpty() ? Verdict.HOLDS : Verdict.MARGINAL;
    String id = pinned.get().order().kit().id();
    long number = saver.store().releases().next(id);
    PackStamp stamp = PackFile.stamp(bench.now(), pages.get(), Optional.of((int) number));
    try {
      Release made =
          saver
              .store()
              .releases()
              .release(
                  new ReleaseDraft(
                      id,
                      pinned.get().pins(),
                      verdict,
                      PackFile.files(pages.get(), stamp),
                      by.get(),
                      Optional.of(number)));
      ctx.redirect(Href.release(made.kit()) + "?new=" + made.number(), HttpStatus.SEE_OTHER);
    } catch (StoreException refused) {
      page(ctx.status(HttpStatus.CONFLICT), "", String.valueOf(refused.getMessage()));
    } catch (BoardTooSmall small) {
      page(
          ctx.status(HttpStatus.CONFLICT),
          "",
          "The build board of the rules is too small: " + small.getMessage() + ".");
    } catch (IOException full) {
      page(ctx.status(HttpStatus.CONFLICT), "", "The pack could not be written: " + full + ".");
    }
  }

  private void pack(Context ctx) throws IOException {
    Optional<Release> release =
        bench.now().kit(ctx.pathParam("id")).stream()
            .flatMap(it -> saver.store().releases().of(it.id()).stream())
            .filter(it -> Long.toString(it.number()).equals(ctx.pathParam("number")))
            .findFirst();
    if (release.isEmpty()) {
      writer.nothing(ctx, "release");
      return;
    }
    PackFile.send(
        ctx, release.get().kit() + "-release-" + release.get().number(), kept(release.get()));
  }

  private Map<String, byte[]> kept(Release release) {
    Map<String, byte[]> files = new java.util.TreeMap<>();
    for (String name : release.pack().keySet()) {
      saver
          .store()
          .releases()
          .file(release.kit(), release.number(), name)
          .ifPresent(bytes -> files.put(name, bytes));
    }
    return files;
  }
}
