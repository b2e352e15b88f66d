package org.loomwright.papers.job;

import java.util.List;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.ways.Reach;

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
    List<Step> parts = fitted.takenBack();
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
    Vehicle vehicle = fitted.order().vehicle();
    List<String> battery = Reach.inOrder(vehicle, vehicle.batteryOpenings());
    if (!battery.isEmpty()) {
      line(html, "Open " + openings(battery) + ", to reach the battery.", Undo.EASILY);
    }
    line(html, isolate(), Undo.EASILY);
    List<String> others =
        Reach.inOrder(vehicle, parts.stream().flatMap(it -> it.openings().stream()).toList())
            .stream()
            .filter(it -> !battery.contains(it))
            .toList();
    if (!others.isEmpty()) {
      line(html, "Open, as far as needed: " + openings(others) + ".", Undo.EASILY);
    }
    parts.forEach(it -> line(html, words(it.act().orElseThrow()), it.undo()));
    line(
        html,
        "Close what was opened"
            + (battery.isEmpty()
                ? ", connect the battery"
                : ", all but " + openings(battery) + ". Connect the battery and close that too")
            + ". Read the stored faults and try everything on the circuits that were worked on.",
        Undo.EASILY);
    html.close("table");
  }

  private String openings(List<String> ids) {
    return String.join(", ", ids.stream().map(names::opening).toList());
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

  /** How what an act left in the vehicle is taken back. */
  private String words(Act act) {
    if (act instanceof Act.FitFuse it) {
      return "Pull the "
          + Figures.amps(it.ratingA())
          + " A fuse out of slot "
          + it.slot()
          + " of "
          + names.owner(it.block())
          + ".";
    }
    if (act instanceof Act.PlugIn it) {
      return "Unplug the "
          + names.plug(it.equipmentPlug()).orElse(it.equipmentPlug())
          + " of the equipment.";
    }
    if (act instanceof Act.Land it) {
      return off(it.lead(), it.end(), it.landing());
    }
    if (act instanceof Act.Change it) {
      return off(it.lead(), it.end(), it.landing());
    }
    if (act instanceof Act.Park it) {
      return "Free the parked end "
          + it.end().toUpperCase(java.util.Locale.ROOT)
          + " of "
          + names.label(it.lead())
          + " at "
          + names.place(it.landing().place())
          + ".";
    }
    if (act instanceof Act.PullPlug it) {
      return "Press a new seal plug into cavity "
          + it.cavity()
          + " of "
          + names.owner(it.connector())
          + ".";
    }
    if (act instanceof Act.Lay it) {
      return "Take lead " + names.label(it.lead()) + " out of its clips.";
    }
    throw new IllegalStateException("nothing to take back of " + act);
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
