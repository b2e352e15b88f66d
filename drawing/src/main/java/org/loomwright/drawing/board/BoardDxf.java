package org.loomwright.drawing.board;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Peg;
import org.loomwright.drawing.board.BoardPlan.Sheet;

/**
 * A sheet as drawing exchange file, ASCII, release 12 (version AC1009), with lines, circles and
 * texts alone; one unit a millimetre, the origin at the lower left corner of the board, y up. Group
 * codes as in the published reference of that release. A character beyond ASCII is written as
 * {@code \U+} and four hexadecimal digits.
 */
public final class BoardDxf {
  /** Layers of the drawing. */
  public enum Layer {
    BOARD,
    BRANCHES,
    ENDS,
    TABLES,
    PEGS,
    SPLICES,
    MATCHES,
    RULER,
    TEXTS
  }

  private final StringBuilder out = new StringBuilder();
  private final double heightMm;

  private BoardDxf(double heightMm) {
    this.heightMm = heightMm;
  }

  /** The sheet as the text of a file, in ASCII, lines ended by carriage return and line feed. */
  public static String of(BoardPlan plan, Sheet sheet, BoardWords words) {
    Board board = plan.board();
    BoardDxf dxf = new BoardDxf(board.heightMm());
    dxf.head(board);
    dxf.box(Layer.BOARD, new Box(0, 0, board.widthMm(), board.heightMm()));
    for (Line line : sheet.lines()) {
      dxf.line(Layer.BRANCHES, line.points());
    }
    for (LaidEnd end : sheet.ends()) {
      dxf.box(Layer.ENDS, end.body());
      end.table().ifPresent(table -> dxf.box(Layer.TABLES, table));
    }
    for (Peg peg : sheet.pegs()) {
      dxf.circle(Layer.PEGS, peg.at(), peg.diameterMm() / 2);
    }
    sheet.splices().forEach(splice -> dxf.circle(Layer.SPLICES, splice.at(), 3));
    sheet.matches().forEach(match -> match.body().ifPresent(box -> dxf.box(Layer.MATCHES, box)));
    SheetShapes.ruler(board)
        .ifPresent(
            left -> {
              dxf.line(Layer.RULER, Ruler.line(left));
              Ruler.ticks(left).forEach(tick -> dxf.line(Layer.RULER, tick));
            });
    Texts texts = SheetTexts.of(plan, sheet, words);
    texts.leaders().forEach(leader -> dxf.line(Layer.TEXTS, leader));
    texts.placed().forEach(dxf::text);
    dxf.group(0, "ENDSEC");
    dxf.group(0, "EOF");
    return dxf.out.toString();
  }

  private void head(Board board) {
    group(0, "SECTION");
    group(2, "HEADER");
    group(9, "$ACADVER");
    group(1, "AC1009");
    group(9, "$EXTMIN");
    group(10, 0);
    group(20, 0);
    group(9, "$EXTMAX");
    group(10, board.widthMm());
    group(20, board.heightMm());
    group(0, "ENDSEC");
    group(0, "SECTION");
    group(2, "TABLES");
    group(0, "TABLE");
    group(2, "LTYPE");
    group(70, "1");
    group(0, "LTYPE");
    group(2, "CONTINUOUS");
    group(70, "0");
    group(3, "Solid line");
    group(72, "65");
    group(73, "0");
    group(40, 0);
    group(0, "ENDTAB");
    group(0, "TABLE");
    group(2, "LAYER");
    group(70, Integer.toString(Layer.values().length));
    for (Layer layer : Layer.values()) {
      group(0, "LAYER");
      group(2, layer.name());
      group(70, "0");
      group(62, "7");
      group(6, "CONTINUOUS");
    }
    group(0, "ENDTAB");
    group(0, "ENDSEC");
    group(0, "SECTION");
    group(2, "ENTITIES");
  }

  private void box(Layer layer, Box box) {
    Point upperLeft = new Point(box.xMm(), box.yMm());
    Point lowerRight = new Point(box.rightMm(), box.bottomMm());
    line(
        layer,
        List.of(
            upperLeft,
            new Point(box.rightMm(), box.yMm()),
            lowerRight,
            new Point(box.xMm(), box.bottomMm()),
            upperLeft));
  }

  private void line(Layer layer, List<Point> points) {
    for (int i = 1; i < points.size(); i++) {
      group(0, "LINE");
      group(8, layer.name());
      group(10, points.get(i - 1).xMm());
      group(20, heightMm - points.get(i - 1).yMm());
      group(11, points.get(i).xMm());
      group(21, heightMm - points.get(i).yMm());
    }
  }

  private void circle(Layer layer, Point at, double radiusMm) {
    group(0, "CIRCLE");
    group(8, layer.name());
    group(10, at.xMm());
    group(20, heightMm - at.yMm());
    group(40, radiusMm);
  }

  /** Centred both ways, which takes the point twice. */
  private void text(Text text) {
    group(0, "TEXT");
    group(8, Layer.TEXTS.name());
    group(10, text.at().xMm());
    group(20, heightMm - text.at().yMm());
    // The height is that of capitals.
    group(40, 0.72 * text.sizeMm());
    group(1, ascii(text.text()));
    group(50, text.isUpward() ? 90 : 0);
    group(72, "1");
    group(11, text.at().xMm());
    group(21, heightMm - text.at().yMm());
    group(73, "2");
  }

  private static String ascii(String text) {
    StringBuilder safe = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= ' ' && c < 127) {
        safe.append(c);
      } else if (c < ' ') {
        safe.append(' ');
      } else {
        String hex = Integer.toHexString(0x10000 | c).substring(1);
        safe.append("\\U+").append(hex.toUpperCase(Locale.ROOT));
      }
    }
    return safe.toString();
  }

  private void group(int code, double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
    String number = rounded.signum() == 0 ? "0.0" : rounded.stripTrailingZeros().toPlainString();
    group(code, number.contains(".") ? number : number + ".0");
  }

  private void group(int code, String value) {
    String number = Integer.toString(code);
    out.append("   ".substring(Math.min(3, number.length())))
        .append(number)
        .append("\r\n")
        .append(value)
        .append("\r\n");
  }
}
