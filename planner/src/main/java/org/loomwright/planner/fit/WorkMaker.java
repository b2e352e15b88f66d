package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Diagram;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.builds.Splitting;

/** Reads off a guide what fitting involves, and on which builds. */
final class WorkMaker {
  private record Told(Work.Kind kind, String words) {}

  private final Vehicle vehicle;
  private final Plan plan;
  private final Covered covered;
  private final List<Trait> asked;
  private final Map<Region, Diagram<Left>> known = new LinkedHashMap<>();

  WorkMaker(Vehicle vehicle, Plan plan, Covered covered, List<Trait> asked) {
    this.vehicle = vehicle;
    this.plan = plan;
    this.covered = covered;
    this.asked = List.copyOf(asked);
  }

  Work make() {
    Map<Region, Double> minutes = new LinkedHashMap<>();
    Map<Told, Region> told = new LinkedHashMap<>();
    for (Step step : plan.guide().steps()) {
      Region on = covered.at(step.id()).and(covered.covered());
      if (!on.isEmpty()) {
        minutes.merge(on, step.minutes(), Double::sum);
        tell(step).forEach(it -> told.merge(it, on, Region::or));
      }
    }
    List<Work.WorkPart> parts = new ArrayList<>();
    minutes.forEach((on, time) -> parts.add(new Work.WorkPart(time, weight(on))));
    List<Work.Item> items = new ArrayList<>();
    for (Work.Kind kind : Work.Kind.values()) {
      told.forEach(
          (it, on) -> {
            if (it.kind() == kind) {
              items.add(new Work.Item(kind, it.words(), done(on)));
            }
          });
    }
    return new Work(parts, weight(covered.covered()), items);
  }

  private Diagram<Left> done(Region on) {
    return known.computeIfAbsent(
        on,
        it -> Splitting.of(asked, List.of(it, covered.covered().minus(it)), Settling::classesOnly));
  }

  private Diagram<Double> weight(Region on) {
    return Splitting.of(asked, List.of(on), rests -> rests.get(0).weight());
  }

  private List<Told> tell(Step step) {
    List<Told> told = new ArrayList<>();
    List<String> openings = new ArrayList<>(step.openings());
    Optional<Act> act = step.act();
    if (act.isPresent() && act.get() instanceof Act.Open open) {
      openings.add(open.opening());
      told.add(
          new Told(
              Work.Kind.OPENING,
              vehicle.opening(open.opening()).map(Opening::name).orElse(open.opening())));
    }
    if (act.isPresent() && act.get() instanceof Act.Isolate) {
      told.add(new Told(Work.Kind.BATTERY, ""));
    }
    boolean fits = act.isPresent() && isFitting(act.get());
    if (step.kind() == StepKind.ACT && fits) {
      told.add(
          new Told(
              Work.Kind.PLACE, vehicle.place(step.place()).map(Place::name).orElse(step.place())));
    }
    step.tools().forEach(tool -> told.add(new Told(Work.Kind.TOOL, tool)));
    if (openings.stream().flatMap(it -> vehicle.opening(it).stream()).anyMatch(Opening::restraint)
        || act.flatMap(WorkMaker::landing).filter(this::isRestraint).isPresent()) {
      told.add(new Told(Work.Kind.RESTRAINT, ""));
    }
    if (fits && step.undo() == Undo.SPECIAL_TOOL) {
      told.add(new Told(Work.Kind.SPECIAL_TOOL, ""));
    }
    if (fits && step.undo() == Undo.NOT_AT_ALL) {
      told.add(new Told(Work.Kind.FOR_GOOD, ""));
    }
    return told;
  }

  private static boolean isFitting(Act act) {
    return !(act instanceof Act.Open
        || act instanceof Act.Close
        || act instanceof Act.Isolate
        || act instanceof Act.Reconnect);
  }

  private static Optional<Landing> landing(Act act) {
    if (act instanceof Act.Land land) {
      return Optional.of(land.landing());
    } else if (act instanceof Act.Change change) {
      return Optional.of(change.landing());
    }
    return Optional.empty();
  }

  private boolean isRestraint(Landing landing) {
    return landing instanceof Landing.InCavity in
        && vehicle.connector(in.connector()).map(Connector::restraint).orElse(false);
  }
}
