package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.loomwright.web.shop.TourStop;

/** Leads through the demo, stop by stop. */
final class TourRoutes implements Routes {
  /** Cookie: number of the stop, from 1. */
  static final String TOUR = "tour";

  @Override
  public void add(RoutesConfig routes) {
    routes.post("/tour", TourRoutes::go);
  }

  private static void go(Context ctx) {
    Optional<Integer> stop = TourStop.number(String.valueOf(ctx.formParam("stop")));
    Cookies.keep(ctx, TOUR, stop.map(String::valueOf).orElse("over"));
    ctx.redirect(
        stop.map(it -> TourStop.ALL.get(it - 1).href()).orElse(Back.of(ctx)), HttpStatus.SEE_OTHER);
  }
}
