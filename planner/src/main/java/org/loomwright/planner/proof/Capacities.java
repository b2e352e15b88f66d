package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;

/** Sums what all needs together take from sections and studs, on each build at its worst. */
final class Capacities {
  private record Share(Region builds, double currentA) {}

  private final Subject subject;
  private final Map<String, List<Share>> shares = new TreeMap<>();

  Capacities(Subject subject) {
    this.subject = subject;
  }

  void add(NetAt at) {
    for (Traced traced : at.traced()) {
      shares
          .computeIfAbsent(traced.source().node(), node -> new ArrayList<>())
          .add(new Share(at.builds(), traced.need().continuousA()));
    }
  }

  /** What leads of the user's own take of studs. */
  void own(Region here, Progress progress) {
    for (OwnLead own : subject.order().kit().ownLeads()) {
      for (Lead lead : subject.design().leads()) {
        if (lead.own().filter(own.id()::equals).isPresent()) {
          for (String end : List.of("a", "b")) {
            progress
                .landings(lead.id(), end)
                .forEach((landing, builds) -> own(own, landing, builds.and(here)));
          }
        }
      }
    }
  }

  private void own(OwnLead own, Landing landing, Region builds) {
    if (landing instanceof Landing.OnGround on && !builds.isEmpty()) {
      shares
          .computeIfAbsent(new Spot.OfGround(on.ground()).text(), node -> new ArrayList<>())
          .add(new Share(builds, own.current().amperes()));
    }
  }

  void check(Step step, Findings findings) {
    for (FuseBlock block : subject.vehicle().fuseBlocks()) {
      for (Section section : block.sections()) {
        List<Share> taken = new ArrayList<>();
        for (Slot slot : block.slots()) {
          if (slot.section().equals(section.id())) {
            taken.addAll(at(new Spot.OfSlot(block.id(), slot.id())));
          }
        }
        within(
            step,
            taken,
            section.baseLoad().amperes(),
            section.limit().amperes(),
            section.name() + " of " + block.name(),
            findings);
      }
    }
    for (GroundStud stud : subject.vehicle().grounds()) {
      within(
          step,
          at(new Spot.OfGround(stud.id())),
          stud.baseLoad().amperes(),
          stud.limit().amperes(),
          stud.name(),
          findings);
    }
  }

  private List<Share> at(Spot spot) {
    return shares.getOrDefault(spot.text(), List.of());
  }

  private void within(
      Step step, List<Share> taken, double baseA, double limitA, String what, Findings findings) {
    if (taken.isEmpty()) {
      return;
    }
    // Builds by the sum so far; equal sums stay together, so the number of sums stays small.
    Map<Double, Region> sums = new TreeMap<>();
    sums.put(baseA, subject.possible());
    for (Share share : taken) {
      Map<Double, Region> next = new TreeMap<>();
      sums.forEach(
          (sumA, builds) -> {
            keep(next, sumA, builds.minus(share.builds()));
            keep(next, round(sumA + share.currentA()), builds.and(share.builds()));
          });
      sums = next;
    }
    sums.forEach(
        (sumA, builds) ->
            findings.failOn(
                sumA > limitA + 1e-9 ? builds : subject.facts().regions().none(),
                Claim.NOTHING_TWICE,
                Optional.of(step),
                what
                    + " carries "
                    + Figures.of(sumA)
                    + " A, factory loads included; its limit is "
                    + Figures.of(limitA)
                    + " A"));
  }

  private static void keep(Map<Double, Region> sums, double sumA, Region builds) {
    if (!builds.isEmpty()) {
      sums.merge(sumA, builds, Region::or);
    }
  }

  /** Micro-amperes; equal sums in another order are the same number then. */
  private static double round(double currentA) {
    return Math.rint(currentA * 1e6) / 1e6;
  }
}
