package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.Seen.Spot;

/** Positions by row and column. */
final class GridWords {
  private GridWords() {}

  /** Row first, then the place in it; nothing when rows are not plain to see. */
  static Map<String, String> byRow(Seen seen) {
    Optional<List<List<Spot>>> rows = Bands.of(seen.cavities(), Spot::y, Spot::heightMm);
    if (rows.isEmpty()) {
      return Map.of();
    }
    int count = rows.get().size();
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      List<Spot> row = rows.get().get(i);
      if (!Bands.areApart(row, Spot::x, Spot::widthMm)) {
        return Map.of();
      }
      List<Spot> sorted = new ArrayList<>(row);
      sorted.sort(Comparator.comparingDouble(Spot::x));
      for (int k = 0; k < sorted.size(); k++) {
        words.put(sorted.get(k).number(), row(i, count, k, sorted.size()));
      }
    }
    return singlesOf(rows.get()) ? inOneColumn(rows.get(), words) : words;
  }

  /** Column first, then the place in it; nothing when columns are not plain to see. */
  static Map<String, String> byColumn(Seen seen) {
    Optional<List<List<Spot>>> columns = Bands.of(seen.cavities(), Spot::x, Spot::widthMm);
    if (columns.isEmpty() || columns.get().size() < 2 || singlesOf(columns.get())) {
      return Map.of();
    }
    int count = columns.get().size();
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      List<Spot> column = columns.get().get(i);
      if (!Bands.areApart(column, Spot::y, Spot::heightMm)) {
        return Map.of();
      }
      List<Spot> sorted = new ArrayList<>(column);
      sorted.sort(Comparator.comparingDouble(Spot::y));
      for (int k = 0; k < sorted.size(); k++) {
        words.put(sorted.get(k).number(), column(i, count, k, sorted.size()));
      }
    }
    return words;
  }

  /** The cavities that end both a row and a column, where both are plain to see. */
  static Map<String, String> corners(Seen seen) {
    Map<String, String> rows = byRow(seen);
    Map<String, String> columns = byColumn(seen);
    Map<String, String> words = new LinkedHashMap<>();
    for (String upper : List.of("top", "bottom")) {
      for (String side : List.of("left", "right")) {
        rows.forEach(
            (number, position) -> {
              if (position.equals(upper + " row, " + side + "most")
                  && columns.getOrDefault(number, "").equals(side + " column, " + upper)) {
                words.put(number, upper + " " + side + " corner");
              }
            });
      }
    }
    return words;
  }

  private static String row(int row, int rows, int place, int places) {
    String inRow =
        places == 1
            ? "the only one in it"
            : Ordinals.inLine(
                place, places, "leftmost", "rightmost", "middle", "", "left", "right");
    return rows == 1
        ? inRow
        : Ordinals.inLine(row, rows, "top row", "bottom row", "middle row", " row", "top", "bottom")
            + ", "
            + inRow;
  }

  private static String column(int column, int columns, int place, int places) {
    String inColumn = places == 1 ? "the only one in it" : upAndDown(place, places);
    return Ordinals.inLine(
            column,
            columns,
            "left column",
            "right column",
            "middle column",
            " column",
            "left",
            "right")
        + ", "
        + inColumn;
  }

  private static String upAndDown(int place, int places) {
    return Ordinals.inLine(place, places, "top", "bottom", "middle", "", "top", "bottom");
  }

  private static boolean singlesOf(List<List<Spot>> bands) {
    return bands.size() > 1 && bands.stream().allMatch(band -> band.size() == 1);
  }

  /** Cavities one below the other need no rows. */
  private static Map<String, String> inOneColumn(
      List<List<Spot>> rows, Map<String, String> otherwise) {
    List<Spot> all = rows.stream().flatMap(List::stream).toList();
    boolean oneColumn =
        Bands.of(all, Spot::x, Spot::widthMm).map(columns -> columns.size() == 1).orElse(false);
    if (!oneColumn) {
      return otherwise;
    }
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      words.put(all.get(i).number(), upAndDown(i, all.size()));
    }
    return words;
  }
}
