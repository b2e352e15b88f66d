package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.Blob;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.StoreException;
import org.loomwright.web.picture.PictureLine;
import org.loomwright.web.picture.PictureUses;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Workbench;
import tools.jackson.databind.node.JsonNodeFactory;

/** All pictures of the store: what they are, where they are used; new ones, and others in place. */
final class PictureRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  PictureRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/pictures", ctx -> list(ctx, asked(ctx), Map.of()));
      routes.post("/pictures", this::put);
      routes.get("/pictures/file/{name}", this::bytes);
      routes.get("/pictures/of/{name}", this::one);
      routes.post("/pictures/of/{name}", this::replace);
    }
  }

  private static String asked(Context ctx) {
    return Optional.ofNullable(ctx.queryParam("name")).orElse("");
  }

  private void list(Context ctx, String name, Map<String, String> wrong) {
    PictureUses uses = PictureUses.of(saver.store());
    List<PictureLine> pictures = PictureLine.all(saver.store(), uses);
    List<String> here = pictures.stream().map(PictureLine::name).toList();
    Map<String, List<PictureUses.Use>> missing = new LinkedHashMap<>(uses.byName());
    here.forEach(missing::remove);
    writer.show(
        ctx,
        bench.now(),
        "Pictures",
        "pictures.jte",
        Map.of("pictures", pictures, "missing", missing, "name", name, "wrong", wrong));
  }

  private Optional<PictureLine> find(Context ctx, PictureUses uses) {
    return PictureLine.find(saver.store(), ctx.pathParam("name"), uses);
  }

  private void one(Context ctx) {
    find(ctx, PictureUses.of(saver.store()))
        .ifPresentOrElse(it -> one(ctx, it, Map.of()), () -> writer.nothing(ctx, "picture"));
  }

  private void one(Context ctx, PictureLine picture, Map<String, String> wrong) {
    writer.show(
        ctx,
        bench.now(),
        picture.name(),
        "picture.jte",
        Map.of("picture", picture, "wrong", wrong));
  }

  /** The bytes; an address with their hash stands for these bytes for ever. */
  private void bytes(Context ctx) {
    Optional<Blob> blob = find(ctx, new PictureUses(Map.of())).map(PictureLine::blob);
    Optional<byte[]> bytes = blob.flatMap(it -> saver.store().pictures().bytes(it.hash()));
    if (bytes.isEmpty()) {
      writer.nothing(ctx, "picture");
      return;
    }
    String hash = blob.orElseThrow().hash();
    String tag = '"' + hash + '"';
    ctx.header("ETag", tag)
        .header(
            "Cache-Control",
            hash.equals(ctx.queryParam("v"))
                ? "private, max-age=31536000, immutable"
                : "private, no-cache");
    if (tag.equals(ctx.header("If-None-Match"))) {
      ctx.status(HttpStatus.NOT_MODIFIED);
    } else {
      ctx.contentType(blob.orElseThrow().mediaType()).result(bytes.get());
    }
  }

  private void put(Context ctx) throws IOException {
    Uploads.Upload upload = Uploads.read(ctx, "file", Picture.LARGEST_BYTES);
    if (upload instanceof Uploads.Unread unread) {
      refuse(ctx);
      list(ctx, "", Map.of("file", unread.words()));
      return;
    }
    Uploads.Form form = (Uploads.Form) upload;
    String typed = form.field("name").strip();
    String name = typed.isEmpty() ? plain(form.name()) : typed;
    Map<String, String> wrong = put(ctx, form, name, Href.pictures());
    if (!wrong.isEmpty()) {
      refuse(ctx);
      list(ctx, typed, wrong);
    }
  }

  /** Takes a new picture in and answers; what is wrong by field, when it was not taken. */
  private Map<String, String> put(Context ctx, Uploads.Form form, String name, String back) {
    Optional<Signature> by = Saver.signature(ctx);
    Map<String, String> wrong = new LinkedHashMap<>();
    if (by.isEmpty()) {
      wrong.put("who", Saver.NO_NAME.message());
    }
    if (form.bytes().isEmpty()) {
      wrong.put("file", "choose a picture");
    } else if (taken(name)) {
      wrong.put(
          "name",
          "there is a picture of this name; replace it on its own page, or write another name");
    }
    if (!wrong.isEmpty()) {
      return wrong;
    }
    try {
      SaveResult result =
          saver.store().pictures().put(name, form.bytes().get(), 0, by.orElseThrow());
      saver.answer(ctx, new DocumentKey(DocumentKey.PICTURE, name), result, back);
    } catch (StoreException refusal) {
      String words = String.valueOf(refusal.getMessage());
      wrong.put(words.contains("can't be the name") ? "name" : "file", words);
    }
    return wrong;
  }

  private boolean taken(String name) {
    return saver.store().pictures().named(name).isPresent();
  }

  private static void refuse(Context ctx) {
    ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
  }

  /** Name of a file without its folders and without what no system takes. */
  static String plain(String file) {
    return file.replaceAll("^.*[/\\\\]", "")
        .replaceAll("[\\p{Cntrl}:*?\"<>|]", "-")
        .replaceFirst("^\\.+", "")
        .strip();
  }

  private void replace(Context ctx) throws IOException {
    PictureUses uses = PictureUses.of(saver.store());
    Optional<PictureLine> picture = find(ctx, uses);
    if (picture.isEmpty()) {
      writer.nothing(ctx, "picture");
      return;
    }
    Map<String, String> wrong = new LinkedHashMap<>();
    Uploads.Upload upload = Uploads.read(ctx, "file", Picture.LARGEST_BYTES);
    if (upload instanceof Uploads.Unread unread) {
      wrong.put("file", unread.words());
    } else if (((Uploads.Form) upload).bytes().isEmpty()) {
      wrong.put("file", "choose a picture");
    } else {
      replace(ctx, picture.get(), ((Uploads.Form) upload).bytes().get(), wrong);
    }
    if (!wrong.isEmpty()) {
      refuse(ctx);
      one(ctx, picture.get(), wrong);
    }
  }

  private void replace(Context ctx, PictureLine picture, byte[] file, Map<String, String> wrong) {
    if (Saver.signature(ctx).isEmpty()) {
      wrong.put("who", Saver.NO_NAME.message());
      return;
    }
    try {
      Blob blob = saver.store().pictures().put(file);
      List<Problem> problems =
          saver.save(
              ctx,
              picture.revision().key(),
              naming(picture.name(), blob),
              PageWriter.number(ctx, "basedOn"),
              Href.picture(picture.name()));
      problems.stream().findFirst().ifPresent(it -> wrong.put("file", it.words()));
    } catch (StoreException refusal) {
      wrong.put("file", String.valueOf(refusal.getMessage()));
    }
  }

  /** The document by which a file name stands for a picture. */
  private static String naming(String name, Blob blob) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("kind", DocumentKey.PICTURE)
        .put("id", name)
        .put("blob", blob.hash())
        .toString();
  }
}
