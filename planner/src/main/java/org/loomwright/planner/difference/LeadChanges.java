package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;

/** Leads that are new, gone, or made otherwise. */
final class LeadChanges {
  private LeadChanges() {}

  static List<Change> of(Two two) {
    List<Change> changes = new ArrayList<>();
    told(two, two.newLeads(), two.is(), "new lead", changes);
    told(two, two.goneLeads(), two.was(), "no longer made: lead", changes);
    making(two, changes);
    lengths(two).ifPresent(it -> changes.add(Change.neutral(Topic.LEADS, it)));
    number(
        "joint",
        two.before().design().joints().size(),
        two.after().design().joints().size(),
        changes);
    number(
        "housing",
        two.before().design().housings().size(),
        two.after().design().housings().size(),
        changes);
    List<String> renamed =
        two.leads().stream()
            .filter(it -> !it.before().id().equals(it.after().id()))
            .map(it -> it.before().id() + " is now " + it.after().id())
            .toList();
    if (!renamed.isEmpty()) {
      changes.add(Change.neutral(Topic.LEADS, "leads with another number: " + Words.list(renamed)));
    }
    return changes;
  }

  private static void number(String noun, int was, int is, List<Change> changes) {
    if (was != is) {
      changes.add(
          Change.neutral(Topic.LEADS, "the kit has " + Words.count(is, noun) + ", was " + was));
    }
  }

  private static void told(
      Two two, List<Lead> leads, PlanNames names, String what, List<Change> changes) {
    if (leads.size() > two.detail()) {
      changes.add(
          Change.neutral(
              Topic.LEADS, what + "s " + Words.list(leads.stream().map(PlanNames::lead).toList())));
      return;
    }
    for (Lead lead : leads) {
      changes.add(
          Change.neutral(
              Topic.LEADS,
              what
                  + " "
                  + PlanNames.lead(lead)
                  + ": "
                  + size(lead)
                  + " "
                  + lead.colour().text()
                  + ", "
                  + Words.mm(lead.lengthMm())
                  + fuse(lead)
                  + ", "
                  + names.landing(lead.a().asMade())
                  + " to "
                  + names.landing(lead.b().asMade())));
    }
  }

  private static String size(Lead lead) {
    return Words.plain(lead.areaMm2(), 3) + " mm²";
  }

  private static String fuse(Lead lead) {
    return lead.fuseA() > 0 ? ", fuse " + Words.plain(lead.fuseA(), 3) + " A" : "";
  }

  /** All but the length, which so often changes that it is told apart. */
  private static void making(Two two, List<Change> changes) {
    List<String> lines = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<String> colours = new ArrayList<>();
    for (LeadPair pair : two.leads()) {
      List<String> parts = parts(two, pair.before(), pair.after());
      boolean colour = !pair.before().colour().equals(pair.after().colour());
      if (colour && parts.size() == 1) {
        colours.add(pair.after().id() + " " + parts.get(0));
      } else if (!parts.isEmpty()) {
        lines.add(PlanNames.lead(pair.after()) + ": " + String.join("; ", parts));
        names.add(pair.after().id());
      }
    }
    if (lines.size() <= two.detail() + 1) {
      lines.forEach(it -> changes.add(Change.neutral(Topic.LEADS, it)));
    } else {
      lines.subList(0, two.detail()).forEach(it -> changes.add(Change.neutral(Topic.LEADS, it)));
      changes.add(
          Change.neutral(
              Topic.LEADS,
              "made otherwise too: " + Words.list(names.subList(two.detail(), names.size()))));
    }
    if (!colours.isEmpty()) {
      changes.add(
          Change.neutral(Topic.LEADS, "only another colour: " + String.join("; ", colours)));
    }
  }

