package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.vehicle.Hazard;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;

/** What is dangerous about a step, read from what it does and from the flags of the vehicle. */
final class Dangers {
  private static final List<String> ANY_TEXT = List.of();

  private final Subject subject;
  private final Set<String> restraintPlaces = new LinkedHashSet<>();
  private final Set<String> highVoltagePlaces = new LinkedHashSet<>();

  Dangers(Subject subject) {
    this.subject = subject;
    subject
        .vehicle()
        .connectors()
        .forEach(
            it -> {
              note(it.restraint(), restraintPlaces, it.place());
              note(it.highVoltage(), highVoltagePlaces, it.place());
            });
    for (Run run : subject.vehicle().runs()) {
      for (String end : List.of(run.from(), run.to())) {
        note(run.restraint(), restraintPlaces, end);
        note(run.highVoltage(), highVoltagePlaces, end);
      }
    }
  }

  private static void note(boolean flag, Set<String> places, String place) {
    if (flag) {
      places.add(place);
    }
  }

  /** Openings that a step opens. */
  List<Opening> opened(Step step) {
    return step.act().stream()
        .filter(Act.Open.class::isInstance)
        .flatMap(it -> subject.vehicle().opening(((Act.Open) it).opening()).stream())
        .toList();
  }

  /** Ids of the cautions a step calls for, each with words of which its text has to have one. */
  Map<String, List<String>> of(Step step) {
    Map<String, List<String>> cautions = new LinkedHashMap<>();
    places(step, cautions);
    step.act().ifPresent(act -> act(step, act, cautions));
    return cautions;
  }

  private void places(Step step, Map<String, List<String>> cautions) {
    Optional<Tell> tell = tell(step);
    if (step.kind() == StepKind.PREPARE
        || step.kind() == StepKind.CAUTION
        || tell.filter(it -> it.how() == TellHow.ASK_OWNER).isPresent()) {
      return;
    }
    Set<String> places = at(step);
    if (places.stream().anyMatch(it -> flagged(it, Place::underneath))) {
      cautions.put("caution/underneath", List.of("stands", "support", "pit"));
    }
    if (places.stream().anyMatch(it -> flagged(it, Place::engineBay))) {
      cautions.put("caution/engine-bay", ANY_TEXT);
    }
    if (places.stream().anyMatch(highVoltagePlaces::contains)) {
      cautions.put("caution/high-voltage", List.of("trained"));
    }
    boolean meter = tell.filter(it -> it.how().isReading()).isPresent();
    boolean wiring = step.act().filter(Dangers::isWiring).isPresent();
    boolean behind = opened(step).stream().anyMatch(Opening::restraint);
    if (behind || (meter || wiring) && places.stream().anyMatch(restraintPlaces::contains)) {
      cautions.put("caution/restraint", List.of("airbag", "pretensioner", "restraint"));
    }
    if (step.act().filter(Dangers::isEndWork).isPresent()
        && places.stream().anyMatch(it -> flagged(it, Place::wet))) {
      cautions.put("caution/wet", ANY_TEXT);
    }
  }

  private void act(Step step, Act act, Map<String, List<String>> cautions) {
    if (act instanceof Act.Isolate) {
      cautions.put("caution/battery", List.of("ground lead", "battery"));
    } else if (act instanceof Act.Reconnect) {
      cautions.put("caution/power-on", ANY_TEXT);
    } else if (act instanceof Act.FitFuse) {
      cautions.put("caution/fuses", List.of("close to its source"));
    } else if (act instanceof Act.Park) {
      cautions.put("caution/parked", ANY_TEXT);
    } else if (act instanceof Act.Lay lay) {
      lay(lay, cautions);
    }
    boolean cut = landing(act).filter(it -> it instanceof Landing.IntoCircuit).isPresent();
    if (cut) {
      cautions.put("caution/splice", ANY_TEXT);
    }
    if (cut || act instanceof Act.Change) {
      cautions.put("caution/crimp", ANY_TEXT);
    }
    if (step.undo().isHard()) {
      cautions.put("caution/for-good", ANY_TEXT);
    }
  }

