package org.loomwright.papers.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;
import org.loomwright.papers.words.Figures;

/** What the owner is told of the current that is drawn. */
record Draws(Fitted fitted) {
  /** One sentence each; empty when there is nothing to say. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    double mostA = mostA();
    if (mostA > 0) {
      lines.add(
          "With everything that was added switched on: "
              + Figures.amps(mostA)
              + " A at most, from the vehicle's battery. With the engine off this empties it.");
    }
    lines.addAll(pairs());
    return lines;
  }

  /** What the equipment draws without end, whether by added wires or by those of the vehicle. */
  private double mostA() {
    return fitted.order().kit().mounts().stream()
        .flatMap(it -> fitted.order().plug(it).stream())
        .flatMap(it -> it.pins().stream())
        .flatMap(it -> it.need().stream())
        .filter(it -> it.kind() == NeedKind.SUPPLY)
        .mapToDouble(it -> it.continuous().amperes())
        .sum();
  }

  /** Numbers taken before and after the work, such as what is drawn with the key out. */
  private List<String> pairs() {
    Job job = fitted.job();
    return fitted.way().stream()
        .flatMap(it -> it.readings().stream())
        .filter(it -> it.kind() == ReadingKind.NUMBER && it.compareWith().isPresent())
        .map(
            it -> {
              Optional<Taken> before = it.compareWith().flatMap(job::taken);
              Optional<Taken> after = job.taken(it.id());
              String what = Figures.capital(it.name().replaceFirst(",? in [^ ]+$", ""));
              return what.replaceFirst(" after the work$", "")
                  + ": "
                  + before.map(Taken::value).orElse("not taken")
                  + " before the work, "
                  + after.map(Taken::value).orElse("not taken")
                  + " after it.";
            })
        .toList();
  }
}