  private static List<String> parts(Two two, Lead was, Lead is) {
    List<String> parts = new ArrayList<>();
    boolean size = was.areaMm2() != is.areaMm2();
    if (size) {
      parts.add(size(is) + ", was " + size(was));
    }
    if (!was.wire().equals(is.wire()) && !size) {
      parts.add("wire " + is.wire() + ", was " + was.wire());
    }
    if (!was.colour().equals(is.colour())) {
      parts.add(is.colour().text() + ", was " + was.colour().text());
    }
    if (was.fuseA() != is.fuseA()) {
      parts.add(fuseWords(is) + ", was " + fuseWords(was));
    }
    end(two, was.a(), is.a(), "starts at").ifPresent(parts::add);
    end(two, was.b(), is.b(), "ends at").ifPresent(parts::add);
    if (parked(was) != parked(is)) {
      parts.add(parked(is) ? "parked on some cases now" : "no longer parked on any case");
    }
    if (!was.runs().equals(is.runs())) {
      parts.add(runs(is) + ", was " + runs(was));
    }
    return parts;
  }

  private static boolean parked(Lead lead) {
    return lead.a().isParkedSomewhere() || lead.b().isParkedSomewhere();
  }

  private static String fuseWords(Lead lead) {
    return lead.fuseA() > 0 ? "fuse " + Words.plain(lead.fuseA(), 3) + " A" : "no fuse";
  }

  private static String runs(Lead lead) {
    return lead.runs().isEmpty() ? "along no run" : "along " + Words.list(lead.runs());
  }

  private static Optional<String> end(Two two, LeadEnd was, LeadEnd is, String verb) {
    if (!PlanNames.spot(was.asMade()).equals(PlanNames.spot(is.asMade()))) {
      return Optional.of(
          verb + " " + two.is().landing(is.asMade()) + ", was " + two.was().landing(was.asMade()));
    }
    List<String> before = otherwise(two.was(), was);
    List<String> after = otherwise(two.is(), is);
    return before.equals(after)
        ? Optional.empty()
        : Optional.of(
            "on some cases it "
                + (after.isEmpty()
                    ? "no longer " + verb + " " + Words.list(before)
                    : verb + " " + Words.list(after))
                + (after.isEmpty() || before.isEmpty() ? "" : ", was " + Words.list(before)));
  }

  private static List<String> otherwise(PlanNames names, LeadEnd end) {
    String made = PlanNames.spot(end.asMade());
    return end.uses().stream()
        .map(EndUse::landing)
        .filter(it -> !(it instanceof Landing.Parked) && !PlanNames.spot(it).equals(made))
        .map(names::landing)
        .distinct()
        .toList();
  }

  private static Optional<String> lengths(Two two) {
    List<LeadPair> moved = two.leads().stream().filter(it -> Math.abs(grown(it)) >= 0.5).toList();
    if (moved.isEmpty()) {
      return Optional.empty();
    }
    if (moved.size() <= two.detail()) {
      return Optional.of(
          "length of "
              + Words.list(
                  moved.stream()
                      .map(
                          it ->
                              PlanNames.lead(it.after())
                                  + " "
                                  + Words.mm(it.after().lengthMm())
                                  + " (was "
                                  + Words.mm(it.before().lengthMm())
                                  + ")")
                      .toList()));
    }
    double least = moved.stream().mapToDouble(LeadChanges::grown).min().orElse(0);
    double most = moved.stream().mapToDouble(LeadChanges::grown).max().orElse(0);
    String leads = Words.count(moved.size(), "lead");
    if (least > 0 || most < 0) {
      double small = Math.min(Math.abs(least), Math.abs(most));
      double large = Math.max(Math.abs(least), Math.abs(most));
      return Optional.of(
          leads
              + (least > 0 ? " are longer by " : " are shorter by ")
              + (large - small < 0.5
                  ? Words.mm(large)
                  : Words.plain(small, 4) + " to " + Words.mm(large)));
    }
    return Optional.of(
        leads
            + " have another length, by at most "
            + Words.mm(Math.max(Math.abs(least), Math.abs(most))));
  }

  private static double grown(LeadPair pair) {
    return pair.after().lengthMm() - pair.before().lengthMm();
  }
}
