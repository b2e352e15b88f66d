package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Numbers for the nodes of a network, and its equations. Elements go by their place in it. */
final class NodeNumbers {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final List<Element> elements;
  private final int[] from;
  private final int[] to;
  private final List<Integer> conducting = new ArrayList<>();
  private final List<Integer> currents = new ArrayList<>();
  private final List<Integer> powers = new ArrayList<>();
  private final double[] ohm;

  NodeNumbers(Network network) {
    this.elements = network.elements();
    numbers.put(network.reference(), SparseSystem.REFERENCE);
    this.from = new int[elements.size()];
    this.to = new int[elements.size()];
    this.ohm = new double[elements.size()];
    for (int i = 0; i < elements.size(); i++) {
      Element e = elements.get(i);
      from[i] = numberFor(e.from());
      to[i] = numberFor(e.to());
      if (e instanceof ConstantCurrent) {
        currents.add(i);
      } else if (e instanceof ConstantPower p) {
        if (p.powerW() > 0) {
          powers.add(i);
        }
      } else {
        conducting.add(i);
        ohm[i] = ohm(e);
      }
    }
  }

  private int numberFor(String node) {
    Integer known = numbers.putIfAbsent(node, numbers.size() - 1);
    return known == null ? numbers.size() - 2 : known;
  }

  /** The equations; only for a network without floating parts. */
  SparseSystem system() {
    List<Integer> edges = new ArrayList<>(conducting);
    edges.addAll(powers);
    return new SparseSystem(
        count(),
        edges.stream().mapToInt(i -> from[i]).toArray(),
        edges.stream().mapToInt(i -> to[i]).toArray());
  }

  /** Number of nodes without the reference. */
  int count() {
    return numbers.size() - 1;
  }

  /** Nodes and their numbers, the reference first, then in order of mention. */
  Map<String, Integer> nodes() {
    return numbers;
  }

  /** Whether sources, links and resistors join every node to the reference. */
  boolean connected() {
    int[] up = new int[count() + 1];
    for (int i = 0; i < up.length; i++) {
      up[i] = i;
    }
    int sets = up.length;
    for (int i : conducting) {
      int a = root(up, from[i] + 1);
      int b = root(up, to[i] + 1);
      if (a != b) {
        up[a] = b;
        sets--;
      }
    }
    return sets == 1;
  }

  private static int root(int[] up, int node) {
    int at = node;
    while (up[at] != at) {
      up[at] = up[up[at]];
      at = up[at];
    }
    return at;
  }

  /** Places of the loads of constant power. */
  List<Integer> powers() {
    return powers;
  }

  /** Voltage across an element, first node against second. */
  double across(double[] v, int element) {
    return SparseSystem.at(v, from[element]) - SparseSystem.at(v, to[element]);
  }

  /** Conductance of each edge, those of the powers last and zero. */
  double[] conductancesS() {
    double[] g = new double[conducting.size() + powers.size()];
    for (int e = 0; e < conducting.size(); e++) {
      g[e] = 1 / ohm[conducting.get(e)];
    }
    return g;
  }

  /** Number of the edge of the k-th load of constant power. */
  int edgeOfPower(int k) {
    return conducting.size() + k;
  }

  /** Currents that sources (as EMF / internal resistance) and constant currents feed in. */
  double[] fixedIntoA() {
    double[] into = new double[count()];
    for (int i : conducting) {
      if (elements.get(i) instanceof Source s) {
        draw(into, i, s.emfV() / s.internalOhm());
      }
    }
    for (int i : currents) {
      draw(into, i, ((ConstantCurrent) elements.get(i)).currentA());
    }
    return into;
  }

  /** Books a current that an element takes from its first node and hands to its second. */
  void draw(double[] intoA, int element, double currentA) {
    if (from[element] != SparseSystem.REFERENCE) {
      intoA[from[element]] -= currentA;
    }
    if (to[element] != SparseSystem.REFERENCE) {
      intoA[to[element]] += currentA;
    }
  }

  private static double ohm(Element e) {
    if (e instanceof Source s) {
      return s.internalOhm();
    }
    return e instanceof Link l ? l.ohm() : ((ConstantResistance) e).ohm();
  }
}
