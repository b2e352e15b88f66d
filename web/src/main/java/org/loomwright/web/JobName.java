package org.loomwright.web;

import io.javalin.http.Context;

/** The name a person works a job by. */
final class JobName {
  private JobName() {}

  /**
   * Keeps the name that was typed into a form that is refused or asked about, so that it need not
   * be typed again with the next.
   */
  static void keep(Context ctx) {
    String typed = JobAccess.said(ctx, Saver.WHO);
    if (!typed.isEmpty()) {
      Cookies.keep(ctx, Saver.WHO, typed);
    }
  }
}
