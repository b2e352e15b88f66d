package org.loomwright.web.shop;

/** How far the planning of a kit is. */
public sealed interface Planned {
  /**
   * It waits or is under way.
   *
   * @param seconds since it was asked for
   * @param phaseWords what is done just now, e.g. "sizing the leads"
   */
  record Working(long seconds, String phaseWords) implements Planned {}

  /** It is planned. */
  record Done(KitPages pages) implements Planned {}

  /**
   * It can't be planned.
   *
   * @param why a full sentence for a person
   */
  record Failed(String why) implements Planned {}

  /**
   * A person stopped it; {@link PlanDesk#again} begins anew, and so does a change of the documents.
   *
   * @param kit the kit
   */
  record Stopped(String kit) implements Planned {}
}
