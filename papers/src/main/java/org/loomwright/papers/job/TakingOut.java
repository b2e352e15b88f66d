package org.loomwright.papers.job;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** The steps done, taken back from the last to the first. */
final class TakingOut {
  private final Fitted fitted;
  private final Names names;
  private int number;

  TakingOut(Fitted fitted) {
    this.fitted = fitted;
    this.names = fitted.names();
  }

  void write(Html html) {
    List<Step> back = fitted.takenBack();
    List<Step> parts = back.stream().filter(it -> words(it).isPresent()).toList();
    if (parts.isEmpty()) {
      html.line("p", "", "Nothing was fitted.");
      return;
    }
    html.line(
        "p",
        "",
        "From the last step of the work to the first. Read the cautions first; they hold for taking"
            + " out as well.");
    html.open("table", "acts");
    line(html, isolate(), Undo.EASILY);
    Set<String> openings = new LinkedHashSet<>();
    parts.forEach(it -> openings.addAll(it.openings()));
    if (!openings.isEmpty()) {
      line(
          html,
          "Open, as far as needed: "
              + String.join(", ", openings.stream().map(names::opening).toList())
              + ".",
          Undo.EASILY);
    }
    parts.forEach(it -> line(html, words(it).orElseThrow(), it.undo()));
    line(
        html,
        "Close what was opened, connect the battery, read the stored faults and try everything on"
            + " the circuits that were worked on.",
        Undo.EASILY);
    html.close("table");
  }

  private String isolate() {
    return "Isolate the battery"
        + fitted
            .order()
            .vehicle()
            .restraintWait()
            .map(it -> " and wait " + it.text() + ", the vehicle maker's waiting time")
            .orElse(" and keep to the vehicle maker's waiting time")
        + ".";
  }

  private void line(Html html, String words, Undo undo) {
    number++;
    String hard =
        switch (undo) {
          case EASILY -> "";
          case SPECIAL_TOOL -> " Needs the special tool of this housing or block.";
          case NOT_AT_ALL -> " Can't be undone as it was.";
        };
    html.open("tr", undo.isHard() ? "hard" : "")
        .open("td", "box-col")
        .tickBox()
        .close("td")
        .line("td", "nr", Integer.toString(number))
        .line("td", "", words + hard)
        .close("tr");
  }

  /** How a step is taken back; empty for those that leave nothing in the vehicle. */
  private Optional<String> words(Step step) {
    Act act = step.act().orElseThrow();
    if (act instanceof Act.FitFuse it) {
      return Optional.of(
          "Pull the "
              + Figures.amps(it.ratingA())
              + " A fuse out of slot "
              + it.slot()
              + " of "
              + names.owner(it.block())
              + ".");
    }
    if (act instanceof Act.PlugIn it) {
      return Optional.of(
          "Unplug the "
              + names.plug(it.equipmentPlug()).orElse(it.equipmentPlug())
              + " of the equipment.");
    }
    if (act instanceof Act.Land it) {
      return Optional.of(off(it.lead(), it.end(), it.landing()));
    }
    if (act instanceof Act.Change it) {
      return Optional.of(off(it.lead(), it.end(), it.landing()));
    }
    if (act instanceof Act.Park it) {
      return Optional.of(
          "Free the parked end "
              + it.end().toUpperCase(java.util.Locale.ROOT)
              + " of "
              + names.label(it.lead())
              + " at "
              + names.place(it.landing().place())
              + ".");
    }
    if (act instanceof Act.PullPlug it) {
      return Optional.of(
          "Press a new seal plug into cavity "
              + it.cavity()
              + " of "
              + names.owner(it.connector())
              + ".");
    }
    if (act instanceof Act.Lay it) {
      return Optional.of("Take lead " + names.label(it.lead()) + " out of its clips.");
    }
    return Optional.empty();
  }

  private String off(String lead, String end, Landing landing) {
    String what = "end " + end.toUpperCase(java.util.Locale.ROOT) + " of " + names.label(lead);
    if (landing instanceof Landing.IntoCircuit it) {
      return "Cut "
          + what
          + " off close to where it is "
          + names.landing(it)
          + " at "
          + names.place(it.place())
          + ", and seal the stub; the splice stays.";
    }
    if (landing instanceof Landing.OnGround it) {
      return "Take "
          + what
          + " off "
          + names.owner(it.ground())
          + ", clean the faces and tighten the nut again.";
    }
    return "Take " + what + " out of " + names.landing(landing) + ".";
  }
}
