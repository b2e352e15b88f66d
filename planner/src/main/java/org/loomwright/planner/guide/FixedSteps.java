package org.loomwright.planner.guide;

import java.util.List;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;

/** Steps that every guide has: preparation, isolating, fuses, reconnecting, final tests. */
final class FixedSteps {
  private final KitOrder order;
  private final Names names;
  private final String battery;

  FixedSteps(KitOrder order, Names names) {
    this.order = order;
    this.names = names;
    this.battery = order.vehicle().battery();
  }

  Draft prepare(Region on) {
    return new Draft("prepare/kit", StepKind.PREPARE, battery, on)
        .say(
            "Lay out the kit and the tools",
            "Compare the labels of all leads with the lead list. Write down the kit's part number"
                + " and the vehicle's number. Read out and note stored faults, so that an old fault"
                + " is not taken for a new one.")
        .reads(Readings.faults())
        .takes(10);
  }

  Draft restVoltage(Region on) {
    return new Draft("measure/rest", StepKind.MEASURE, battery, on)
        .say(
            "Measure the battery's rest voltage and the key-off current",
            "Everything off, key out, doors closed and locked. " + sleep())
        .because("The same current is measured at the end; the difference is what was added.")
        .live(true)
        .reads(Readings.atRest(order.vehicle().supply().volts()))
        .tools(List.of("multimeter", "clamp meter"))
        .takes(5 + sleepMinutes());
  }

  private String sleep() {
    return order
        .vehicle()
        .sleepWait()
        .map(it -> "Wait " + it.text() + " until the vehicle sleeps; then read the values.")
        .orElse(
            "Wait until the current falls no further, which can take an hour: only then the"
                + " vehicle sleeps. Then read the values.");
  }

  private double sleepMinutes() {
    return order.vehicle().sleepWait().map(TimeSpan::seconds).orElse(0.0) / 60;
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

  Draft shortTest(FuseFit fuse, Region on, List<String> openings) {
    return new Draft(
            "measure/short/" + fuse.block() + "/" + fuse.slot(), StepKind.MEASURE, place(fuse), on)
        .say(
            "Slot " + fuse.slot() + ": make sure that the new lead has no short",
            "Fuse out, equipment unplugged: measure from the load side of slot "
                + fuse.slot()
                + " to bare body metal. It must read open.")
        .because("A short now would open the new fuse at once, or worse.")
        .behind(openings)
        .live(false)
        .reads(List.of(Readings.noShort(fuse)))
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

  Draft loadedDrop(Region on, List<Reading> values) {
    return new Draft("measure/drop", StepKind.MEASURE, battery, on)
        .say(
            "Measure under load",
            "Covers that hide nothing dangerous are still open for this. Run all added loads"
                + " together and put one probe on each point named; reach a pin from the wire side"
                + " without hurting its seal. Where a point is behind a closed panel, take the"
                + " nearest one of the same wire, such as the test point on top of its fuse.")
        .because("Continuity with the load off proves nothing.")
        .live(true)
        .reads(values)
        .tools(List.of("multimeter"))
        .takes(8);
  }

  Draft function(Region on, List<Reading> values) {
    return new Draft("measure/function", StepKind.MEASURE, battery, on)
        .say(
            "Try every function",
            "Each added load alone, then all together; then everything else on the circuits that"
                + " were worked on. Read out faults again. At last measure the key-off current as at"
                + " the beginning. "
                + sleep())
        .live(true)
        .reads(values)
        .tools(List.of("multimeter", "clamp meter"))
        .takes(10 + sleepMinutes());
  }

  private String place(FuseFit fuse) {
    return order.vehicle().fuseBlock(fuse.block()).map(it -> it.place()).orElse(battery);
  }
}
