package org.loomwright.drawing.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Reads the file back with a small reader of its own: pairs of group code and value. */
class BoardDxfTest {
  private static final BoardTree TREE = Trees.random(11, 18);
  private static final BoardPlan PLAN = BoardLayout.of(TREE, Board.of(2000, 1000));

  /** An entity: its type, and its values by group code. */
  private record Entity(String type, Map<Integer, String> values) {
    double number(int code) {
      return Double.parseDouble(values.getOrDefault(code, "missing"));
    }

    String layer() {
      return values.getOrDefault(8, "");
    }
  }

  @Test
  void branchesReadBackAreAsLongAsTheyAre() {
    double sum = 0;
    for (BoardPlan.Sheet sheet : PLAN.sheets()) {
      for (Entity entity : entities(BoardDxf.of(PLAN, sheet, BoardWords.NONE))) {
        if (entity.layer().equals("BRANCHES")) {
          assertThat(entity.type()).isEqualTo("LINE");
          sum +=
              Math.hypot(
                  entity.number(10) - entity.number(11), entity.number(20) - entity.number(21));
          assertThat(entity.number(10)).isBetween(0.0, 2000.0);
          assertThat(entity.number(20)).isBetween(0.0, 1000.0);
        }
      }
    }
    assertThat(sum)
        .isCloseTo(
            TREE.branches().stream().mapToDouble(BoardTree.Branch::lengthMm).sum(), within(0.01));
  }

  @Test
  void pegsAreCirclesAndUpIsUp() {
    BoardPlan.Sheet sheet = PLAN.sheets().get(0);
    List<Entity> pegs =
        entities(BoardDxf.of(PLAN, sheet, BoardWords.NONE)).stream()
            .filter(entity -> entity.layer().equals("PEGS"))
            .toList();
    assertThat(pegs).hasSameSizeAs(sheet.pegs()).allMatch(peg -> peg.type().equals("CIRCLE"));
    assertThat(pegs.get(0).number(20))
        .isCloseTo(1000 - sheet.pegs().get(0).at().yMm(), within(1e-6));
  }

  @Test
  void textsAreAscii() {
    String dxf = BoardDxf.of(PLAN, PLAN.sheets().get(0), BoardWords.NONE);
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(dxf)).isTrue();
    assertThat(entities(dxf))
        .filteredOn(entity -> entity.type().equals("TEXT"))
        .extracting(entity -> entity.values().get(1))
        .contains("J1")
        .anyMatch(text -> text.contains("2000 \\U+00D7 1000 mm"));
  }

  @Test
  void layersUsedAreDeclared() {
    String dxf = BoardDxf.of(PLAN, PLAN.sheets().get(0), BoardWords.NONE);
    List<String> layers = entities(dxf).stream().map(Entity::layer).distinct().toList();
    assertThat(layers).isNotEmpty();
    for (String layer : layers) {
      assertThat(dxf).contains("LAYER\r\n  2\r\n" + layer + "\r\n");
    }
  }

  private static List<Entity> entities(String dxf) {
    String[] lines = dxf.split("\r\n", -1);
    assertThat(lines.length % 2).as("pairs and an empty rest").isEqualTo(1);
    List<Entity> entities = new ArrayList<>();
    boolean isIn = false;
    String before = "";
    for (int i = 0; i + 1 < lines.length; i += 2) {
      int code = Integer.parseInt(lines[i].trim());
      String value = lines[i + 1];
      if (code == 0 && value.equals("ENDSEC")) {
        isIn = false;
      } else if (code == 0 && isIn) {
        entities.add(new Entity(value, new LinkedHashMap<>()));
      } else if (isIn) {
        entities.get(entities.size() - 1).values().put(code, value);
      } else if (code == 2 && before.equals("SECTION")) {
        isIn = value.equals("ENTITIES");
      }
      before = value;
    }
    assertThat(lines[lines.length - 2]).isEqualTo("EOF");
    return entities;
  }
}
