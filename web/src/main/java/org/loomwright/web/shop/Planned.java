package org.loomwright.web.shop;

/** How far the planning of a kit is. */
public sealed interface Planned {
  /**
   * It waits or is under way.
   *
   * @param seconds since it was asked for
   */
  record Working(long seconds) implements Planned {}

  /** It is planned. */
  record Done(KitPages pages) implements Planned {}

  /**
   * It can't be planned.
   *
   * @param why a full sentence for a person
   */
  record Failed(String why) implements Planned {}
}
