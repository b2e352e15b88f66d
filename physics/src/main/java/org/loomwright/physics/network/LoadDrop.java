package org.loomwright.physics.network;

import org.loomwright.physics.Trace;

/**
 * The voltage lost between a source and a load, on the way there and on the way back.
 *
 * @param load name of the load
 * @param source name of the source it is reckoned from
 * @param terminalV voltage at the source's terminals, V
 * @param feedDropV from the positive terminal to the load's supply node, V; negative if the load's
 *     node lies higher, because another source feeds it
 * @param groundDropV from the load's ground node back to the negative terminal, V
 * @param loadV voltage across the load, V: terminal voltage less both drops
 * @param trace how it was reached
 */
public record LoadDrop(
    String load,
    String source,
    double terminalV,
    double feedDropV,
    double groundDropV,
    double loadV,
    Trace trace) {
  /**
   * Reads the drops from a solved network.
   *
   * @throws org.loomwright.physics.SumException if the network has no such load or source
   */
  public static LoadDrop of(Solved solved, String load, String source) {
    Load l = solved.network().find(Load.class, load);
    Source s = solved.network().find(Source.class, source);
    double positiveV = solved.voltageV(s.positive());
    double negativeV = solved.voltageV(s.negative());
    double supplyV = solved.voltageV(l.from());
    double groundV = solved.voltageV(l.to());
    double feed = positiveV - supplyV;
    double ground = groundV - negativeV;
    Trace trace =
        Trace.builder()
            .given("voltage of node " + s.positive(), positiveV, "V")
            .given("voltage of node " + l.from(), supplyV, "V")
            .given("voltage of node " + l.to(), groundV, "V")
            .given("voltage of node " + s.negative(), negativeV, "V")
            .line(
                "feed drop of " + load,
                "voltage of node " + s.positive() + " - voltage of node " + l.from(),
                feed,
                "V",
                "Kirchhoff's voltage law")
            .line(
                "ground drop of " + load,
                "voltage of node " + l.to() + " - voltage of node " + s.negative(),
                ground,
                "V",
                "Kirchhoff's voltage law")
            .line(
                "voltage across " + load,
                "voltage of node " + l.from() + " - voltage of node " + l.to(),
                supplyV - groundV,
                "V",
                "Kirchhoff's voltage law")
            .build();
    return new LoadDrop(
        load, source, positiveV - negativeV, feed, ground, supplyV - groundV, trace);
  }
}
