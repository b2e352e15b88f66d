package org.loomwright.web;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** What a browser keeps for a person: how pages look, and the name they sign with. */
final class Cookies {
  private Cookies() {}

  /** Keeps a word for a year. */
  static void keep(Context ctx, String name, String value) {
    ctx.res()
        .addHeader(
            "Set-Cookie",
            name
                + "="
                + URLEncoder.encode(value, StandardCharsets.UTF_8)
                + "; Path=/; Max-Age=31536000; SameSite=Strict");
  }

  /** A word that was kept; empty when there is none that can be read. */
  static String of(Context ctx, String name) {
    String value = ctx.cookie(name);
    if (value == null) {
      return "";
    }
    try {
      return URLDecoder.decode(value, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException broken) {
      return "";
    }
  }
}
