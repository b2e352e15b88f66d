package org.loomwright.papers.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardTiles;
import org.loomwright.drawing.board.BoardTiles.Tile;
import org.loomwright.drawing.board.Box;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.board.kit.Harnesses;
import org.loomwright.drawing.board.kit.Harnesses.Drawn;
import org.loomwright.model.rules.PaperSize;
import org.loomwright.papers.board.Raster.Dot;
import org.loomwright.papers.page.Fonts;

/**
 * Pages laid on each other by the crosses seen on them, against the large sheet: ink of one has ink
 * of the other within 0.3 mm.
 */
class JoinedTilesTest {
  private static final int DPI = 200;
  private static final double TOLERANCE_MM = 0.3;

  /** Most dots of ink without a counterpart, of all dots of ink. */
  private static final double MOST_STRAY = 0.002;

  @Test
  void pagesJoinedByTheirCrossesAreTheLargeSheet() throws Exception {
    Fonts fonts = Fonts.load();
    Drawn drawn = Harnesses.random(11, 5, 900, 560);
    List<HarnessBoard> boards = HarnessBoard.of(drawn.plan(), drawn.order());
    byte[] whole = BoardPdf.whole(boards, fonts);
    Raster large = Raster.byPoppler(whole, 0, DPI, 0, 0, 900, 560);
    for (PaperSize paper : PaperSize.values()) {
      HarnessBoard board = boards.get(0);
      Sheet sheet = board.plan().sheets().get(0);
      BoardTiles tiles =
          BoardTiles.of(board.plan(), sheet, board.words(), BoardTiles.Paper.valueOf(paper.name()));
      assertThat(tiles.tiles()).hasSizeGreaterThan(1);
      byte[] pdf = BoardPdf.tiled(boards, paper, fonts);
      Map<Tile, Raster> pages = new LinkedHashMap<>();
      for (int i = 0; i < tiles.tiles().size(); i++) {
        // The map is the first page.
        double[] size = BoardPdfTest.sizeMm(pdf, i + 1);
        pages.put(tiles.tiles().get(i), Raster.byPoppler(pdf, i + 1, DPI, 0, 0, size[0], size[1]));
      }
      compare(tiles, pages, joined(tiles, pages), large);
    }
  }

