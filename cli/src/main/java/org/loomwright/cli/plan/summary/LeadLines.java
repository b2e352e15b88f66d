package org.loomwright.cli.plan.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Each lead: from where to where, wire, length, fuse, and what its ends do in which cases. */
final class LeadLines {
  private static final int MOST_LEADS = 9;

  private final Names names;
  private final Short brief;
  private final String rest;

  LeadLines(Names names, String rest) {
    this.names = names;
    this.brief = new Short(names);
    this.rest = rest;
  }

  void write(Screen screen) {
    List<Lead> all = names.plan().design().leads();
    long changeable = all.stream().filter(it -> either(it, LeadEnd::isChangeable)).count();
    long parked = all.stream().filter(it -> either(it, end -> !parked(end).isEmpty())).count();
    screen.heading(
        "Leads: "
            + all.size()
            + ", of which "
            + changeable
            + " with a changeable end, "
            + parked
            + " parked in some case");
    Cut<Lead> leads = Cut.of(all, MOST_LEADS, rest);
    screen.rows(
        1, leads.shown().stream().map(it -> List.of(Short.label(it), inWords(it))).toList());
    leads.more().ifPresent(words -> screen.item("…", words));
  }

  private static boolean either(Lead lead, Predicate<LeadEnd> test) {
    return test.test(lead.a()) || test.test(lead.b());
  }

  private String inWords(Lead lead) {
    StringBuilder words = new StringBuilder();
    words.append(brief.end(lead.a())).append(" → ").append(brief.end(lead.b()));
    words.append("; ").append(brief.wire(lead));
    words.append(", ").append(Figures.figure(lead.lengthMm(), "mm"));
    if (lead.fuseA() > 0) {
      words.append(", fuse ").append(Figures.figure(lead.fuseA(), "A"));
    }
    elsewhere("from end", lead.a(), words);
    elsewhere("to end", lead.b(), words);
    ends("changeable", changed(lead.a()), changed(lead.b()), words);
    ends("parked", parked(lead.a()), parked(lead.b()), words);
    return words.toString();
  }

  // An end that goes into another place in some cases, as the bench makes it.
  private void elsewhere(String name, LeadEnd end, StringBuilder words) {
    String usual = brief.end(end);
    for (EndUse use : end.uses()) {
      String place = brief.landing(use.landing(), end);
      if (use.asMade() && !place.equals(usual)) {
        words.append("; in ").append(String.join(", ", use.cases()));
        words.append(' ').append(name).append(" in ").append(place);
      }
    }
  }

  private static List<String> changed(LeadEnd end) {
    List<String> cases = new ArrayList<>();
    for (EndUse use : end.uses()) {
      if (!use.asMade() && !(use.landing() instanceof Landing.Parked)) {
        cases.addAll(use.cases());
      }
    }
    return cases;
  }

  private static List<String> parked(LeadEnd end) {
    List<String> cases = new ArrayList<>();
    for (EndUse use : end.uses()) {
      // A loose end of a lead in use is as the bench made it.
      if (!use.asMade() && use.landing() instanceof Landing.Parked) {
        cases.addAll(use.cases());
      }
    }
    return cases;
  }

  private static void ends(String what, List<String> a, List<String> b, StringBuilder words) {
    if (a.equals(b)) {
      end("", what, a, words);
    } else {
      end("from end ", what, a, words);
      end("to end ", what, b, words);
    }
  }

  private static void end(String end, String what, List<String> cases, StringBuilder words) {
    if (!cases.isEmpty()) {
      words.append("; ").append(end).append(what).append(" in ").append(String.join(", ", cases));
    }
  }
}
