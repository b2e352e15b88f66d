package org.loomwright.planner.kit;

import java.util.Collections;
import java.util.List;
import org.loomwright.model.vehicle.Section;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.protection.FaultCurrents;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseGate;
import org.loomwright.physics.protection.FuseRerating;
import org.loomwright.physics.protection.Selectivity;
import org.loomwright.planner.sizing.Conductors;
import org.loomwright.planner.sizing.FuseBefore;

/**
 * A fault behind a fuse of the kit must not open the fuse before its section, which would take
 * factory loads with it.
 *
 * <p>Claimed from the smallest fault at the end of a lead up to the largest right behind the fuse,
 * but no farther than an earliest opening of the section's fuse is published: above that its
 * maker's own curves decide. Where the section's fuse is not on file nothing is claimed; the trace
 * of the leads says so.
 */
final class SelectivityChecks {
  private final List<Sized> leads;
  private final List<Feeds.SlotFuse> slots;
  private final Checklist list;

  SelectivityChecks(List<Sized> leads, Feeds feeds, Checklist list) {
    this.leads = List.copyOf(leads);
    this.slots = feeds.slots();
    this.list = list;
  }

  void check() {
    for (Feeds.SlotFuse slot : slots) {
      slot.block()
          .section(slot.slot().section())
          .ifPresent(
              section ->
                  FuseBefore.ofSection(section).ifPresent(fuse -> check(slot, section, fuse)));
    }
  }

  private void check(Feeds.SlotFuse slot, Section section, Fuse upstream) {
    String id = "selectivity/" + slot.block().id() + "/" + slot.slot().id();
    String subject = "slot " + slot.slot().id() + " of " + slot.block().id();
    try {
      Selectivity.Pair pair = pair(slot, section, upstream);
      Selectivity.Result result = Selectivity.of(pair);
      String rule =
          "the "
              + pair.downstream().label()
              + " surely opens before the "
              + upstream.label()
              + " of "
              + section.name()
              + ", from the fault at the end of the line up to "
              + Require.text(Math.round(pair.toA()))
              + " A"
              + (pair.toA() < slot.before().loop().nearSourceA()
                  ? ", above which no earliest opening of it is published"
                  : "");
      list.addRating(
          id,
          result.check().name(),
          subject,
          List.copyOf(slot.cases()),
          result.check().value(),
          result.check().limit(),
          false,
          "A",
          rule + "; " + result.check().source(),
          Checklist.lines(result.trace()));
    } catch (SumException outsideTheSums) {
      list.addOutside(id, subject, List.copyOf(slot.cases()), outsideTheSums);
    }
  }

  private Selectivity.Pair pair(Feeds.SlotFuse slot, Section section, Fuse upstream) {
    double ambientC = slot.before().spot().ambientC();
    double otherA =
        section.baseLoad().amperes()
            + slots.stream()
                .filter(it -> it != slot && atOnce(it, slot))
                .mapToDouble(it -> it.load().continuousA())
                .sum();
    double publishedA =
        upstream.gates().stream()
                .filter(it -> it.minS() > 0)
                .mapToDouble(FuseGate::multiple)
                .max()
                .orElse(0)
            * upstream.ratingA();
    double knownA = publishedA * FuseRerating.factor(upstream.family(), ambientC) - otherA;
    double fromA = smallestFaultA(slot);
    double toA = Math.max(fromA, Math.min(slot.before().loop().nearSourceA(), knownA));
    return new Selectivity.Pair(upstream, slot.before().fuse(), ambientC, otherA, fromA, toA);
  }

  /** On the same section, and not only in cases of one component that exclude each other. */
  private static boolean atOnce(Feeds.SlotFuse one, Feeds.SlotFuse other) {
    return one.block().id().equals(other.block().id())
        && one.slot().section().equals(other.slot().section())
        && (Collections.disjoint(one.components(), other.components())
            || !Collections.disjoint(one.cases(), other.cases()));
  }

  private double smallestFaultA(Feeds.SlotFuse slot) {
    return leads.stream()
        .filter(it -> !it.need().ground() && it.need().fuses().contains(slot.before()))
        .mapToDouble(
            it ->
                FaultCurrents.of(
                        slot.before()
                            .loop()
                            .with(
                                Conductors.of(it.wire()),
                                it.need().lengthMm() / 1000,
                                it.need().restMm() / 1000,
                                it.wire().rating().celsius()))
                    .endOfLineA())
        .min()
        .orElseGet(() -> slot.before().loop().nearSourceA());
  }
}
