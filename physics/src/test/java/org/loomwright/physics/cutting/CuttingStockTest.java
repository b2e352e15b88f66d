package org.loomwright.physics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class CuttingStockTest {
  private static CuttingStock.Result cut(double stockMm, double kerfMm, List<Piece> pieces) {
    CuttingStock.Input in = new CuttingStock.Input(stockMm, pieces, kerfMm);
    CuttingStock.Result result = CuttingStock.of(in);
    assertThat(CutCheck.problems(in, result)).isEmpty();
    return result;
  }

  private static List<Piece> singles(int... lengths) {
    return Arrays.stream(lengths).mapToObj(length -> new Piece(length, 1)).toList();
  }

  /** A worked example of an encyclopedia: 73 masters, waste 0.401 %, linear bound 72.7. */
  @Test
  void theWorkedExampleIsSolvedAndProven() {
    List<Piece> pieces = new ArrayList<>();
    for (Row row : ReferenceTables.cuttingExample().rows()) {
      pieces.add(new Piece(row.number("width_mm"), (int) row.number("demand")));
    }
    CuttingStock.Result result = cut(5600, 0, pieces);
    assertThat(result.stockUsed()).isEqualTo(73);
    assertThat(result.isProvenLeast()).isTrue();
    assertThat(result.wastePercent()).isCloseTo(0.401, within(0.0005));
    Sizes sizes = Sizes.of(new CuttingStock.Input(5600, pieces, 0));
    assertThat(PatternMix.of(sizes, sizes.demand()).bound()).isBetween(72.7, 73.0);
  }

  /** Falkenauer 1996: uniform instances with 120 items; least number of bins as published. */
  @Test
  void thePublishedInstancesAreSolvedAndProven() {
    for (Row row : ReferenceTables.cuttingInstances().rows()) {
      int[] items =
          Arrays.stream(row.text("items").split(" ")).mapToInt(Integer::parseInt).toArray();
      CuttingStock.Result result = cut(row.number("capacity"), 0, singles(items));
      assertThat(result.stockUsed())
          .as(row.text("instance"))
          .isEqualTo((int) row.number("optimum_bins"));
      assertThat(result.isProvenLeast()).as(row.text("instance")).isTrue();
    }
  }

  @Provide
  Arbitrary<List<Integer>> lengths() {
    return Arbitraries.integers().between(5, 40).list().ofMinSize(1).ofMaxSize(8);
  }

  @Property(tries = 300)
  void fewPiecesNeedNoMoreSpoolsThanEveryWayTried(
      @ForAll("lengths") List<Integer> lengths,
      @ForAll @IntRange(min = 40, max = 100) int stock,
      @ForAll @IntRange(max = 4) int kerf) {
    int[] pieces = lengths.stream().mapToInt(length -> length).toArray();
    CuttingStock.Result result = cut(stock, kerf, singles(pieces));
    assertThat(result.stockUsed()).isEqualTo(BruteForce.spools(stock, kerf, pieces));
    assertThat(result.isProvenLeast()).isTrue();
  }

  @Property(tries = 60)
  void manyPiecesHoldAndAnExtraPieceNeverSavesASpool(
      @ForAll @IntRange(min = 100, max = 3000) int stock,
      @ForAll @IntRange(max = 5) int kerf,
      @ForAll List<@IntRange(min = 10, max = 100) Integer> lengths) {
    List<Piece> pieces = new ArrayList<>(List.of(new Piece(33, 7)));
    lengths.forEach(length -> pieces.add(new Piece(length, 1 + length % 5)));
    CuttingStock.Result before = cut(stock, kerf, pieces);
    pieces.add(new Piece(50, 1));
    CuttingStock.Result after = cut(stock, kerf, pieces);
    assertThat(after.stockUsed()).isGreaterThanOrEqualTo(before.lowerBound());
    assertThat(after.lowerBound()).isLessThanOrEqualTo(after.stockUsed());
  }

  /** Three pieces of 100 need two cuts between them: 306 with a kerf of 3, not 309. */
  @Test
  void aCutIsLostBetweenPiecesOnly() {
    assertThat(cut(306, 3, singles(100, 100, 100)).stockUsed()).isEqualTo(1);
    assertThat(cut(305.9, 3, singles(100, 100, 100)).stockUsed()).isEqualTo(2);
    assertThat(cut(300, 0, singles(100, 100, 100)).wastePercent()).isZero();
    assertThat(cut(100, 3, singles(100)).stockUsed()).isEqualTo(1);
    assertThat(cut(306, 3, singles(100, 100, 100)).wastePercent())
        .isCloseTo(100 * 6 / 306.0, within(1e-9));
  }

  @Test
  void whatIsLeftOfEachSpoolIsTold() {
    CuttingStock.Result result = cut(1000, 2.5, List.of(new Piece(300, 4), new Piece(90, 2)));
    assertThat(result.patterns())
        .containsExactlyInAnyOrder(
            new Pattern(1, List.of(new Piece(300, 3), new Piece(90, 1)), 0),
            new Pattern(1, List.of(new Piece(300, 1), new Piece(90, 1)), 605));
  }

  @Test
  void wrongInputsAreRefused() {
    assertThatThrownBy(() -> cut(1000, 0, singles(400, 1001)))
        .isInstanceOf(SumException.class)
        .hasMessage(
            "a piece of 1001 mm can't be cut from a stock of 1000 mm; a piece must not be longer"
                + " than the stock");
    assertThatThrownBy(() -> cut(1000, 0, List.of())).hasMessageContaining("at least one piece");
    assertThatThrownBy(() -> cut(0, 0, singles(1))).hasMessageContaining("above zero");
    assertThatThrownBy(() -> cut(1000, -1, singles(1))).hasMessageContaining("above zero");
    assertThatThrownBy(() -> cut(1000, 0, List.of(new Piece(10, 0))))
        .hasMessageContaining("from 1 to 10000 pieces, but is 0");
    assertThatThrownBy(() -> cut(1000, 0, List.of(new Piece(10, 9000), new Piece(11, 9000))))
        .hasMessageContaining("but is 18000");
    assertThatThrownBy(() -> cut(1000, 0, List.of(new Piece(10.25, 1))))
        .hasMessage("length of a piece must be in whole tenths of a mm, but is 10.25 mm");
  }
}
