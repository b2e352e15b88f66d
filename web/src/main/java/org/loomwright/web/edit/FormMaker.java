package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;
import tools.jackson.databind.JsonNode;

/** Makes the fields of a form from what stands in them. */
final class FormMaker {
  /** Texts that are sentences more often than words. */
  private static final Set<String> SENTENCES =
      Set.of(
          "note",
          "question",
          "source",
          "reason",
          "caution",
          "prepare",
          "fill",
          "unlock",
          "lock",
          "follows",
          "standard",
          "seen",
          "expected",
          "outcome",
          "what");

  /** Texts that are a day. */
  private static final Set<String> DAYS = Set.of("Finding.when", "Evidence.when");

  private static final String DAY = "\\d{4}-\\d{2}-\\d{2}";

  /** Names by which others refer to a thing; they stay as they are once others can. */
  private static final Set<String> FIXED = Set.of("id");

  private static final int LONG = 80;

  private final Typed typed;
  private final Choices choices;
  private final Map<String, String> errors;

  /**
   * @param errors what is wrong, by name of the field
   */
  FormMaker(Typed typed, Choices choices, Map<String, String> errors) {
    this.typed = typed;
    this.choices = choices;
    this.errors = errors;
  }

  /** The fields for a record. */
  List<Control> controls(Part part) {
    return part.fields()
        .map(it -> controls(Typed.ROOT, it, part.node(), part.at().isWhole()))
        .orElse(List.of());
  }

  private List<Control> controls(
      String name, FormShape.Fields shape, JsonNode base, boolean isDocument) {
    List<Control> controls = new ArrayList<>();
    for (FormField field : shape.fields()) {
      String at = name + "." + field.key();
      JsonNode node = base.path(field.key());
      switch (Sorts.of(field, isDocument)) {
        case INPUT, LINES -> controls.add(input(at, shape, field, base));
        case GROUP -> {
          if (field.shape() instanceof FormShape.Fields inner) {
            controls.add(group(at, shape.type(), field, inner, node));
          }
        }
        case ROWS -> controls.add(rows(at, shape.type(), field, node));
        case ENTRIES -> controls.add(entries(at, shape, field));
        case OWN_FORM, OWN_FORMS -> {
          // The page lists them below.
        }
      }
    }
    return controls;
  }

  private Control group(
      String at, String type, FormField field, FormShape.Fields inner, JsonNode node) {
    boolean present =
        field.required()
            || typed.get(Typed.present(at)).equals("true")
            || (node.isMissingNode() && typed.anyBelow(at));
    return new Control.Group(
        at,
        Labels.of(type, field),
        field.meaning(),
        field.required(),
        present,
        inner.fields().size() <= 2,
        controls(at, inner, node, false),
        error(at));
  }

  private Control rows(String at, String type, FormField field, JsonNode node) {
    List<Control.Row> rows = new ArrayList<>();
    String noun = "row";
    if (field.shape() instanceof FormShape.Items list
        && list.item() instanceof FormShape.Fields shape) {
      noun = Labels.one(shape);
      for (int i = 0; i < typed.rows(at); i++) {
        String row = at + "." + i;
        String of = typed.get(Typed.origin(at, i));
        JsonNode base = of.matches("\\d{1,4}") ? node.path(Integer.parseInt(of)) : node.path(-1);
        List<Control.Input> inputs =
            shape.fields().stream()
                .map(it -> input(row + "." + it.key(), shape, it, base))
                .toList();
        rows.add(
            new Control.Row(noun + " " + (i + 1), Typed.origin(at, i), of, inputs, error(row)));
      }
    }
    return new Control.Rows(at, Labels.of(type, field), field.meaning(), noun, rows, error(at));
  }

