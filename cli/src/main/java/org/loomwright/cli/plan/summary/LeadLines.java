package org.loomwright.cli.plan.summary;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Each lead in two lines: from where to where, then wire, length and what its ends do. */
final class LeadLines {
  private static final int MOST_LEADS = 9;

  private final Names names;
  private final String rest;

  LeadLines(Names names, String rest) {
    this.names = names;
    this.rest = rest;
  }

  void write(Screen screen) {
    List<Lead> all = names.plan().design().leads();
    long changeable = all.stream().filter(it -> ends(it, LeadEnd::isChangeable)).count();
    long parked = all.stream().filter(it -> ends(it, LeadEnd::isParkedSomewhere)).count();
    screen.heading(
        "Leads: "
            + all.size()
            + ", of which "
            + changeable
            + " with a changeable end, "
            + parked
            + " parked in some case");
    Cut<Lead> leads = Cut.of(all, MOST_LEADS, rest);
    List<List<String>> rows = new ArrayList<>();
    for (Lead it : leads.shown()) {
      rows.add(List.of(it.label(), end(it.a()) + " → " + end(it.b())));
      rows.add(List.of("", made(it)));
    }
    screen.rows(1, rows);
    leads.more().ifPresent(words -> screen.item("", words));
  }

  private static boolean ends(Lead lead, java.util.function.Predicate<LeadEnd> test) {
    return test.test(lead.a()) || test.test(lead.b());
  }

  private String made(Lead lead) {
    StringBuilder words = new StringBuilder();
    words.append(wire(lead)).append(' ').append(lead.colour().text());
    words.append(", ").append(Figures.figure(lead.lengthMm(), "mm"));
    if (lead.fuseA() > 0) {
      words.append(", fuse ").append(Figures.figure(lead.fuseA(), "A"));
    }
    uses("from", lead.a(), words);
    uses("to", lead.b(), words);
    return words.toString();
  }

  /** Size and insulation as the parts list has them. */
  private String wire(Lead lead) {
    return names
        .order()
        .parts()
        .wire(lead.wire())
        .map(it -> it.size().text() + " " + it.insulation())
        .orElse(lead.wire());
  }

  private static void uses(String end, LeadEnd lead, StringBuilder words) {
    List<String> changed = new ArrayList<>();
    List<String> parked = new ArrayList<>();
    for (EndUse use : lead.uses()) {
      if (use.landing() instanceof Landing.Parked) {
        parked.addAll(use.cases());
      } else if (!use.asMade()) {
        changed.addAll(use.cases());
      }
    }
    if (!changed.isEmpty()) {
      words.append("; ").append(end).append(" end changeable (");
      words.append(String.join(", ", changed)).append(')');
    }
    if (!parked.isEmpty()) {
      words.append("; ").append(end).append(" end parked (");
      words.append(String.join(", ", parked)).append(')');
    }
  }

  /** The landing; where it does not say the place itself, with the place. */
  private String end(LeadEnd end) {
    Landing landing = end.asMade();
    boolean bare = landing instanceof Landing.IntoCircuit || landing instanceof Landing.InJoint;
    return names.landing(landing) + (bare ? ", " + names.place(end.place()) : "");
  }
}
