package org.loomwright.web.units;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.quantity.Length;

/** The words people wrote into documents: names, remarks, sources. Quantities are none. */
public final class WrittenWords {
  private static final String QUANTITIES = Length.class.getPackageName();

  private WrittenWords() {}

  /** All that speak of a length or wire size, such as the trade name "wire 2.5 mm² red". */
  public static Set<String> in(Collection<? extends Record> documents) {
    Set<String> words = new LinkedHashSet<>();
    documents.forEach(it -> gather(it, words));
    return words;
  }

  private static void gather(@Nullable Object value, Set<String> words) {
    if (value instanceof String text) {
      if (UnitWords.isMoreThanASize(text)) {
        words.add(text);
      }
    } else if (value instanceof Optional<?> maybe) {
      maybe.ifPresent(it -> gather(it, words));
    } else if (value instanceof Collection<?> all) {
      all.forEach(it -> gather(it, words));
    } else if (value instanceof Map<?, ?> all) {
      all.values().forEach(it -> gather(it, words));
    } else if (value instanceof Record record
        && !record.getClass().getPackageName().equals(QUANTITIES)) {
      for (RecordComponent it : record.getClass().getRecordComponents()) {
        gather(value(it, record), words);
      }
    }
  }

  private static @Nullable Object value(RecordComponent component, Record record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException broken) {
      throw new IllegalStateException("a public record hides its " + component.getName(), broken);
    }
  }
}
