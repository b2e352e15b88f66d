package org.loomwright.cli.sum;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.quantity.Length;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.cutting.CuttingStock;
import org.loomwright.physics.cutting.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum cut}: pieces cut from spools or bars with the least waste. */
@Command(
    name = "cut",
    description = "Fewest spools or bars from which pieces can be cut.",
    sortOptions = false)
final class CutSum extends Sum {

  /** Lengths count in whole tenths of a mm; less than this is rounding. */
  private static final double ROUNDING = 1e-6;

  @Option(
      names = "--stock",
      required = true,
      paramLabel = "LENGTH",
      description = "Length of one spool or bar.")
  private Length stock;

  @Option(
      names = "--pieces",
      required = true,
      paramLabel = "LIST",
      description = "Length in mm and count of what is to be cut, such as \"1380x22,1520x25\".",
      converter = NumberList.PiecesReader.class)
  private NumberList.Pieces pieces;

  @Option(
      names = "--kerf",
      paramLabel = "LENGTH",
      defaultValue = "0 mm",
      description = "Length lost in each cut; without it, nothing is lost.")
  private Length kerf;

  @Override
  Answer answer() {
    CuttingStock.Result result =
        CuttingStock.of(
            new CuttingStock.Input(
                Math.floor(10 * stock.mm() + ROUNDING) / 10,
                pieces.list(),
                Math.ceil(10 * kerf.mm() - ROUNDING) / 10));
    return new Answer(
        List.of(
            Figure.of("stockUsed", "stock used", result.stockUsed(), ""),
            Figure.of("lowerBound", "least possible", result.lowerBound(), ""),
            Figure.of("wastePercent", "waste", result.wastePercent(), "%")),
        List.of(),
        false,
        List.of(new Answer.Way("How to cut", patterns(result)), Answer.Way.only(result.trace())));
  }

  /** One line per pattern: what comes off the stock, what is left, how many times. */
  private static Trace patterns(CuttingStock.Result result) {
    Trace.Builder lines = Trace.builder();
    for (Pattern pattern : result.patterns()) {
      String pieces =
          pattern.pieces().stream()
              .map(piece -> piece.count() + " of " + Require.text(piece.lengthMm()) + " mm")
              .collect(Collectors.joining(", "));
      String rest = "rest " + Require.text(pattern.restMm()) + " mm";
      lines.line(pieces, rest, pattern.times(), "times", "");
    }
    return lines.build();
  }
}
