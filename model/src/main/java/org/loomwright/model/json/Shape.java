package org.loomwright.model.json;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a value in a document looks like, worked out from the records once. */
sealed interface Shape {

  /** What must stand there, for messages. */
  String words();

  /** The value of a key that is left out; empty when it must not be left out. */
  default Optional<Object> whenAbsent() {
    return Optional.empty();
  }

  /** A harmless value of this shape, to go on checking with after the real one was refused. */
  Object standIn();

  /** Free text. */
  record Text() implements Shape {
    @Override
    public String words() {
      return "text in quotation marks";
    }

    @Override
    public Object standIn() {
      return "";
    }
  }

  /** A whole number, zero or more. */
  record Whole() implements Shape {
    @Override
    public String words() {
      return "a whole number";
    }

    @Override
    public Object standIn() {
      return 0;
    }
  }

  /** True or false; false when left out. */
  record Truth() implements Shape {
    @Override
    public String words() {
      return "true or false";
    }

    @Override
    public Optional<Object> whenAbsent() {
      return Optional.of(false);
    }

    @Override
    public Object standIn() {
      return false;
    }
  }

  /** One of a few words. */
  record Word(Map<String, Object> constants) implements Shape {
    @Override
    public String words() {
      return "one of the words " + String.join(", ", constants.keySet());
    }

    @Override
    public Object standIn() {
      return constants.values().iterator().next();
    }

    /** The word for a constant, e.g. "measure-live". */
    static String word(Enum<?> constant) {
      return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Text with a form of its own, such as a length. */
  record Formed(TextForm<?> form) implements Shape {
    @Override
    public String words() {
      return form.words();
    }

    @Override
    public Object standIn() {
      return form.read().apply(form.harmless());
    }
  }

  /** A list; empty when left out. */
  record ListOf(Shape item) implements Shape {
    @Override
    public String words() {
      return "a list in [ ]";
    }

    @Override
    public Optional<Object> whenAbsent() {
      return Optional.of(List.of());
    }

    @Override
    public Object standIn() {
      return List.of();
    }
  }

  /** An object with free keys; empty when left out. */
  record MapOf(Shape item) implements Shape {
    @Override
    public String words() {
      return "an object in { }";
    }

    @Override
    public Optional<Object> whenAbsent() {
      return Optional.of(Map.of());
    }

    @Override
    public Object standIn() {
      return Map.of();
    }
  }

  /** A value that may be left out. */
  record Maybe(Shape inner) implements Shape {
    @Override
    public String words() {
      return inner.words();
    }

    @Override
    public Optional<Object> whenAbsent() {
      return Optional.of(Optional.empty());
    }

    @Override
    public Object standIn() {
      return Optional.empty();
    }
  }

  /** One key of an object. */
  record Field(String key, Shape shape, RecordComponent component) {}

  /** An object with given keys, held by a record. */
  record Fields(Class<?> type, List<Field> fields) implements Shape {
    @Override
    public String words() {
      return "an object in { } with "
          + fields.stream()
              .filter(field -> field.shape().whenAbsent().isEmpty())
              .map(Field::key)
              .collect(Collectors.joining(", "));
    }

    @Override
    public Object standIn() {
      return construct(fields.stream().map(field -> field.shape().standIn()).toArray());
    }

    /** The type in words, e.g. "fuse block". */
    String noun() {
      return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /**
     * Makes the record.
     *
     * @throws IllegalArgumentException when the record refuses the values
     */
    Object construct(Object[] values) {
      try {
        Class<?>[] types =
            fields.stream().map(field -> field.component().getType()).toArray(Class<?>[]::new);
        return type.getDeclaredConstructor(types).newInstance(values);
      } catch (InvocationTargetException e) {
        if (e.getCause() instanceof IllegalArgumentException refusal) {
          throw refusal;
        }
        throw new IllegalStateException("reading " + type, e);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("reading " + type, e);
      }
    }
  }

  /** The shape of a record without type parameters. */
  static Fields ofRecord(Class<?> type) {
    return fields(type, Map.of());
  }

  private static Fields fields(Class<?> type, Map<TypeVariable<?>, Type> bindings) {
    return new Fields(
        type,
        Arrays.stream(type.getRecordComponents())
            .map(it -> new Field(it.getName(), of(it.getGenericType(), bindings), it))
            .toList());
  }

  private static Shape of(Type type, Map<TypeVariable<?>, Type> bindings) {
    Type known = type instanceof TypeVariable<?> ? bindings.getOrDefault(type, type) : type;
    if (known instanceof ParameterizedType generic) {
      return ofGeneric((Class<?>) generic.getRawType(), generic.getActualTypeArguments());
    }
    if (!(known instanceof Class<?> plain)) {
      throw new IllegalStateException("no document holds a " + known);
    }
    Optional<TextForm<?>> form = TextForm.of(plain);
    if (form.isPresent()) {
      return new Formed(form.get());
    }
    if (plain == String.class) {
      return new Text();
    }
    if (plain == int.class || plain == Integer.class) {
      return new Whole();
    }
    if (plain == boolean.class) {
      return new Truth();
    }
    if (plain.isEnum()) {
      Map<String, Object> constants = new java.util.LinkedHashMap<>();
      for (Object constant : plain.getEnumConstants()) {
        constants.put(Word.word((Enum<?>) constant), constant);
      }
      return new Word(constants);
    }
    return fields(plain, Map.of());
  }

  private static Shape ofGeneric(Class<?> raw, Type[] arguments) {
    if (raw == List.class) {
      return new ListOf(of(arguments[0], Map.of()));
    }
    if (raw == Map.class) {
      return new MapOf(of(arguments[1], Map.of()));
    }
    if (raw == Optional.class) {
      return new Maybe(of(arguments[0], Map.of()));
    }
    TypeVariable<?>[] variables = raw.getTypeParameters();
    return fields(
        raw,
        IntStream.range(0, variables.length)
            .boxed()
            .collect(Collectors.toMap(i -> variables[i], i -> arguments[i])));
  }
}
