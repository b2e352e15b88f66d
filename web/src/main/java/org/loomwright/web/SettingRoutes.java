package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;

/** How a person wants to see the pages. */
final class SettingRoutes implements Routes {

  @Override
  public void add(RoutesConfig routes) {
    routes.post("/look", SettingRoutes::look);
    routes.post("/units", SettingRoutes::units);
  }

  private static void units(Context ctx) {
    String units = String.valueOf(ctx.formParam(PageWriter.UNITS));
    if (units.equals(PageWriter.METRIC) || units.equals(PageWriter.INCH)) {
      Cookies.keep(ctx, PageWriter.UNITS, units);
    }
    ctx.redirect(Back.of(ctx), HttpStatus.SEE_OTHER);
  }

  private static void look(Context ctx) {
    String look = String.valueOf(ctx.formParam("look"));
    if (PageWriter.LOOKS.contains(look)) {
      Cookies.keep(ctx, "look", look);
    }
    ctx.redirect(Back.of(ctx), HttpStatus.SEE_OTHER);
  }
}