  private Control entries(String at, FormShape.Fields shape, FormField field) {
    List<Control.Row> rows = new ArrayList<>();
    for (int i = 0; i < typed.rows(at); i++) {
      String row = at + "." + i;
      List<Control.Input> inputs = new ArrayList<>();
      for (String key : List.of("key", "value")) {
        String name = row + "." + key;
        boolean isKey = key.equals("key");
        List<Choice> known = isKey ? choices.of(shape.type(), field.key()) : List.of();
        inputs.add(
            new Control.Input(
                name,
                isKey ? "For" : "Text",
                "",
                true,
                known.isEmpty() ? look(false, typed.get(name)) : Control.Look.SUGGESTED,
                typed.get(name),
                known,
                false,
                error(name)));
      }
      rows.add(new Control.Row("row " + (i + 1), "", "", inputs, error(row)));
    }
    String legend = Labels.of(shape.type(), field);
    return new Control.Rows(at, legend, field.meaning(), "row", rows, error(at));
  }

  private Control.Input input(String at, FormShape.Fields shape, FormField field, JsonNode base) {
    String text = typed.get(at);
    boolean fixed = FIXED.contains(field.key()) && !Typed.text(base.path(field.key())).isEmpty();
    boolean proposed = field.key().equals("id") && !fixed;
    List<Choice> known = fixed ? List.of() : options(shape, field, text);
    return new Control.Input(
        at,
        Labels.of(shape.type(), field),
        proposed ? field.meaning() + "; left empty, it is made from the name" : hint(field),
        field.required() && !proposed,
        look(shape, field, text, known),
        text,
        known,
        fixed,
        error(at));
  }

  private List<Choice> options(FormShape.Fields shape, FormField field, String text) {
    if (field.shape() instanceof FormShape.Words words) {
      List<Choice> known = new ArrayList<>();
      words.choice().forEach(it -> known.add(new Choice(it, it.replace('-', ' '))));
      return withOwn(field, text, known);
    }
    List<Choice> known = choices.of(shape.type(), field.key());
    boolean only = choices.isOnly(shape.type(), field.key());
    boolean list = field.shape() instanceof FormShape.Items;
    return only && !list && !known.isEmpty() ? withOwn(field, text, known) : known;
  }

  /** The choices of a list box: nothing where that may be, and what stands there in any case. */
  private static List<Choice> withOwn(FormField field, String text, List<Choice> known) {
    List<Choice> all = new ArrayList<>();
    if (!field.required() || text.isEmpty()) {
      all.add(new Choice("", field.required() ? "choose one" : "not said"));
    }
    all.addAll(known);
    if (!text.isEmpty() && known.stream().noneMatch(it -> it.value().equals(text))) {
      all.add(new Choice(text, ""));
    }
    return all;
  }

  private Control.Look look(
      FormShape.Fields shape, FormField field, String text, List<Choice> known) {
    FormShape sort = field.shape();
    if (sort instanceof FormShape.Items) {
      return Control.Look.LINES;
    }
    if (sort instanceof FormShape.YesNo && (text.isEmpty() || text.equals("true"))) {
      return Control.Look.BOX;
    }
    if (text.contains("\n")) {
      return Control.Look.LONG;
    }
    if (sort instanceof FormShape.Words) {
      return Control.Look.CHOICE;
    }
    // A field for days would hide what is none.
    if (DAYS.contains(shape.type() + "." + field.key()) && (text.isEmpty() || text.matches(DAY))) {
      return Control.Look.DAY;
    }
    if (!known.isEmpty()) {
      return choices.isOnly(shape.type(), field.key())
          ? Control.Look.CHOICE
          : Control.Look.SUGGESTED;
    }
    return sort instanceof FormShape.Whole
        ? Control.Look.NUMBER
        : look(SENTENCES.contains(field.key()) && sort instanceof FormShape.Text, text);
  }

  private static Control.Look look(boolean sentence, String text) {
    boolean sentences = sentence || text.contains("\n") || text.length() > LONG;
    return sentences ? Control.Look.LONG : Control.Look.LINE;
  }

  private static String hint(FormField field) {
    String example =
        field.shape() instanceof FormShape.Formed formed ? "such as " + formed.example() : "";
    String each = field.shape() instanceof FormShape.Items ? "one on each line" : "";
    return java.util.stream.Stream.of(field.meaning(), example, each)
        .filter(it -> !it.isEmpty())
        .collect(java.util.stream.Collectors.joining("; "));
  }

  private String error(String name) {
    return errors.getOrDefault(name, "");
  }

  /** Words as the start of a line. */
  static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
