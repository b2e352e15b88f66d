package org.loomwright.web.shop;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses of pages. Whatever an id holds, the address is one. */
public final class Href {
  private Href() {}

  /** A vehicle. */
  public static String vehicle(String id) {
    return "/vehicle/" + part(id);
  }

  /** A connector or fuse block of a vehicle. */
  public static String face(String vehicle, String id) {
    return vehicle(vehicle) + "/face/" + part(id);
  }

  /** The map of a vehicle, to be worked on. */
  public static String map(String vehicle) {
    return vehicle(vehicle) + "/map";
  }

  /** Size and picture of a vehicle's plan view. */
  public static String planView(String vehicle) {
    return map(vehicle) + "/view";
  }

  /** A piece of equipment. */
  public static String equipment(String id) {
    return "/equipment/" + part(id);
  }

  /** A parts list. */
  public static String parts(String id) {
    return "/parts/" + part(id);
  }

  /** Rules. */
  public static String rules(String id) {
    return "/rules/" + part(id);
  }

  /** A stage of a kit. */
  public static String kit(String id, Stage stage) {
    return "/kit/" + part(id) + "/" + stage.key();
  }

  /** How the figure of a line of the checks was found. */
  public static String trace(String kit, int number) {
    return "/kit/" + part(kit) + "/sums/" + number;
  }

  /** The pack as one file. */
  public static String pack(String kit) {
    return "/kit/" + part(kit) + "/pack.zip";
  }

  /** How far a kit is, as part of a page. */
  public static String verdict(String kit) {
    return "/kit/" + part(kit) + "/verdict";
  }

  /** A document of a kind, in a part of the pages. */
  private static String document(String root, String kind, String id) {
    return "/" + root + "/" + part(kind) + "/" + part(id);
  }

  /** All revisions of a document. */
  public static String history(String kind, String id) {
    return document("history", kind, id);
  }

  /** Where a form asks for an earlier text to be the newest again. */
  public static String goBack(String kind, String id) {
    return history(kind, id) + "/back";
  }

  /** Where a form asks for one revision to be taken back. */
  public static String undo(String kind, String id) {
    return history(kind, id) + "/undo";
  }

  /** A document as text. */
  public static String text(String kind, String id) {
    return document("text", kind, id);
  }

  /**
   * A form for one part of a document.
   *
   * @param at where the part is, e.g. "places/rear-floor"
   */
  public static String edit(String kind, String id, String at) {
    return document("edit", kind, id) + "?at=" + at(at);
  }

  /**
   * Where one part of a document is taken out.
   *
   * @param at where the part is, e.g. "places/rear-floor"
   */
  public static String remove(String kind, String id, String at) {
    return document("remove", kind, id) + "?at=" + at(at);
  }

  /** A slash means nothing in a parameter, and reads better as it is. */
  private static String at(String at) {
    return value(at).replace("%2F", "/");
  }

  /** A word that links can name within a page. */
  public static String anchor(String kind, String id) {
    return kind + "-" + part(id);
  }

  /**
   * An id as one part of an address: letters, digits and hyphens as they are, any other character
   * as its number between low lines. Different ids give different parts.
   */
  public static String part(String id) {
    StringBuilder safe = new StringBuilder();
    id.codePoints()
        .forEach(
            it -> {
              if (it == '-' || it < 128 && Character.isLetterOrDigit(it)) {
                safe.appendCodePoint(it);
              } else {
                safe.append('_').append(Integer.toHexString(it)).append('_');
              }
            });
    return safe.toString();
  }

  /** A word as the value of a parameter. */
  public static String value(String word) {
    return URLEncoder.encode(word, StandardCharsets.UTF_8);
  }
}
