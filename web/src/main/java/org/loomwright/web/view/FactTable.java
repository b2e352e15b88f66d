package org.loomwright.web.view;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.rules.Electrics;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.RunRules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.web.edit.PartPath;

/**
 * Records of one kind as a table, a column for each of their facts.
 *
 * @param title what they are
 * @param heads heads of the columns
 * @param rows cells, as many in each row as there are heads
 * @param paths the way to what each row is about
 */
public record FactTable(
    String title, List<String> heads, List<List<String>> rows, List<PartPath> paths) {
  public FactTable {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    paths = List.copyOf(paths);
  }

  /** The lists of a parts list, those without anything in them left out. */
  public static List<FactTable> of(Parts parts, Display units) {
    List<FactTable> tables = new ArrayList<>();
    for (RecordComponent it : Parts.class.getRecordComponents()) {
      if (value(it, parts) instanceof List<?> list
          && !list.isEmpty()
          && list.get(0) instanceof Record first) {
        tables.add(of(it.getName(), first.getClass(), list, units));
      }
    }
    return tables;
  }

  /** The rules, each with its value and source. */
  public static List<FactTable> of(Rules rules, Display units) {
    List<FactTable> tables = new ArrayList<>();
    tables.add(sourced("limits, times and prices", PartPath.whole(), rules, units));
    rules
        .electrics()
        .ifPresent(
            (Electrics it) ->
                tables.add(sourced("electrics", PartPath.of("electrics"), it, units)));
    rules
        .runs()
        .ifPresent(
            (RunRules it) ->
                tables.add(sourced("runs and bundles", PartPath.of("runs"), it, units)));
    return tables;
  }

  private static FactTable sourced(String title, PartPath at, Record rules, Display units) {
    List<List<String>> rows = new ArrayList<>();
    List<PartPath> paths = new ArrayList<>();
    for (RecordComponent it : rules.getClass().getRecordComponents()) {
      Object value = value(it, rules);
      Object inner = value instanceof Optional<?> maybe ? maybe.orElse(null) : value;
      if (inner instanceof Sourced<?> sourced) {
        rows.add(List.of(words(it.getName()), shown(sourced.value(), units), sourced.source()));
        paths.add(at.to(it.getName()));
      }
    }
    return new FactTable(title, List.of("rule", "value", "source"), rows, paths);
  }

  private static FactTable of(String list, Class<?> type, List<?> records, Display units) {
    List<RecordComponent> columns = new ArrayList<>();
    for (RecordComponent it : type.getRecordComponents()) {
      // A column nobody has filled in tells nothing.
      if (records.stream().anyMatch(record -> !shown(value(it, record), units).isEmpty())) {
        columns.add(it);
      }
    }
    List<PartPath> paths = new ArrayList<>();
    for (int i = 0; i < records.size(); i++) {
      String first = shown(value(type.getRecordComponents()[0], records.get(i)), units);
      boolean named = type.getRecordComponents()[0].getName().equals("id");
      paths.add(named ? PartPath.of(list, first) : PartPath.of(list).to(i));
    }
    return new FactTable(
        words(list),
        columns.stream()
            .map(it -> it.getName().equals("id") ? "part" : words(it.getName()))
            .toList(),
        records.stream()
            .map(record -> columns.stream().map(it -> shown(value(it, record), units)).toList())
            .toList(),
        paths);
  }

  private static @Nullable Object value(RecordComponent component, Object record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException broken) {
      throw new IllegalStateException("a public record hides its " + component.getName(), broken);
    }
  }

  private static final Set<String> COUNTED = Set.of("Cavity", "Key", "PhotoPoint");

  private static String shown(@Nullable Object value, Display units) {
    if (value == null) {
      return "";
    }
    if (value instanceof Optional<?> maybe) {
      return maybe.map(it -> shown(it, units)).orElse("");
    }
    if (value instanceof List<?> list) {
      return list.isEmpty()
          ? ""
          : COUNTED.contains(list.get(0).getClass().getSimpleName())
              ? Integer.toString(list.size())
              : list.stream().map(it -> shown(it, units)).collect(Collectors.joining(", "));
    }
    if (value instanceof Length length) {
      return units.show(length);
    }
    if (value instanceof WireSize size) {
      return units.show(size);
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof Enum<?> word) {
      return Told.words(word);
    }
    if (value instanceof Condition condition) {
      return Told.when(condition);
    }
    if (value instanceof Evidence evidence) {
      return Told.evidence(Optional.of(evidence));
    }
    return value instanceof Record record ? ofRecord(record, units) : value.toString();
  }

  /** A quantity as it was written, else the facts one after the other. */
  private static String ofRecord(Record record, Display units) {
    List<String> facts = new ArrayList<>();
    for (RecordComponent it : record.getClass().getRecordComponents()) {
      String fact = shown(value(it, record), units);
      if (it.getName().equals("text")) {
        return fact;
      }
      if (!fact.isEmpty()) {
        facts.add(fact);
      }
    }
    return String.join(" ", facts);
  }

  private static String words(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }
}
