package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.electrics.PathPart;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.Load;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;
import org.loomwright.planner.watch.PlanningStopped;

/**
 * The smallest wires that pass all checks at once.
 *
 * <p>Every strand starts at the smallest wire that bears its fuse, its ends and the mechanical
 * minimum. Then the whole kit is solved, and every strand that is too hot in its bundle, or loses
 * more than its share of a drop that is too high, takes the next wire; all of them at once, until
 * none has to. Wires only grow, so this ends. A larger wire lowers drops and its own heat; on its
 * neighbours it may bring a few kelvins more (see {@link org.loomwright.physics.heat.BundleHeat}),
 * which the next round sees. All that want a larger wire take it in the same round, so the end does
 * not depend on the order of the strands. Shares go by length, which may leave one wire of a chain
 * larger than it must be; so at the end each wire is tried one size smaller, the one with most load
 * times length first, until none can be without a verdict getting worse.
 *
 * <p>The goal is that checks hold; where no wire on file can do that, that they are kept.
 */
final class Sizing {
  private final List<Strand> strands;
  private final Map<Strand, WireNeed> needs;
  private final WireSizer sizer;
  private final Evaluator evaluator;
  private final DropLimits drops;
  private final double band;
  private final EndFit fits;
  private final List<Wire> onFile;
  private final Map<Rung, Boolean> bears = new HashMap<>();
  private final Map<String, Strand> byName = new HashMap<>();

  /** Whether parts on file take a wire, and its load, at both ends of a strand. */
  interface EndFit {
    /** Whether they do. */
    boolean take(Strand strand, Wire wire, Load load);
  }

  private record Rung(Strand strand, Wire wire) {}

  /**
   * @param wires wire of each strand
   * @param evaluation the kit with those wires
   */
  record Result(Map<Strand, Wire> wires, Evaluation evaluation) {}

  /**
   * @param needs what each strand has to bear
   * @param band share of a limit within which a check is marginal
   * @param fits whether parts on file take a wire at both ends of a strand
   */
  Sizing(
      Map<Strand, WireNeed> needs,
      WireSizer sizer,
      Evaluator evaluator,
      DropLimits drops,
      double band,
      EndFit fits) {
    this.strands = List.copyOf(needs.keySet());
    this.needs = needs;
    this.sizer = sizer;
    this.onFile = sizer.wires();
    this.evaluator = evaluator;
    this.drops = drops;
    this.band = band;
    this.fits = fits;
    for (int i = 0; i < strands.size(); i++) {
      byName.put("lead " + Evaluator.name(i), strands.get(i));
    }
  }

  /**
   * Sizes all strands.
   *
   * @throws IllegalStateException if no wire on file fits the ends of a strand
   */
  Result size() {
    Map<Strand, Wire> wires = new LinkedHashMap<>();
    for (Strand strand : strands) {
      wires.put(strand, next(strand, -1, 1).orElseGet(() -> largest(strand)));
    }
    Evaluation evaluation = evaluator.of(wires);
    for (boolean grown = true; grown; ) {
      grown = false;
      for (Strand strand : wanting(evaluation)) {
        Optional<Wire> next = next(strand, onFile.indexOf(wires.get(strand)), 1);
        next.ifPresent(wire -> wires.put(strand, wire));
        grown |= next.isPresent();
      }
      if (grown) {
        evaluation = evaluator.of(wires);
      }
    }
    return smallest(wires, evaluation);
  }

  // The nearest wire above or below a place in the list that by itself bears fuse, ends and
  // minimum.
  // Only wires that are asked for are judged, since judging one takes long.
  private Optional<Wire> next(Strand strand, int place, int by) {
    for (int i = place + by; i >= 0 && i < onFile.size(); i += by) {
      PlanningStopped.ifAsked();
      Wire wire = onFile.get(i);
      if (bears.computeIfAbsent(new Rung(strand, wire), rung -> bears(strand, wire))) {
        return Optional.of(wire);
      }
    }
    return Optional.empty();
  }

  private boolean bears(Strand strand, Wire wire) {
    WireNeed need = need(strand);
    return wire.size().areaMm2() >= need.leastAreaMm2() - 1e-9
        && fits.take(strand, wire, need.load())
        && sizer.passes(wire, need);
  }

  private Wire largest(Strand strand) {
    return onFile.stream()
        .filter(wire -> fits.take(strand, wire, need(strand).load()))
        .max(Comparator.comparingDouble(wire -> wire.size().areaMm2()))
        .orElseThrow(() -> new IllegalStateException("no wire fits the ends of " + strand.needs()));
  }

