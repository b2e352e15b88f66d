package org.loomwright.model.json;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The JSON Schema (draft 2020-12) of a kind of document, worked out from the records by the same
 * rules as the reader: what it requires the reader requires, and keys it does not name are refused.
 * Texts with a form of their own, such as lengths, get a loose pattern only; the reader is
 * stricter.
 */
public final class DocumentSchema {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
  private static final String NOT_BLANK = "\\S";

  private final Function<RecordComponent, Optional<String>> meaning;
  private final Map<String, Object> definitions = new TreeMap<>();

  private DocumentSchema(Function<RecordComponent, Optional<String>> meaning) {
    this.meaning = meaning;
  }

  /**
   * The schema as JSON text.
   *
   * @param meaning what a key means, where that is known
   */
  public static String of(DocumentKind kind, Function<RecordComponent, Optional<String>> meaning) {
    DocumentSchema schema = new DocumentSchema(meaning);
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("$schema", DRAFT);
    root.put("title", "Loomwright: " + kind.noun());
    root.putAll(schema.object(DocumentBinder.shape(kind), Optional.of(kind)));
    root.put("$defs", schema.definitions);
    return DocumentWriter.print(root);
  }

  private Map<String, Object> object(Shape.Fields shape, Optional<DocumentKind> kind) {
    Map<String, Object> properties = new LinkedHashMap<>();
    List<Object> required = new ArrayList<>();
    kind.ifPresent(
        it -> {
          properties.put(DocumentBinder.KIND, Map.of("const", it.word()));
          properties.put(DocumentBinder.FORMAT_KEY, Map.of("const", DocumentBinder.FORMAT));
          required.add(DocumentBinder.KIND);
          required.add(DocumentBinder.FORMAT_KEY);
        });
    for (Shape.Field field : shape.fields()) {
      Map<String, Object> property = new LinkedHashMap<>();
      meaning.apply(field.component()).ifPresent(it -> property.put("description", it));
      property.putAll(schema(field.shape()));
      properties.put(field.key(), property);
      if (field.shape().whenAbsent().isEmpty()) {
        required.add(field.key());
      }
    }
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("type", "object");
    object.put("properties", properties);
    if (!required.isEmpty()) {
      object.put("required", required);
    }
    object.put("additionalProperties", false);
    return object;
  }

  private Map<String, Object> schema(Shape shape) {
    if (shape instanceof Shape.Maybe maybe) {
      return schema(maybe.inner());
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    if (shape instanceof Shape.ListOf list) {
      schema.put("type", "array");
      schema.put("items", schema(list.item()));
    } else if (shape instanceof Shape.MapOf map) {
      schema.put("type", "object");
      schema.put("additionalProperties", schema(map.item()));
    } else if (shape instanceof Shape.Fields fields) {
      return reference(fields);
    } else if (shape instanceof Shape.Formed formed) {
      return reference(formed.form());
    } else if (shape instanceof Shape.Word word) {
      schema.put("enum", List.copyOf(word.constants().keySet()));
    } else if (shape instanceof Shape.Text) {
      schema.put("type", "string");
      schema.put("pattern", NOT_BLANK);
    } else if (shape instanceof Shape.Truth) {
      schema.put("type", "boolean");
    } else {
      schema.put("type", "integer");
      schema.put("minimum", 0);
      schema.put("maximum", Integer.MAX_VALUE);
    }
    return schema;
  }

  private Map<String, Object> reference(TextForm<?> form) {
    String name = form.type().getSimpleName();
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("description", form.words());
    schema.put("type", "string");
    schema.put("pattern", form.pattern());
    definitions.put(name, schema);
    return Map.of("$ref", "#/$defs/" + name);
  }

  /** Name of a record's own schema among the definitions. */
  static String name(Shape.Fields fields) {
    StringBuilder name = new StringBuilder(fields.type().getSimpleName());
    // Of a record with type parameters each use is a schema of its own, e.g. SourcedLength.
    for (Shape.Field field : fields.fields()) {
      if (field.component().getGenericType() instanceof java.lang.reflect.TypeVariable<?>
          && field.shape() instanceof Shape.Formed formed) {
        name.append(formed.form().type().getSimpleName());
      }
    }
    return name.toString();
  }

  private Map<String, Object> reference(Shape.Fields fields) {
    String name = name(fields);
    if (!definitions.containsKey(name)) {
      definitions.put(name, object(fields, Optional.empty()));
    }
    return Map.of("$ref", "#/$defs/" + name);
  }
}
