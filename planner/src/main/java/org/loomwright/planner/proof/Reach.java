package org.loomwright.planner.proof;

import java.util.List;
import java.util.TreeSet;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Opening;

/** Openings that have to be open for a step: those it names, and those the vehicle asks for. */
final class Reach {
  private Reach() {}

  /** Openings for a step that opens and closes nothing itself. */
  static TreeSet<String> openings(Subject subject, Step step) {
    TreeSet<String> needed = new TreeSet<>(step.openings());
    step.ask()
        .flatMap(
            ask ->
                subject.vehicle().traits().stream()
                    .filter(trait -> trait.id().equals(ask.trait()))
                    .findFirst())
        .ifPresent(trait -> needed.addAll(trait.tell().openings()));
    step.act().ifPresent(act -> needed.addAll(forAct(subject, act)));
    return needed;
  }

  /** Openings that lie before an opening. */
  static List<String> behind(Subject subject, String opening) {
    return subject.vehicle().opening(opening).map(Opening::behind).orElse(List.of());
  }

  private static List<String> forAct(Subject subject, Act act) {
    if (act instanceof Act.Land it) {
      return forLanding(subject, it.landing());
    }
    if (act instanceof Act.Change it) {
      return forLanding(subject, it.landing());
    }
    if (act instanceof Act.PullPlug it) {
      return subject
          .vehicle()
          .connector(it.connector())
          .map(connector -> connector.openings())
          .orElse(List.of());
    }
    if (act instanceof Act.Isolate || act instanceof Act.Reconnect) {
      return subject.vehicle().batteryOpenings();
    }
    return List.of();
  }

  private static List<String> forLanding(Subject subject, Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return subject
          .vehicle()
          .connector(it.connector())
          .map(connector -> connector.openings())
          .orElse(List.of());
    }
    if (landing instanceof Landing.InSlot it) {
      return subject.vehicle().fuseBlock(it.block()).map(b -> b.openings()).orElse(List.of());
    }
    if (landing instanceof Landing.OnGround it) {
      return subject.vehicle().ground(it.ground()).map(g -> g.openings()).orElse(List.of());
    }
    return List.of();
  }
}
