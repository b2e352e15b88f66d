package org.loomwright.drawing.strip;

import java.util.List;
import org.loomwright.drawing.strip.StripPart.Device;
import org.loomwright.drawing.strip.StripPart.Wire;

/** Circuits as a kit has them. */
final class Circuits {
  private Circuits() {}

  static StripCircuit pump() {
    return new StripCircuit(
        "coolant pump",
        List.of(
            device("battery tray", Symbol.BATTERY, "battery, 12 V", "0.006 Ω"),
            wire("battery tray", "L-A1-01", "4 mm²", "RD", "420 mm", "0.002 Ω", "0.016 V drop"),
            device("fuse box", Symbol.FUSE, "fuse F3, 15 A", "0.005 Ω", "8.2 A"),
            wire("fuse box", "L-A1-02", "1.5 mm²", "RD/YE", "310 mm", "0.004 Ω", "0.033 V drop"),
            device("bulkhead", Symbol.CONTACT_PAIR, "X4, cavity 7", "0.005 Ω"),
            wire("engine bay", "L-A1-03", "1.5 mm²", "RD/YE", "1240 mm", "0.016 Ω", "0.13 V drop"),
            device("engine bay", Symbol.SPLICE, "splice S2"),
            wire("engine bay", "L-A1-05", "1.5 mm²", "RD/YE", "180 mm", "0.002 Ω", "0.02 V drop"),
            device("engine bay", Symbol.SWITCH, "pump relay", "0.01 Ω"),
            device("pump", Symbol.CONTACT_PAIR, "X9, cavity 1", "0.005 Ω"),
            device("pump", Symbol.LOAD, "coolant pump, 8.2 A", "1.5 Ω", "12.1 V left")),
        List.of(
            device("pump", Symbol.CONTACT_PAIR, "X9, cavity 2", "0.005 Ω"),
            wire("engine bay", "L-A1-06", "1.5 mm²", "BK", "350 mm", "0.005 Ω", "0.04 V drop"),
            device("left wing", Symbol.GROUND_POINT, "ground G2", "0.003 Ω"),
            device("body", Symbol.BODY, "body metal", "0.002 Ω"),
            device("battery tray", Symbol.GROUND_POINT, "ground G1", "0.003 Ω"),
            wire("battery tray", "battery lead", "16 mm²", "BK", "300 mm", "0.001 Ω")));
  }

  static Device device(String place, Symbol symbol, String words, String... figures) {
    return new Device(place, symbol, words, List.of(figures));
  }

  static Wire wire(
      String place, String lead, String size, String colour, String length, String... figures) {
    return new Wire(place, lead, size, colour, length, List.of(figures));
  }
}
