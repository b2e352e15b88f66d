package org.loomwright.papers;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.papers.Book.Head;
import org.loomwright.papers.words.BenchEnd;
import org.loomwright.papers.words.CutLine;
import org.loomwright.papers.words.CutList;
import org.loomwright.papers.words.Names;

/** The cut list as a workbook. */
final class CutListBook {
  private CutListBook() {}

  static byte[] of(Names names) throws IOException {
    List<Head> heads = new ArrayList<>();
    heads.add(new Head("label", 12));
    heads.add(new Head("wire", 16));
    heads.add(new Head("wire name", 26));
    heads.add(new Head("area mm²", 9));
    heads.add(new Head("colour", 15));
    heads.add(new Head("colour code", 9));
    heads.add(new Head("cut mm", 9));
    for (String end : List.of("A", "B")) {
      heads.add(new Head("strip " + end + " mm", 9));
      heads.add(new Head("terminal " + end, 18));
      heads.add(new Head("terminal name " + end, 28));
      heads.add(new Head("tool " + end, 16));
      heads.add(new Head("crimp height " + end + " mm", 9));
      heads.add(new Head("seal " + end, 14));
      heads.add(new Head("goes to " + end, 34));
    }
    heads.add(new Head("mark", 12));
    heads.add(new Head("part numbers", 22));
    return Book.of(
        List.of(
            new Book.Sheet(
                "cut list", heads, CutList.of(names).stream().map(CutListBook::row).toList())));
  }

  private static List<Object> row(CutLine line) {
    List<Object> cells = new ArrayList<>();
    cells.add(line.lead().label());
    cells.add(line.lead().wire());
    cells.add(line.wireName());
    cells.add(line.lead().areaMm2());
    cells.add(line.lead().colour().text());
    cells.add(line.lead().colour().code());
    cells.add(line.lead().cutMm());
    end(cells, line.a());
    end(cells, line.b());
    cells.add(line.lead().label());
    cells.add(String.join(", ", line.numbers()));
    return cells;
  }

  private static void end(List<Object> cells, BenchEnd end) {
    cells.add(cell(end.stripMm()));
    cells.add(end.part());
    cells.add(end.name());
    cells.add(cell(end.tool()));
    cells.add(cell(end.crimpHeightMm()));
    cells.add(cell(end.seal()));
    cells.add(end.goesTo());
  }

  private static Object cell(Optional<?> value) {
    return value.isPresent() ? value.get() : "";
  }
}
