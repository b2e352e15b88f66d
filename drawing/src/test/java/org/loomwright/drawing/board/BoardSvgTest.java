package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.ink.RenderedTexts;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class BoardSvgTest {
  private static final BoardTree TREE = Trees.small();
  private static final BoardPlan PLAN = BoardLayout.of(TREE, Board.of(1600, 800));

  @Test
  void isTheSameEachTime() {
    BoardPlan again = BoardLayout.of(TREE, Board.of(1600, 800));
    assertThat(BoardSvg.document(again, again.sheets().get(0), BoardWords.NONE))
        .isEqualTo(BoardSvg.document(PLAN, PLAN.sheets().get(0), BoardWords.NONE));
  }

  @Test
  void oneUnitIsAMillimetre() {
    Document svg = read(BoardSvg.document(PLAN, PLAN.sheets().get(0), BoardWords.NONE));
    assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("1600mm");
    assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 1600 800");
    assertThat(lengths(svg, "ruler")).containsExactly(100.0);
    assertThat(lengths(svg, "tick")).hasSize(21);
  }

  @Test
  void bundlesAreAsLongAsTheyAre() {
    Document svg = read(BoardSvg.document(PLAN, PLAN.sheets().get(0), BoardWords.NONE));
    List<Double> drawn = lengths(svg, "bundle");
    assertThat(drawn).hasSize(TREE.branches().size());
    for (BoardTree.Branch branch : TREE.branches()) {
      assertThat(drawn)
          .anySatisfy(it -> assertThat(it).isCloseTo(branch.lengthMm(), within(0.002)));
    }
  }

  @Test
  void allNamesAndLengthsAreThere() {
    String words =
        read(BoardSvg.document(PLAN, PLAN.sheets().get(0), BoardWords.NONE))
            .getDocumentElement()
            .getTextContent();
    TREE.nodes().forEach(node -> assertThat(words).contains(node.name()));
    assertThat(words).contains("W1  320").contains("S1").contains("TRAILER FEED").contains("100");
  }

  @Test
  void facesAndTablesGivenAreDrawnInTheirRoom() {
    String svg =
        BoardSvg.document(
            PLAN,
            PLAN.sheets().get(0),
            BoardWords.of(
                Map.of(
                    "X2 module",
                    new BoardWords.Inset(
                        Optional.of("<rect class=\"given\" width=\"5\" height=\"5\"/>"),
                        Optional.empty()))));
    assertThat(svg).contains(")\"><rect class=\"given\"");
    assertThat(read(svg).getElementsByTagName("g").getLength()).isEqualTo(2);
  }

  /** As a browser sets them, on roomy boards and on crowded ones. */
  @Test
  void noTextLiesOnAnother() {
    List<String> svgs = new ArrayList<>();
    for (long seed = 1; seed <= 20; seed++) {
      Board board = seed % 4 == 0 ? Board.of(700, 500) : Board.of(2400, 1200);
      BoardPlan plan = BoardLayout.of(Trees.random(seed, 3 + (int) (seed * 7 % 40)), board);
      for (Sheet sheet : plan.sheets()) {
        svgs.add(BoardSvg.document(plan, sheet, BoardWords.NONE));
        assertThat(BoardSvg.crowdedOut(plan, sheet, BoardWords.NONE)).isEmpty();
      }
      Sheet first = plan.sheets().get(0);
      BoardTiles tiles = BoardTiles.of(plan, first, BoardWords.NONE, BoardTiles.Paper.A4);
      String content = BoardSvg.content(plan, first, BoardWords.NONE);
      svgs.add(tiles.map(BoardSvg.outline(first), plan.name(), List.of("a note", "another")));
      if (seed % 5 == 0) {
        tiles.tiles().forEach(tile -> svgs.add(tiles.page(tile, content, plan.name())));
      }
    }
    RenderedTexts seen = RenderedTexts.of(svgs);
    seen.areSound();
    assertThat(seen.count()).isGreaterThan(1500);
  }

  static Document read(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)));
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Double> lengths(Document svg, String name) {
    List<Double> found = new ArrayList<>();
    NodeList lines = svg.getElementsByTagName("polyline");
    for (int i = 0; i < lines.getLength(); i++) {
      Element line = (Element) lines.item(i);
      if (line.getAttribute("class").equals(name)) {
        List<Point> points = new ArrayList<>();
        for (String pair : line.getAttribute("points").split(" ", -1)) {
          int comma = pair.indexOf(',');
          points.add(
              new Point(
                  Double.parseDouble(pair.substring(0, comma)),
                  Double.parseDouble(pair.substring(comma + 1))));
        }
        found.add(Lines.lengthMm(points));
      }
    }
    return found;
  }
}
