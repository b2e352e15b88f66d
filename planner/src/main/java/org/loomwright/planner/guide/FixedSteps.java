package org.loomwright.planner.guide;

import java.util.List;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;

/**
 * Steps that every guide has: cautions, preparation, isolating, fuses, reconnecting, final tests.
 */
final class FixedSteps {
  private final KitOrder order;
  private final Names names;
  private final String battery;

  FixedSteps(KitOrder order, Names names) {
    this.order = order;
    this.names = names;
    this.battery = order.vehicle().battery();
  }

  Draft general(Region on) {
    return new Draft("caution/general", StepKind.CAUTION, battery, on)
        .say(
            "Before you start",
            "Keep to the vehicle maker's instructions and body-builder rules and to local law; they"
                + " come before this guide. Work on systems that safety depends on is for licensed"
                + " workshops. High-voltage wiring (orange) and 48 V systems are for trained people"
                + " only: leave them alone. Support the vehicle before you work under it. Protect"
                + " every lead against chafing and heat. This guide supports your judgement; it"
                + " does not replace it. If something does not look as described, stop.");
  }

  Draft prepare(Region on) {
    return new Draft("prepare/kit", StepKind.PREPARE, battery, on)
        .say(
            "Lay out the kit and the tools",
            "Compare the labels of all leads with the lead list. Write down the kit's part number"
                + " and the vehicle's number. Read out and note stored faults, so that an old fault"
                + " is not taken for a new one.")
        .takes(10);
  }

  Draft restVoltage(Region on) {
    return new Draft("measure/rest", StepKind.MEASURE, battery, on)
        .say(
            "Measure the battery's rest voltage and the key-off current",
            "Everything off, key out. Note the voltage (12.4 V or more on a 12 V battery) and, once"
                + " the vehicle sleeps, the current.")
        .because("The same current is measured at the end; the difference is what was added.")
        .live(true)
        .tools(List.of("multimeter", "clamp meter"))
        .takes(5);
  }

  Draft batteryCaution(Region on) {
    return new Draft("caution/battery", StepKind.CAUTION, battery, on)
        .say(
            "Isolate the battery before you touch any wiring",
            "Ground lead off first. Keep the lead from springing back. No wiring is touched while"
                + " power is on. Codes and clocks may be lost: note the radio code first.");
  }

  Draft isolate(Region on, List<String> openings) {
    return new Draft("act/isolate", StepKind.ACT, battery, on)
        .say(
            "Isolate the battery",
            order
                .vehicle()
                .restraintWait()
                .map(wait -> "Ground lead first. Then wait " + wait.text() + ".")
                .orElse("Ground lead first."))
        .behind(openings)
        .does(new Act.Isolate(), Undo.EASILY)
        .tools(List.of("10 mm socket"))
        .takes(3 + order.vehicle().restraintWait().map(TimeSpan::seconds).orElse(0.0) / 60);
  }

  Draft restraintCaution(Region on) {
    return new Draft("caution/restraint", StepKind.CAUTION, battery, on)
        .say(
            "Airbag and belt pretensioner wiring is within reach",
            order
                    .vehicle()
                    .restraintWait()
                    .map(
                        wait ->
                            "Go on only when "
                                + wait.text()
                                + " have passed since the battery was isolated (the maker's"
                                + " waiting time). ")
                    .orElse("Keep to the maker's waiting time after isolating the battery. ")
                + "Never probe, cut, splice or unplug airbag or pretensioner wiring, and never switch"
                + " power on with one of its plugs open.");
  }

  Draft shortTest(FuseFit fuse, Region on, List<String> openings) {
    return new Draft(
            "measure/short/" + fuse.block() + "/" + fuse.slot(), StepKind.MEASURE, place(fuse), on)
        .say(
            "Slot " + fuse.slot() + ": make sure that the new lead has no short",
            "Fuse out, equipment unplugged: measure from the load side of slot "
                + fuse.slot()
                + " to bare body metal. It must read open (above 100 kΩ).")
        .because("A short now would open the new fuse at once, or worse.")
        .behind(openings)
        .live(false)
        .tools(List.of("multimeter"))
        .takes(1);
  }

  Draft fitFuse(FuseFit fuse, Region on, List<String> openings, List<String> needs) {
    return new Draft("fuse/" + fuse.block() + "/" + fuse.slot(), StepKind.ACT, place(fuse), on)
        .say(
            "Put the " + Names.number(fuse.ratingA()) + " A fuse into slot " + fuse.slot(),
            "Never a larger one: it is what protects the lead.")
        .behind(openings)
        .does(new Act.FitFuse(fuse.block(), fuse.slot(), fuse.ratingA()), Undo.EASILY)
        .relies(needs)
        .takes(0.5);
  }

  Draft plugIn(String plug, String words, String place, Region on, List<String> needs) {
    return new Draft("plug/" + plug, StepKind.ACT, place, on)
        .say(
            "Plug in the " + words,
            "Push until the latch clicks, then pull lightly. Close the secondary lock.")
        .live(false)
        .does(new Act.PlugIn(plug), Undo.EASILY)
        .relies(needs)
        .takes(1);
  }

  Draft reconnect(Region on, List<String> openings) {
    return new Draft("act/reconnect", StepKind.ACT, battery, on)
        .say("Connect the battery again", "Ground lead last. Set clock and codes.")
        .behind(openings)
        .does(new Act.Reconnect(), Undo.EASILY)
        .tools(List.of("10 mm socket"))
        .takes(3);
  }

  Draft loadedDrop(Region on) {
    return new Draft("measure/drop", StepKind.MEASURE, battery, on)
        .say(
            "Measure under load",
            "Run each added load alone, then all together. On each, measure the drop on the feed"
                + " (from the battery's plus to the pin) and on the ground (from the pin to the"
                + " battery's minus) and compare with the check table.")
        .because("Continuity with the load off proves nothing.")
        .live(true)
        .tools(List.of("multimeter"))
        .takes(8);
  }

  Draft function(Region on) {
    return new Draft("measure/function", StepKind.MEASURE, battery, on)
        .say(
            "Try every function",
            "Each added load alone and together; then lamps, locks, windows and everything else on"
                + " the circuits you worked on. Read out faults again. Everything off, key out:"
                + " measure the key-off current again and compare with the first value.")
        .live(true)
        .tools(List.of("multimeter", "clamp meter"))
        .takes(10);
  }

  private String place(FuseFit fuse) {
    return order.vehicle().fuseBlock(fuse.block()).map(it -> it.place()).orElse(battery);
  }
}
