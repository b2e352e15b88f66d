package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class BookTest {
  private static byte[] book(Consumer<XSSFWorkbook> fill) {
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      fill.accept(book);
      book.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void sheet(XSSFWorkbook book, String name, String cell) {
    book.createSheet(name).createRow(2).createCell(1).setCellValue(cell);
  }

  @Test
  void sheetsWithATableAreFoundInOrder() {
    Book read =
        Book.read(
            book(
                it -> {
                  it.createSheet("Empty");
                  sheet(it, "Pins & more", "pin");
                  sheet(it, "Fuses", "F7");
                }));
    assertThat(read).isInstanceOf(Book.Good.class);
    assertThat(((Book.Good) read).sheets())
        .extracting(Book.Sheet::name)
        .containsExactly("Pins & more", "Fuses");
    assertThat(((Book.Good) read).sheets().get(1).table().row(3).orElseThrow().text(1))
        .isEqualTo("F7");
  }

  @Test
  void whatHoldsNoTableIsRefusedInWords() {
    assertThat(Book.read(book(it -> it.createSheet("Empty"))))
        .isEqualTo(
            new Book.Bad("there is nothing in it; copy the rows of the table and paste again"));
    assertThat(Book.read("pin,colour".getBytes(StandardCharsets.UTF_8)))
        .asString()
        .contains("not an XLSX file");
    assertThat(Book.read(new byte[] {'P', 'K', 3, 4, 9, 9})).isInstanceOf(Book.Bad.class);
    Book many =
        Book.read(
            book(
                it -> {
                  for (int i = 0; i <= Book.MOST_SHEETS; i++) {
                    sheet(it, "s" + i, "x");
                  }
                }));
    assertThat(many).asString().contains("31 sheets; at most 30");
  }
}
