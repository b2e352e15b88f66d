package org.loomwright.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.loomwright.model.json.Nearest;

/** Reads one sheet of a spreadsheet file. */
final class XlsxReader {
  /** Digits a spreadsheet keeps of a number; more are noise of its binary form. */
  private static final MathContext DIGITS = new MathContext(15);

  private final NavigableMap<Integer, Map<Integer, String>> rows = new TreeMap<>();
  private final List<CellRemark> remarks = new ArrayList<>();
  private int cellCount;

  private XlsxReader() {}

  static Reading read(byte[] xlsx, Optional<String> sheet) {
    if (xlsx.length > Limits.FILE_BYTES) {
      return new Reading.Bad(
          "the file has more than "
              + (Limits.FILE_BYTES >> 20)
              + " MB; save only the sheet with the connector's cavities");
    }
    if (!isPacked(xlsx)) {
      return new Reading.Bad(
          "this is not an XLSX file; save the spreadsheet as XLSX, or copy its cells and paste them"
              + " as text");
    }
    try {
      return new XlsxReader().sheet(xlsx, sheet);
    } catch (SafeZip.Refused e) {
      return new Reading.Bad(
          e.getMessage() + "; save only the sheet with the connector's cavities");
    } catch (IOException | XMLStreamException | RuntimeException e) {
      // The libraries below answer a damaged file with exceptions of every kind.
      return new Reading.Bad(
          "the file can't be read as XLSX: it is damaged or of another kind; save it again, or copy"
              + " its cells and paste them as text");
    }
  }

  /** Whether a file starts as a packed one does. */
  static boolean isPacked(byte[] file) {
    return file.length >= 4 && file[0] == 'P' && file[1] == 'K';
  }

  /** Names of the sheets, in the order of the file; none where reading it says what is wrong. */
  static List<String> names(byte[] xlsx) {
    if (xlsx.length > Limits.FILE_BYTES) {
      return List.of();
    }
    try {
      Map<String, byte[]> parts = SafeZip.parts(xlsx);
      SheetExtent.check(parts);
      try (ReadableWorkbook book =
          new ReadableWorkbook(new ByteArrayInputStream(SafeZip.packed(parts)))) {
        return book.getSheets().map(Sheet::getName).toList();
      }
    } catch (IOException | XMLStreamException | RuntimeException e) {
      // Whatever the libraries below make of a damaged file, reading it has the words for it.
      return List.of();
    }
  }

  private Reading sheet(byte[] xlsx, Optional<String> name) throws IOException, XMLStreamException {
    Map<String, byte[]> parts = SafeZip.parts(xlsx);
    SheetExtent.check(parts);
    try (ReadableWorkbook book =
        new ReadableWorkbook(new ByteArrayInputStream(SafeZip.packed(parts)))) {
      List<Sheet> sheets = book.getSheets().toList();
      Optional<Sheet> wanted =
          sheets.stream().filter(it -> name.map(it.getName()::equals).orElse(true)).findFirst();
      if (wanted.isEmpty()) {
        List<String> names = sheets.stream().map(Sheet::getName).toList();
        return new Reading.Bad(
            name.map(
                    it ->
                        "there is no sheet "
                            + CellText.shown(it)
                            + Nearest.hint(it, "the sheets are", names))
                .orElse("the file has no sheet"));
      }
      Optional<String> refused = cells(wanted.get());
      if (refused.isPresent()) {
        return new Reading.Bad(refused.get());
      }
      if (rows.size() > Limits.ROWS) {
        return DelimitedReader.checked(table(), cellCount);
      }
      MergedCells.of(parts, wanted.get().getName()).forEach(this::spread);
    }
    return DelimitedReader.checked(table(), cellCount);
  }

  private Optional<String> cells(Sheet sheet) throws IOException {
    try (Stream<Row> stream = sheet.openStream()) {
      for (Iterator<Row> it = stream.iterator(); it.hasNext(); ) {
        Row row = it.next();
        for (Cell cell : row) {
          // Rows hold nothing where the file leaves a cell out.
          if (cell == null) {
            continue;
          }
          int column = cell.getColumnIndex();
          String text = CellText.clean(text(row.getRowNum(), cell));
          if (text.isEmpty()) {
            continue;
          }
          if (column >= Limits.COLUMNS) {
            return Optional.of(
                "cell "
                    + PastedTable.ref(row.getRowNum(), column)
                    + " lies beyond the "
                    + Limits.COLUMNS
                    + " columns that are read; remove it, or copy only the table");
          }
          if (text.length() > Limits.CELL) {
            return Optional.of(DelimitedReader.tooLong(row.getRowNum(), column));
          }
          if (++cellCount > Limits.CELLS) {
            return Optional.of(
                "the sheet has more than " + Limits.CELLS + " cells; copy only the table");
          }
          rows.computeIfAbsent(row.getRowNum(), key -> new TreeMap<>()).put(column, text);
        }
      }
    }
    return Optional.empty();
  }

  private String text(int row, Cell cell) {
    Object value = cell.getValue();
    boolean formula = cell.getType() == CellType.FORMULA || cell.getFormula() != null;
    String raw = cell.getRawValue();
    if (formula && (raw == null || raw.isEmpty())) {
      remarks.add(
          new CellRemark(
              row,
              cell.getColumnIndex(),
              "",
              "a formula stands here without its value; open the file in a spreadsheet program,"
                  + " save it again, or type the value",
              true));
      return "";
    }
    if (value instanceof BigDecimal number) {
      return number(number);
    }
    if (value instanceof Boolean truth) {
      return truth ? "TRUE" : "FALSE";
    }
    if (cell.getType() == CellType.FORMULA
        && raw != null
        && raw.matches("-?[0-9.]+(E[-+]?[0-9]{1,3})?")) {
      return number(new BigDecimal(raw));
    }
    String text = cell.getText();
    return text == null ? "" : text;
  }

  private static String number(BigDecimal number) {
    BigDecimal plain = number.round(DIGITS).stripTrailingZeros();
    // A scale far out would be written as a thousand zeros.
    return Math.abs((long) plain.scale()) > 30 ? plain.toString() : plain.toPlainString();
  }

  /** A value merged over rows holds for each of them; rows with nothing else in them stay out. */
  private void spread(MergedCells.Range range) {
    String text = rows.getOrDefault(range.first(), Map.of()).get(range.column());
    if (text == null) {
      return;
    }
    for (Map<Integer, String> cells :
        rows.subMap(range.first(), false, range.last(), true).values()) {
      if (cells.putIfAbsent(range.column(), text) == null) {
        cellCount++;
      }
    }
  }

  private PastedTable table() {
    List<PastedTable.Row> table = new ArrayList<>();
    rows.forEach(
        (number, cells) -> {
          List<String> texts = new ArrayList<>();
          cells.forEach(
              (column, text) -> {
                while (texts.size() < column) {
                  texts.add("");
                }
                texts.add(text);
              });
          table.add(new PastedTable.Row(number, texts));
        });
    return new PastedTable(TableForm.XLSX, table, remarks);
  }
}
