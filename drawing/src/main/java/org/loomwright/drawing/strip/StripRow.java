package org.loomwright.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;

/**
 * Parts side by side, with the places behind them.
 *
 * @param cells parts from left to right
 * @param bands stretches of neighbouring cells in one place
 */
record StripRow(List<StripCell> cells, List<Band> bands) {
  /** Room for a continuation mark at each end, mm. */
  static final double MARK_MM = 8;

  private static final double SIZE = StripCell.SIZE;
  private static final double PAD_MM = 1.2;

  /**
   * Neighbouring cells in one place.
   *
   * @param name lines of its name
   */
  record Band(double left, double right, List<String> name) {}

  static StripRow of(List<StripCell> cells) {
    List<Band> bands = new ArrayList<>();
    double x = MARK_MM;
    for (int i = 0; i < cells.size(); ) {
      String place = cells.get(i).part().place();
      double left = x;
      for (; i < cells.size() && cells.get(i).part().place().equals(place); i++) {
        x += cells.get(i).widthMm();
      }
      bands.add(new Band(left, x, Words.wrap(place, SIZE, x - left - StripCell.ROOM_MM)));
    }
    return new StripRow(cells, bands);
  }

  /** Parts in rows of a width; all rows but the last fill it. */
  static List<StripRow> rows(List<StripPart> parts, double widthMm) {
    double room = widthMm - 2 * MARK_MM;
    List<StripRow> rows = new ArrayList<>();
    List<StripCell> cells = new ArrayList<>();
    double used = 0;
    for (StripPart part : parts) {
      StripCell cell = StripCell.of(part);
      if (!cells.isEmpty() && used + cell.widthMm() > room) {
        double more = (room - used) / cells.size();
        rows.add(of(cells.stream().map(it -> it.wider(more)).toList()));
        cells.clear();
        used = 0;
      }
      cells.add(cell);
      used += cell.widthMm();
    }
    if (!cells.isEmpty()) {
      rows.add(of(List.copyOf(cells)));
    }
    return rows;
  }

  double heightMm() {
    return namesMm() + aboveMm() + 2 * SymbolPen.REACH_MM + belowMm() + 2 * PAD_MM;
  }

  /** Height of the line under the row's upper edge, mm. */
  double lineMm() {
    return namesMm() + PAD_MM + aboveMm() + SymbolPen.REACH_MM;
  }

  double rightMm() {
    return bands.get(bands.size() - 1).right();
  }

  private double namesMm() {
    return bands.stream().mapToDouble(it -> Words.height(it.name(), SIZE)).max().orElse(0)
        + 2 * PAD_MM;
  }

  private double aboveMm() {
    return cells.stream().mapToDouble(it -> Words.height(it.above(), SIZE)).max().orElse(0);
  }

  private double belowMm() {
    return cells.stream().mapToDouble(it -> Words.height(it.below(), SIZE)).max().orElse(0);
  }

  /** Draws bands, symbols and text; marks at the ends are the caller's. */
  void draw(Sheet sheet, double top) {
    double bottom = top + heightMm();
    for (int i = 0; i < bands.size(); i++) {
      Band band = bands.get(i);
      Box box = new Box(band.left(), top, band.right(), bottom);
      sheet.rect("place", box, i % 2 == 0 ? "#ececec" : "#fff", "#777", 0.2);
    }
    sheet.line(
        "rule",
        new Spot(MARK_MM, top + namesMm()),
        new Spot(rightMm(), top + namesMm()),
        "#777",
        0.2,
        "0.8 0.8");
    for (Band band : bands) {
      double high = Words.height(band.name(), SIZE);
      sheet.lines(
          Hold.MIDDLE,
          (band.left() + band.right()) / 2,
          top + (namesMm() - high) / 2,
          SIZE,
          band.name());
    }
    double x = MARK_MM;
    for (StripCell cell : cells) {
      cell(sheet, cell, x, top);
      x += cell.widthMm();
    }
  }

  private void cell(Sheet sheet, StripCell cell, double left, double top) {
    double y = top + lineMm();
    double middle = left + cell.widthMm() / 2;
    SymbolPen pen = new SymbolPen(sheet, y, left, left + cell.widthMm());
    if (cell.part() instanceof StripPart.Device device) {
      pen.draw(device.symbol());
    } else {
      pen.wire();
    }
    double reach = cell.part() instanceof StripPart.Wire ? 1.4 : SymbolPen.REACH_MM;
    sheet.lines(
        Hold.MIDDLE, middle, y - reach - Words.height(cell.above(), SIZE), SIZE, cell.above());
    sheet.lines(Hold.MIDDLE, middle, y + reach, SIZE, cell.below());
  }
}
