package org.loomwright.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.parts.Housing;

/** Gives each column the meaning that header and contents speak for most, the surest first. */
final class ColumnGuesser {
  /** Rows among which the headers are looked for; titles may stand above them. */
  private static final int HEADER_WITHIN = 12;

  private static final double LEAST = 0.3;

  private ColumnGuesser() {}

  private record Bid(int column, Meaning meaning, double header, double share, double score) {}

  static ColumnGuess guess(PastedTable table, ColumnContents contents, Housing housing) {
    Optional<PastedTable.Row> header = header(table, housing);
    int width = table.width();
    List<String> headers = new ArrayList<>();
    List<List<String>> cells = new ArrayList<>();
    for (int column = 0; column < width; column++) {
      int at = column;
      headers.add(header.map(it -> it.text(at)).orElse(""));
      cells.add(
          table.rows().stream()
              .filter(row -> header.isEmpty() || row.number() > header.get().number())
              .map(row -> row.text(at))
              .filter(text -> !text.isEmpty() && !EmptyWords.isDash(text))
              .toList());
    }
    int rows =
        (int)
            table.rows().stream()
                .filter(row -> header.isEmpty() || row.number() > header.get().number())
                .count();
    Map<Integer, Bid> chosen = choose(bids(headers, cells, contents, rows));
    List<ColumnGuess.Column> columns = new ArrayList<>();
    for (int column = 0; column < width; column++) {
      Bid bid = chosen.get(column);
      columns.add(
          bid == null
              ? new ColumnGuess.Column(
                  column,
                  headers.get(column),
                  Meaning.NOTE,
                  0.3,
                  "neither its header nor its cells say what it is")
              : new ColumnGuess.Column(
                  column,
                  headers.get(column),
                  bid.meaning(),
                  Math.min(0.99, bid.score()),
                  reason(bid, headers.get(column))));
    }
    return new ColumnGuess(header.map(PastedTable.Row::number), columns);
  }

  /** The row that has most cells that are headers; at least two, or all of a narrow table. */
  private static Optional<PastedTable.Row> header(PastedTable table, Housing housing) {
    Optional<PastedTable.Row> best = Optional.empty();
    double most = 0;
    for (PastedTable.Row row : table.rows().stream().limit(HEADER_WITHIN).toList()) {
      List<String> texts = row.cells().stream().filter(it -> !it.isEmpty()).toList();
      long words = texts.stream().filter(it -> HeaderWords.fit(it) >= 0.6).count();
      boolean data = texts.stream().anyMatch(it -> CavityText.read(it, housing).isPresent());
      boolean enough =
          words >= 2 || (words == texts.size() && texts.size() == 1 && table.width() == 1);
      double score = words + (double) words / Math.max(1, texts.size());
      if (!data && enough && score > most) {
        most = score;
        best = Optional.of(row);
      }
    }
    return best;
  }

  private static List<Bid> bids(
      List<String> headers, List<List<String>> cells, ColumnContents contents, int rows) {
    List<Bid> bids = new ArrayList<>();
    for (int column = 0; column < headers.size(); column++) {
      for (Meaning meaning : Meaning.values()) {
        double header = HeaderWords.fit(headers.get(column), meaning);
        double share = contents.share(meaning, headers.get(column), cells.get(column));
        double weight = contents.weight(meaning, headers.get(column), cells.get(column), rows);
        double score = header * 0.65 + weight * 0.55;
        if (header == 0) {
          // A header that says something else speaks against what the cells look like.
          boolean other = HeaderWords.fit(headers.get(column)) >= 0.6;
          score = weight * (other ? 0.4 : 1);
        } else if (strict(meaning) && share == 0 && !cells.get(column).isEmpty()) {
          score = header * 0.45;
        }
        if (score >= LEAST) {
          bids.add(new Bid(column, meaning, header, share, score));
        }
      }
    }
    bids.sort(
        Comparator.comparingDouble((Bid it) -> -it.score())
            .thenComparing(Bid::column)
            .thenComparing(Bid::meaning));
    return bids;
  }

  private static boolean strict(Meaning meaning) {
    return meaning == Meaning.CAVITY || meaning == Meaning.COLOUR || meaning == Meaning.SIZE;
  }

  private static Map<Integer, Bid> choose(List<Bid> bids) {
    Map<Integer, Bid> chosen = new HashMap<>();
    Set<Meaning> taken = EnumSet.noneOf(Meaning.class);
    for (Bid bid : bids) {
      boolean free = bid.meaning().isRepeatable() || !taken.contains(bid.meaning());
      if (free && !chosen.containsKey(bid.column())) {
        chosen.put(bid.column(), bid);
        taken.add(bid.meaning());
      }
    }
    return chosen;
  }

  private static String reason(Bid bid, String header) {
    List<String> reasons = new ArrayList<>();
    if (bid.header() > 0) {
      reasons.add("its header says " + CellText.shown(header));
    }
    if (bid.share() >= 0) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "%d %% of its cells can be read as %s",
              Math.round(bid.share() * 100),
              bid.meaning().words()));
    } else if (bid.header() == 0) {
      reasons.add("its cells are words");
    }
    return String.join("; ", reasons);
  }
}
