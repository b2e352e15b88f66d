package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.vehicle.Hazard;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Vehicle;

/** What of a step calls for a caution, by the flags of what it touches. */
final class CautionCalls {
  private final KitOrder order;
  private final Vehicle vehicle;
  private final List<Lead> leads;
  private final double hotC;

  CautionCalls(KitOrder order, List<Lead> leads) {
    this.order = order;
    this.vehicle = order.vehicle();
    this.leads = List.copyOf(leads);
    this.hotC = RunDefaults.hotFrom(order.rules()).value().celsius();
  }

  /** Whether a step calls for a caution for this cause. */
  boolean calls(CautionCause cause, Draft step) {
    Optional<Act> act = step.act();
    return switch (cause) {
      case ANY_STEP -> true;
      case ISOLATE -> act.filter(it -> it instanceof Act.Isolate).isPresent();
      case RECONNECT -> act.filter(it -> it instanceof Act.Reconnect).isPresent();
      case RESTRAINT -> restraint(step);
      case HIGH_VOLTAGE -> isWork(step) && places(step).stream().anyMatch(this::highVoltage);
      case UNDERNEATH -> isWork(step) && atPlace(step, Place::underneath);
      case ENGINE_BAY -> isWork(step) && atPlace(step, Place::engineBay);
      case WET -> atEnd(act) && atPlace(step, Place::wet);
      case LAY -> act.filter(it -> it instanceof Act.Lay).isPresent();
      case HOT_RUN -> along(act, this::hot);
      case MOVING_RUN -> along(act, run -> run.moving() || near(run, Hazard.MOVING_PART));
      case PIPES -> along(act, run -> near(run, Hazard.PIPE));
      case SPLICE -> splice(act);
      case CRIMP -> splice(act) || act.filter(it -> it instanceof Act.Change).isPresent();
      case PARK -> act.filter(it -> it instanceof Act.Park).isPresent();
      case FUSE -> act.filter(it -> it instanceof Act.FitFuse).isPresent();
      case FOR_GOOD -> act.isPresent() && step.undo().isHard();
    };
  }

  /** Whether somebody is at the place: not for cautions, papers and what the owner tells. */
  private static boolean isWork(Draft step) {
    return step.kind() != StepKind.CAUTION
        && step.kind() != StepKind.PREPARE
        && step.ask().filter(it -> it.how() == TellHow.ASK_OWNER).isEmpty();
  }

  private boolean restraint(Draft step) {
    Act act = step.act().orElse(null);
    if (act instanceof Act.Open open) {
      return vehicle.opening(open.opening()).map(Opening::restraint).orElse(false);
    }
    boolean wiring =
        act instanceof Act.Lay
            || act instanceof Act.PlugIn
            || atEnd(step.act())
            || step.ask().filter(it -> it.how().isReading()).isPresent();
    return wiring && places(step).stream().anyMatch(this::restraint);
  }

  private boolean restraint(String place) {
    return vehicle.connectors().stream().anyMatch(it -> it.restraint() && it.place().equals(place))
        || vehicle.runs().stream().anyMatch(it -> it.restraint() && touches(it, place));
  }

  private boolean highVoltage(String place) {
    return vehicle.connectors().stream()
            .anyMatch(it -> it.highVoltage() && it.place().equals(place))
        || vehicle.runs().stream().anyMatch(it -> it.highVoltage() && touches(it, place));
  }

  private static boolean touches(Run run, String place) {
    return run.from().equals(place) || run.to().equals(place);
  }

  private boolean atPlace(Draft step, Predicate<Place> flag) {
    return places(step).stream().anyMatch(it -> vehicle.place(it).filter(flag).isPresent());
  }

  /** Where a step is done; a lead is laid at every place it passes. */
  private List<String> places(Draft step) {
    List<String> places = new ArrayList<>(List.of(step.place()));
    for (Run run : runs(step.act())) {
      places.add(run.from());
      places.add(run.to());
    }
    return places;
  }

  private boolean along(Optional<Act> act, Predicate<Run> flag) {
    return runs(act).stream().anyMatch(flag);
  }

  private List<Run> runs(Optional<Act> act) {
    if (!(act.orElse(null) instanceof Act.Lay lay)) {
      return List.of();
    }
    List<String> ids =
        leads.stream()
            .filter(it -> it.id().equals(lay.lead()))
            .flatMap(it -> it.runs().stream())
            .toList();
    return vehicle.runs().stream().filter(it -> ids.contains(it.id())).toList();
  }

  private boolean hot(Run run) {
    return run.ambient().filter(it -> it.celsius() >= hotC).isPresent()
        || near(run, Hazard.EXHAUST)
        || order.vehicle().places().stream()
            .anyMatch(it -> touches(run, it.id()) && it.ambient().celsius() >= hotC);
  }

  private static boolean near(Run run, Hazard what) {
    return run.near().stream().anyMatch(it -> it.what() == what);
  }

  private static boolean atEnd(Optional<Act> act) {
    return act.filter(
            it ->
                it instanceof Act.Land
                    || it instanceof Act.Change
                    || it instanceof Act.Park
                    || it instanceof Act.PullPlug)
        .isPresent();
  }

  private static boolean splice(Optional<Act> act) {
    return act.filter(
            it ->
                it instanceof Act.Land land && land.landing() instanceof Landing.IntoCircuit
                    || it instanceof Act.Change change
                        && change.landing() instanceof Landing.IntoCircuit)
        .isPresent();
  }
}
