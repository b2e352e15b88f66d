package org.loomwright.cli.plan.summary;

import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.papers.words.Names;

/** Names short enough for a screen; the pack has them in full. */
final class Short {
  private static final int LONGEST_SOURCE = 60;
  private static final int LONGEST_REASON = 280;

  private final Names names;

  Short(Names names) {
    this.names = names;
  }

  /** The name of the pin a need belongs to. */
  String need(String needId) {
    return names.pin(needId);
  }

  /** The start of a lead's label, where that tells it apart. */
  static String label(Lead lead) {
    return lead.label().startsWith(lead.id() + " ") ? lead.id() : lead.label();
  }

  /** Size and colour of a lead's wire, the size as the parts list has it. */
  String wire(Lead lead) {
    return names
            .order()
            .parts()
            .wire(lead.wire())
            .map(it -> it.size().text())
            .orElse(lead.wire())
            .replace(' ', '\u00A0')
        + " "
        + lead.colour().text();
  }

  /** Where an end lands as it is made. */
  String end(LeadEnd end) {
    return landing(end.asMade(), end);
  }

  /** Where an end lands by one of its landings. */
  String landing(Landing landing, LeadEnd end) {
    if (landing instanceof Landing.InCavity it) {
      return bare(names.owner(it.connector())) + " cavity\u00A0" + it.cavity();
    }
    if (landing instanceof Landing.InHousing it) {
      return names.plug(it.housing()).orElse("housing " + it.housing())
          + " cavity\u00A0"
          + it.cavity();
    }
    if (landing instanceof Landing.InSlot it) {
      return bare(names.owner(it.block())) + " slot\u00A0" + it.slot();
    }
    if (landing instanceof Landing.IntoCircuit) {
      return names.landing(landing) + ", " + bare(names.place(end.place()));
    }
    return bare(names.landing(landing));
  }

  /** A source; of a long one its first statement. */
  static String source(String source) {
    int end = source.indexOf(';');
    return source.length() <= LONGEST_SOURCE || end < 0 ? source : source.substring(0, end) + "; …";
  }

  /** A reason; a long one up to the last statement that a few lines have room for. */
  static String reason(String reason) {
    if (reason.length() <= LONGEST_REASON) {
      return reason;
    }
    int end =
        Math.max(
            reason.lastIndexOf("; ", LONGEST_REASON), reason.lastIndexOf(", ", LONGEST_REASON));
    return reason.substring(0, end > 0 ? end : LONGEST_REASON) + "; …";
  }

  private static String bare(String name) {
    return name.startsWith("the ") ? name.substring(4) : name;
  }
}
