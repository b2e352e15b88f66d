package org.loomwright.planner.fit;

import java.util.List;
import org.loomwright.planner.builds.Diagram;

/**
 * What fitting the kit involves on the builds it is proven for.
 *
 * @param parts steps of the guide, those that are taken on the same builds together
 * @param whole weight of the builds the kit is proven for, against which those of parts count
 * @param items what is worth telling
 */
public record Work(List<WorkPart> parts, Diagram<Double> whole, List<Item> items) {
  /**
   * Steps that are taken on the same builds.
   *
   * @param minutes time they take together
   * @param weight weight of the builds on which they are taken
   */
  public record WorkPart(double minutes, Diagram<Double> weight) {}

  /** What sort of thing is told. */
  public enum Kind {
    /** A panel, cover or seat is opened or taken out; named. */
    OPENING,
    /** Something is fitted at a place; named. */
    PLACE,
    /** A tool is used; named. */
    TOOL,
    /** The battery is isolated. */
    BATTERY,
    /** Work beside airbag or belt pretensioner wiring. */
    RESTRAINT,
    /** Something that only a special tool takes back. */
    SPECIAL_TOOL,
    /** Something that can't be taken back at all. */
    FOR_GOOD
  }

  /**
   * One thing to tell.
   *
   * @param kind what sort of thing
   * @param words its name; empty where the kind says it all
   * @param done outcome 0 where it comes up, 1 where not; none where the kit is not proven
   */
  public record Item(Kind kind, String words, Diagram<Left> done) {}

  public Work {
    parts = List.copyOf(parts);
    items = List.copyOf(items);
  }
}
