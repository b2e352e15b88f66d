package org.loomwright.drawing.board;

import java.util.List;
import org.loomwright.drawing.board.BoardPlan.Sheet;

/**
 * A sheet of a plan as SVG, one unit a millimetre, black on white.
 *
 * <p>A bundle is a tube of its true diameter. A bar across it marks a breakout, a black diamond a
 * splice, a white sleeve a label and a striped one tape; a circle with a dot is a peg; a letter in
 * a double frame is a match line. No text lies on another or on a bundle.
 */
public final class BoardSvg {
  private BoardSvg() {}

  /** The sheet as a document of the board's size. */
  public static String document(BoardPlan plan, Sheet sheet, BoardWords words) {
    String width = Ink.number(plan.board().widthMm());
    String height = Ink.number(plan.board().heightMm());
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + width
        + "mm\" height=\""
        + height
        + "mm\" viewBox=\"0 0 "
        + width
        + " "
        + height
        + "\">\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
        + content(plan, sheet, words)
        + "</svg>\n";
  }

  /** The sheet's elements in board coordinates, to be put into a document of any size. */
  public static String content(BoardPlan plan, Sheet sheet, BoardWords words) {
    Ink ink = new Ink();
    open(ink);
    SheetShapes.draw(plan, sheet, words, ink);
    Texts texts = SheetTexts.of(plan, sheet, words);
    for (List<Point> leader : texts.leaders()) {
      ink.line("leader", leader, Ink.BLACK, 0.15, "");
    }
    texts.placed().forEach(ink::text);
    return ink.raw("</g>\n").toString();
  }

  /** Branches and ends of a sheet in thick lines and without any text, for a small map. */
  public static String outline(Sheet sheet) {
    Ink ink = new Ink();
    open(ink);
    SheetShapes.outline(sheet, ink);
    return ink.raw("</g>\n").toString();
  }

  /** Texts that found no room on the sheet and are not on it. */
  public static List<String> crowdedOut(BoardPlan plan, Sheet sheet, BoardWords words) {
    return List.copyOf(SheetTexts.of(plan, sheet, words).crowdedOut());
  }

  /** The part of the board that the sheet's drawing takes, its foot left out, within the board. */
  public static Box used(BoardPlan plan, Sheet sheet, BoardWords words) {
    Box used = SheetTexts.used(sheet, SheetTexts.of(plan, sheet, words)).grown(3);
    double left = Math.max(0, used.xMm());
    double top = Math.max(0, used.yMm());
    double right = Math.min(plan.board().widthMm(), used.rightMm());
    double bottom = Math.min(plan.board().heightMm(), used.bottomMm());
    return new Box(left, top, right - left, bottom - top);
  }

  private static void open(Ink ink) {
    ink.raw(
        "<g font-family=\"" + Ink.FONT + "\" font-weight=\"bold\" fill=\"" + Ink.BLACK + "\">\n");
  }
}
