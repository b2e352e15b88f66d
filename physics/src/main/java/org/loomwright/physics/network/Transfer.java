package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the linear part of a network answers: what one volt of each source and one ampere drawn by
 * each port do to every voltage and current. A port is a load taken out of the network and replaced
 * by the current it draws.
 */
final class Transfer {
  private final Network core;
  private final NodeNumbers numbers;
  private final List<Load> ports;
  private final List<Source> sources;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, double[]> voltagesPerVolt = new LinkedHashMap<>();
  private final Map<String, double[]> voltagesPerAmpere = new LinkedHashMap<>();

  private Transfer(Network core, NodeNumbers numbers, List<Load> ports) {
    this.core = core;
    this.numbers = numbers;
    this.ports = List.copyOf(ports);
    this.sources = core.all(Source.class);
    for (int i = 0; i < core.elements().size(); i++) {
      places.put(core.elements().get(i).name(), i);
    }
  }

  /**
   * @param network the network with all its loads
   * @param ports the loads to take out; all loads of constant current or power are among them
   * @return empty if without the ports parts of the network float
   */
  static Optional<Transfer> of(Network network, List<Load> ports) {
    // A port keeps its nodes: as a load of constant current it conducts nothing.
    Map<String, Element> idle = new LinkedHashMap<>();
    for (Load p : ports) {
      idle.put(p.name(), new ConstantCurrent(p.name(), p.from(), p.to(), 0));
    }
    Network core = network.with(idle);
    NodeNumbers numbers = new NodeNumbers(core);
    if (!numbers.connected()) {
      return Optional.empty();
    }
    SparseSystem system = numbers.system();
    if (!system.factor(numbers.conductancesS())) {
      return Optional.empty();
    }
    Transfer transfer = new Transfer(core, numbers, ports);
    transfer.reckon(system);
    return Optional.of(transfer);
  }

  private void reckon(SparseSystem system) {
    for (Source s : sources) {
      double[] into = new double[numbers.count()];
      numbers.draw(into, place(s), 1 / s.internalOhm());
      voltagesPerVolt.put(s.name(), system.solve(into));
    }
    for (Load p : ports) {
      double[] into = new double[numbers.count()];
      numbers.draw(into, place(p), 1);
      voltagesPerAmpere.put(p.name(), system.solve(into));
    }
  }

  List<Load> ports() {
    return ports;
  }

  List<Source> sources() {
    return sources;
  }

  /** Volts across a load for each volt of a source. */
  double loadVoltsPerVolt(Load load, Source source) {
    return numbers.across(of(voltagesPerVolt, source), place(load));
  }

  /** Volts across a load lost for each ampere a port draws, ohm. */
  double loadOhm(Load load, Load port) {
    return -numbers.across(of(voltagesPerAmpere, port), place(load));
  }

  /** Amperes through a link, source or resistive load for each volt of a source. */
  double amperesPerVolt(Element branch, Source source) {
    double own = branch instanceof Source s && s.name().equals(source.name()) ? 1 : 0;
    return (own + numbers.across(of(voltagesPerVolt, source), place(branch))) / ohm(branch);
  }

  /** Amperes through a link, source or resistive load for each ampere a port draws. */
  double amperesPerAmpere(Element branch, Load port) {
    return numbers.across(of(voltagesPerAmpere, port), place(branch)) / ohm(branch);
  }

  /** The elements that stay in: sources, links and resistive loads that are not ports. */
  List<Element> branches() {
    List<Element> kept = new ArrayList<>(core.elements());
    kept.removeIf(e -> e instanceof ConstantCurrent);
    return kept;
  }

  private int place(Element e) {
    Integer place = places.get(e.name());
    if (place == null) {
      throw new IllegalStateException("not in the network: " + e.name());
    }
    return place;
  }

  private static double[] of(Map<String, double[]> answers, Element e) {
    double[] answer = answers.get(e.name());
    if (answer == null) {
      throw new IllegalStateException("not reckoned: " + e.name());
    }
    return answer;
  }

  private static double ohm(Element e) {
    if (e instanceof Source s) {
      return s.internalOhm();
    }
    return e instanceof Link l ? l.ohm() : ((ConstantResistance) e).ohm();
  }
}
