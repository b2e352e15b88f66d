package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Lead;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.vehicle.Run;

/** How a lead is laid, in words: along what, through which holes, how it is held and bent. */
final class LayWords {
  private final KitOrder order;
  private final Harness harness;
  private final Names names;

  LayWords(KitOrder order, Harness harness, Names names) {
    this.order = order;
    this.harness = harness;
    this.names = names;
  }

  String of(Lead lead) {
    String from = names.place(lead.a().place());
    if (lead.runs().isEmpty()) {
      return "It stays at " + from + ".";
    }
    List<Bundle> bundles = new ArrayList<>();
    List<String> along = new ArrayList<>();
    for (String id : lead.runs()) {
      order.vehicle().runs().stream()
          .filter(run -> run.id().equals(id))
          .forEach(
              run -> {
                harness.bundles().stream().filter(it -> it.run().equals(id)).forEach(bundles::add);
                String words = "along " + run.follows() + passing(run);
                if (!along.contains(words)) {
                  along.add(words);
                }
              });
    }
    String grommets =
        bundles.stream()
            .flatMap(it -> it.passages().stream())
            .filter(it -> it.grommet().isPresent())
            .map(it -> " Fit grommet " + it.grommet().get() + " in the " + it.hole() + ".")
            .distinct()
            .collect(Collectors.joining());
    double bendMm = bundles.stream().mapToDouble(Bundle::bendRadiusMm).max().orElse(0);
    return "Lay it from "
        + from
        + " to "
        + names.place(lead.b().place())
        + ", "
        + String.join(", then ", along)
        + "."
        + grommets
        + " Fix it every "
        + RunDefaults.clipSpacing(order.rules()).value().text()
        + " or less, clear of edges, heat and moving parts; no bend tighter than "
        + String.format(Locale.ROOT, "%.0f", Math.ceil(bendMm))
        + " mm radius.";
  }

  private static String passing(Run run) {
    return run.passes().isEmpty() ? "" : ", through " + String.join(" and ", run.passes());
  }
}
