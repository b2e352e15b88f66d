package org.loomwright.model.json;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomwright.model.document.Document;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a document as JSON for people: kind and format first, then the components in the order of
 * the record; what may be left out and says nothing is left out. The same document always gives the
 * same text, with two spaces of indent and line feeds.
 */
public final class DocumentWriter {
  private static final int LINE = 100;
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private DocumentWriter() {}

  /** The document as JSON text. */
  public static String write(Document document) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put(DocumentBinder.KIND, DocumentKind.of(document).word());
    tree.put(DocumentBinder.FORMAT_KEY, DocumentBinder.FORMAT);
    tree.putAll(fields((Record) document));
    return print(tree);
  }

  /** Maps, lists, texts, whole numbers and booleans as JSON text. */
  static String print(Object tree) {
    return print(tree, 0, 0) + "\n";
  }

  private static Map<String, Object> fields(Record value) {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (RecordComponent component : value.getClass().getRecordComponents()) {
      Object part = get(value, component);
      boolean silent =
          part.equals(Optional.empty())
              || part.equals(List.of())
              || part.equals(Map.of())
              || part.equals(false);
      if (!silent) {
        fields.put(component.getName(), tree(part));
      }
    }
    return fields;
  }

  private static Object get(Record value, RecordComponent component) {
    try {
      return component.getAccessor().invoke(value);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("writing " + value.getClass(), e);
    }
  }

  private static Object tree(Object value) {
    Optional<TextForm<?>> form = TextForm.of(value.getClass());
    if (form.isPresent()) {
      return form.get().text(value);
    }
    if (value instanceof Optional<?> maybe) {
      return tree(maybe.orElseThrow());
    }
    if (value instanceof List<?> list) {
      return list.stream().map(DocumentWriter::tree).toList();
    }
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> entries = new LinkedHashMap<>();
      map.forEach((key, item) -> entries.put(String.valueOf(key), tree(item)));
      return entries;
    }
    if (value instanceof Enum<?> constant) {
      return Shape.Word.word(constant);
    }
    return value instanceof Record fields ? fields(fields) : value;
  }

  /**
   * One value.
   *
   * @param indent columns before each further line
   * @param used columns already used on the first line
   */
  private static String print(Object value, int indent, int used) {
    boolean isMap = value instanceof Map<?, ?>;
    if (!isMap && !(value instanceof List<?>)) {
      return MAPPER.writeValueAsString(value);
    }
    List<String> keys = new ArrayList<>();
    List<Object> items = new ArrayList<>();
    if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, item) -> {
            keys.add(MAPPER.writeValueAsString(key) + ": ");
            items.add(item);
          });
    } else if (value instanceof List<?> list) {
      list.forEach(
          item -> {
            keys.add("");
            items.add(item);
          });
    }
    String open = isMap ? "{" : "[";
    String close = isMap ? "}" : "]";
    if (items.stream().noneMatch(it -> it instanceof Map<?, ?> || it instanceof List<?>)) {
      String line = open + joined(keys, items, 0, ", ") + close;
      // One column is kept for the comma that may follow.
      if (used + line.length() < LINE) {
        return line;
      }
    }
    String margin = "\n" + " ".repeat(indent + 2);
    return open
        + margin
        + joined(keys, items, indent + 2, "," + margin)
        + "\n"
        + " ".repeat(indent)
        + close;
  }

  private static String joined(List<String> keys, List<Object> items, int indent, String between) {
    return java.util.stream.IntStream.range(0, items.size())
        .mapToObj(i -> keys.get(i) + print(items.get(i), indent, indent + keys.get(i).length()))
        .collect(Collectors.joining(between));
  }
}
