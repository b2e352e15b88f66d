package org.loomwright.web;

import io.javalin.http.Context;

/** Where a person goes on after something was done. */
final class Back {
  private Back() {}

  /** The address a form wants to return to, if it is one of these pages; else the first page. */
  static String of(Context ctx) {
    String back = String.valueOf(ctx.formParam("back"));
    return isHere(back) ? back : "/";
  }

  /** Whether an address is one of these pages. */
  static boolean isHere(String address) {
    return address.matches("/([A-Za-z0-9_?].*)?") && !address.contains("\\");
  }

  /** An address without what it said was done, with another thing that was. */
  static String with(String address, String done) {
    int hash = address.indexOf('#');
    String anchor = hash < 0 ? "" : address.substring(hash);
    String bare = hash < 0 ? address : address.substring(0, hash);
    String clean = bare.replaceAll("([?&])done=[^&]*&?", "$1").replaceAll("[?&]$", "");
    return clean + (clean.contains("?") ? "&" : "?") + "done=" + done + anchor;
  }
}
