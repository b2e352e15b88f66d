package org.loomwright.web.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.loomwright.intake.Preview;

/**
 * Rows that a person took or left against what was proposed. What they said of a row stays when the
 * proposal changes; other rows follow the proposal.
 *
 * @param chosen whether they want it, by row
 */
public record Ticks(Map<Integer, Boolean> chosen) {
  private static final Pattern ROW = Pattern.compile("\\d{1,9}");
  private static final Pattern CHOICE = Pattern.compile("\\d{1,9}[+-]");

  public Ticks {
    chosen = java.util.Collections.unmodifiableMap(new TreeMap<>(chosen));
  }

  /** Nothing was said yet. */
  public static Ticks none() {
    return new Ticks(Map.of());
  }

  /**
   * What a form says.
   *
   * @param before choices the form was made with, as {@link #text} writes them
   * @param shown rows that were ticked in the form when it was made, with spaces between
   * @param ticked rows that are ticked now
   */
  public static Ticks of(String before, String shown, List<String> ticked) {
    Map<Integer, Boolean> chosen = new TreeMap<>();
    for (String it : before.split(" ", -1)) {
      if (CHOICE.matcher(it).matches()) {
        chosen.put(Integer.valueOf(it.substring(0, it.length() - 1)), it.endsWith("+"));
      }
    }
    Set<Integer> then = rows(List.of(shown.split(" ", -1)));
    Set<Integer> now = rows(ticked);
    Set<Integer> either = new TreeSet<>(then);
    either.addAll(now);
    for (Integer row : either) {
      if (then.contains(row) != now.contains(row)) {
        chosen.put(row, now.contains(row));
      }
    }
    return new Ticks(chosen);
  }

  private static Set<Integer> rows(List<String> texts) {
    return texts.stream()
        .filter(it -> ROW.matcher(it).matches())
        .map(Integer::valueOf)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** For a field of the form, e.g. "3+ 7-". */
  public String text() {
    return chosen.entrySet().stream()
        .map(it -> it.getKey() + (it.getValue() ? "+" : "-"))
        .collect(Collectors.joining(" "));
  }

  /** Rows that are taken: as said, else those that are new or change something. */
  public List<Integer> taken(Preview preview) {
    List<Integer> taken = new ArrayList<>();
    Set<Integer> proposed = Set.copyOf(preview.acceptable());
    for (Preview.Row row : preview.rows()) {
      boolean wanted = chosen.getOrDefault(row.number(), proposed.contains(row.number()));
      if (wanted && row.outcome().isPresent()) {
        taken.add(row.number());
      }
    }
    return taken;
  }
}
