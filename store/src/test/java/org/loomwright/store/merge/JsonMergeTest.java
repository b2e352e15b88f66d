package org.loomwright.store.merge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.json.JsonText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Nothing of either edit is lost: it is in the merged tree, or there is a clash. */
class JsonMergeTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"a":1,"b":1}|{"a":2,"b":1}|{"a":1,"b":3}|{"a":2,"b":3}
          {"a":1}|{"a":1,"x":1}|{"a":1,"y":1}|{"a":1,"x":1,"y":1}
          {"a":1,"b":1}|{"b":1}|{"a":1}|{}
          {"a":1}|{"a":2}|{"a":2}|{"a":2}
          {"l":[1,2]}|{"l":[1,2,3]}|{"l":[1,2]}|{"l":[1,2,3]}
          {"l":[{"id":"p","v":1},{"id":"q","v":1}]}|{"l":[{"id":"p","v":2},{"id":"q","v":1}]}|{"l":[{"id":"p","v":1},{"id":"q","v":3}]}|{"l":[{"id":"p","v":2},{"id":"q","v":3}]}
          {"l":[{"id":"p"},{"id":"q"}]}|{"l":[{"id":"p"},{"id":"n"},{"id":"q"}]}|{"l":[{"id":"q"}]}|{"l":[{"id":"n"},{"id":"q"}]}
          {"l":[{"number":1},{"number":2}]}|{"l":[{"number":2},{"number":1}]}|{"l":[{"number":1},{"number":2,"v":1},{"number":3}]}|{"l":[{"number":2,"v":1},{"number":3},{"number":1}]}
          {"l":[{"cavity":"1"}]}|{"l":[{"cavity":"1"},{"cavity":"3"}]}|{"l":[{"cavity":"1"},{"cavity":"2"}]}|{"l":[{"cavity":"1"},{"cavity":"2"},{"cavity":"3"}]}
          {"done":["a","b"]}|{"done":["a","b","d"]}|{"done":["b","c"]}|{"done":["b","c","d"]}
          {"done":["a"]}|{"done":["b"]}|{"done":["c"]}|{"done":["b","c"]}
          {"l":[{"serial":"1"}]}|{"l":[{"serial":"1"},{"serial":"3"}]}|{"l":[{"serial":"1","v":2}]}|{"l":[{"serial":"1","v":2},{"serial":"3"}]}
          {"l":[{"reading":"rest","value":"1"}]}|{"l":[{"reading":"rest","value":"2"}]}|{"l":[{"reading":"rest","value":"1"},{"reading":"off","value":"3"}]}|{"l":[{"reading":"rest","value":"2"},{"reading":"off","value":"3"}]}
          """)
  void bothEditsAreKept(String base, String one, String two, String merged) {
    assertThat(clean(base, one, two).toString()).isEqualTo(merged);
    assertThat(clean(base, two, one).toString()).isEqualTo(merged);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"a":1}|{"a":2}|{"a":3}|a
          {"a":1}|{}|{"a":3}|a
          {}|{"a":1}|{"a":2}|a
          {"l":[1,2]}|{"l":[1,2,3]}|{"l":[0,1,2]}|l
          {"l":[{"id":"p","v":1}]}|{"l":[]}|{"l":[{"id":"p","v":2}]}|l[id="p"]
          {"l":[{"id":"p","v":1}]}|{"l":[{"id":"p","v":3}]}|{"l":[{"id":"p","v":2}]}|l[id="p"].v
          {"l":[{"id":"p"},{"id":"q"},{"id":"r"}]}|{"l":[{"id":"q"},{"id":"p"},{"id":"r"}]}|{"l":[{"id":"p"},{"id":"r"},{"id":"q"}]}|l
          {"l":[{"id":"p"},{"id":"p"}]}|{"l":[{"id":"p"}]}|{"l":[]}|l
          {"l":["a","a"]}|{"l":["a"]}|{"l":["a","a","b"]}|l
          {"l":["a"]}|{"l":["b"]}|{"l":["c"]}|l
          {"passes":["a","b"]}|{"passes":["a","b","d"]}|{"passes":["a","b","c"]}|passes
          {"done":["a","a"]}|{"done":["a"]}|{"done":["a","a","b"]}|done
          """)
  void editsOfTheSamePartClash(String base, String one, String two, String path) {
    for (var result : List.of(merge(base, one, two), merge(base, two, one))) {
      assertThat(result).isInstanceOf(JsonMerge.Clashing.class);
      assertThat(((JsonMerge.Clashing) result).clashes())
          .extracting(Clash::path)
          .containsExactly(path);
    }
  }

  @Test
  void aClashHoldsAllThreeTexts() {
    var result = (JsonMerge.Clashing) merge("{\"a\":1}", "{}", "{\"a\":[3]}");
    assertThat(result.clashes())
        .containsExactly(
            new Clash(
                "a",
                java.util.Optional.of("1"),
                java.util.Optional.empty(),
                java.util.Optional.of("[3]")));
  }

  /** Two people edit different items or keys: all of both is there, whoever saved first. */
  @Property(tries = 500)
  void editsOfDifferentPartsMergeToBoth(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int parts) {
    Random random = new Random(seed);
    ObjectNode base = document(parts, random);
    ObjectNode one = base.deepCopy();
    ObjectNode two = base.deepCopy();
    ObjectNode both = base.deepCopy();
    for (int part = 0; part < parts; part++) {
      int who = random.nextInt(3);
      int what = random.nextInt(5);
      if (who == 0) {
        edit(one, part, what);
        edit(both, part, what);
      } else if (who == 1) {
        edit(two, part, what);
        edit(both, part, what);
      }
    }
    JsonNode merged = clean(base, one, two);
    assertThat(merged).isEqualTo(clean(base, two, one));
    assertThat(asSets(merged)).isEqualTo(asSets(both));
    // And nothing changes when the same is merged once more.
    assertThat(clean(base, merged, one)).isEqualTo(merged);
  }

  /** One same part edited in two ways: always a clash that names it. */
  @Property(tries = 300)
  void editsOfOnePartAlwaysClash(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int parts) {
    Random random = new Random(seed);
    ObjectNode base = document(parts, random);
    ObjectNode one = base.deepCopy();
    ObjectNode two = base.deepCopy();
    int part = random.nextInt(parts);
    ((ObjectNode) item(one, part)).put("length", "1 mm");
    if (random.nextBoolean()) {
      ((ObjectNode) item(two, part)).put("length", "2 mm");
    } else {
      edit(two, part, 2);
    }
    var result = JsonMerge.merge(base, one, two);
    assertThat(result).isInstanceOf(JsonMerge.Clashing.class);
    assertThat(((JsonMerge.Clashing) result).clashes().get(0).path())
        .startsWith("runs[id=\"r" + part + "\"]");
  }

  private static ObjectNode document(int parts, Random random) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    ObjectNode document = make.objectNode();
    ArrayNode runs = document.putArray("runs");
    for (int part = 0; part < parts; part++) {
      ObjectNode run = runs.addObject();
      run.put("id", "r" + part);
      run.put("length", random.nextInt(900) + 100 + " mm");
      document.put("note" + part, random.nextInt());
    }
    return document;
  }

  private static void edit(ObjectNode document, int part, int what) {
    ArrayNode runs = (ArrayNode) document.get("runs");
    switch (what) {
      case 0 -> ((ObjectNode) item(document, part)).put("length", "5 mm");
      case 1 -> ((ObjectNode) item(document, part)).put("via", "sill");
      case 2 -> runs.remove(index(document, part));
      case 3 -> runs.insertObject(index(document, part)).put("id", "new" + part);
      default -> document.put("note" + part, "edited");
    }
  }

  private static JsonNode item(ObjectNode document, int part) {
    return document.get("runs").get(index(document, part));
  }

  private static int index(ObjectNode document, int part) {
    JsonNode runs = document.get("runs");
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).get("id").stringValue().equals("r" + part)) {
        return i;
      }
    }
    throw new IllegalStateException("no r" + part);
  }

  /** The oracle edits in another order, so that new items may stand in another order. */
  private static JsonNode asSets(JsonNode document) {
    ObjectNode copy = (ObjectNode) document.deepCopy();
    List<JsonNode> runs = new ArrayList<>();
    copy.get("runs").forEach(runs::add);
    runs.sort(java.util.Comparator.comparing(it -> it.get("id").stringValue()));
    copy.putArray("runs").addAll(runs);
    return copy;
  }

  private static JsonNode clean(String base, String one, String two) {
    return clean(tree(base), tree(one), tree(two));
  }

  private static JsonNode clean(JsonNode base, JsonNode one, JsonNode two) {
    var result = JsonMerge.merge(base, one, two);
    assertThat(result).isInstanceOf(JsonMerge.Clean.class);
    return ((JsonMerge.Clean) result).tree();
  }

  private static JsonMerge.Result merge(String base, String one, String two) {
    return JsonMerge.merge(tree(base), tree(one), tree(two));
  }

  private static JsonNode tree(String text) {
    return ((JsonText.Tree) JsonText.parse(text)).node();
  }
}
