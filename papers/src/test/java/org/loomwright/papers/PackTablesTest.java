package org.loomwright.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads lists, workbooks and result back with other readers and compares them with the plan. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PackTablesTest {
  private final Plan plan = SamplePlan.troubled();
  private List<Path> files = List.of();

  @BeforeAll
  void write(@TempDir Path folder) throws Exception {
    Locale before = Locale.getDefault();
    try {
      // A comma for a point would show at once.
      Locale.setDefault(Locale.GERMANY);
      files = PackWriter.write(SamplePlan.order(), plan, folder);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void listsEveryLeadAsText() throws Exception {
    byte[] bytes = Files.readAllBytes(files.get(2));
    List<List<String>> rows = parse(new String(bytes, StandardCharsets.UTF_8));

    assertThat(bytes[0]).isEqualTo((byte) 'l');
    assertThat(rows).hasSize(plan.design().leads().size() + 1);
    assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
    List<String> head = rows.get(0);
    for (int i = 0; i < plan.design().leads().size(); i++) {
      Lead lead = plan.design().leads().get(i);
      List<String> row = rows.get(i + 1);
      assertThat(row.get(head.indexOf("lead"))).isEqualTo(lead.id());
      assertThat(row.get(head.indexOf("for"))).isEqualTo(lead.what());
      assertThat(row.get(head.indexOf("wire"))).isEqualTo(lead.wire());
      assertThat(row.get(head.indexOf("colour code"))).isEqualTo(lead.colour().code());
      assertThat(Double.parseDouble(row.get(head.indexOf("area mm2")))).isEqualTo(lead.areaMm2());
      assertThat(Double.parseDouble(row.get(head.indexOf("cut mm")))).isEqualTo(lead.cutMm());
      assertThat(Double.parseDouble(row.get(head.indexOf("tolerance rss mm"))))
          .isEqualTo(lead.toleranceRssMm());
    }
    assertThat(rows.get(1).get(head.indexOf("end A otherwise")))
        .isEqualTo(
            "end A, case A2: cut off, then spliced into the factory auxiliary feed\n"
                + "end A, case A3: park at left B-pillar foot, cap CAP-1");
  }

  @Test
  void keepsASpreadsheetFromRunningALabel() throws Exception {
    List<List<String>> rows = parse(Files.readString(files.get(2)));

    assertThat(rows.get(4).get(0)).isEqualTo("'=S2");
  }

  @Test
  void writesTheCutListInBenchOrderWithRealNumbers() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook(files.get(3).toFile())) {
      Sheet sheet = book.getSheetAt(0);
      List<String> head = texts(sheet.getRow(0));

      assertThat(sheet.getLastRowNum()).isEqualTo(plan.design().leads().size());
      assertThat(head).startsWith("label", "wire").contains("cut mm", "strip A mm", "tool B");
      assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 1);
      assertThat(column(sheet, head, "label")).containsExactly("=S2", "S1 <&\"'", "H2", "H1");
      Row feed = sheet.getRow(4);
      assertThat(number(feed, head, "cut mm")).isEqualTo(2605);
      assertThat(number(feed, head, "strip A mm")).isEqualTo(6);
      assertThat(text(feed, head, "terminal A")).isEqualTo("T-630");
      assertThat(number(feed, head, "crimp height B mm")).isEqualTo(1.85);
      assertThat(text(feed, head, "colour")).isEqualTo("red");
      assertThat(text(sheet.getRow(2), head, "seal B")).isEqualTo("S-15");
      assertThat(sheet.getRow(1).getCell(0).getCellType()).isEqualTo(CellType.STRING);
    }
  }

  @Test
  void writesEachPartsListCellByCell() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook(files.get(4).toFile())) {
      List<PartNumber> numbers = plan.design().partNumbers();
      assertThat(book.getNumberOfSheets()).isEqualTo(numbers.size() + 1);
      assertThat(book.getSheetName(2)).hasSizeLessThanOrEqualTo(31);
      for (int i = 0; i < numbers.size(); i++) {
        PartNumber number = numbers.get(i);
        Row summary = book.getSheetAt(0).getRow(i + 1);
        assertThat(summary.getCell(0).getStringCellValue()).isEqualTo(number.id());
        assertThat(summary.getCell(6).getNumericCellValue())
            .isEqualTo(number.material().doubleValue());
        Sheet sheet = book.getSheetAt(i + 1);
        for (int k = 0; k < number.parts().size(); k++) {
          PartLine line = number.parts().get(k);
          Row row = sheet.getRow(k + 1);
          assertThat(row.getCell(0).getStringCellValue()).isEqualTo(line.part());
          assertThat(row.getCell(1).getStringCellValue()).isEqualTo(line.name());
          assertThat(row.getCell(2).getNumericCellValue()).isEqualTo(line.quantity());
          assertThat(row.getCell(4).getNumericCellValue()).isEqualTo(line.buy());
          assertThat(row.getCell(5).getNumericCellValue())
              .isEqualTo(line.unitPrice().doubleValue());
          assertThat(row.getCell(6).getNumericCellValue()).isEqualTo(line.total().doubleValue());
        }
      }
    }
  }

  @Test
  void writesTheWholePlanAsJson() throws Exception {
    JsonNode root = new JsonMapper().readTree(files.get(files.size() - 1).toFile());

    assertThat(root.path("kind").asString()).isEqualTo("plan");
    assertThat(root.path("format").asInt()).isEqualTo(1);
    assertThat(root.path("releasable").asBoolean()).isFalse();
    assertThat(root.path("kit").path("id").asString()).isEqualTo("heat-07");
    assertThat(root.path("builds").path("possible").asInt()).isEqualTo(1152);
    JsonNode lead = root.path("design").path("leads").path(0);
    assertThat(lead.path("colour").asString()).isEqualTo("red");
    assertThat(lead.path("a").propertyNames()).containsExactly("place", "uses");
    JsonNode landing = lead.path("a").path("uses").path(1).path("landing");
    assertThat(landing.path("kind").asString()).isEqualTo("into-circuit");
    assertThat(landing.path("circuit").asString()).isEqualTo("aux-feed");
    assertThat(root.path("ways").path(0).path("undo").asString()).isEqualTo("special-tool");
    assertThat(root.path("cases").path(0).path("when").asString())
        .isEqualTo(plan.cases().get(0).when().text());
    JsonNode step = root.path("guide").path("steps").path(6);
    assertThat(step.path("act").path("kind").asString()).isEqualTo("land");
    assertThat(step.path("act").path("landing").path("kind").asString()).isEqualTo("in-slot");
    assertThat(step.path("live").asBoolean()).isFalse();
    assertThat(root.path("gap").path(1).path("words").asString()).contains(SamplePlan.FORGED);
    assertThat(root.path("checks")).hasSameSizeAs(plan.checks());
    assertThat(root.path("design").path("partNumbers").path(0).path("material").asString())
        .isEqualTo("5.06");
    assertThat(root.propertyNames())
        .containsSubsequence("kit", "builds", "gap", "fit", "ways", "cases", "guide", "proof");
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    for (Cell cell : row) {
      texts.add(cell.getStringCellValue());
    }
    return texts;
  }

  private static List<String> column(Sheet sheet, List<String> head, String name) {
    List<String> texts = new ArrayList<>();
    for (int i = 1; i <= sheet.getLastRowNum(); i++) {
      texts.add(text(sheet.getRow(i), head, name));
    }
    return texts;
  }

  private static String text(Row row, List<String> head, String name) {
    return row.getCell(head.indexOf(name)).getStringCellValue();
  }

  private static double number(Row row, List<String> head, String name) {
    return row.getCell(head.indexOf(name)).getNumericCellValue();
  }

  /** RFC 4180, character by character. */
  private static List<List<String>> parse(String csv) {
    assertThat(csv).endsWith("\r\n");
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < csv.length(); i++) {
      char c = csv.charAt(i);
      if (quoted && c == '"' && i + 1 < csv.length() && csv.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && c == ',') {
        row.add(cell.toString());
        cell.setLength(0);
      } else if (!quoted && c == '\r') {
        assertThat(csv.charAt(++i)).isEqualTo('\n');
        row.add(cell.toString());
        cell.setLength(0);
        rows.add(List.copyOf(row));
        row.clear();
      } else {
        cell.append(c);
      }
    }
    return rows;
  }
}
