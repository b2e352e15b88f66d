package org.loomwright.papers.section;

import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.drawing.chart.ProtectionChartPicture;
import org.loomwright.drawing.chart.ProtectionPlot;
import org.loomwright.model.design.ProtectionCurve;
import org.loomwright.papers.page.Html;

/** The fuses of one lead against its wire, over current and time. */
final class ProtectionCharts {
  private static final double WIDTH_MM = 124;

  private ProtectionCharts() {}

  /** Writes the charts of a lead; nothing for a ground. */
  static void write(Pack pack, String lead, Html html) {
    for (ProtectionCurve curve : pack.plan().protections()) {
      if (curve.lead().equals(lead)) {
        html.open("div", "keep")
            .line("h2", "", "Protection by the " + pack.names().prose(curve.fuse()))
            .picture(ProtectionChartPicture.svg(plot(curve), WIDTH_MM, pack.lettering()))
            .line(
                "p",
                "note",
                "The fuse opens within the hatched band. From the smallest to the largest fault it"
                    + " has to be open before the thick line; loads in sound use stay below the"
                    + " band.")
            .close("div");
      }
    }
  }

  private static ProtectionPlot plot(ProtectionCurve curve) {
    return new ProtectionPlot(
        // The heading says where it is.
        curve.fuse().replaceFirst(" A (in|of|before) .*", " A"),
        curve.wire(),
        points(curve.earliest()),
        points(curve.latest()),
        points(curve.damage()),
        curve.loads().stream()
            .map(
                it ->
                    new ProtectionPlot.Load(
                        it.name(), new ProtectionPlot.Point(it.currentA(), it.timeS())))
            .toList(),
        known(curve.smallestFaultA()),
        known(curve.largestFaultA()));
  }

  private static OptionalDouble known(java.util.Optional<Double> currentA) {
    return currentA.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private static List<ProtectionPlot.Point> points(List<ProtectionCurve.At> line) {
    return line.stream().map(it -> new ProtectionPlot.Point(it.currentA(), it.timeS())).toList();
  }
}
