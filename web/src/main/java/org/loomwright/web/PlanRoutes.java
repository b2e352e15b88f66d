package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.Blob;
import org.loomwright.store.Signature;
import org.loomwright.store.StoreException;
import org.loomwright.web.map.MapEdit;
import org.loomwright.web.map.MapView;
import org.loomwright.web.map.MapWords;
import org.loomwright.web.map.PlanSetup;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Size and picture of a vehicle's plan view. */
final class PlanRoutes implements Routes {
  private static final Logger LOG = LoggerFactory.getLogger(PlanRoutes.class);
  private static final String PICTURE = "picture";

  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  PlanRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/vehicle/{id}/map/view", this::show);
      routes.post("/vehicle/{id}/map/view", this::save);
    }
  }

  private void show(Context ctx) {
    Shop shop = bench.now();
    Optional<VehicleText> text =
        shop.vehicle(ctx.pathParam("id")).flatMap(it -> VehicleText.newest(saver.store(), it));
    if (text.isEmpty()) {
      writer.nothing(ctx, "vehicle");
      return;
    }
    Vehicle vehicle = text.get().vehicle();
    page(ctx, shop, vehicle, text.get().number(), PlanSetup.of(vehicle), List.of());
  }

  private void save(Context ctx) {
    Shop shop = bench.now();
    long basedOn = PageWriter.number(ctx, "basedOn");
    Optional<VehicleText> text =
        shop.vehicle(ctx.pathParam("id"))
            .flatMap(it -> VehicleText.version(saver.store(), it, basedOn));
    if (text.isEmpty()) {
      writer.nothing(ctx, "vehicle");
      return;
    }
    PlanSetup setup =
        new PlanSetup(
            typed(ctx, "along"), typed(ctx, "down"), ctx.formParam("withPicture") != null);
    List<Problem> problems = save(ctx, text.get(), setup);
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      page(ctx, shop, text.get().vehicle(), basedOn, setup, problems);
    }
  }

  private List<Problem> save(Context ctx, VehicleText text, PlanSetup setup) {
    Vehicle vehicle = text.vehicle();
    List<Problem> problems = new ArrayList<>(setup.problems());
    Optional<Signature> by = Saver.signature(ctx);
    if (by.isEmpty()) {
      problems.add(Saver.NO_NAME);
    }
    if (!problems.isEmpty() || by.isEmpty()) {
      return problems;
    }
    PlanSetup.Picture picture =
        ctx.formParam("noPicture") == null
            ? new PlanSetup.Picture.Same()
            : new PlanSetup.Picture.None();
    UploadedFile file = ctx.uploadedFile(PICTURE);
    if (file != null && file.size() > 0) {
      try {
        picture = new PlanSetup.Picture.Named(keep(file, vehicle, by.get()));
      } catch (StoreException refused) {
        return List.of(
            new Problem("", PICTURE, file.filename(), String.valueOf(refused.getMessage())));
      } catch (IOException failure) {
        LOG.warn("The picture {} could not be read.", file.filename(), failure);
        return List.of(
            new Problem(
                "", PICTURE, file.filename(), "the picture did not arrive whole; choose it again"));
      }
    }
    MapEdit edit = setup.apply(text.text(), vehicle, picture);
    return saver.save(
        ctx,
        text.key(),
        edit.text(),
        text.number(),
        Href.map(vehicle.id()),
        MapWords.done(edit.changes()));
  }

  /** Keeps a picture under a name of its own, so that no other picture is replaced by it. */
  private String keep(UploadedFile file, Vehicle vehicle, Signature by) throws IOException {
    byte[] bytes;
    try (InputStream in = file.content()) {
      // One byte more than is taken is enough to see that it is too large.
      bytes = in.readNBytes(Picture.LARGEST_BYTES + 1);
    }
    Blob blob = saver.store().pictures().put(bytes);
    String name =
        Href.part(vehicle.id())
            + "-plan-"
            + blob.hash().substring(0, 8)
            + (blob.mediaType().equals("image/png") ? ".png" : ".jpg");
    if (saver.store().pictures().named(name).isEmpty()) {
      saver.store().pictures().put(name, bytes, 0, by);
    }
    return name;
  }

  private static String typed(Context ctx, String field) {
    return Optional.ofNullable(ctx.formParam(field)).orElse("");
  }

  private void page(
      Context ctx,
      Shop shop,
      Vehicle vehicle,
      long basedOn,
      PlanSetup setup,
      List<Problem> problems) {
    writer.show(
        ctx,
        shop,
        "Plan view of " + vehicle.name(),
        "plan.jte",
        Map.of(
            "view",
            MapView.of(vehicle, basedOn, shop::picture, it -> Optional.empty(), problems),
            "setup",
            setup));
  }
}
