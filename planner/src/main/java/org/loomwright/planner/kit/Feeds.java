package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.planner.electrics.FittedFuse;
import org.loomwright.planner.electrics.Ohms;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.FuseBefore;
import org.loomwright.planner.sizing.FuseForms;
import org.loomwright.planner.sizing.FuseSpot;
import org.loomwright.planner.sizing.Load;
import org.loomwright.planner.ways.FaultFuse;
import org.loomwright.planner.ways.LeadDraft;

/** Which fuse protects which strand, in which case. */
final class Feeds {
  private final KitOrder order;
  private final List<Strand> strands;
  private final Map<String, SlotFuse> slots = new LinkedHashMap<>();

  /**
   * The fuse of one slot.
   *
   * @param load what it carries at most
   * @param cases cases that use it
   * @param components components these are cases of
   */
  record SlotFuse(
      FuseBlock block,
      Slot slot,
      org.loomwright.model.parts.Fuse part,
      FuseBefore before,
      Load load,
      Set<String> cases,
      Set<String> components) {}

  Feeds(KitOrder order, List<Strand> strands) {
    this.order = order;
    this.strands = List.copyOf(strands);
    Map<String, List<Use>> uses = new LinkedHashMap<>();
    for (Strand strand : strands) {
      for (String caseId : strand.cases()) {
        Optional<LeadDraft> draft = strand.in(caseId);
        if (draft.isPresent() && draft.get().a() instanceof Touch.AtSlot at) {
          List<Need> needs = strand.needs(caseId).stream().map(NeedAt::need).toList();
          uses.computeIfAbsent(at.key(), k -> new ArrayList<>())
              .add(new Use(at, strand.component(), caseId, needs));
        }
      }
    }
    uses.forEach((key, of) -> slots.put(key, fit(of)));
  }

  /** What one strand asks of a slot in one case. */
  private record Use(Touch.AtSlot at, String component, String caseId, List<Need> needs) {}

  private SlotFuse fit(List<Use> uses) {
    Touch.AtSlot at = uses.get(0).at();
    Load load = uses.stream().map(it -> Load.together(it.needs())).reduce(Load.NONE, Feeds::worse);
    double mostA =
        uses.stream().mapToDouble(it -> mostA(it.needs())).min().orElse(Double.POSITIVE_INFINITY);
    FuseBlock block =
        order
            .vehicle()
            .fuseBlock(at.block())
            .orElseThrow(() -> new IllegalStateException("no block " + at.block()));
    Slot slot =
        block.slot(at.slot()).orElseThrow(() -> new IllegalStateException("no " + at.key()));
    org.loomwright.model.parts.Fuse part =
        FuseForms.best(
                order,
                slot.form(),
                FuseSpot.at(order.vehicle(), block.place()),
                load,
                Math.min(slot.maxRating().amperes(), mostA))
            .orElseThrow(() -> new IllegalStateException("no fuse for " + at.key()));
    return new SlotFuse(
        block,
        slot,
        part,
        FuseBefore.inSlot(order, block, slot, part)
            .orElseThrow(() -> new IllegalStateException("no family for " + at.key())),
        load,
        uses.stream().map(Use::caseId).collect(Collectors.toCollection(LinkedHashSet::new)),
        uses.stream().map(Use::component).collect(Collectors.toCollection(LinkedHashSet::new)));
  }

  /** Fuses of the kit, in order of block and slot. */
  List<SlotFuse> slots() {
    return List.copyOf(slots.values());
  }

  /** Fuses of the kit as the networks see them, by the key of their slot. */
  Map<String, FittedFuse> fitted() {
    Map<String, FittedFuse> fitted = new LinkedHashMap<>();
    slots.forEach(
        (key, slot) ->
            fitted.put(
                key,
                new FittedFuse(
                    slot.part().rating().amperes(),
                    Ohms.of(ElectricDefaults.fuse(order.rules(), slot.part())))));
    return fitted;
  }

  /** The fuse before a strand in a case: of its slot, of its trunk, of its host, or of its feed. */
  FuseBefore before(Strand strand, String caseId) {
    LeadDraft draft = strand.in(caseId).orElseThrow();
    if (strand.kind() == CircuitKind.GROUND) {
      return returned(strand, caseId);
    }
    return behind(draft.a(), caseId, 0)
        .orElseThrow(() -> new IllegalStateException("no fuse before " + draft.key()));
  }

  /** The fuses before a strand, over its cases, each once. */
  List<FuseBefore> fuses(Strand strand) {
    return strand.cases().stream().map(caseId -> before(strand, caseId)).distinct().toList();
  }

