package org.loomwright.papers;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A workbook of plain tables: a bold heading that stays in sight, columns of a fitting width,
 * numbers as numbers. Same tables, same bytes.
 */
final class Book {
  private static final int LONGEST_NAME = 31;
  private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 0, 0, 0);
  private static final String FIXED_TEXT = "1980-01-01T00:00:00Z";

  /**
   * A column.
   *
   * @param head heading, with the unit where cells are numbers
   * @param width width in characters
   */
  record Head(String head, double width) {}

  /**
   * A sheet.
   *
   * @param name name on its tab
   * @param heads columns
   * @param rows cells, each a String or a Number; empty cells are empty strings
   */
  record Sheet(String name, List<Head> heads, List<List<Object>> rows) {}

  private Book() {}

  static byte[] of(List<Sheet> sheets) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "Loomwright", "1.0")) {
      Set<String> names = new HashSet<>();
      for (Sheet sheet : sheets) {
        write(book.newWorksheet(name(sheet.name(), names)), sheet);
      }
    }
    return steady(bytes.toByteArray());
  }

  private static void write(Worksheet page, Sheet sheet) {
    for (int column = 0; column < sheet.heads().size(); column++) {
      page.value(0, column, sheet.heads().get(column).head());
      page.width(column, sheet.heads().get(column).width());
    }
    page.range(0, 0, 0, sheet.heads().size() - 1)
        .style()
        .bold()
        .wrapText(true)
        .verticalAlignment("bottom")
        .fillColor("E4E4E4")
        .set();
    page.freezePane(0, 1);
    page.repeatRows(0);
    page.pageOrientation("landscape");
    page.fitToWidth((short) 1);
    page.fitToHeight((short) 0);
    for (int row = 0; row < sheet.rows().size(); row++) {
      List<Object> cells = sheet.rows().get(row);
      for (int column = 0; column < cells.size(); column++) {
        Object cell = cells.get(column);
        if (cell instanceof Number number) {
          page.value(row + 1, column, number);
        } else if (!cell.toString().isEmpty()) {
          page.value(row + 1, column, cell.toString());
          page.style(row + 1, column).wrapText(true).verticalAlignment("top").set();
        }
      }
    }
  }

  /** A name a spreadsheet accepts, no two alike. */
  private static String name(String wanted, Set<String> taken) {
    String plain = wanted.replaceAll("[\\[\\]:*?/\\\\\\p{Cntrl}]", "-").replaceAll("^'|'$", "-");
    String base = plain.isBlank() ? "sheet" : cut(plain, LONGEST_NAME);
    String name = base;
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      String ending = " " + i;
      name = cut(base, LONGEST_NAME - ending.length()) + ending;
    }
    return name;
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most);
  }

  /**
   * The same archive with fixed times, so that equal content is an equal file. Goes by way of a
   * temporary file, because sizes stand behind the entries and only the archive's directory tells
   * them.
   */
  private static byte[] steady(byte[] book) throws IOException {
    Path file = Files.createTempFile("book", ".xlsx");
    try {
      Files.write(file, book);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ZipFile in = new ZipFile(file.toFile());
          ZipOutputStream out = new ZipOutputStream(bytes)) {
        for (ZipEntry entry : Collections.list(in.entries())) {
          ZipEntry same = new ZipEntry(entry.getName());
          same.setTimeLocal(FIXED);
          out.putNextEntry(same);
          try (InputStream content = in.getInputStream(entry)) {
            out.write(steady(entry.getName(), content.readAllBytes()));
          }
          out.closeEntry();
        }
      }
      return bytes.toByteArray();
    } finally {
      Files.delete(file);
    }
  }

  private static byte[] steady(String name, byte[] content) {
    return name.equals("docProps/core.xml")
        ? new String(content, StandardCharsets.UTF_8)
            .replaceAll("(<dcterms:created[^>]*>)[^<]*", "$1" + FIXED_TEXT)
            .getBytes(StandardCharsets.UTF_8)
        : content;
  }
}
