package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.RunDefaults;

/** What must hold of every harness, read from the plan alone. */
final class HarnessRules {
  private final Plan plan;
  private final KitOrder order;
  private final Harness harness;
  private final List<String> faults = new ArrayList<>();

  private HarnessRules(Plan plan, KitOrder order) {
    this.plan = plan;
    this.order = order;
    this.harness = plan.harness();
  }

  /** What is wrong; empty when all is right. */
  static List<String> faults(Plan plan, KitOrder order) {
    HarnessRules rules = new HarnessRules(plan, order);
    rules.check();
    return rules.faults;
  }

  private void check() {
    forest();
    plan.design().leads().forEach(this::lead);
    harness.bundles().forEach(this::bundle);
    joints();
  }

  private void fault(String words, Object... values) {
    faults.add(String.format(Locale.ROOT, words, values));
  }

  private void forest() {
    Map<String, String> head = new HashMap<>();
    for (Bundle bundle : harness.bundles()) {
      String one = top(head, bundle.from());
      String other = top(head, bundle.to());
      if (one.equals(other)) {
        fault("run %s closes a circle", bundle.run());
      }
      head.put(one, other);
    }
    if (harness.leastWeighedMm() > harness.weighedMm() + 1e-6) {
      fault("the least length %s is more than %s", harness.leastWeighedMm(), harness.weighedMm());
    }
  }

  private static String top(Map<String, String> head, String node) {
    String at = node;
    for (String up = head.get(at); up != null; up = head.get(at)) {
      at = up;
    }
    return at;
  }

  private void lead(Lead lead) {
    String at = lead.a().place();
    double mm = endMm(lead, true) + endMm(lead, false);
    for (String run : lead.runs()) {
      Bundle bundle =
          harness.bundles().stream().filter(it -> it.run().equals(run)).findFirst().orElseThrow();
      if (!bundle.leads().contains(lead.id())) {
        fault("%s is not in the bundle on %s", lead.id(), run);
      }
      if (!bundle.from().equals(at) && !bundle.to().equals(at)) {
        fault("%s jumps from %s to run %s", lead.id(), at, run);
      }
      at = bundle.from().equals(at) ? bundle.to() : bundle.from();
      mm += bundle.lengthMm();
    }
    if (!at.equals(lead.b().place())) {
      fault("%s ends at %s instead of %s", lead.id(), at, lead.b().place());
    }
    if (Math.abs(mm - lead.lengthMm()) > 1e-6) {
      fault("%s is %s mm long, its parts are %s mm", lead.id(), lead.lengthMm(), mm);
    }
  }

  private double endMm(Lead lead, boolean sideA) {
    LeadEnd end = sideA ? lead.a() : lead.b();
    if (end.asMade() instanceof Landing.InJoint in) {
      JointSpot spot =
          harness.joints().stream()
              .filter(it -> it.joint().equals(in.joint()))
              .findFirst()
              .orElseThrow();
      Optional<String> last =
          lead.runs().isEmpty()
              ? Optional.empty()
              : Optional.of(lead.runs().get(sideA ? 0 : lead.runs().size() - 1));
      return last.isPresent() && last.equals(spot.run()) ? -spot.atMm() : spot.atMm();
    }
    List<Tail> tails =
        harness.tails().stream()
            .filter(it -> it.ends().contains(new Tail.End(lead.id(), sideA)))
            .toList();
    if (tails.size() != 1 || !tails.get(0).place().equals(end.place())) {
      fault("%s%s is in the tails %s", lead.id(), sideA ? "a" : "b", tails);
      return 0;
    }
    double least =
        order.rules().slackPerEnd().value().mm() + order.rules().serviceLoop().value().mm();
    if (tails.get(0).lengthMm() < least) {
      fault("tail %s is shorter than slack and loop", tails.get(0));
    }
    return tails.get(0).lengthMm();
  }

  private void bundle(Bundle bundle) {
    double radiusMm = bundle.diameterMm() / 2;
    List<Bundle.Wire> wires = bundle.wires();
    for (int i = 0; i < wires.size(); i++) {
      Bundle.Wire one = wires.get(i);
      if (Math.hypot(one.xMm(), one.yMm()) + one.diameterMm() / 2 > radiusMm + 1e-6) {
        fault("%s sticks out of the bundle on %s", one.lead(), bundle.run());
      }
      for (Bundle.Wire other : wires.subList(i + 1, wires.size())) {
        double apartMm = Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm());
        if (apartMm < (one.diameterMm() + other.diameterMm()) / 2 - 1e-6) {
          fault("%s overlaps %s on %s", one.lead(), other.lead(), bundle.run());
        }
      }
    }
    long leads =
        plan.design().leads().stream().filter(it -> it.runs().contains(bundle.run())).count();
    if (leads != wires.size()) {
      fault("%s leads on %s, %s wires in its bundle", leads, bundle.run(), wires.size());
    }
    if (bundle.overallMm() < bundle.diameterMm()) {
      fault("the covering on %s is thinner than the bundle", bundle.run());
    }
    bundle.clips().ifPresent(it -> clips(bundle, it));
  }

  private void clips(Bundle bundle, Bundle.Clips clips) {
    double spacingMm = RunDefaults.clipSpacing(order.rules()).value().mm();
    double endMm = RunDefaults.firstClip(order.rules()).value().mm();
    double reachedMm = 2 * endMm + (clips.count() - 1) * clips.spacingMm();
    if (clips.spacingMm() > spacingMm + 1e-6 || reachedMm < bundle.lengthMm() - 1e-6) {
      fault("clips %s leave part of run %s loose", clips, bundle.run());
    }
  }

  private void joints() {
    double spacingMm = order.rules().spliceSpacing().value().mm();
    Map<String, List<Double>> onRun = new HashMap<>();
    for (JointSpot spot : harness.joints()) {
      if (spot.atMm() < spacingMm) {
        fault("joint %s lies %s mm from its place", spot.joint(), spot.atMm());
      }
      if (spot.run().isEmpty()) {
        continue;
      }
      Bundle bundle =
          harness.bundles().stream()
              .filter(it -> it.run().equals(spot.run().get()))
              .findFirst()
              .orElseThrow();
      double fromMm =
          bundle.from().equals(spot.place()) ? spot.atMm() : bundle.lengthMm() - spot.atMm();
      List<Double> there = onRun.computeIfAbsent(bundle.run(), r -> new ArrayList<>());
      if (there.stream().anyMatch(it -> Math.abs(it - fromMm) < spacingMm - 1e-6)
          || Math.min(fromMm, bundle.lengthMm() - fromMm) < spacingMm - 1e-6) {
        fault("joint %s lies too near to something on run %s", spot.joint(), bundle.run());
      }
      there.add(fromMm);
    }
  }
}