  /** How far each page is moved from the first, in dots, from what is seen alone. */
  private static Map<Tile, Dot> joined(BoardTiles tiles, Map<Tile, Raster> pages) {
    Map<Tile, List<Dot>> crosses = new LinkedHashMap<>();
    pages.forEach((tile, page) -> crosses.put(tile, page.crosses()));
    Map<Tile, Dot> moved = new LinkedHashMap<>();
    Deque<Tile> open = new ArrayDeque<>(List.of(tiles.tiles().get(0)));
    moved.put(tiles.tiles().get(0), new Dot(0, 0));
    double near = 3 * DPI / 25.4;
    while (!open.isEmpty()) {
      Tile here = open.remove();
      Dot from = moved.getOrDefault(here, new Dot(0, 0));
      for (Tile there : tiles.tiles()) {
        int right = there.row() == here.row() ? there.column() - here.column() : 0;
        int below = there.column() == here.column() ? there.row() - here.row() : 0;
        if (Math.abs(right) + Math.abs(below) != 1) {
          continue;
        }
        boolean isAcross = right != 0;
        boolean isFar = right + below > 0;
        List<Dot> one = strip(crosses.getOrDefault(here, List.of()), isAcross, isFar, near);
        List<Dot> other = strip(crosses.getOrDefault(there, List.of()), isAcross, !isFar, near);
        assertThat(one).as("crosses of %s towards %s", here.name(), there.name()).hasSize(2);
        assertThat(other).as("crosses of %s towards %s", there.name(), here.name()).hasSize(2);
        List<Dot> shifts = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
          shifts.add(
              new Dot(
                  from.x() + one.get(i).x() - other.get(i).x(),
                  from.y() + one.get(i).y() - other.get(i).y()));
        }
        double apart =
            Math.hypot(
                shifts.get(0).x() - shifts.get(1).x(), shifts.get(0).y() - shifts.get(1).y());
        assertThat(apart / DPI * 25.4).as("both crosses agree, mm").isLessThan(0.1);
        if (moved.putIfAbsent(there, shifts.get(0)) == null) {
          open.add(there);
        }
      }
    }
    assertThat(moved).hasSameSizeAs(tiles.tiles());
    return moved;
  }

  /** Crosses of the outermost strip on a side, in order along it. */
  private static List<Dot> strip(List<Dot> all, boolean isUpright, boolean isFarSide, double near) {
    Comparator<Dot> across = Comparator.comparingDouble(isUpright ? Dot::x : Dot::y);
    Comparator<Dot> along = Comparator.comparingDouble(isUpright ? Dot::y : Dot::x);
    Dot outermost = (isFarSide ? all.stream().max(across) : all.stream().min(across)).orElseThrow();
    return all.stream()
        .filter(it -> Math.abs(isUpright ? it.x() - outermost.x() : it.y() - outermost.y()) < near)
        .sorted(along)
        .toList();
  }

  private static void compare(
      BoardTiles tiles, Map<Tile, Raster> pages, Map<Tile, Dot> moved, Raster large) {
    double dots = DPI / 25.4;
    Box window = tiles.window(tiles.tiles().get(0));
    // One place of the first page is known; all else follows from the crosses.
    double originX = (window.xMm() - tiles.sheet().xMm()) * dots;
    double originY = (window.yMm() - tiles.sheet().yMm()) * dots;
    long ink = 0;
    long missing = 0;
    for (int y = 0; y < large.height(); y++) {
      for (int x = 0; x < large.width(); x++) {
        if (!large.isInk(x, y) || !holds(tiles.sheet(), x / dots, y / dots, 1)) {
          continue;
        }
        ink++;
        boolean isSeen = false;
        for (Tile tile : tiles.tiles()) {
          if (holds(tile.shown(), x / dots, y / dots, 0.5)) {
            Dot shift = moved.getOrDefault(tile, new Dot(0, 0));
            Raster page = pages.get(tile);
            isSeen |= page != null && near(page, x + originX - shift.x(), y + originY - shift.y());
          }
        }
        missing += isSeen ? 0 : 1;
      }
    }
    assertThat(ink).isGreaterThan(20_000);
    assertThat((double) missing / ink).as("ink missing on the pages").isLessThan(MOST_STRAY);

    long printed = 0;
    long extra = 0;
    for (Tile tile : tiles.tiles()) {
      Raster page = pages.get(tile);
      Dot shift = moved.getOrDefault(tile, new Dot(0, 0));
      for (int y = 0; page != null && y < page.height(); y++) {
        for (int x = 0; x < page.width(); x++) {
          double sheetX = x + shift.x() - originX;
          double sheetY = y + shift.y() - originY;
          if (page.isInk(x, y)
              && holds(tile.shown(), sheetX / dots, sheetY / dots, 0.5)
              && isClearOfMarks(tiles, tile, sheetX / dots, sheetY / dots)) {
            printed++;
            extra += near(large, sheetX, sheetY) ? 0 : 1;
          }
        }
      }
    }
    assertThat(printed).isGreaterThan(20_000);
    assertThat((double) extra / printed).as("ink the sheet does not have").isLessThan(MOST_STRAY);
  }

  private static boolean holds(Box box, double xMm, double yMm, double edgeMm) {
    return xMm > box.xMm() + edgeMm
        && yMm > box.yMm() + edgeMm
        && xMm < box.rightMm() - edgeMm
        && yMm < box.bottomMm() - edgeMm;
  }

  private static boolean isClearOfMarks(BoardTiles tiles, Tile tile, double xMm, double yMm) {
    return tiles.marksOn(tile).stream()
        .noneMatch(
            mark -> Math.abs(mark.at().xMm() - xMm) < 7 && Math.abs(mark.at().yMm() - yMm) < 7);
  }

  private static boolean near(Raster raster, double x, double y) {
    int reach = (int) Math.floor(TOLERANCE_MM * DPI / 25.4);
    int middleX = (int) Math.round(x);
    int middleY = (int) Math.round(y);
    for (int dy = -reach; dy <= reach; dy++) {
      for (int dx = -reach; dx <= reach; dx++) {
        if (raster.isInk(middleX + dx, middleY + dy)) {
          return true;
        }
      }
    }
    return false;
  }
}
