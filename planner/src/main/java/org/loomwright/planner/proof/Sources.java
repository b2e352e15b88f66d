package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.model.design.Act;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;

/** Finds what feeds or grounds a net. */
final class Sources {
  private final Subject subject;
  private final Progress progress;

  Sources(Subject subject, Progress progress) {
    this.subject = subject;
    this.progress = progress;
  }

  /** Sets of builds that decide what a node is worth. */
  List<Region> deciding(String node) {
    List<Region> regions = new ArrayList<>();
    for (FuseBlock block : subject.vehicle().fuseBlocks()) {
      for (Slot slot : block.slots()) {
        if (new Spot.OfSlot(block.id(), slot.id()).text().equals(node)) {
          regions.add(subject.facts().fed(block, slot));
          fuses(block, slot).forEach((fuse, builds) -> regions.add(builds));
        }
      }
    }
    return regions;
  }

  /**
   * @param builds builds on which all that decides the net is the same
   */
  List<Source> of(Net net, Region builds) {
    List<Source> sources = new ArrayList<>();
    for (FuseBlock block : subject.vehicle().fuseBlocks()) {
      for (Slot slot : block.slots()) {
        if (net.nodes().contains(new Spot.OfSlot(block.id(), slot.id()).text())
            && builds.within(subject.facts().fed(block, slot))) {
          sources.add(slot(net, block, slot, builds));
        }
      }
    }
    for (GroundStud stud : subject.vehicle().grounds()) {
      String node = new Spot.OfGround(stud.id()).text();
      if (net.nodes().contains(node)) {
        sources.add(
            new Source(node, Source.Kind.GROUND, "", OptionalDouble.empty(), false, stud.name()));
      }
    }
    for (Circuit circuit : circuits(net)) {
      unit(circuit).ifPresent(sources::add);
    }
    return sources;
  }

  /** Factory circuits in a net. */
  List<Circuit> circuits(Net net) {
    return net.links().stream().flatMap(link -> link.source().stream()).toList();
  }

  private Source slot(Net net, FuseBlock block, Slot slot, Region builds) {
    Spot spot = new Spot.OfSlot(block.id(), slot.id());
    Optional<Circuit> wired =
        circuits(net).stream().filter(it -> it.from().equals(spot)).findFirst();
    OptionalDouble kit =
        fuses(block, slot).entrySet().stream()
            .filter(it -> builds.within(it.getValue()))
            .mapToDouble(it -> it.getKey().ratingA())
            .max();
    String feed =
        wired
            .flatMap(Circuit::feed)
            .or(() -> block.section(slot.section()).map(it -> it.feed()))
            .orElse("");
    return new Source(
        spot.text(),
        Source.Kind.FEED,
        feed,
        kit.isPresent() ? kit : factoryFuse(wired),
        kit.isPresent(),
        "slot " + slot.id() + " of " + block.name());
  }

  private static OptionalDouble factoryFuse(Optional<Circuit> circuit) {
    return circuit.flatMap(Circuit::fuse).isPresent()
        ? OptionalDouble.of(circuit.flatMap(Circuit::fuse).get().amperes())
        : OptionalDouble.empty();
  }

  private static Optional<Source> unit(Circuit circuit) {
    if (!(circuit.from() instanceof Spot.OfUnit)) {
      return Optional.empty();
    }
    Source.Kind kind =
        circuit.kind() == CircuitKind.SUPPLY
            ? Source.Kind.FEED
            : circuit.kind() == CircuitKind.GROUND ? Source.Kind.GROUND : Source.Kind.SIGNAL;
    return Optional.of(
        new Source(
            Nodes.of(circuit.from(), circuit),
            kind,
            circuit.feed().orElse(""),
            factoryFuse(Optional.of(circuit)),
            false,
            circuit.name()));
  }

  private Map<Act.FitFuse, Region> fuses(FuseBlock block, Slot slot) {
    Map<Act.FitFuse, Region> fuses = new LinkedHashMap<>();
    progress
        .acts()
        .forEach(
            (act, builds) -> {
              if (act instanceof Act.FitFuse fit
                  && fit.block().equals(block.id())
                  && fit.slot().equals(slot.id())) {
                fuses.merge(fit, builds, Region::or);
              }
            });
    return fuses;
  }
}