  // No wire smaller without a failing check; those with most copper to gain are tried first.
  private Result smallest(Map<Strand, Wire> found, Evaluation evaluation) {
    Map<Strand, Wire> wires = new LinkedHashMap<>(found);
    Evaluation best = evaluation;
    Levels reached = levels(evaluation);
    List<Strand> order =
        strands.stream()
            .sorted(
                Comparator.comparingDouble(
                        (Strand it) -> -need(it).lengthMm() * need(it).load().continuousA())
                    .thenComparing(Strand::key))
            .toList();
    for (boolean changed = true; changed; ) {
      changed = false;
      for (Strand strand : order) {
        Optional<Wire> smaller = next(strand, onFile.indexOf(wires.get(strand)), -1);
        if (smaller.isPresent()) {
          Map<Strand, Wire> trial = new LinkedHashMap<>(wires);
          trial.put(strand, smaller.get());
          Evaluation with = evaluator.of(trial);
          if (levels(with).noWorseThan(reached)) {
            wires = trial;
            best = with;
            changed = true;
          }
        }
      }
    }
    return new Result(wires, best);
  }

  /** How the kit stands with given wires. */
  Levels levels(Evaluation evaluation) {
    List<Verdict> heat = new ArrayList<>();
    for (Strand strand : strands) {
      heat.add(heat(strand, evaluation.hottest(strand), evaluation));
      heat.add(heat(strand, overload(strand, evaluation), evaluation));
    }
    return Levels.of(evaluation, heat, drops);
  }

  // Strands that a larger wire would help.
  private Set<Strand> wanting(Evaluation evaluation) {
    Set<Strand> wanting = new LinkedHashSet<>();
    for (Strand strand : strands) {
      if (heat(strand, evaluation.hottest(strand), evaluation) != Verdict.HOLDS
          || heat(strand, overload(strand, evaluation), evaluation) != Verdict.HOLDS) {
        wanting.add(strand);
      }
    }
    for (DropLimits.Judged judged : drops.drops(evaluation)) {
      if (judged.verdict() != Verdict.HOLDS) {
        double dropV = judged.figures().dropV();
        overShare(
            judged.figures().path(),
            new DropLimits.Missing(dropV - judged.limitV(), dropV - judged.goalV()),
            wanting);
      }
    }
    for (Evaluation.Solved solved : evaluation.cases()) {
      Map<NeedAt, NeedFigures> all = solved.figures().needs();
      all.forEach(
          (need, figures) ->
              drops
                  .missing(need, figures)
                  .ifPresent(
                      missing -> {
                        List<PathPart> loop = new ArrayList<>(figures.path());
                        Returns.of(need, all.keySet())
                            .map(all::get)
                            .ifPresent(ground -> loop.addAll(ground.path()));
                        overShare(loop, missing, wanting);
                      }));
    }
    return wanting;
  }

  private Verdict heat(Strand strand, BundleHeats.Hottest hottest, Evaluation evaluation) {
    double ambientC = hottest.bundle().ambientC();
    double ratingC =
        Optional.ofNullable(evaluation.wires().get(strand)).orElseThrow().rating().celsius();
    return DropLimits.verdict(ratingC - hottest.conductorC(), band * (ratingC - ambientC));
  }

  /** The strand where it is hottest while it carries for good what its fuse lets pass. */
  private BundleHeats.Hottest overload(Strand strand, Evaluation evaluation) {
    return HeatChecks.overload(
        need(strand), evaluation.heat().getOrDefault(strand, List.of()), evaluator.heats());
  }

  // Leads that lose more than their share, by length, of what their leads together may lose. Where
  // even leads without any resistance would not do, no wire helps.
  private void overShare(List<PathPart> path, DropLimits.Missing missing, Set<Strand> wanting) {
    List<PathPart> leads = path.stream().filter(it -> byName.containsKey(it.name())).toList();
    double leadsV = leads.stream().mapToDouble(PathPart::dropV).sum();
    double tooMuchV = leadsV > missing.goalV() ? missing.goalV() : missing.limitV();
    double allowedV = leadsV - tooMuchV;
    if (tooMuchV <= 0 || allowedV <= 0) {
      return;
    }
    double lengthM = leads.stream().mapToDouble(Sizing::lengthM).sum();
    for (PathPart part : leads) {
      Strand strand = byName.get(part.name());
      if (strand != null && part.dropV() > allowedV * lengthM(part) / lengthM) {
        wanting.add(strand);
      }
    }
  }

  private static double lengthM(PathPart part) {
    return part.wire().map(it -> it.lengthM()).orElse(0.0);
  }

  private WireNeed need(Strand strand) {
    return Optional.ofNullable(needs.get(strand)).orElseThrow();
  }
}
