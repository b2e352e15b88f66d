package org.loomwright.planner.kit;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;

/**
 * The plain reference of the search for the wires: every lead starts at its largest wire, then each
 * is tried from the thinnest wire upward until nothing gets worse than with the largest ones. Every
 * wire is judged anew whenever it is asked for, and the whole kit solved anew for every try.
 */
final class PlainSizing {
  private final PreparedKit kit;
  private int solved;

  PlainSizing(PreparedKit kit) {
    this.kit = kit;
  }

  /** How often the whole kit was solved. */
  int solved() {
    return solved;
  }

  /** Wires of which none can be thinner by itself. */
  Map<Strand, Wire> wires() {
    Map<Strand, Wire> wires = new LinkedHashMap<>();
    kit.needs()
        .forEach(
            (strand, need) -> {
              List<Wire> fit = fitting(strand, need);
              wires.put(strand, fit.get(fit.size() - 1));
            });
    Levels reached = levels(wires);
    for (boolean changed = true; changed; ) {
      changed = false;
      for (Strand strand : kit.strands()) {
        changed |= thinner(strand, wires, reached);
      }
    }
    return wires;
  }

  private boolean thinner(Strand strand, Map<Strand, Wire> wires, Levels reached) {
    WireNeed need = kit.needs().get(strand);
    Wire now = wires.get(strand);
    if (need == null || now == null) {
      throw new IllegalStateException("a lead without a wire");
    }
    for (Wire wire : fitting(strand, need)) {
      if (wire.size().areaMm2() >= now.size().areaMm2()) {
        return false;
      }
      Map<Strand, Wire> trial = new LinkedHashMap<>(wires);
      trial.put(strand, wire);
      if (levels(trial).noWorseThan(reached)) {
        wires.put(strand, wire);
        return true;
      }
    }
    return false;
  }

  // Wires that bear fuse, ends and minimum by themselves, thinnest first; at least one.
  private List<Wire> fitting(Strand strand, WireNeed need) {
    List<Wire> fit =
        kit.order().parts().wires().stream()
            .filter(wire -> wire.size().areaMm2() >= need.leastAreaMm2() - 1e-9)
            .filter(wire -> kit.ends().fit(strand, wire, need.load()))
            .filter(
                wire -> new WireSizer(kit.order().parts(), kit.order().rules()).passes(wire, need))
            .sorted(
                Comparator.comparingDouble((Wire it) -> it.size().areaMm2())
                    .thenComparing(it -> it.price().amount())
                    .thenComparing(Wire::id))
            .toList();
    if (fit.isEmpty()) {
      throw new IllegalStateException("no wire for " + strand.needs());
    }
    return fit;
  }

  private Levels levels(Map<Strand, Wire> wires) {
    solved++;
    Evaluator fresh = kit.evaluator();
    return kit.maker().sizing(kit.needs(), fresh).levels(fresh.of(wires));
  }
}
