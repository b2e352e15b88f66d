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
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.electrics.PathPart;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.Load;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;

/**
 * The smallest wires that pass all checks at once.
 *
 * <p>Every strand starts at the smallest wire that bears its fuse, its ends and the mechanical
 * minimum. Then the whole kit is solved, and every strand that is too hot in its bundle, or loses
 * more than its share of a drop that is too high, takes the next wire; all of them at once, until
 * none has to. A larger wire makes its neighbours no hotter and no drop higher, so nothing that
 * passes fails later and the end does not depend on the order of the strands. Shares of a drop go
 * by length, which may leave one wire of a chain larger than it must be; so at the end each wire is
 * tried one size smaller, the one with most copper first, until none can be.
 */
final class Sizing {
  private final List<Strand> strands;
  private final Map<Strand, WireNeed> needs;
  private final WireSizer sizer;
  private final Evaluator evaluator;
  private final DropLimits drops;
  private final EndFit fits;
  private final Map<Strand, List<Wire>> ladder = new LinkedHashMap<>();
  private final Map<String, Strand> byName = new HashMap<>();

  /** Whether parts on file take a wire, and its load, at both ends of a strand. */
  interface EndFit {
    /** Whether they do. */
    boolean take(Strand strand, Wire wire, Load load);
  }

  /**
   * @param wires wire of each strand
   * @param failed strands for which no wire on file passes; they get the largest that fits
   * @param evaluation the kit with those wires
   */
  record Result(Map<Strand, Wire> wires, Set<Strand> failed, Evaluation evaluation) {}

  /**
   * @param needs what each strand has to bear
   * @param fits whether parts on file take a wire at both ends of a strand
   */
  Sizing(
      Map<Strand, WireNeed> needs,
      WireSizer sizer,
      Evaluator evaluator,
      DropLimits drops,
      EndFit fits) {
    this.strands = List.copyOf(needs.keySet());
    this.needs = needs;
    this.sizer = sizer;
    this.evaluator = evaluator;
    this.drops = drops;
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
    Set<Strand> failed = new LinkedHashSet<>();
    for (Strand strand : strands) {
      List<Wire> steps = steps(strand);
      ladder.put(strand, steps);
      if (steps.isEmpty()) {
        failed.add(strand);
        wires.put(strand, largest(strand));
      } else {
        wires.put(strand, steps.get(0));
      }
    }
    Evaluation evaluation = evaluator.of(wires);
    for (Set<Strand> wanting = wanting(evaluation);
        !wanting.isEmpty();
        wanting = wanting(evaluation)) {
      boolean changed = false;
      for (Strand strand : wanting) {
        Optional<Wire> next = next(strand, wires, 1);
        if (next.isPresent()) {
          wires.put(strand, next.get());
          changed = true;
        } else {
          failed.add(strand);
        }
      }
      if (!changed) {
        break;
      }
      evaluation = evaluator.of(wires);
    }
    return passes(evaluation) ? smallest(wires, evaluation) : new Result(wires, failed, evaluation);
  }

  // Wires that by themselves bear fuse, ends and minimum, smallest first.
  private List<Wire> steps(Strand strand) {
    WireNeed need = need(strand);
    return sizer.wires().stream()
        .filter(wire -> wire.size().areaMm2() >= need.leastAreaMm2() - 1e-9)
        .filter(wire -> fits.take(strand, wire, need(strand).load()))
        .filter(wire -> sizer.passes(wire, need))
        .toList();
  }

  private Wire largest(Strand strand) {
    return sizer.wires().stream()
        .filter(wire -> fits.take(strand, wire, need(strand).load()))
        .max(Comparator.comparingDouble(wire -> wire.size().areaMm2()))
        .orElseThrow(() -> new IllegalStateException("no wire fits the ends of " + strand.needs()));
  }

