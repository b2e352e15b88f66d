package org.loomwright.physics.network;

import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/** Writes a solved network out as lines a person can check one by one. */
final class NetworkTrace {
  private static final String BALANCE = "Kirchhoff's current law";
  private static final String OHM = "Ohm's law";

  private NetworkTrace() {}

  static Trace of(Solved solved) {
    Trace.Builder trace = Trace.builder();
    for (Element e : solved.network().elements()) {
      given(trace, e);
    }
    solved
        .voltagesV()
        .forEach(
            (node, v) ->
                trace.line(
                    "voltage of node " + node,
                    node.equals(solved.network().reference())
                        ? "reference"
                        : "sum of currents into the node = 0",
                    v,
                    "V",
                    BALANCE));
    for (Element e : solved.network().elements()) {
      trace.line(
          "current through " + e.name() + " from " + e.from() + " to " + e.to(),
          law(e),
          solved.flow(e.name()).currentA(),
          "A",
          OHM);
    }
    trace.line("heat in links and sources", "sum of I² R", solved.lossW(), "W", "Joule's law");
    return trace.build();
  }

  private static void given(Trace.Builder trace, Element e) {
    String at = e.name() + " (" + e.from() + " to " + e.to() + ")";
    if (e instanceof Source s) {
      trace.given("electromotive force of " + at, s.emfV(), "V");
      trace.given("internal resistance of " + s.name(), s.internalOhm(), "ohm");
    } else if (e instanceof Wire w) {
      trace.given("length of " + at, w.lengthM(), "m");
      trace.given("conductor temperature of " + w.name(), w.temperatureC(), "°C");
      trace.line(
          "resistance of " + w.name() + ", " + w.conductor().label(),
          "r20 * L * (234.5 + T) / 254.5, r20 = "
              + Require.text(w.conductor().ohmPerM20C())
              + " ohm/m",
          w.ohm(),
          "ohm",
          w.conductor().source());
    } else if (e instanceof Joint j) {
      trace.line(
          "resistance of " + j.kind().words() + " " + at, "table", j.ohm(), "ohm", j.source());
    } else if (e instanceof ConstantCurrent c) {
      trace.given("current of load " + at, c.currentA(), "A");
    } else if (e instanceof ConstantResistance r) {
      trace.given("resistance of load " + at, r.ohm(), "ohm");
    } else if (e instanceof ConstantPower p) {
      trace.given("power of load " + at, p.powerW(), "W");
      trace.given("cut-off voltage of load " + p.name(), p.cutOffV(), "V");
    }
  }

  private static String law(Element e) {
    String across = "(voltage of node " + e.from() + " - voltage of node " + e.to() + ")";
    if (e instanceof Source) {
      return "(EMF - terminal voltage) / internal resistance";
    }
    if (e instanceof ConstantCurrent) {
      return "given";
    }
    return e instanceof ConstantPower
        ? "power of load " + e.name() + " / " + across
        : across + " / resistance of " + kind(e) + e.name();
  }

  private static String kind(Element e) {
    if (e instanceof Joint j) {
      return j.kind().words() + " ";
    }
    return e instanceof ConstantResistance ? "load " : "";
  }
}
