package org.loomwright.papers;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.papers.Book.Head;
import org.loomwright.papers.words.Names;

/** The parts lists as a workbook: one sheet for all part numbers, then one for each. */
final class PartsBook {
  private PartsBook() {}

  static byte[] of(Names names) throws IOException {
    List<Book.Sheet> sheets = new ArrayList<>();
    List<PartNumber> numbers = names.plan().design().partNumbers();
    sheets.add(
        new Book.Sheet(
            "part numbers",
            List.of(
                new Head("part number", 22),
                new Head("sold to", 50),
                new Head("cases", 20),
                new Head("leads", 30),
                new Head("share %", 9),
                new Head("bench min", 9),
                new Head("material", 11),
                new Head("bench work", 11),
                new Head("currency", 9)),
            numbers.stream().map(it -> number(names, it)).toList()));
    for (PartNumber number : numbers) {
      sheets.add(
          new Book.Sheet(
              number.id(),
              List.of(
                  new Head("part", 22),
                  new Head("name", 44),
                  new Head("in the kit", 10),
                  new Head("unit", 7),
                  new Head("to buy", 10),
                  new Head("unit price", 11),
                  new Head("total", 11),
                  new Head("currency", 9)),
              number.parts().stream().map(PartsBook::row).toList()));
    }
    return Book.of(sheets);
  }

  private static List<Object> number(Names names, PartNumber it) {
    return List.of(
        it.id(),
        it.words(),
        String.join(", ", it.cases()),
        String.join(", ", it.leads().stream().map(names::label).toList()),
        it.share() * 100,
        it.benchMinutes(),
        it.material(),
        it.labour(),
        it.currency());
  }

  private static List<Object> row(PartLine it) {
    return List.of(
        it.part(),
        it.name(),
        it.quantity(),
        it.unit(),
        it.buy(),
        it.unitPrice(),
        it.total(),
        it.currency());
  }
}