  private Optional<Wire> next(Strand strand, Map<Strand, Wire> wires, int by) {
    List<Wire> steps = ladder.getOrDefault(strand, List.of());
    int at = steps.indexOf(wires.get(strand)) + by;
    return at >= 0 && at < steps.size() && !steps.isEmpty()
        ? Optional.of(steps.get(at))
        : Optional.empty();
  }

  // No wire smaller without a failing check; those with most copper to gain are tried first.
  private Result smallest(Map<Strand, Wire> found, Evaluation evaluation) {
    Map<Strand, Wire> wires = new LinkedHashMap<>(found);
    Evaluation best = evaluation;
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
        Optional<Wire> smaller = next(strand, wires, -1);
        if (smaller.isPresent()) {
          Map<Strand, Wire> trial = new LinkedHashMap<>(wires);
          trial.put(strand, smaller.get());
          Evaluation with = evaluator.of(trial);
          if (passes(with)) {
            wires = trial;
            best = with;
            changed = true;
          }
        }
      }
    }
    return new Result(wires, Set.of(), best);
  }

  /** Whether every lead is cool enough, every drop within its budget, every voltage high enough. */
  boolean passes(Evaluation evaluation) {
    return strands.stream().noneMatch(strand -> tooHot(strand, evaluation))
        && drops.drops(evaluation).stream().allMatch(DropLimits.Judged::keeps)
        && evaluation.cases().stream()
            .flatMap(solved -> solved.figures().needs().entrySet().stream())
            .allMatch(
                it -> DropLimits.lacksV(it.getKey(), it.getValue()).filter(v -> v > 0).isEmpty());
  }

  // Strands that a larger wire would help.
  private Set<Strand> wanting(Evaluation evaluation) {
    Set<Strand> wanting = new LinkedHashSet<>();
    strands.stream().filter(it -> tooHot(it, evaluation)).forEach(wanting::add);
    for (DropLimits.Judged judged : drops.drops(evaluation)) {
      if (!judged.keeps()) {
        overShare(judged.figures().path(), judged.figures().dropV() - judged.limitV(), wanting);
      }
    }
    for (Evaluation.Solved solved : evaluation.cases()) {
      Map<NeedAt, NeedFigures> all = solved.figures().needs();
      all.forEach(
          (need, figures) ->
              DropLimits.lacksV(need, figures)
                  .filter(lacksV -> lacksV > 0)
                  .ifPresent(
                      lacksV -> {
                        List<PathPart> loop = new ArrayList<>(figures.path());
                        Returns.of(need, all.keySet())
                            .map(all::get)
                            .ifPresent(ground -> loop.addAll(ground.path()));
                        overShare(loop, lacksV, wanting);
                      }));
    }
    wanting.removeIf(strand -> ladder.getOrDefault(strand, List.of()).isEmpty());
    return wanting;
  }

  private boolean tooHot(Strand strand, Evaluation evaluation) {
    Wire wire = evaluation.wires().get(strand);
    double ratingC = wire == null ? 0 : wire.rating().celsius();
    return evaluation.conductorC(strand) > ratingC + 1e-9
        || overloadC(strand, evaluation).conductorC() > ratingC + 1e-9;
  }

  /** The strand where it is hottest while it carries for good what its fuse lets pass. */
  BundleHeats.Hottest overloadC(Strand strand, Evaluation evaluation) {
    return HeatChecks.overload(
        need(strand), evaluation.heat().getOrDefault(strand, List.of()), evaluator.heats());
  }

  // Leads that lose more than their share, by length, of what their leads together may lose. Where
  // even leads without any resistance would not do, no wire helps.
  private void overShare(List<PathPart> path, double tooMuchV, Set<Strand> wanting) {
    List<PathPart> leads = path.stream().filter(it -> byName.containsKey(it.name())).toList();
    double leadsV = leads.stream().mapToDouble(PathPart::dropV).sum();
    double allowedV = leadsV - tooMuchV;
    if (allowedV <= 0) {
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
