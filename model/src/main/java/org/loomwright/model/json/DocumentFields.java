package org.loomwright.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * The fields of each kind of document, for forms: from the same records the reader goes by, with
 * the meanings the published schemas give.
 */
public final class DocumentFields {
  private static final Map<DocumentKind, FormShape.Fields> ALL =
      Stream.of(DocumentKind.values())
          .collect(Collectors.toUnmodifiableMap(kind -> kind, DocumentFields::read));

  private final JsonNode definitions;

  private DocumentFields(JsonNode definitions) {
    this.definitions = definitions;
  }

  /** The fields of a kind of document, without "kind" and "format", which every document has. */
  public static FormShape.Fields of(DocumentKind kind) {
    FormShape.Fields fields = ALL.get(kind);
    if (fields == null) {
      throw new IllegalStateException("no fields for " + kind);
    }
    return fields;
  }

  private static FormShape.Fields read(DocumentKind kind) {
    JsonNode schema = schema(kind);
    return new DocumentFields(schema.path("$defs")).fields(DocumentBinder.shape(kind), schema);
  }

  private static JsonNode schema(DocumentKind kind) {
    String name = "/org/loomwright/model/schema/" + kind.word() + ".schema.json";
    try (InputStream stream = DocumentFields.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its own " + name);
      }
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      if (JsonText.parse(text) instanceof JsonText.Tree tree) {
        return tree.node();
      }
      throw new IllegalStateException("no JSON in " + name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private FormShape.Fields fields(Shape.Fields shape, JsonNode schema) {
    List<FormField> fields = new ArrayList<>();
    for (Shape.Field field : shape.fields()) {
      JsonNode property = schema.path("properties").path(field.key());
      fields.add(
          FormField.of(
              field.key(),
              field.shape().whenAbsent().isEmpty(),
              property.path("description").asString(""),
              shape(field.shape())));
    }
    return new FormShape.Fields(shape.type().getSimpleName(), shape.noun(), fields);
  }

  private FormShape shape(Shape shape) {
    if (shape instanceof Shape.Maybe maybe) {
      return shape(maybe.inner());
    }
    if (shape instanceof Shape.Fields fields) {
      return fields(fields, definitions.path(DocumentSchema.name(fields)));
    }
    if (shape instanceof Shape.ListOf list) {
      return new FormShape.Items(shape(list.item()));
    }
    if (shape instanceof Shape.MapOf map) {
      return new FormShape.Entries(shape(map.item()));
    }
    if (shape instanceof Shape.Word word) {
      return new FormShape.Words(List.copyOf(word.constants().keySet()));
    }
    if (shape instanceof Shape.Formed formed) {
      TextForm<?> form = formed.form();
      return new FormShape.Formed(form.type().getSimpleName(), form.noun(), form.example());
    }
    if (shape instanceof Shape.Whole) {
      return new FormShape.Whole();
    }
    return shape instanceof Shape.Truth ? new FormShape.YesNo() : new FormShape.Text();
  }
}
