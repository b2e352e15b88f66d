package org.loomwright.web.edit;

import org.loomwright.web.shop.Href;

/** Addresses of forms. */
public final class EditHref {
  private EditHref() {}

  /** The form of a part of a document. */
  public static String edit(String kind, String id, PartPath at, String back) {
    return address("edit", kind, id, "at", at, back);
  }

  /** The form of a new item of a list, or of a record that is not there yet. */
  public static String add(String kind, String id, PartPath to, String back) {
    return address("add", kind, id, "to", to, back);
  }

  /** Where one is asked whether a part is to be taken out. */
  public static String remove(String kind, String id, PartPath at, String back) {
    return address("remove", kind, id, "at", at, back);
  }

  /** Where a form asks for an item to be moved in its list. */
  public static String move(String kind, String id) {
    return "/move/" + Href.part(kind) + "/" + Href.part(id);
  }

  /** The form of a new document. */
  public static String fresh(String kind) {
    return "/new/" + Href.part(kind);
  }

  /** The page that shows a document. */
  public static String page(String kind, String id) {
    return "/" + Href.part(kind) + "/" + Href.part(id) + (kind.equals("kit") ? "/gap" : "");
  }

  private static String address(
      String what, String kind, String id, String name, PartPath at, String back) {
    String path = "/" + what + "/" + Href.part(kind) + "/" + Href.part(id);
    String place = at.isWhole() ? "" : name + "=" + Href.value(at.text());
    String from = back.isEmpty() ? "" : "back=" + Href.value(withoutDone(back));
    String between = place.isEmpty() || from.isEmpty() ? "" : "&";
    return place.isEmpty() && from.isEmpty() ? path : path + "?" + place + between + from;
  }

  /** An address without what it says was done there. */
  private static String withoutDone(String address) {
    return address.replaceAll("([?&])done=[^&#]*&?", "$1").replaceAll("[?&](#|$)", "$1");
  }
}
