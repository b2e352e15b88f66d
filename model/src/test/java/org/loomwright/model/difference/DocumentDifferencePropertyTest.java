package org.loomwright.model.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.loomwright.model.difference.Planter.Planted;
import org.loomwright.model.json.JsonText;
import tools.jackson.databind.JsonNode;

/** Whatever is changed is told, once, and nothing else. */
class DocumentDifferencePropertyTest {
  private static final List<JsonNode> DEMO =
      List.of(
          demo("van.vehicle.json"),
          demo("heater.equipment.json"),
          demo("trailer-socket.equipment.json"),
          demo("crew-comfort.kit.json"),
          demo("parts.parts.json"),
          demo("rules.rules.json"));

  @Property(tries = 300)
  void everyPlantedEditIsToldOnceAndNothingElse(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 6) int count) {
    Random random = new Random(seed);
    JsonNode before = DEMO.get(random.nextInt(DEMO.size()));
    JsonNode after = before.deepCopy();
    List<Planted> planted = Planter.plant(after, count, random);
    List<Difference> found = DocumentDifference.between(before, after);
    assertThat(found.stream().map(it -> new Planted(it.path(), it.kind())))
        .containsExactlyInAnyOrderElementsOf(planted);
    found.forEach(DocumentDifferencePropertyTest::isFitToRead);
  }

  @Property(tries = 1000)
  void equalTreesHaveNoDifference(@ForAll long seed) {
    Random random = new Random(seed);
    String text = RandomTrees.text(random, 4);
    assertThat(DocumentDifference.between(tree(text), tree(text))).isEmpty();
  }

  @Property(tries = 2000)
  void unequalTreesHaveOne(@ForAll long seed) {
    Random random = new Random(seed);
    JsonNode before = tree(RandomTrees.text(random, 4));
    JsonNode after = tree(RandomTrees.text(random, 4));
    List<Difference> found = DocumentDifference.between(before, after);
    assertThat(found.isEmpty()).isEqualTo(before.equals(after));
    found.forEach(DocumentDifferencePropertyTest::isFitToRead);
  }

  /**
   * Small changes of wild trees: lists that are keyed on one side only, keys twice, other types.
   */
  @Property(tries = 2000)
  void changedWildTreesHaveOne(@ForAll long seed, @ForAll @IntRange(min = 1, max = 3) int edits) {
    Random random = new Random(seed);
    JsonNode before = tree(RandomTrees.text(random, 5));
    JsonNode changed = before.deepCopy();
    for (int i = 0; i < edits; i++) {
      RandomTrees.change(changed, random);
    }
    JsonNode after = tree(changed.toString());
    List<Difference> found = DocumentDifference.between(before, after);
    assertThat(found.isEmpty()).isEqualTo(before.equals(after));
    found.forEach(DocumentDifferencePropertyTest::isFitToRead);
    assertThat(DocumentDifference.between(after, before).isEmpty()).isEqualTo(found.isEmpty());
  }

  private static void isFitToRead(Difference difference) {
    assertThat(difference.words()).isNotBlank().doesNotContain("{", "}", "\n", "null,");
    assertThat(difference.words().length()).isLessThan(600);
    difference.before().ifPresent(it -> assertThat(it).doesNotContain("{", "}"));
    difference.after().ifPresent(it -> assertThat(it).doesNotContain("{", "}"));
    String kind = difference.kind().name().toLowerCase(Locale.ROOT);
    assertThat(
            difference.before().isPresent()
                || difference.after().isPresent()
                || kind.equals("moved"))
        .isTrue();
  }

  private static JsonNode demo(String file) {
    try {
      return tree(Files.readString(Path.of("..", "demo", file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode tree(String text) {
    if (JsonText.parse(text) instanceof JsonText.Tree tree) {
      return tree.node();
    }
    throw new IllegalStateException("not JSON: " + text);
  }
}
