package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Numbers for the nodes and edges of a network, and its equations. */
final class NodeNumbers {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final List<Element> conducting = new ArrayList<>();
  private final List<ConstantCurrent> currents = new ArrayList<>();
  private final List<ConstantPower> powers = new ArrayList<>();
  private final String reference;
  private final SparseSystem system;

  NodeNumbers(Network network) {
    this.reference = network.reference();
    for (String node : network.nodes()) {
      if (!node.equals(reference)) {
        numbers.put(node, numbers.size());
      }
    }
    for (Element e : network.elements()) {
      if (e instanceof ConstantCurrent c) {
        currents.add(c);
      } else if (e instanceof ConstantPower p) {
        if (p.powerW() > 0) {
          powers.add(p);
        }
      } else {
        conducting.add(e);
      }
    }
    List<Element> edges = new ArrayList<>(conducting);
    edges.addAll(powers);
    int[] from = edges.stream().mapToInt(e -> number(e.from())).toArray();
    int[] to = edges.stream().mapToInt(e -> number(e.to())).toArray();
    this.system = new SparseSystem(numbers.size(), from, to);
  }

  int count() {
    return numbers.size();
  }

  int number(String node) {
    if (node.equals(reference)) {
      return SparseSystem.REFERENCE;
    }
    Integer n = numbers.get(node);
    if (n == null) {
      throw new IllegalStateException("node without a number: " + node);
    }
    return n;
  }

  List<ConstantPower> powers() {
    return powers;
  }

  SparseSystem system() {
    return system;
  }

  /** Voltage across an element, first node against second. */
  double across(double[] v, Element e) {
    return SparseSystem.at(v, number(e.from())) - SparseSystem.at(v, number(e.to()));
  }

  /** Conductance of each edge, those of the powers last and zero. */
  double[] conductancesS() {
    double[] g = new double[conducting.size() + powers.size()];
    for (int e = 0; e < conducting.size(); e++) {
      g[e] = 1 / ohm(conducting.get(e));
    }
    return g;
  }

  /** Number of the edge of a constant-power load. */
  int edgeOfPower(int k) {
    return conducting.size() + k;
  }

  /** Currents that sources (as EMF / internal resistance) and constant currents feed in. */
  double[] fixedIntoA() {
    double[] into = new double[numbers.size()];
    for (Element e : conducting) {
      if (e instanceof Source s) {
        draw(into, s, s.emfV() / s.internalOhm());
      }
    }
    for (ConstantCurrent c : currents) {
      draw(into, c, c.currentA());
    }
    return into;
  }

  /** Books a current that an element takes from its first node and hands to its second. */
  void draw(double[] intoA, Element e, double currentA) {
    int from = number(e.from());
    int to = number(e.to());
    if (from != SparseSystem.REFERENCE) {
      intoA[from] -= currentA;
    }
    if (to != SparseSystem.REFERENCE) {
      intoA[to] += currentA;
    }
  }

  private static double ohm(Element e) {
    if (e instanceof Source s) {
      return s.internalOhm();
    }
    if (e instanceof Link l) {
      return l.ohm();
    }
    if (e instanceof ConstantResistance r) {
      return r.ohm();
    }
    throw new IllegalStateException("no resistance: " + e.name());
  }
}
