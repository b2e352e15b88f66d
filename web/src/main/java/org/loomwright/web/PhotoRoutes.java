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
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.StoreException;
import org.loomwright.store.StoredPictures;
import org.loomwright.web.picture.PhotoForm;
import org.loomwright.web.picture.PhotoMarks;
import org.loomwright.web.picture.PhotoText;
import org.loomwright.web.picture.PictureLine;
import org.loomwright.web.picture.PictureUses;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;

/** A photo of a face is chosen or put in, and the face is laid on it by points found in it. */
final class PhotoRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  PhotoRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/vehicle/{id}/face/{face}/photo", this::show);
      routes.post("/vehicle/{id}/face/{face}/photo", this::mark);
      routes.post("/vehicle/{id}/face/{face}/photo/new", this::put);
    }
  }

  private Optional<PhotoPlace> place(Context ctx, Shop shop) {
    return PhotoPlace.find(saver.store(), shop, ctx);
  }

  private void show(Context ctx) {
    Shop shop = bench.now();
    Optional<PhotoPlace> place = place(ctx, shop);
    if (place.isEmpty()) {
      writer.nothing(ctx, "connector or fuse block with a face on file");
      return;
    }
    page(ctx, shop, place.get(), asked(ctx, place.get()), Map.of(), List.of());
  }

  private static PhotoForm asked(Context ctx, PhotoPlace place) {
    Map<String, List<String>> asked = ctx.queryParamMap();
    if (asked.containsKey("picture")) {
      return PhotoForm.of(asked);
    }
    Optional<FacePhoto> own = place.photo();
    return own.map(it -> PhotoForm.of(it, false))
        .or(() -> place.housing().photo().map(it -> PhotoForm.of(it, true)))
        .orElseGet(() -> PhotoForm.of(asked));
  }

  /** Takes a new picture in, and goes on to mark it. */
  private void put(Context ctx) throws IOException {
    Shop shop = bench.now();
    Optional<PhotoPlace> place = place(ctx, shop);
    if (place.isEmpty()) {
      writer.nothing(ctx, "connector or fuse block with a face on file");
      return;
    }
    Map<String, String> wrong = new LinkedHashMap<>();
    Uploads.Upload upload = Uploads.read(ctx, "file", Picture.LARGEST_BYTES);
    if (upload instanceof Uploads.Unread unread) {
      wrong.put("file", unread.words());
      refused(ctx, shop, place.get(), PhotoForm.of(Map.of()), wrong, List.of());
      return;
    }
    Uploads.Form form = (Uploads.Form) upload;
    PhotoForm said = PhotoForm.of(form.fields());
    Optional<Signature> by = Saver.signature(ctx);
    if (by.isEmpty()) {
      wrong.put("who", Saver.NO_NAME.message());
    }
    if (form.bytes().isEmpty()) {
      wrong.put("file", "choose a picture");
    }
    if (wrong.isEmpty()) {
      try {
        byte[] file = form.bytes().orElseThrow();
        String name = unused(place.get(), said, file);
        SaveResult result = saver.store().pictures().put(name, file, 0, by.orElseThrow());
        String next =
            Href.photo(place.get().vehicle(), place.get().id())
                + "?picture="
                + Href.value(name)
                + "&side="
                + said.sideWord();
        saver.answer(ctx, new DocumentKey(DocumentKey.PICTURE, name), result, next);
        return;
      } catch (StoreException refusal) {
        wrong.put("file", String.valueOf(refusal.getMessage()));
      }
    }
    refused(ctx, shop, place.get(), said, wrong, List.of());
  }

  /** A name for a photo that says what it shows, and that no picture has. */
  private String unused(PhotoPlace place, PhotoForm said, byte[] file) {
    boolean png = file.length > 1 && file[1] == 'P';
    String plain = place.id().replaceAll("[^A-Za-z0-9-]+", "-").replaceFirst("^-+", "");
    String stem = (plain.isEmpty() ? "face" : plain) + "-" + said.sideWord();
    String end = png ? ".png" : ".jpg";
    String name = stem + end;
    for (int n = 2; saver.store().pictures().named(name).isPresent(); n++) {
      name = stem + "-" + n + end;
    }
    return name;
  }

  /** Shows the marks that points make, or saves them. */
  private void mark(Context ctx) {
    Shop shop = bench.now();
    Optional<PhotoPlace> place = place(ctx, shop);
    if (place.isEmpty()) {
      writer.nothing(ctx, "connector or fuse block with a face on file");
      return;
    }
    PhotoForm form = PhotoForm.of(ctx.formParamMap());
    String step = String.valueOf(ctx.formParam("step"));
    if (step.equals("save")) {
      save(ctx, shop, place.get(), form);
    } else {
      page(ctx, shop, place.get(), form, Map.of(), List.of());
    }
  }

  private void save(Context ctx, Shop shop, PhotoPlace place, PhotoForm form) {
    Optional<PhotoMarks> marks = marks(place, form);
    if (marks.isEmpty() || !marks.get().fits()) {
      String words = marks.map(PhotoMarks::words).orElse("choose a picture first");
      refused(ctx, shop, place, form, Map.of(), List.of(new Problem("", "", "", words)));
      return;
    }
    PhotoPlace.Owner owner = form.part() ? place.partOwner() : place.ownOwner();
    long basedOn = PageWriter.number(ctx, form.part() ? "partsOn" : "basedOn");
    String text =
        saver
            .store()
            .documents()
            .version(owner.key(), basedOn)
            .map(
                it ->
                    PhotoText.with(
                        it.content(), owner.list(), owner.id(), Optional.of(marks.get().photo())))
            .orElse("");
    List<Problem> problems =
        saver.save(ctx, owner.key(), text, basedOn, Href.face(place.vehicle(), place.id()));
    if (!problems.isEmpty()) {
      refused(ctx, shop, place, form, Map.of(), problems);
    }
  }

  /** The marks; empty when no picture is chosen. Pictures that no document names count too. */
  private Optional<PhotoMarks> marks(PhotoPlace place, PhotoForm form) {
    StoredPictures pictures = saver.store().pictures();
    return form.file().isEmpty()
        ? Optional.empty()
        : pictures
            .named(form.file())
            .flatMap(
                hash ->
                    pictures
                        .bytes(hash)
                        .map(
                            bytes ->
                                PhotoMarks.of(
                                    place.housing(),
                                    form,
                                    Picture.of(bytes),
                                    Href.pictureFile(form.file(), hash))));
  }

  private void refused(
      Context ctx,
      Shop shop,
      PhotoPlace place,
      PhotoForm form,
      Map<String, String> wrong,
      List<Problem> problems) {
    ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
    page(ctx, shop, place, form, wrong, problems);
  }

  private void page(
      Context ctx,
      Shop shop,
      PhotoPlace place,
      PhotoForm form,
      Map<String, String> wrong,
      List<Problem> problems) {
    Map<String, Object> things = new LinkedHashMap<>();
    things.put("place", place);
    things.put("form", form);
    things.put(
        "pictures",
        PictureLine.all(saver.store(), new PictureUses(Map.of())).stream()
            .map(PictureLine::name)
            .toList());
    things.put("marks", marks(place, form));
    things.put("choices", PhotoMarks.choices(place.housing()));
    things.put("wrong", wrong);
    things.put("problems", problems);
    writer.show(ctx, shop, "Photo of " + place.name(), "photo.jte", things);
  }
}
