package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.intake.Book;
import org.loomwright.intake.PastedTable;
import org.loomwright.intake.Reading;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.workspace.Problem;
import org.loomwright.web.paste.PasteForm;
import org.loomwright.web.paste.PasteJudge;
import org.loomwright.web.paste.PasteView;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;

/**
 * A pinout is pasted, looked at, corrected and accepted. All that was said so far travels with the
 * form, so that nothing times out and the way back is open.
 */
final class PasteRoutes implements Routes {
  /** Largest spreadsheet file, bytes; what is larger is refused when it is read. */
  private static final int LARGEST_FILE = 8 << 20;

  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  PasteRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/vehicle/{id}/face/{face}/paste", this::start);
      routes.post("/vehicle/{id}/face/{face}/paste", this::step);
    }
  }

  /** Where the table goes: a connector as of one revision of its vehicle. */
  private record Place(VehicleText found, Connector connector, Housing housing) {
    PasteJudge.Target target(Shop shop) {
      List<Housing> housings =
          found.vehicle().connectors().stream()
              .flatMap(it -> shop.housing(it.housing()).stream())
              .distinct()
              .toList();
      return new PasteJudge.Target(found.vehicle(), connector, housing, housings);
    }

    String back() {
      return Href.face(found.vehicle().id(), connector.id());
    }
  }

  private Optional<Place> place(Context ctx, Shop shop, long basedOn) {
    Optional<VehicleText> found =
        shop.vehicle(ctx.pathParam("id"))
            .flatMap(
                it ->
                    basedOn == 0
                        ? VehicleText.newest(saver.store(), it)
                        : VehicleText.version(saver.store(), it, basedOn));
    return found.flatMap(
        it ->
            it.vehicle().connectors().stream()
                .filter(on -> Href.part(on.id()).equals(ctx.pathParam("face")))
                .findFirst()
                .flatMap(
                    on -> shop.housing(on.housing()).map(housing -> new Place(it, on, housing))));
  }

  private void start(Context ctx) {
    Shop shop = bench.now();
    place(ctx, shop, 0)
        .ifPresentOrElse(
            it -> first(ctx, shop, it, "", Map.of()),
            () -> writer.nothing(ctx, "connector with a face on file"));
  }

  private void step(Context ctx) throws IOException {
    Shop shop = bench.now();
    boolean upload = ctx.isMultipartFormData();
    long basedOn = upload ? 0 : PageWriter.number(ctx, "basedOn");
    Optional<Place> place = place(ctx, shop, basedOn);
    if (place.isEmpty()) {
      writer.nothing(ctx, "connector with a face on file");
    } else if (upload) {
      read(ctx, shop, place.get());
    } else {
      preview(ctx, shop, place.get());
    }
  }

  /** First step: reads what was pasted or chosen. */
  private void read(Context ctx, Shop shop, Place place) throws IOException {
    Uploads.Upload upload = Uploads.read(ctx, "file", LARGEST_FILE);
    if (upload instanceof Uploads.Unread unread) {
      refuse(ctx, shop, place, "", Map.of("file", unread.words()));
      return;
    }
    Uploads.Form form = (Uploads.Form) upload;
    String text = form.field("text");
    long basedOn = place.found().number();
    if (form.bytes().isPresent() && !text.isBlank()) {
      refuse(
          ctx,
          shop,
          place,
          text,
          Map.of("file", "there is a text as well; clear the text, or choose no file"));
    } else if (form.bytes().isPresent()) {
      Book book = Book.read(form.bytes().get());
      if (book instanceof Book.Good good) {
        show(ctx, shop, place, PasteForm.first(good.sheets(), basedOn), List.of());
      } else {
        refuse(ctx, shop, place, text, Map.of("file", ((Book.Bad) book).message()));
      }
    } else {
      Reading reading = PastedTable.read(text);
      if (reading instanceof Reading.Bad bad) {
        refuse(ctx, shop, place, text, Map.of("text", bad.message()));
      } else {
        PastedTable table = ((Reading.Good) reading).table();
        show(
            ctx,
            shop,
            place,
            PasteForm.first(List.of(new Book.Sheet("", table)), basedOn),
            List.of());
      }
    }
  }

  /** Second step: shows what would come of it, goes back to the text, or accepts. */
  private void preview(Context ctx, Shop shop, Place place) {
    Optional<PasteForm> form = PasteForm.of(ctx.formParamMap(), place.found().number());
    if (form.isEmpty()) {
      refuse(
          ctx,
          shop,
          place,
          "",
          Map.of("text", "the table did not come back whole; paste it again, please"));
      return;
    }
    String step = String.valueOf(ctx.formParam("step"));
    if (step.equals("text")) {
      first(ctx, shop, place, plain(form.get().table()), Map.of());
    } else if (step.equals("accept")) {
      accept(ctx, shop, place, form.get());
    } else {
      show(ctx, shop, place, form.get(), List.of());
    }
  }

  private void accept(Context ctx, Shop shop, Place place, PasteForm form) {
    PasteJudge judged = judge(ctx, shop, place, form);
    List<Problem> problems;
    if (!judged.wrong().isEmpty()) {
      problems =
          List.of(new Problem("", "", "", "put right the fields that are marked, then accept"));
    } else {
      problems =
          saver.save(
              ctx,
              place.found().key(),
              DocumentWriter.write(judged.accepted().vehicle()),
              form.basedOn(),
              place.back());
    }
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(ctx, shop, place, form, problems);
    }
  }

  private PasteJudge judge(Context ctx, Shop shop, Place place, PasteForm form) {
    String typed =
        Optional.ofNullable(ctx.isMultipartFormData() ? null : ctx.formParam("who"))
            .orElse("")
            .strip();
    String who = typed.isEmpty() ? Cookies.of(ctx, Saver.WHO) : typed;
    return PasteJudge.of(form, place.target(shop), who, LocalDate.now());
  }

  private void refuse(Context ctx, Shop shop, Place place, String text, Map<String, String> wrong) {
    ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
    first(ctx, shop, place, text, wrong);
  }

  private void first(Context ctx, Shop shop, Place place, String text, Map<String, String> wrong) {
    writer.show(
        ctx,
        shop,
        "Paste a pinout of " + place.connector().name(),
        "paste.jte",
        Map.of(
            "vehicle",
            place.found().vehicle(),
            "connector",
            place.connector(),
            "text",
            text,
            "wrong",
            wrong));
  }

  private void show(Context ctx, Shop shop, Place place, PasteForm form, List<Problem> problems) {
    // The way back in a browser leads here again, which is kept for that.
    ctx.header("Cache-Control", "private, max-age=0");
    Map<String, Object> things = new LinkedHashMap<>();
    things.put("vehicle", place.found().vehicle());
    things.put("connector", place.connector());
    things.put("view", PasteView.of(judge(ctx, shop, place, form)));
    things.put("problems", problems);
    things.put("since", since(place));
    things.put("today", LocalDate.now().toString());
    writer.show(ctx, shop, "Pinout of " + place.connector().name(), "pasted.jte", things);
  }

  /** What others saved while the person looked at the preview; empty for nothing. */
  private String since(Place place) {
    return saver
        .store()
        .documents()
        .newest(place.found().key())
        .map(it -> it.revision())
        .filter(it -> it.number() > place.found().number())
        .map(
            it ->
                it.by().who()
                    + " has saved the vehicle since (revision "
                    + it.number()
                    + "). What you accept here is put together with that.")
        .orElse("");
  }

  /** A table as text that is read again as the same table. */
  private static String plain(PastedTable table) {
    StringBuilder out = new StringBuilder();
    int line = 1;
    for (PastedTable.Row row : table.rows()) {
      // Rows keep their numbers, as far as that costs no more than some empty lines.
      for (; line < row.number() && row.number() - line < 1000; line++) {
        out.append('\n');
      }
      out.append(String.join("\t", row.cells().stream().map(PasteRoutes::quoted).toList()))
          .append('\n');
      line = row.number() + 1;
    }
    return out.toString();
  }

  private static String quoted(String cell) {
    boolean needed = cell.chars().anyMatch(it -> it == '\n' || it == '"' || it == '\t');
    return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
