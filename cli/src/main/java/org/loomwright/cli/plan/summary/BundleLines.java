package org.loomwright.cli.plan.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Plan;
import org.loomwright.papers.words.Figures;

/** The bundles in one line: how many, how long, how thick, and what holds and protects them. */
final class BundleLines {
  private BundleLines() {}

  static void write(Plan plan, Screen screen) {
    List<Bundle> bundles = plan.harness().bundles();
    Optional<Bundle> thickest = bundles.stream().max(Comparator.comparingDouble(Bundle::overallMm));
    if (thickest.isEmpty()) {
      return;
    }
    List<String> parts = new ArrayList<>();
    parts.add(
        "thickest "
            + Figures.figure(tenth(thickest.get().overallMm()), "mm")
            + " with "
            + Summary.counted(thickest.get().wires().size(), "lead"));
    int clips =
        bundles.stream().flatMap(it -> it.clips().stream()).mapToInt(Bundle.Clips::count).sum();
    int grommets =
        bundles.stream()
            .flatMap(it -> it.passages().stream())
            .mapToInt(it -> it.grommet().isPresent() ? 1 : 0)
            .sum();
    if (clips > 0) {
      parts.add(Summary.counted(clips, "clip"));
    }
    if (grommets > 0) {
      parts.add(Summary.counted(grommets, "grommet"));
    }
    screen.line(
        "Bundles: "
            + bundles.size()
            + ", "
            + Figures.figure(
                tenth(bundles.stream().mapToDouble(Bundle::lengthMm).sum() / 1000), "m")
            + " in all, "
            + String.join(", ", parts));
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
