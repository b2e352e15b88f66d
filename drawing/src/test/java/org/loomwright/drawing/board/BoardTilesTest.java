package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardTiles.Mark;
import org.loomwright.drawing.board.BoardTiles.Paper;
import org.loomwright.drawing.board.BoardTiles.Tile;

class BoardTilesTest {

  /** Lays page on page by the marks alone, as a person would, and compares with the sheet. */
  @Property(tries = 60)
  void pagesJoinedByTheirMarksMakeUpTheSheet(
      @ForAll @DoubleRange(min = 150, max = 3000) double widthMm,
      @ForAll @DoubleRange(min = 150, max = 1500) double heightMm,
      @ForAll Paper paper,
      @ForAll @DoubleRange(min = 5, max = 20) double marginMm,
      @ForAll @DoubleRange(min = 8, max = 40) double overlapMm) {
    Board board = new Board(widthMm, heightMm, 10, 10, 4);
    BoardTiles tiles = BoardTiles.of(board, paper, marginMm, overlapMm);
    Map<Tile, Point> offsets = joined(tiles);

    assertThat(offsets).hasSize(tiles.tiles().size());
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      Point point = new Point(random.nextDouble() * widthMm, random.nextDouble() * heightMm);
      assertThat(tiles.tiles())
          .as("%s of %s", point, tiles)
          .anyMatch(
              tile ->
                  tile.shown().holds(new Box(point.xMm(), point.yMm(), 0, 0))
                      && isPrinted(tiles, tiles.onPage(tile, point)));
    }
    for (Tile tile : tiles.tiles()) {
      Point offset = offsets.getOrDefault(tile, new Point(Double.NaN, 0));
      Point corner = new Point(tile.shown().xMm(), tile.shown().yMm());
      Point found = tiles.onPage(tile, corner).plus(offset.xMm(), offset.yMm());
      assertThat(found.distanceMm(corner.plus(tiles.window(tile).xMm(), tiles.window(tile).yMm())))
          .isCloseTo(0, within(1e-6));
    }
  }

  private static boolean isPrinted(BoardTiles tiles, Point page) {
    double edge = tiles.marginMm() - 1e-9;
    return page.xMm() >= edge
        && page.yMm() >= edge
        && page.xMm() <= tiles.pageWidthMm() - edge
        && page.yMm() <= tiles.pageHeightMm() - edge;
  }

  /** How far each page is moved from the first, by following marks with the same number. */
  private static Map<Tile, Point> joined(BoardTiles tiles) {
    Map<Tile, Point> offsets = new LinkedHashMap<>();
    Deque<Tile> open = new ArrayDeque<>();
    offsets.put(tiles.tiles().get(0), new Point(0, 0));
    open.add(tiles.tiles().get(0));
    while (!open.isEmpty()) {
      Tile tile = open.remove();
      Point offset = offsets.getOrDefault(tile, new Point(0, 0));
      for (Tile other : tiles.tiles()) {
        List<Mark> shared =
            tiles.marksOn(tile).stream().filter(tiles.marksOn(other)::contains).toList();
        boolean areBeside =
            Math.abs(tile.column() - other.column()) + Math.abs(tile.row() - other.row()) == 1;
        if (areBeside) {
          assertThat(shared).as("%s and %s", tile, other).hasSizeGreaterThanOrEqualTo(2);
        }
        for (Mark mark : shared) {
          Point here = tiles.onPage(tile, mark.at()).plus(offset.xMm(), offset.yMm());
          Point there = tiles.onPage(other, mark.at());
          Point moved = new Point(here.xMm() - there.xMm(), here.yMm() - there.yMm());
          Point known = offsets.putIfAbsent(other, moved);
          if (known == null) {
            open.add(other);
          } else {
            assertThat(moved.distanceMm(known)).isCloseTo(0, within(1e-6));
          }
        }
      }
    }
    return offsets;
  }

  /** Pages left out show nothing, and what is left can be joined. */
  @Test
  void pagesThatShowNothingAreLeftOut() {
    int leftOut = 0;
    for (long seed = 1; seed <= 12; seed++) {
      BoardPlan plan = BoardLayout.of(Trees.random(seed, 12), Board.of(2400, 1200));
      BoardPlan.Sheet sheet = plan.sheets().get(0);
      BoardTiles tiles = BoardTiles.of(plan, sheet, BoardWords.NONE, Paper.A4);
      leftOut += tiles.columns() * tiles.rows() - tiles.tiles().size();
      assertThat(joined(tiles)).hasSameSizeAs(tiles.tiles());
      for (BoardPlan.Line line : sheet.lines()) {
        for (double mm = 0; mm < line.lengthMm(); mm += 5) {
          Point at = Lines.place(line.points(), mm).at();
          assertThat(tiles.tiles())
              .anyMatch(tile -> tile.shown().holds(new Box(at.xMm(), at.yMm(), 0, 0)));
        }
      }
      for (BoardPlan.LaidEnd end : sheet.ends()) {
        Point at = end.body().middle();
        assertThat(tiles.tiles())
            .anyMatch(tile -> tile.shown().holds(new Box(at.xMm(), at.yMm(), 0, 0)));
      }
    }
    assertThat(leftOut).isGreaterThan(10);
  }

  @Test
  void aSmallSheetIsOnePage() {
    assertThat(BoardTiles.of(Board.of(180, 250), Paper.A4).tiles()).hasSize(1);
  }

  @Test
  void countsByHand() {
    // A4 across shows 281 x 182 and steps 269 x 170: 1200 takes 5 columns, 800 takes 5 rows.
    BoardTiles tiles = BoardTiles.of(Board.of(1200, 800), Paper.A4);
    assertThat(tiles.tiles()).hasSize(tiles.columns() * tiles.rows());
    assertThat(tiles.columns() * tiles.rows()).isLessThanOrEqualTo(25);
    assertThat(tiles.tiles().get(tiles.columns() + 1).name()).isEqualTo("B2");
  }

  @Test
  void pagesAndMapAreWellFormed() {
    BoardPlan plan = BoardLayout.of(Trees.small(), Board.of(1600, 800));
    BoardTiles tiles = BoardTiles.of(plan.board(), Paper.A3);
    String content = BoardSvg.content(plan, plan.sheets().get(0), BoardWords.NONE);
    for (Tile tile : tiles.tiles()) {
      String page = tiles.page(tile, content, "Trailer feed");
      assertThat(BoardSvgTest.read(page).getDocumentElement().getAttribute("width"))
          .isEqualTo(Ink.number(tiles.pageWidthMm()) + "mm");
    }
    assertThat(
            BoardSvgTest.read(
                    tiles.map(BoardSvg.outline(plan.sheets().get(0)), "Trailer feed", List.of()))
                .getDocumentElement()
                .getTextContent())
        .contains("A1")
        .contains("B2");
  }

  @Test
  void refusesMarginsAndOverlapsOutOfRange() {
    assertThatThrownBy(() -> BoardTiles.of(Board.of(900, 600), Paper.A4, 2, 12))
        .hasMessageContaining("the margin is 2.0 mm; it must be from 5 mm");
    assertThatThrownBy(() -> BoardTiles.of(Board.of(900, 600), Paper.A4, 8, 100))
        .hasMessageContaining("the overlap is 100.0 mm");
  }
}
