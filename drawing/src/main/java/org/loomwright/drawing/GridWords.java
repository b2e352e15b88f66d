package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.loomwright.drawing.Ordinals.Line;
import org.loomwright.drawing.Seen.Spot;

/** Positions by row and column. */
final class GridWords {
  private static final Line ROWS =
      new Line("top row", "bottom row", "middle row", " row", "top", "bottom");
  private static final Line COLUMNS =
      new Line("left column", "right column", "middle column", " column", "left", "right");
  private static final Line ACROSS =
      new Line("leftmost", "rightmost", "middle", "", "left", "right");
  private static final Line DOWN = new Line("top", "bottom", "middle", "", "top", "bottom");
  private static final Phrase ALONE = Phrase.plain("alone");

  private GridWords() {}

  /** Row first, then the place in it; nothing when rows are not plain to see. */
  static Map<String, Phrase> byRow(Seen seen) {
    Optional<List<List<Spot>>> rows = Bands.of(seen.cavities(), Spot::y, Spot::heightMm);
    if (rows.isEmpty()) {
      return Map.of();
    }
    return singlesOf(rows.get()) && isOneColumn(seen.cavities())
        ? inOneLine(rows.get(), DOWN)
        : banded(rows.get(), ROWS, ACROSS, Spot::x, Spot::widthMm);
  }

  /** Column first, then the place in it; nothing when columns are not plain to see. */
  static Map<String, Phrase> byColumn(Seen seen) {
    Optional<List<List<Spot>>> columns = Bands.of(seen.cavities(), Spot::x, Spot::widthMm);
    if (columns.isEmpty() || columns.get().size() < 2 || singlesOf(columns.get())) {
      return Map.of();
    }
    return banded(columns.get(), COLUMNS, DOWN, Spot::y, Spot::heightMm);
  }

  /** The cavities that end both a row and a column, where both are plain to see. */
  static Map<String, Phrase> corners(Seen seen) {
    Map<String, Phrase> rows = byRow(seen);
    Map<String, Phrase> columns = byColumn(seen);
    Map<String, Phrase> words = new LinkedHashMap<>();
    for (String upper : List.of("top", "bottom")) {
      for (String side : List.of("left", "right")) {
        rows.forEach(
            (number, position) -> {
              Phrase column = columns.get(number);
              if (column != null
                  && isEnd(position, upper + " row", side + "most")
                  && isEnd(column, side + " column", upper)) {
                words.put(number, Phrase.plain(upper + " " + side + " corner"));
              }
            });
      }
    }
    return words;
  }

  private static boolean isEnd(Phrase position, String band, String place) {
    return position.equals(Phrase.plain(band).and(Phrase.plain(place)))
        || position.equals(Phrase.plain(band).and(ALONE));
  }

  /** Band first, then the place in it; a single band needs no name. */
  private static Map<String, Phrase> banded(
      List<List<Spot>> bands,
      Line names,
      Line places,
      ToDoubleFunction<Spot> along,
      ToDoubleFunction<Spot> extent) {
    Map<String, Phrase> words = new LinkedHashMap<>();
    for (int i = 0; i < bands.size(); i++) {
      List<Spot> band = new ArrayList<>(bands.get(i));
      if (!Bands.areApart(band, along, extent)) {
        return Map.of();
      }
      band.sort(Comparator.comparingDouble(along));
      for (int k = 0; k < band.size(); k++) {
        Phrase place = band.size() == 1 ? ALONE : Ordinals.inLine(k, band.size(), places);
        words.put(
            band.get(k).number(),
            bands.size() == 1 ? place : Ordinals.inLine(i, bands.size(), names).and(place));
      }
    }
    return words;
  }

  private static boolean singlesOf(List<List<Spot>> bands) {
    return bands.size() > 1 && bands.stream().allMatch(band -> band.size() == 1);
  }

  private static boolean isOneColumn(List<Spot> spots) {
    return Bands.of(spots, Spot::x, Spot::widthMm)
        .map(columns -> columns.size() == 1)
        .orElse(false);
  }

  /** Cavities one below the other need no rows. */
  private static Map<String, Phrase> inOneLine(List<List<Spot>> singles, Line places) {
    Map<String, Phrase> words = new LinkedHashMap<>();
    for (int i = 0; i < singles.size(); i++) {
      words.put(singles.get(i).get(0).number(), Ordinals.inLine(i, singles.size(), places));
    }
    return words;
  }
}
