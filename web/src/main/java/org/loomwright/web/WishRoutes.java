package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Stage;
import org.loomwright.web.shop.Workbench;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Forbids and prefers ways of a kit. */
final class WishRoutes implements Routes {
  private static final List<String> WISHES = List.of("forbid", "prefer", "none");

  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  WishRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.post("/kit/{id}/wish", this::wish);
    }
  }

  private void wish(Context ctx) {
    Shop shop = bench.now();
    String way = Optional.ofNullable(ctx.formParam("way")).orElse("");
    String wish = Optional.ofNullable(ctx.formParam("wish")).orElse("");
    long basedOn = PageWriter.number(ctx, "basedOn");
    Optional<Version> base =
        shop.kit(ctx.pathParam("id"))
            .map(Kit::id)
            .flatMap(it -> saver.store().documents().version(new DocumentKey("kit", it), basedOn));
    if (base.isEmpty() || way.isBlank() || !WISHES.contains(wish)) {
      writer.nothing(ctx, "kit or way");
      return;
    }
    String reason = Optional.ofNullable(ctx.formParam("reason")).orElse("").strip();
    String text = with(base.get().content(), way, wish, reason);
    DocumentKey key = base.get().revision().key();
    List<Problem> problems =
        saver.save(ctx, key, text, basedOn, Href.kit(key.id(), Stage.WAYS), reason);
    if (!problems.isEmpty()) {
      writer.message(
          ctx,
          HttpStatus.UNPROCESSABLE_CONTENT,
          "Not changed",
          "The kit was left as it is: "
              + problems.get(0).message()
              + ". Go back in the browser; what was typed is still there.");
    }
  }

  /** The text of a kit with one wish set, replaced or dropped. */
  private static String with(String kit, String way, String wish, String reason) {
    if (!(JsonText.parse(kit) instanceof JsonText.Tree tree
        && tree.node() instanceof ObjectNode document)) {
      return kit;
    }
    ArrayNode wishes = JsonNodeFactory.instance.arrayNode();
    document
        .path("wishes")
        .forEach(
            it -> {
              if (!it.path("way").asString("").equals(way)) {
                wishes.add(it);
              }
            });
    if (!wish.equals("none")) {
      wishes.add(
          JsonNodeFactory.instance
              .objectNode()
              .put("wish", wish)
              .put("way", way)
              .put("reason", reason.isEmpty() ? "no reason given" : reason));
    }
    document.set("wishes", wishes);
    return document.toString();
  }
}
