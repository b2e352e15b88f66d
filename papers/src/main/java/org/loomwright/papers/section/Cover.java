package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.Mount;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Standing;

/** The first page: what the kit does, for whom, and whether it may be released. */
final class Cover {
  private Cover() {}

  static void write(Pack pack, Html html) {
    html.open("section", "cover", "cover")
        .line("div", "run-section", "Wiring kit")
        .line("p", "kicker", "Wiring kit for the " + pack.order().vehicle().name())
        .line("h1", "", pack.order().kit().name())
        .line("p", "ident", Figures.capital(pack.ident()));
    status(pack, html);
    html.line("h2", "", "What it does").bullets(mounts(pack));
    fit(pack.plan(), html);
    html.line("h2", "", "Which vehicles it is for");
    html.line("p", "", served(pack.plan()));
    html.table(
        List.of(
            Column.key("Case", 7),
            Column.text("About", 29),
            Column.text("Vehicles", 46),
            Column.number("Builds", 9),
            Column.number("Share", 9)),
        caseRows(pack.plan()));
    html.line("h2", "", "What is sold");
    html.table(
        List.of(
            Column.key("Part number", 20),
            Column.text("Sold to", 48),
            Column.text("Cases", 23),
            Column.number("Leads", 9)),
        pack.plan().design().partNumbers().stream().map(Cover::numberRow).toList());
    html.close("section");
  }

  private static void status(Pack pack, Html html) {
    Plan plan = pack.plan();
    Standing standing = Standing.of(plan);
    html.open("div", standing.releasable() ? "status" : "status no")
        .line("p", "word", standing.releasable() ? "Can be released" : "NOT RELEASABLE");
    if (standing.releasable()) {
      html.line("p", "", "Every possible build is served and no check fails. " + proofLine(plan));
    } else {
      html.line("p", "", "What stands against it:")
          .bullets(standing.reasons().stream().map(pack.names()::prose).toList())
          .line("p", "", proofLine(plan));
    }
    if (!standing.marginal().isEmpty()) {
      html.line(
              "p",
              "",
              "Marginal, so a named person must give a reason before release: "
                  + String.join("; ", standing.marginal())
                  + ".")
          .open("p", "")
          .blank("Reason", 95)
          .close("p")
          .open("p", "")
          .blank("Name", 55)
          .blank("Date", 28)
          .close("p");
    }
    html.line("p", "", "How each figure was found: the calculation report, calculations.pdf.");
    html.line("p", "safety", "For trained people. Read the cautions before the first step.")
        .close("div");
  }

  private static String proofLine(Plan plan) {
    long shown = plan.proof().obligations().stream().filter(it -> it.shown()).count();
    return (plan.proof().proven() ? "Proof complete: " : "Proof not complete: ")
        + shown
        + " of "
        + plan.proof().obligations().size()
        + " obligations shown over "
        + Figures.builds(plan.proof().builds())
        + ".";
  }

  private static List<String> mounts(Pack pack) {
    List<String> lines = new ArrayList<>();
    for (Mount mount : pack.order().kit().mounts()) {
      String plug = pack.order().plug(mount).map(Plug::name).orElse(mount.plug());
      String equipment =
          pack.order().equipment().stream()
              .filter(it -> it.id().equals(mount.equipment()))
              .map(it -> it.name())
              .findFirst()
              .orElse(mount.equipment());
      String where =
          mount
              .connector()
              .map(it -> "at " + pack.names().owner(it))
              .or(() -> mount.place().map(it -> "at " + pack.names().place(it)))
              .orElse("");
      lines.add(equipment + ": wires the " + plug + " " + where + ".");
    }
    return lines;
  }

  private static void fit(Plan plan, Html html) {
    if (!plan.fit().modules().isEmpty() || !plan.fit().coding().isEmpty()) {
      List<String> wanted = new ArrayList<>(plan.fit().modules());
      wanted.addAll(plan.fit().coding());
      html.line("p", "", "Beside wires it needs:").bullets(wanted);
    }
  }

  private static String served(Plan plan) {
    long topics = plan.cases().stream().map(Case::component).distinct().count();
    String split =
        topics > 1 ? " A vehicle has one case of each letter." : " A vehicle has exactly one case.";
    return Figures.builds(plan.builds().possible())
        + " are possible, by "
        + plan.builds().traits()
        + (plan.builds().traits() == 1 ? " trait." : " traits.")
        + (plan.unserved().isEmpty()
            ? " All are served."
            : " Not served: "
                + plan.unserved().stream()
                    .map(it -> it.words() + " (" + Figures.builds(it.builds()) + ")")
                    .collect(Collectors.joining("; "))
                + ".")
        + split;
  }

  /** The topic belongs to the letter, so it stands where the letter starts. */
  private static List<List<String>> caseRows(Plan plan) {
    List<List<String>> rows = new ArrayList<>();
    String before = "";
    for (Case it : plan.cases()) {
      rows.add(
          List.of(
              it.id(),
              it.component().equals(before) ? "" : it.topic(),
              it.words(),
              Figures.count(it.builds()),
              Figures.share(it.share())));
      before = it.component();
    }
    return rows;
  }

  private static List<String> numberRow(PartNumber it) {
    return List.of(
        it.id(), it.words(), String.join(", ", it.cases()), Integer.toString(it.leads().size()));
  }
}