  private void lay(Act.Lay lay, Map<String, List<String>> cautions) {
    cautions.put("caution/chafing", List.of("chaf", "rub", "edge"));
    double hotC = RunDefaults.hotFrom(subject.order().rules()).value().celsius();
    for (Run run : runs(lay)) {
      boolean hot =
          near(run, Hazard.EXHAUST)
              || run.ambient().map(it -> it.celsius() >= hotC).orElse(false)
              || flagged(run.from(), it -> it.ambient().celsius() >= hotC)
              || flagged(run.to(), it -> it.ambient().celsius() >= hotC);
      if (hot) {
        cautions.put("caution/heat", List.of("exhaust", "hot", "heat"));
      }
      if (run.moving() || near(run, Hazard.MOVING_PART)) {
        cautions.put("caution/moving", ANY_TEXT);
      }
      if (near(run, Hazard.PIPE)) {
        cautions.put("caution/pipes", ANY_TEXT);
      }
    }
  }

  private static boolean near(Run run, Hazard what) {
    return run.near().stream().anyMatch(it -> it.what() == what);
  }

  private boolean flagged(String place, Predicate<Place> flag) {
    return subject.vehicle().place(place).filter(flag).isPresent();
  }

  /** Where a step is: where it says, and where what it works on is. */
  private Set<String> at(Step step) {
    Set<String> places = new LinkedHashSet<>(List.of(step.place()));
    tell(step).map(Tell::place).ifPresent(places::add);
    opened(step).stream().map(Opening::place).forEach(places::add);
    Act act = step.act().orElse(null);
    if (act instanceof Act.Isolate || act instanceof Act.Reconnect) {
      places.add(subject.vehicle().battery());
    } else if (act instanceof Act.FitFuse it) {
      subject.vehicle().fuseBlock(it.block()).ifPresent(block -> places.add(block.place()));
    } else if (act instanceof Act.PullPlug it) {
      connector(it.connector(), places);
    } else if (act instanceof Act.Lay lay) {
      runs(lay).forEach(run -> places.addAll(List.of(run.from(), run.to())));
      subject.lead(lay.lead()).map(it -> it.a().place()).ifPresent(places::add);
    } else if (act != null) {
      landing(act).ifPresent(it -> landed(it, places));
    }
    return places;
  }

  private void landed(Landing landing, Set<String> places) {
    if (landing instanceof Landing.InCavity in) {
      connector(in.connector(), places);
    } else if (landing instanceof Landing.InSlot in) {
      subject.vehicle().fuseBlock(in.block()).ifPresent(it -> places.add(it.place()));
    } else if (landing instanceof Landing.OnGround on) {
      subject.vehicle().ground(on.ground()).ifPresent(it -> places.add(it.place()));
    } else if (landing instanceof Landing.IntoCircuit into) {
      places.add(into.place());
    } else if (landing instanceof Landing.Parked parked) {
      places.add(parked.place());
    }
  }

  private void connector(String id, Set<String> places) {
    subject.vehicle().connector(id).ifPresent(it -> places.add(it.place()));
  }

  private List<Run> runs(Act.Lay lay) {
    List<String> ids = new ArrayList<>();
    subject.lead(lay.lead()).map(Lead::runs).ifPresent(ids::addAll);
    return subject.vehicle().runs().stream().filter(it -> ids.contains(it.id())).toList();
  }

  private Optional<Tell> tell(Step step) {
    return step.ask()
        .flatMap(
            ask ->
                subject.vehicle().traits().stream()
                    .filter(it -> it.id().equals(ask.trait()))
                    .findFirst())
        .map(Trait::tell);
  }

  private static Optional<Landing> landing(Act act) {
    return Ends.of(act).map(Ends.Put::landing);
  }

  private static boolean isEndWork(Act act) {
    return act instanceof Act.PullPlug || Ends.of(act).isPresent();
  }

  private static boolean isWiring(Act act) {
    return act instanceof Act.Lay || act instanceof Act.PlugIn || isEndWork(act);
  }
}
