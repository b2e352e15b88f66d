package org.loomwright.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Vehicle;

/** Tells from the cells of a column what it may mean. */
final class ColumnContents {
  private static final int SAMPLE = 200;

  private final Housing housing;
  private final Vehicle vehicle;
  private final FarEnd ends;

  ColumnContents(Housing housing, Vehicle vehicle) {
    this.housing = housing;
    this.vehicle = vehicle;
    this.ends = new FarEnd(vehicle);
  }

  /** Share of the cells that can be read as what is meant, 0 to 1; -1 when that says nothing. */
  double share(Meaning meaning, String header, List<String> cells) {
    List<String> sample = cells.stream().limit(SAMPLE).toList();
    SizeUnit unit = SizeUnit.of(header, sample);
    return switch (meaning) {
      case CAVITY -> share(sample, it -> CavityText.read(it, housing).isPresent());
      case COLOUR -> share(sample, this::isColour);
      case SIZE -> share(sample, it -> SizeText.read(it, unit).known().isPresent());
      case FUSE -> share(sample, it -> FuseText.read(it, ends).known().isPresent());
      case FROM, TO -> share(sample, it -> ends.find(it).isPresent());
      case NAME, FEED, NOTE, LEFT_OUT -> -1;
    };
  }

  /**
   * Weight of the contents of a column for a meaning, without a word of a header, 0 to 0.8.
   *
   * @param cells its cells that are not empty
   * @param rows number of rows it could fill
   */
  double weight(Meaning meaning, String header, List<String> cells, int rows) {
    if (cells.isEmpty()) {
      return 0;
    }
    List<String> sample = cells.stream().limit(SAMPLE).toList();
    double share = share(meaning, header, sample);
    double different = (double) new HashSet<>(sample).size() / sample.size();
    double filled = Math.min(1, (double) cells.size() / Math.max(1, rows));
    return switch (meaning) {
      // Each row has a cavity, and each cavity stands once.
      case CAVITY -> 0.8 * share * different * different * filled;
      case COLOUR -> 0.78 * share;
      case SIZE -> share * (plainNumbers(sample) ? 0.45 : 0.75);
      case FUSE -> share * (plainNumbers(sample) ? 0.1 : 0.6);
      case TO -> 0.5 * share;
      case FROM -> 0.45 * share;
      case NAME -> 0.42 * share(sample, ColumnContents::isWords) * (0.5 + different / 2);
      case FEED, NOTE, LEFT_OUT -> 0;
    };
  }

  private boolean isColour(String text) {
    return ColourText.read(text, vehicle).known().isPresent() || ColourText.isOpen(text);
  }

  private static boolean plainNumbers(List<String> cells) {
    return cells.stream().allMatch(it -> it.matches("[0-9]+"));
  }

  private static boolean isWords(String text) {
    return text.matches("(?s).*\\p{L}{3}.*");
  }

  private static double share(List<String> cells, Predicate<String> fits) {
    Set<String> known = new HashSet<>();
    long good =
        cells.stream().filter(it -> known.contains(it) || (fits.test(it) && known.add(it))).count();
    return cells.isEmpty() ? 0 : (double) good / cells.size();
  }
}
