package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Whatever is done to good documents, reading never throws and never stays silent about nothing.
 */
class MutationTest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** With all that a face can say of itself. */
  private static final Small FACES =
      Small.workspace()
          .with(
              "parts/bench-parts.json",
              "\"sealed\": true,",
              """
              "sealed": true, "lockEdge": "left", "latchForm": {"x": "9 mm", "width": "6 mm"},
              "keys": [{"form": "rib", "x": "2 mm", "y": "0 mm", "width": "1 mm", "height": "2 mm"}],
              """)
          .with(
              "alder-van.json",
              "\"housing\": \"HS-4\",",
              """
              "housing": "HS-4", "photo": {"file": "face.png", "side": "wire-side", "points": [
                {"cavity": "1", "x": 120, "y": 100}, {"cavity": "2", "x": 320, "y": 100},
                {"cavity": "3", "x": 120, "y": 220}, {"corner": "bottom-right", "x": 440, "y": 320},
                {"cavity": "4", "x": 320, "y": 221}]},
              """)
          .plus(FindingChecksTest.FILE, FindingChecksTest.OPEN)
          .plus(JobChecksTest.FILE, JobChecksTest.OPEN)
          .plus(BatchChecksTest.FILE, BatchChecksTest.BATCH);

  @Property(tries = 500)
  void mutatedDocumentsGiveAWorkspaceOrProblems(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int edits) {
    Random random = new Random(seed);
    List<NamedText> texts = new ArrayList<>(FACES.texts());
    for (int i = 0; i < edits; i++) {
      int at = random.nextInt(texts.size());
      NamedText text = texts.get(at);
      JsonNode tree = MAPPER.readTree(text.text());
      mutate(tree, random);
      texts.set(at, new NamedText(text.name(), MAPPER.writeValueAsString(tree)));
    }
    check(texts);
  }

  @Property(tries = 300)
  void damagedTextsGiveAWorkspaceOrProblems(@ForAll long seed) {
    Random random = new Random(seed);
    List<NamedText> texts = new ArrayList<>(FACES.texts());
    int at = random.nextInt(texts.size());
    StringBuilder text = new StringBuilder(texts.get(at).text());
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      int place = random.nextInt(text.length());
      switch (random.nextInt(3)) {
        case 0 -> text.deleteCharAt(place);
        case 1 -> text.insert(place, (char) random.nextInt(0x2100));
        default -> text.setLength(Math.max(1, place));
      }
    }
    texts.set(at, new NamedText(texts.get(at).name(), text.toString()));
    check(texts);
  }

  private static void check(List<NamedText> texts) {
    Read read = WorkspaceReader.read(texts);
    Statistics.label("outcome").collect(read.getClass().getSimpleName());
    if (read instanceof Read.Bad bad) {
      assertThat(bad.problems()).isNotEmpty();
      for (Problem problem : bad.problems()) {
        assertThat(problem.message())
            .isNotBlank()
            .doesNotContain("Exception", "\n", "org.loomwright");
        assertThat(problem.document()).isNotBlank();
      }
    } else {
      Workspace workspace = ((Read.Good) read).workspace();
      // A workspace without problems must be fit for planning.
      workspace
          .kits()
          .forEach(
              kit ->
                  assertThat(KitOrders.resolve(workspace, kit.id()))
                      .isInstanceOf(KitOrders.Found.class));
    }
  }

  private static void mutate(JsonNode tree, Random random) {
    List<JsonNode> holders = new ArrayList<>();
    collect(tree, holders);
    JsonNode holder = holders.get(random.nextInt(holders.size()));
    if (holder instanceof ObjectNode object && !object.isEmpty()) {
      List<String> keys = new ArrayList<>(object.propertyNames());
      String key = keys.get(random.nextInt(keys.size()));
      switch (random.nextInt(3)) {
        case 0 -> object.remove(key);
        case 1 -> object.set(key, other(random));
        default -> object.set(key + "x", object.remove(key));
      }
    } else if (holder instanceof ArrayNode array && !array.isEmpty()) {
      int at = random.nextInt(array.size());
      switch (random.nextInt(3)) {
        case 0 -> array.remove(at);
        case 1 -> array.set(at, other(random));
        default -> array.add(array.get(at).deepCopy());
      }
    }
  }

  private static void collect(JsonNode node, List<JsonNode> holders) {
    if (node.isContainer()) {
      holders.add(node);
      node.forEach(child -> collect(child, holders));
    }
  }

  private static JsonNode other(Random random) {
    List<String> texts =
        List.of(
            "",
            "unknown",
            "never",
            "seats = bench",
            "0 mm",
            "-3 A",
            "12 V",
            "rear",
            "floor",
            "main",
            "ground rear-stud",
            "no",
            "\u0000",
            "x y z",
            "1e400",
            "rear-connector",
            "alder-van");
    return switch (random.nextInt(8)) {
      case 0 -> NODES.nullNode();
      case 1 -> NODES.booleanNode(random.nextBoolean());
      case 2 -> NODES.numberNode(random.nextInt());
      case 3 -> NODES.numberNode(random.nextDouble());
      case 4 -> NODES.arrayNode().add("a");
      case 5 -> NODES.objectNode().put("id", "a");
      default -> NODES.stringNode(texts.get(random.nextInt(texts.size())));
    };
  }
}