  /** Fuses to fit, in order of block and slot. */
  List<FuseFit> fits(Map<Strand, String> leadIds) {
    List<FuseFit> fits = new ArrayList<>();
    slots.forEach(
        (key, slot) -> {
          List<String> leads = new ArrayList<>();
          List<String> cases = new ArrayList<>();
          for (Strand strand : strands) {
            for (String caseId : strand.cases()) {
              boolean here = strand.in(caseId).filter(it -> it.a().key().equals(key)).isPresent();
              if (here && !cases.contains(caseId)) {
                cases.add(caseId);
              }
              String id = leadIds.get(strand);
              if (here && id != null && !leads.contains(id)) {
                leads.add(id);
              }
            }
          }
          fits.add(
              new FuseFit(
                  slot.block().id(),
                  slot.slot().id(),
                  slot.part().rating().amperes(),
                  slot.part().id(),
                  leads,
                  cases));
        });
    return fits;
  }

  /** Chain of strands from the source to this one, source first. */
  List<Strand> chain(Strand strand, String caseId) {
    List<Strand> chain = new ArrayList<>(List.of(strand));
    LeadDraft draft = strand.in(caseId).orElseThrow();
    if (draft.a() instanceof Touch.AtJoint joint) {
      trunk(joint, caseId).ifPresent(it -> chain.addAll(0, chain(it, caseId)));
    }
    return chain;
  }

  /** All chains from the source to a pin that this strand is part of. */
  List<List<Strand>> chainsThrough(Strand strand, String caseId) {
    LeadDraft draft = strand.in(caseId).orElseThrow();
    if (!(draft.b() instanceof Touch.AtJoint joint)) {
      return List.of(chain(strand, caseId));
    }
    return strands.stream()
        .filter(it -> it.in(caseId).filter(own -> own.a().key().equals(joint.key())).isPresent())
        .map(it -> chain(it, caseId))
        .toList();
  }

  /** The factory circuit a chain starts at, if it does. */
  Optional<Circuit> host(Strand strand, String caseId) {
    LeadDraft first = chain(strand, caseId).get(0).in(caseId).orElseThrow();
    return first.a() instanceof Touch.AtCircuit at
        ? order.vehicle().circuit(at.circuit())
        : Optional.empty();
  }

  private Optional<FuseBefore> behind(Touch source, String caseId, int depth) {
    if (source instanceof Touch.AtSlot at) {
      return Optional.ofNullable(slots.get(at.key())).map(SlotFuse::before);
    }
    if (source instanceof Touch.AtCircuit at) {
      return order
          .vehicle()
          .circuit(at.circuit())
          .flatMap(it -> FuseBefore.of(order, it, at.place()));
    }
    if (source instanceof Touch.AtJoint at && depth < strands.size()) {
      return trunk(at, caseId)
          .flatMap(it -> it.in(caseId))
          .flatMap(it -> behind(it.a(), caseId, depth + 1));
    }
    return Optional.empty();
  }

  private Optional<Strand> trunk(Touch.AtJoint joint, String caseId) {
    return strands.stream()
        .filter(
            it -> it.in(caseId).filter(draft -> draft.b().key().equals(joint.key())).isPresent())
        .findFirst();
  }

  // A short in the equipment sends the current of any of its supplies through the ground.
  private FuseBefore returned(Strand ground, String caseId) {
    NeedAt need = ground.needs(caseId).iterator().next();
    FuseBefore worst =
        FaultFuse.of(need, order)
            .orElseThrow(() -> new IllegalStateException("no fuse for " + need.id()));
    for (Strand strand : strands) {
      boolean returns =
          strand.needs().stream()
              .anyMatch(
                  it ->
                      it.equipment().id().equals(need.equipment().id())
                          && it.plug().id().equals(need.plug().id())
                          && it.need().kind() == NeedKind.SUPPLY
                          && it.currentA() <= need.currentA() + 1e-9);
      if (returns && strand.kind() != CircuitKind.GROUND) {
        for (FuseBefore own : fuses(strand)) {
          worst = own.fuse().ratingA() > worst.fuse().ratingA() ? own : worst;
        }
      }
    }
    return worst;
  }

  private static double mostA(List<Need> needs) {
    return needs.stream()
        .flatMap(it -> it.fuseAtMost().stream())
        .mapToDouble(it -> it.amperes())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Load worse(Load one, Load other) {
    return new Load(
        Math.max(one.continuousA(), other.continuousA()),
        Math.max(one.peakA(), other.peakA()),
        Math.max(one.peakTimeS(), other.peakTimeS()));
  }
}
