package org.loomwright.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.TourStop;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.units.PageUnits;
import org.loomwright.web.units.UnitWords;
import org.loomwright.web.units.WrittenWords;
import org.loomwright.web.view.Frame;
import org.loomwright.web.view.Notice;

/** Fills templates and answers with them. */
final class PageWriter {
  /** What the switch between light and dark can be set to. */
  static final List<String> LOOKS = List.of("auto", "light", "dark");

  /** The cookie that keeps the units, and what it can hold. */
  static final String UNITS = "units";

  static final String METRIC = "metric";
  static final String INCH = "inch";

  /** Pages that show; those that quote, compare or change what is on file keep it as it is. */
  private static final Set<String> IN_UNITS =
      Set.of(
          "vehicle.jte",
          "face.jte",
          "equipment.jte",
          "tables.jte",
          "kit.jte",
          "trace.jte",
          "sum.jte");

  private static final String SPOKEN = "spoken";

  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, PageWriter.class.getClassLoader(), "org.loomwright.web.page");

  private final Workbench bench;

  PageWriter(Workbench bench) {
    this.bench = bench;
  }

  void nothing(Context ctx, String what) {
    message(
        ctx,
        HttpStatus.NOT_FOUND,
        "Not here",
        "There is no such "
            + what
            + " in this workspace. It may have been renamed or removed; the search box or the first"
            + " page leads on.");
  }

  /** Whether an answer is already in words of ours, so that nothing has to be put in its place. */
  static boolean hasSpoken(Context ctx) {
    return ctx.attribute(SPOKEN) != null;
  }

  void message(Context ctx, HttpStatus status, String title, String words) {
    ctx.attribute(SPOKEN, true);
    ctx.status(status)
        .html(
            render(
                "message.jte",
                Map.of("frame", frame(ctx, "", title), "title", title, "words", words)));
  }

  void show(Context ctx, Shop shop, String title, String page, Map<String, Object> things) {
    Map<String, Object> all = new LinkedHashMap<>(things);
    all.put("frame", frame(ctx, shop.where(), title));
    String html = render(page, all);
    ctx.html(IN_UNITS.contains(page) ? inUnits(ctx, shop, html) : html);
  }

  /** The units a person wants to see. */
  static Display units(Context ctx) {
    return Cookies.of(ctx, UNITS).equals(INCH) ? Display.US : Display.METRIC;
  }

  private static String inUnits(Context ctx, Shop shop, String html) {
    Display units = units(ctx);
    if (units == Display.METRIC && !html.contains("AWG")) {
      return html;
    }
    Workspace files = shop.workspace();
    Set<String> written = new LinkedHashSet<>();
    List.of(files.vehicles(), files.equipment(), files.kits(), files.parts(), files.rules())
        .forEach(it -> written.addAll(WrittenWords.in(it)));
    return new PageUnits(new UnitWords(units, written)).of(html);
  }

  String render(String page, Map<String, Object> things) {
    StringOutput output = new StringOutput();
    templates.render(page, things, output);
    return output.toString();
  }

  private Frame frame(Context ctx, String where, String title) {
    String look = String.valueOf(ctx.cookie("look"));
    String query = ctx.queryString();
    return new Frame(
        title,
        LOOKS.contains(look) ? look : "auto",
        units(ctx),
        ctx.path() + (query == null ? "" : "?" + query),
        where,
        Optional.ofNullable(ctx.queryParam("q")).orElse(""),
        bench.store().isPresent(),
        Uploads.isUnread(ctx) ? Cookies.of(ctx, Saver.WHO) : Saver.name(ctx),
        ctx.method() == HandlerType.POST && !Uploads.isUnread(ctx)
            ? Optional.ofNullable(ctx.formParam(Saver.WHY)).orElse("")
            : "",
        notice(ctx),
        bench.store().flatMap(it -> TourStop.number(Cookies.of(ctx, TourRoutes.TOUR))));
  }

  private Optional<Notice> notice(Context ctx) {
    return bench
        .store()
        .flatMap(
            store ->
                Optional.ofNullable(ctx.queryParam("done")).flatMap(it -> Done.notice(store, it)));
  }

  /** A number of a form; 0 when it is none. */
  static long number(Context ctx, String name) {
    String text = String.valueOf(ctx.formParam(name)).strip();
    return text.matches("\\d{1,15}") ? Long.parseLong(text) : 0;
  }

  /** What the address asks for; of words given twice the first counts. */
  static Map<String, String> asked(Context ctx) {
    return first(ctx.queryParamMap());
  }

  /** What a form says; of fields given twice the first counts. */
  static Map<String, String> typed(Context ctx) {
    return first(ctx.formParamMap());
  }

  private static Map<String, String> first(Map<String, List<String>> given) {
    Map<String, String> first = new LinkedHashMap<>();
    given.forEach((key, values) -> first.put(key, values.isEmpty() ? "" : values.get(0)));
    return first;
  }
}
