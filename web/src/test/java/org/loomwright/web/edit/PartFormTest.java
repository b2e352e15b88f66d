package org.loomwright.web.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomwright.model.json.Bound;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.DocumentFields;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.FormShape;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.ShopSource;
import tools.jackson.databind.JsonNode;

/** Forms over every record of every document of the demo. */
class PartFormTest {
  private static final Path DEMO = Path.of("..", "demo");
  private static final long SEED = 20260719;
  private static final List<String> NONSENSE =
      List.of(
          "12,5 mm",
          "-3",
          "<b>\"x\" & 'y'</b>",
          "ÄÖ ∑ 漢字 🚐",
          "not (",
          "= =",
          "99999999999999999999 A",
          "NaN",
          "a\nb",
          "null",
          "{}");

  private static Shop shop;

  /** A record of a document. */
  private record Place(DocumentKey key, String text, PartPath at) {}

  private static List<Place> places;

  @BeforeAll
  static void read() throws IOException {
    shop = new Shop.Reader(ShopSource.folder(DEMO)).now();
    places = new ArrayList<>();
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        String text = Files.readString(file);
        JsonNode tree = tree(text);
        DocumentKind kind = DocumentKind.of(tree.path("kind").asString("")).orElseThrow();
        DocumentKey key = new DocumentKey(kind.word(), tree.path("id").asString(""));
        collect(Part.whole(DocumentFields.of(kind), tree), key, text);
      }
    }
    assertThat(places).hasSizeGreaterThan(500);
  }

  private static void collect(Part part, DocumentKey key, String text) {
    if (part.node().isMissingNode()) {
      return;
    }
    if (part.shape() instanceof FormShape.Fields fields) {
      places.add(new Place(key, text, part.at()));
      fields.fields().forEach(it -> collect(part.of(it), key, text));
    } else if (part.shape() instanceof FormShape.Items) {
      part.items().forEach(it -> collect(it, key, text));
    }
  }

  private static JsonNode tree(String text) {
    return ((JsonText.Tree) JsonText.parse(text)).node();
  }

  private static PartForm form(Place place) {
    PartPath parsed = PartPath.parse(place.at().text());
    return PartForm.edit(place.key(), place.text(), parsed)
        .orElseThrow(() -> new AssertionError("no form for " + place.at().text()));
  }

  @Test
  void aFormThatIsSentAsItWasOpenedChangesNothing() {
    for (Place place : places) {
      PartForm form = form(place);
      PartForm.Written written = form.write(AsBrowser.sent(form.open(shop, 1, "/")));
      assertThat(written.problems()).as(place.at().text()).isEmpty();
      assertThat(tree(written.text())).as(place.at().text()).isEqualTo(tree(place.text()));
    }
  }

  @Test
  void everyFieldSaysWhatItMeansAndIsNamedOnce() {
    for (Place place : places) {
      List<Control.Input> inputs = AsBrowser.inputs(form(place).open(shop, 1, "/"));
      assertThat(inputs).extracting(Control.Input::name).doesNotHaveDuplicates();
      for (Control.Input it : inputs) {
        assertThat(it.label()).as(it.name()).isNotBlank();
        if (!it.name().endsWith(".key") && !it.name().endsWith(".value")) {
          assertThat(it.hint()).as(place.at().text() + " " + it.name()).isNotBlank();
        }
      }
    }
  }

  @Test
  void oneFieldChangesItsOwnValueAndNoOther() {
    Random random = new Random(SEED);
    for (Place place : places) {
      PartForm form = form(place);
      EditPage page = form.open(shop, 1, "/");
      List<Control.Input> free =
          AsBrowser.inputs(page).stream()
              .filter(it -> !it.fixed() && !it.name().endsWith(".key"))
              .filter(it -> it.look() == Control.Look.LINE || it.look() == Control.Look.LONG)
              .filter(it -> !it.text().isEmpty())
              .toList();
      if (free.isEmpty()) {
        continue;
      }
      Control.Input one = free.get(random.nextInt(free.size()));
      Map<String, List<String>> sent = AsBrowser.sent(page);
      sent.put(one.name(), List.of("changed by the test"));
      PartForm.Written written = form.write(sent);
      Map<String, String> before = leaves(tree(place.text()));
      Map<String, String> after = leaves(tree(written.text()));
      String path =
          written.fields().entrySet().stream()
              .filter(it -> it.getValue().equals(one.name()))
              .map(Map.Entry::getKey)
              .findFirst()
              .orElseThrow();
      assertThat(after.remove(path)).as("seed " + SEED + ", " + path).contains("changed by");
      before.remove(path);
      assertThat(after).as("seed " + SEED + ", " + path).isEqualTo(before);
    }
  }

  /** Texts of all single values by their path as messages spell it. */
  private static Map<String, String> leaves(JsonNode tree) {
    Map<String, String> leaves = new LinkedHashMap<>();
    leaves("", tree, leaves);
    return leaves;
  }

  private static void leaves(String path, JsonNode node, Map<String, String> leaves) {
    if (node.isObject()) {
      node.properties()
          .forEach(
              it ->
                  leaves(
                      org.loomwright.model.json.Paths.key(path, it.getKey()),
                      it.getValue(),
                      leaves));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        leaves(org.loomwright.model.json.Paths.item(path, i), node.get(i), leaves);
      }
    } else {
      leaves.put(path, node.toString());
    }
  }

  @Test
  void nonsenseIsRefusedAtItsFieldOrTakenAndNeverLost() {
    Random random = new Random(SEED);
    for (Place place : places) {
      PartForm form = form(place);
      EditPage page = form.open(shop, 1, "/");
      List<Control.Input> inputs =
          AsBrowser.inputs(page).stream()
              .filter(it -> !it.fixed() && it.look() != Control.Look.BOX)
              .toList();
      for (int i = 0; i < 3 && !inputs.isEmpty(); i++) {
        Control.Input one = inputs.get(random.nextInt(inputs.size()));
        String nonsense = NONSENSE.get(random.nextInt(NONSENSE.size()));
        String as = "seed " + SEED + ", " + place.at().text() + " " + one.name() + " " + nonsense;
        Map<String, List<String>> sent = AsBrowser.sent(page);
        sent.put(one.name(), List.of(nonsense));
        PartForm.Written written = form.write(sent);
        Bound bound = DocumentBinder.bind(tree(written.text()));
        List<Problem> problems = new ArrayList<>(written.problems());
        bound
            .faults()
            .forEach(it -> problems.add(new Problem("", it.path(), it.value(), it.message())));
        EditPage again = form.refused(shop, sent, written, problems, 1, "/");
        assertThat(text(again, one.name())).as(as).isEqualTo(nonsense);
        assertThat(AsBrowser.inputs(again))
            .as(as)
            .allSatisfy(it -> assertThat(it.text()).isEqualTo(typed(sent, it.name())));
        if (!problems.isEmpty()) {
          assertThat(again.complaints().all()).as(as).hasSize(problems.size());
          // Only what is wrong with the record as a whole stands at no field.
          assertThat(again.complaints().all())
              .as(as)
              .allMatch(it -> it.href().startsWith("#") || it.where().isEmpty());
          assertThat(shownErrors(again)).as(as).containsAll(again.complaints().atField().values());
        }
      }
    }
  }

  private static String typed(Map<String, List<String>> sent, String name) {
    return sent.getOrDefault(name, List.of("")).get(0).replace("\r\n", "\n");
  }

  private static String text(EditPage page, String name) {
    return AsBrowser.inputs(page).stream()
        .filter(it -> it.name().equals(name))
        .map(Control.Input::text)
        .findFirst()
        .orElse("(gone)");
  }

  private static List<String> shownErrors(EditPage page) {
    List<String> errors = new ArrayList<>();
    AsBrowser.inputs(page).forEach(it -> errors.add(it.error()));
    page.controls().forEach(it -> errors(it, errors));
    return errors;
  }

  private static void errors(Control control, List<String> errors) {
    if (control instanceof Control.Group it) {
      errors.add(it.error());
      it.controls().forEach(inner -> errors(inner, errors));
    } else if (control instanceof Control.Rows it) {
      errors.add(it.error());
      it.rows().forEach(row -> errors.add(row.error()));
    }
  }

  @Test
  void rowsComeAndGoWithWhatIsTypedInTheOthers() {
    for (Place place : places) {
      PartForm form = form(place);
      EditPage page = form.open(shop, 1, "/");
      for (Control control : page.controls()) {
        if (control instanceof Control.Rows rows) {
          Map<String, List<String>> sent = AsBrowser.sent(page);
          EditPage more = form.again(shop, sent, "more:" + rows.name(), 1, "/");
          int last = rows.rows().size();
          EditPage same =
              form.again(shop, AsBrowser.sent(more), "less:" + rows.name() + "." + last, 1, "/");
          assertThat(AsBrowser.sent(same)).isEqualTo(sent);
          // A row in which nothing was typed is no row.
          PartForm.Written written = form.write(AsBrowser.sent(more));
          assertThat(tree(written.text())).isEqualTo(tree(place.text()));
          if (last > 1) {
            EditPage less = form.again(shop, sent, "less:" + rows.name() + ".0", 1, "/");
            PartForm.Written fewer = form.write(AsBrowser.sent(less));
            assertThat(leaves(tree(fewer.text())).size())
                .isLessThan(leaves(tree(place.text())).size());
          }
        }
      }
    }
  }

  @Test
  void whatIsTakenOutCanBeAddedAgain() {
    for (Place place : places) {
      PartChange change = PartChange.of(place.key(), place.text(), place.at()).orElse(null);
      if (change == null) {
        continue;
      }
      String without = change.without();
      assertThat(leaves(tree(without)).size()).isLessThan(leaves(tree(place.text())).size());
      boolean item = PartForm.edit(place.key(), place.text(), place.at()).isPresent();
      assertThat(item).isTrue();
      PartForm old = form(place);
      Map<String, List<String>> sent = AsBrowser.sent(old.open(shop, 1, "/"));
      sent.keySet().removeIf(it -> it.endsWith("~of"));
      PartForm add =
          PartForm.add(place.key(), without, place.at())
              .or(() -> PartForm.add(place.key(), without, place.at().parent()))
              .orElseThrow(() -> new AssertionError(place.at().text()));
      PartForm.Written again = add.write(sent);
      assertThat(again.problems()).as(place.at().text()).isEmpty();
      assertThat(leaves(tree(again.text())).size()).isGreaterThan(leaves(tree(without)).size());
    }
  }

  @Test
  void movedUpAndDownAgainIsTheSame() {
    for (Place place : places) {
      PartChange.of(place.key(), place.text(), place.at())
          .ifPresent(
              it -> {
                String down = it.moved(1);
                if (!tree(down).equals(tree(place.text()))
                    && !place.at().last().startsWith("no.")) {
                  PartChange back = PartChange.of(place.key(), down, place.at()).orElseThrow();
                  assertThat(tree(back.moved(-1))).isEqualTo(tree(place.text()));
                }
              });
    }
  }
}
