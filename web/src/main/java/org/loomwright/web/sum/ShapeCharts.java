package org.loomwright.web.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.chart.ProtectionChartPicture;
import org.loomwright.drawing.chart.ProtectionPlot;
import org.loomwright.drawing.chart.RoundBundle;
import org.loomwright.drawing.chart.StockBars;
import org.loomwright.model.quantity.Display;
import org.loomwright.physics.cutting.CuttingStock;
import org.loomwright.physics.cutting.Pattern;
import org.loomwright.physics.cutting.Piece;
import org.loomwright.physics.packing.BundleSize;
import org.loomwright.physics.packing.Circle;
import org.loomwright.physics.protection.ChartPoint;
import org.loomwright.physics.protection.DamageLine;
import org.loomwright.physics.protection.FaultCurrents;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FusePlace;
import org.loomwright.physics.protection.LoadPoint;
import org.loomwright.physics.protection.ProtectionChart;
import org.loomwright.physics.protection.ProtectionRequest;
import org.loomwright.physics.sizing.FuseRequest;
import org.loomwright.web.units.UnitWords;

/** Sums as shapes: a fuse against its wire, a bundle across, spools as they are cut. */
final class ShapeCharts {
  /** More ways of cutting than this are told by the last of them. */
  private static final int MOST_BARS = 12;

  private ShapeCharts() {}

  static SumChart fuse(FuseRequest request, Fuse fuse, Display units) {
    return SumChart.orWhyNot(
        () -> {
          ProtectionChart chart = ProtectionChart.of(protection(request, fuse));
          ProtectionPlot plot =
              new ProtectionPlot(
                  fuse.label(),
                  new UnitWords(units, List.of()).of(chart.wire()),
                  points(chart.earliest()),
                  points(chart.latest()),
                  points(chart.damage()),
                  chart.loads().stream()
                      .filter(it -> it.currentA() > 0)
                      .map(
                          it ->
                              new ProtectionPlot.Load(
                                  it.name(),
                                  new ProtectionPlot.Point(it.currentA(), it.durationS())))
                      .toList(),
                  OptionalDouble.of(chart.endOfLineA()),
                  OptionalDouble.of(chart.nearSourceA()));
          return SumChart.of(
              "The fuse opens within the hatched band; it has to be open before the thick line,"
                  + " where the wire is damaged.",
              width ->
                  ProtectionChartPicture.svg(plot, Math.max(96, width), Lettering.fitted()));
        });
  }

  /** The same wire, fuse and source as in the sum. */
  private static ProtectionRequest protection(FuseRequest in, Fuse fuse) {
    double sourceOhm = in.limits().sourceOhm();
    return new ProtectionRequest(
        fuse,
        FusePlace.CABIN,
        in.ambientC(),
        in.continuousA(),
        in.peakA() > 0 && in.peakTimeS() > 0
            ? Optional.of(new LoadPoint("start", in.peakA(), in.peakTimeS()))
            : Optional.empty(),
        Optional.empty(),
        DamageLine.Wire.hot(
            in.conductor(), in.insulation(), in.insulationRatingC(), in.ambientC()),
        new FaultCurrents.Loop(
            in.supplyV(),
            in.supplyV(),
            sourceOhm,
            sourceOhm,
            in.conductor(),
            in.oneWayLengthM(),
            in.returnLengthM(),
            0,
            in.insulationRatingC()),
        in.limits().openingTimeS());
  }

  private static List<ProtectionPlot.Point> points(List<ChartPoint> line) {
    return line.stream().map(it -> new ProtectionPlot.Point(it.currentA(), it.timeS())).toList();
  }

  static SumChart bundle(BundleSize.Result result, Display units) {
    List<RoundBundle.Wire> wires = new ArrayList<>();
    for (Circle it : result.packing().circles()) {
      double diameterMm = 2 * it.radiusMm();
      wires.add(
          new RoundBundle.Wire(
              units.bareLengthMm(diameterMm), it.xMm(), it.yMm(), diameterMm));
    }
    return SumChart.of(
        "The bundle across, enlarged, its wires lying as close as was found; figures in "
            + (units == Display.US ? "inches." : "mm."),
        width ->
            RoundBundle.svg(
                "bundle of " + wires.size() + " wires",
                wires,
                result.diameterMm(),
                units.lengthMm(result.diameterMm()),
                width,
                Lettering.fitted()));
  }

  static SumChart cut(CuttingStock.Input in, CuttingStock.Result result, Display units) {
    List<StockBars.Bar> bars =
        result.patterns().stream().limit(MOST_BARS).map(it -> bar(it, units)).toList();
    int more = result.patterns().size() - bars.size();
    return SumChart.of(
        "Each way a spool or bar is cut, to scale; what is left is hatched."
            + (more > 0 ? " Another " + more + " ways are not drawn." : ""),
        width ->
            StockBars.svg(
                result.stockUsed() + " spools or bars as they are cut",
                in.stockMm(),
                in.kerfMm(),
                bars,
                width,
                Lettering.fitted()));
  }

  private static StockBars.Bar bar(Pattern pattern, Display units) {
    List<StockBars.Piece> pieces = new ArrayList<>();
    StringBuilder words = new StringBuilder(pattern.times() + " ×: ");
    for (Piece it : pattern.pieces()) {
      words
          .append(pieces.isEmpty() ? "" : ", ")
          .append(it.count())
          .append(" of ")
          .append(units.lengthMm(it.lengthMm()));
      for (int i = 0; i < it.count(); i++) {
        pieces.add(new StockBars.Piece(units.bareLengthMm(it.lengthMm()), it.lengthMm()));
      }
    }
    words.append(", rest ").append(units.lengthMm(pattern.restMm()));
    return new StockBars.Bar(words.toString(), pieces, pattern.restMm());
  }
}
