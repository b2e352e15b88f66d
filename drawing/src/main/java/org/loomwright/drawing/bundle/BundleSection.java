package org.loomwright.drawing.bundle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.WireInk;
import org.loomwright.drawing.ink.Words;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Lead;

/**
 * A bundle cut across, at true scale: its wires in their colours, the covering round them, and the
 * leads' names in two columns beside it. Same input, same bytes.
 */
public final class BundleSection {
  /** Font size of names, mm. */
  private static final double SIZE_MM = 2;

  private static final double LINE_MM = 1.3 * SIZE_MM;
  private static final double LEADER_MM = 3;
  private static final double EDGE_MM = 0.6;

  private BundleSection() {}

  /** A wire with the side and height of its name. */
  private record Named(Bundle.Wire wire, double nameY) {}

  /**
   * Draws a bundle; 1 mm of the picture is 1 mm of the bundle. The picture is as large as it has to
   * be.
   *
   * @param bundle the bundle
   * @param leads leads of the kit, for their colours; a wire whose lead is not among them is white
   * @param lettering how text is written
   */
  public static String svg(Bundle bundle, List<Lead> leads, Lettering lettering) {
    Map<String, Lead> byId =
        leads.stream().collect(Collectors.toMap(Lead::id, Function.identity(), (a, b) -> a));
    double radius = Math.max(bundle.overallMm(), bundle.diameterMm()) / 2;
    List<Bundle.Wire> across = new ArrayList<>(bundle.wires());
    across.sort(Comparator.comparingDouble(Bundle.Wire::xMm));
    List<Bundle.Wire> left = new ArrayList<>(across.subList(0, across.size() / 2));
    List<Bundle.Wire> right = new ArrayList<>(across.subList(across.size() / 2, across.size()));
    double leftMm = widest(left);
    double rightMm = widest(right);
    double high = Math.max(2 * radius, LINE_MM * Math.max(left.size(), right.size())) + 2 * EDGE_MM;
    double gap = LEADER_MM + 0.6;
    double x = EDGE_MM + leftMm + (left.isEmpty() ? 0 : gap) + radius;
    double width = x + radius + (right.isEmpty() ? 0 : gap) + rightMm + EDGE_MM;
    Spot middle = new Spot(x, high / 2);

    Sheet sheet = new Sheet(lettering);
    if (bundle.overallMm() > bundle.diameterMm() + 1e-9) {
      sheet.circle("covering", middle, bundle.overallMm() / 2, "#d0d0d0", Sheet.INK, 0.2);
    }
    sheet.circle("bundle", middle, bundle.diameterMm() / 2, "#fff", "#777", 0.12);
    for (Bundle.Wire wire : bundle.wires()) {
      Lead lead = byId.get(wire.lead());
      wire(sheet, wire, lead == null ? Colour.of("white") : lead.colour(), middle);
    }
    names(sheet, left, middle, -1, radius);
    names(sheet, right, middle, 1, radius);
    return sheet.svg(width, high, "section of the bundle on run " + bundle.run());
  }

  private static double widest(List<Bundle.Wire> wires) {
    return Words.width(wires.stream().map(Bundle.Wire::lead).toList(), SIZE_MM);
  }

  private static void wire(Sheet sheet, Bundle.Wire wire, Colour colour, Spot middle) {
    Spot at = new Spot(middle.x() + wire.xMm(), middle.y() + wire.yMm());
    double edge = Math.min(0.15, wire.diameterMm() / 12);
    double radius = wire.diameterMm() / 2 - edge / 2;
    sheet.circle("wire", at, radius, WireInk.of(colour.base()), WireInk.EDGE, edge);
    if (colour.all().size() > 1) {
      // The tracer as a stripe over the middle third.
      PlainColour tracer = colour.all().get(1);
      double half = radius / 3;
      double reach = Math.sqrt(radius * radius - half * half) - edge / 2;
      sheet.polygon(
          "tracer",
          List.of(
              new Spot(at.x() - reach, at.y() - half),
              new Spot(at.x() + reach, at.y() - half),
              new Spot(at.x() + reach, at.y() + half),
              new Spot(at.x() - reach, at.y() + half)),
          WireInk.of(tracer),
          "none",
          0);
    }
  }

  /** Names of one side from the top down, each with a line to its wire. */
  private static void names(
      Sheet sheet, List<Bundle.Wire> wires, Spot middle, int side, double radius) {
    List<Bundle.Wire> down = new ArrayList<>(wires);
    down.sort(Comparator.comparingDouble(Bundle.Wire::yMm).thenComparing(Bundle.Wire::lead));
    List<Named> named = new ArrayList<>();
    double y = middle.y() - (down.size() - 1) * LINE_MM / 2;
    for (Bundle.Wire wire : down) {
      named.add(new Named(wire, y));
      y += LINE_MM;
    }
    for (Named it : named) {
      Spot at = new Spot(middle.x() + it.wire().xMm(), middle.y() + it.wire().yMm());
      Spot end = new Spot(middle.x() + side * (radius + LEADER_MM), it.nameY());
      sheet.line("leader", at, end, "#fff", 0.5, "");
      sheet.line("leader", at, end, Sheet.INK, 0.15, "");
      sheet.circle("dot", at, 0.3, Sheet.INK, "#fff", 0.12);
      sheet.text(
          side < 0 ? Hold.RIGHT : Hold.LEFT,
          end.x() + side * 0.6,
          it.nameY(),
          SIZE_MM,
          it.wire().lead());
    }
  }
}
