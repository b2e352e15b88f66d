package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loomwright.model.design.TraceLine;
import org.loomwright.physics.Require;
import org.loomwright.physics.network.Load;
import org.loomwright.physics.network.Solved;
import org.loomwright.planner.electrics.PathPart;

/**
 * Lines of a drop along a path: the resistance of each link, the currents with the loads they are
 * made of, and the drop as currents times resistances.
 */
final class PathTrace {
  private final Optional<Solved> state;
  private final List<TraceLine> trace;

  /**
   * @param state a solved state to name loads from; empty where there is none
   * @param trace takes the lines
   */
  PathTrace(Optional<Solved> state, List<TraceLine> trace) {
    this.state = state;
    this.trace = trace;
  }

  /**
   * Adds the lines of a path.
   *
   * @param path its links, in order
   * @param ohm letter for resistances
   * @param ampere letter for currents
   * @param currents current of a link, A
   * @return the drop as a formula
   */
  String add(List<PathPart> path, String ohm, String ampere, ToDoubleFunction<PathPart> currents) {
    for (int i = 0; i < path.size(); i++) {
      resistance(ohm + (i + 1), path.get(i));
    }
    List<String> terms = new ArrayList<>();
    int from = 0;
    while (from < path.size()) {
      double currentA = currents.applyAsDouble(path.get(from));
      int to = from + 1;
      while (to < path.size() && LoadsBehind.same(currents.applyAsDouble(path.get(to)), currentA)) {
        to++;
      }
      String name = ampere + (terms.size() + 1);
      String first = ohm + (from + 1);
      String through = to - from == 1 ? first : first + " to " + ohm + to;
      current(name, through, path.get(from).name(), currentA);
      String all =
          IntStream.rangeClosed(from + 1, to)
              .mapToObj(i -> ohm + i)
              .collect(Collectors.joining(" + "));
      terms.add(name + " * " + (to - from == 1 ? all : "(" + all + ")"));
      from = to;
    }
    return String.join(" + ", terms);
  }

  private void resistance(String name, PathPart part) {
    trace.add(
        part.wire()
            .map(
                wire ->
                    new TraceLine(
                        name + ", " + part.name() + ", " + wire.conductor().label(),
                        "r20 * L * (234.5 + T) / 254.5, r20 = "
                            + Require.text(wire.conductor().ohmPerM20C())
                            + " ohm/m, T = "
                            + Require.text(wire.temperatureC())
                            + " °C, L = "
                            + Require.text(wire.lengthM())
                            + " m",
                        part.ohm(),
                        "ohm",
                        part.source()
                            + "; T by bundle heat, rounded up; factory wires as loaded, common"
                            + " practice"))
            .orElseGet(
                () ->
                    new TraceLine(
                        name + ", " + part.name(), "given", part.ohm(), "ohm", part.source())));
  }

  private void current(String name, String through, String link, double currentA) {
    Map<String, Double> behind = state.map(it -> LoadsBehind.of(it, link)).orElse(Map.of());
    double sum = behind.values().stream().mapToDouble(it -> it).sum();
    String formula = "highest of all load states";
    if (!behind.isEmpty() && LoadsBehind.same(sum, currentA)) {
      formula = loads(behind);
    }
    trace.add(
        new TraceLine(
            name + ", current through " + through,
            formula,
            currentA,
            "A",
            "Kirchhoff's current law, in every load state"));
  }

  /** Adds a line for each load that has none yet; gives their sum as a formula. */
  String loads(Map<String, Double> currents) {
    List<String> all =
        state.map(it -> it.network().all(Load.class)).orElse(List.of()).stream()
            .map(Load::name)
            .toList();
    List<String> names = new ArrayList<>();
    currents.forEach(
        (load, currentA) -> {
          String name = "P" + (all.indexOf(load) + 1);
          names.add(name);
          TraceLine line =
              new TraceLine(name + ", " + load, "given", currentA, "A", "the equipment's document");
          if (!trace.contains(line)) {
            trace.add(line);
          }
        });
    return String.join(" + ", names);
  }
}
