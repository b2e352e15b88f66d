package org.loomwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/** A made-up housing with four staggered rows of ten cavities. */
final class FortyWay {
  static final int CAVITIES = 40;
  private static final int COLUMNS = 10;

  private FortyWay() {}

  static Housing housing() {
    List<Cavity> cavities = new ArrayList<>();
    for (int i = 0; i < CAVITIES; i++) {
      int row = i / COLUMNS;
      double x = 4 + 4.0 * (i % COLUMNS) + (row % 2 == 1 ? 2 : 0);
      cavities.add(
          new Cavity(
              Integer.toString(i + 1),
              Length.ofMm(x),
              Length.ofMm(4 + 4.5 * row),
              Length.ofMm(3),
              Length.ofMm(3.5),
              List.of(),
              Optional.empty()));
    }
    return new Housing(
        "H-40",
        "40-way housing",
        Length.ofMm(46),
        Length.ofMm(21.5),
        false,
        false,
        true,
        cavities,
        Optional.empty(),
        Money.of("1.00 EUR"),
        "invented");
  }
}
