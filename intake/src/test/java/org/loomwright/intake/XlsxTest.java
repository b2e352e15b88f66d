package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class XlsxTest {

  private static byte[] book(Consumer<XSSFWorkbook> fill) {
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      fill.accept(book);
      book.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static byte[] sheet(List<List<String>> rows) {
    return book(
        book -> {
          Sheet sheet = book.createSheet("pins");
          for (int i = 0; i < rows.size(); i++) {
            Row row = sheet.createRow(i);
            for (int j = 0; j < rows.get(i).size(); j++) {
              if (!rows.get(i).get(j).isEmpty()) {
                row.createCell(j).setCellValue(rows.get(i).get(j));
              }
            }
          }
        });
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> cell =
        Arbitraries.strings()
            .withChars('a', 'Z', '0', ' ', ',', '<', '&', '"', '\n', 'µ', '²')
            .ofMaxLength(6)
            .map(CellText::clean);
    return cell.list().ofMinSize(1).ofMaxSize(6).list().ofMinSize(1).ofMaxSize(8);
  }

  @Property(tries = 60)
  void whatAnotherLibraryWritesIsReadBack(@ForAll("tables") List<List<String>> rows) {
    Reading reading = PastedTable.read(sheet(rows), Optional.of("pins"));
    List<PastedTable.Row> kept = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> cells = PastedTable.trimmed(rows.get(i));
      if (!cells.isEmpty()) {
        kept.add(new PastedTable.Row(i + 1, cells));
      }
    }
    if (kept.isEmpty()) {
      assertThat(reading).isInstanceOf(Reading.Bad.class);
    } else {
      assertThat(Van.table(reading)).isEqualTo(new PastedTable(TableForm.XLSX, kept, List.of()));
    }
  }

  @Test
  void numbersFormulasAndMergedCellsAreReadAsSeen() {
    byte[] file =
        book(
            book -> {
              book.createSheet("cover").createRow(0).createCell(0).setCellValue("cover");
              Sheet sheet = book.createSheet("pins");
              Row first = sheet.createRow(3);
              first.createCell(0).setCellValue(7);
              first.createCell(1).setCellValue(0.1 + 0.2);
              first.createCell(2).setCellFormula("A4+1");
              first.createCell(3).setCellFormula("\"RD\"&\"WH\"");
              first.createCell(4).setCellValue("lamps");
              first.createCell(5).setCellValue(true);
              Row second = sheet.createRow(4);
              second.createCell(0).setCellValue(8);
              sheet.addMergedRegion(new CellRangeAddress(3, 4, 4, 4));
              book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            });
    PastedTable table = Van.table(PastedTable.read(file, Optional.of("pins")));
    assertThat(table.row(4).orElseThrow().cells())
        .containsExactly("7", "0.3", "8", "RDWH", "lamps", "TRUE");
    assertThat(table.row(5).orElseThrow().cells()).containsExactly("8", "", "", "", "lamps");
    assertThat(Van.table(PastedTable.read(file, Optional.empty())).rows().get(0).cells())
        .containsExactly("cover");
    assertThat(PastedTable.read(file, Optional.of("pns")))
        .isEqualTo(new Reading.Bad("there is no sheet 'pns'; did you mean 'pins'?"));
  }

  @Test
  void aFormulaWithoutItsValueIsAProblemAtItsCell() {
    byte[] file =
        book(
            book -> {
              Row row = book.createSheet("pins").createRow(1);
              row.createCell(0).setCellValue("x");
              row.createCell(1).setCellFormula("1+1");
            });
    PastedTable table = Van.table(PastedTable.read(file, Optional.empty()));
    assertThat(table.remarks().stream().map(CellRemark::words).toList())
        .containsExactly(
            "B2: a formula stands here without its value; open the file in a spreadsheet program,"
                + " save it again, or type the value");
  }

  @Property(tries = 200)
  void damagedSheetsAreReadOrRefusedInWords(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    java.util.Map<String, byte[]> parts =
        SafeZip.parts(sheet(List.of(List.of("1", "red"), List.of("2", "blue"))));
    List<byte[]> all = new ArrayList<>(parts.values());
    for (int i = 0; i < 3; i++) {
      byte[] part = all.get(random.nextInt(all.size()));
      String letters = "<>\"&0A9 /=Z\u0000";
      part[random.nextInt(part.length)] = (byte) letters.charAt(random.nextInt(letters.length()));
    }
    DelimitedTest.assertDescribed(PastedTable.read(SafeZip.packed(parts), Optional.empty()));
  }

  @Test
  void cellsFarOutAskForNoMemory() throws IOException {
    for (String[] change :
        new String[][] {
          {"r=\"B1\"", "r=\"ZZZZZZ1\""},
          {"r=\"B1\"", "r=\"ZZZ1\""},
          {"row r=\"1\"", "row r=\"2000000000\""},
          {"uniqueCount=\"2\"", "uniqueCount=\"2000000000\""}
        }) {
      java.util.Map<String, byte[]> parts = SafeZip.parts(sheet(List.of(List.of("1", "red"))));
      parts.replaceAll(
          (name, xml) ->
              new String(xml, java.nio.charset.StandardCharsets.UTF_8)
                  .replace(change[0], change[1])
                  .getBytes(java.nio.charset.StandardCharsets.UTF_8));
      DelimitedTest.assertDescribed(PastedTable.read(SafeZip.packed(parts), Optional.empty()));
    }
  }

  @Property(tries = 300)
  void damagedFilesAreRefusedInWords(@ForAll long seed) {
    byte[] file = sheet(List.of(List.of("1", "red"), List.of("2", "blue")));
    Random random = new Random(seed);
    int cuts = 1 + random.nextInt(6);
    for (int i = 0; i < cuts; i++) {
      file[random.nextInt(file.length)] = (byte) random.nextInt(256);
    }
    byte[] cut =
        java.util.Arrays.copyOf(
            file, random.nextInt(4) == 0 ? random.nextInt(file.length) : file.length);
    DelimitedTest.assertDescribed(PastedTable.read(cut, Optional.empty()));
  }

  @Property(tries = 200)
  void anyBytesAreRefusedInWords(@ForAll byte[] bytes) {
    DelimitedTest.assertDescribed(PastedTable.read(bytes, Optional.empty()));
  }

  @Test
  void bombsAreRefusedBeforeTheyUnpack() throws IOException {
    assertThat(words(zip(1, 200 << 20))).contains("unpacks to more than 48 MB");
    assertThat(words(zip(2000, 10))).contains("more than 1000 parts");
    assertThat(words(new byte[Limits.FILE_BYTES + 1])).contains("more than 8 MB");
  }

  @Test
  void outsideEntitiesAreNotFollowed() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (String name :
          List.of(
              "xl/workbook.xml",
              "[Content_Types].xml",
              "_rels/.rels",
              "xl/_rels/workbook.xml.rels")) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(
            ("<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/hostname\">"
                    + "<!ENTITY c \"&b;&b;&b;\">]><workbook>&c;</workbook>")
                .getBytes(java.nio.charset.StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    assertThat(words(out.toByteArray())).contains("can't be read as XLSX");
  }

  private static String words(byte[] file) {
    return ((Reading.Bad) PastedTable.read(file, Optional.empty())).message();
  }

  private static byte[] zip(int entries, int size) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] block = new byte[1 << 16];
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int i = 0; i < entries; i++) {
        zip.putNextEntry(new ZipEntry("xl/part" + i + ".xml"));
        for (int left = size; left > 0; left -= block.length) {
          zip.write(block, 0, Math.min(left, block.length));
        }
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }
}
