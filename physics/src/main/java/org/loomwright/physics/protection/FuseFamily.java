package org.loomwright.physics.protection;

import java.util.List;

/** Blade fuses of ISO 8820-3 with their usual ratings and opening-time limits. */
public enum FuseFamily {
  /** Regular blade, type C. */
  REGULAR_BLADE(
      "blade type C",
      List.of(1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0)),
  /** Small blade, type F. */
  SMALL_BLADE("blade type F", List.of(2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0)),
  /** Large blade, type E. */
  LARGE_BLADE("blade type E", List.of(20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0, 70.0, 80.0));

  private static final double FOREVER = Double.POSITIVE_INFINITY;

  /** 100 h. */
  private static final double HUNDRED_HOURS_S = 360_000;

  private static final String MEMORY = "ISO 8820-3 (from memory)";
  private static final String SHEET = "fuse makers' data sheets to ISO 8820-3";

  /** Read for the 10 A type C; taken over to its neighbours. */
  private static final String TEN_AMPERE =
      "fuse makers' data sheets, 10 A type C; other ratings and type F from memory";

  private static final List<FuseGate> REGULAR_TO_30 =
      List.of(
          new FuseGate(1.10, HUNDRED_HOURS_S, FOREVER, MEMORY),
          new FuseGate(1.35, 0.75, 600, MEMORY),
          new FuseGate(1.60, 0.25, 50, TEN_AMPERE),
          new FuseGate(2.00, 0.15, 5, TEN_AMPERE),
          new FuseGate(3.50, 0.04, 0.5, MEMORY),
          new FuseGate(6.00, 0.02, 0.1, MEMORY));

  private static final List<FuseGate> REGULAR_35_40 =
      List.of(
          new FuseGate(1.00, HUNDRED_HOURS_S, FOREVER, SHEET),
          new FuseGate(1.35, 0.75, 600, SHEET),
          new FuseGate(1.60, 0.25, 50, TEN_AMPERE),
          new FuseGate(2.00, 0.15, 5, SHEET),
          new FuseGate(3.50, 0.08, 0.5, SHEET),
          new FuseGate(6.00, 0, 0.15, SHEET));

  private static final List<FuseGate> SMALL =
      List.of(
          new FuseGate(1.10, HUNDRED_HOURS_S, FOREVER, MEMORY),
          new FuseGate(1.35, 0.75, 600, MEMORY),
          new FuseGate(1.60, 0.25, 50, TEN_AMPERE),
          new FuseGate(2.00, 0.15, 5, MEMORY),
          new FuseGate(3.50, 0.08, 0.25, MEMORY),
          new FuseGate(6.00, 0.03, 0.1, MEMORY));

  private static final List<FuseGate> LARGE =
      List.of(
          new FuseGate(1.00, HUNDRED_HOURS_S, FOREVER, SHEET),
          new FuseGate(1.35, 60, 1800, SHEET),
          new FuseGate(2.00, 2, 50, SHEET),
          new FuseGate(3.50, 0.2, 7, SHEET),
          new FuseGate(6.00, 0.04, 1, SHEET));

  private final String label;
  private final List<Double> ratingsA;

  FuseFamily(String label, List<Double> ratingsA) {
    this.label = label;
    this.ratingsA = ratingsA;
  }

  /** As the trade writes it. */
  public String label() {
    return label;
  }

  /** Usual ratings, A, smallest first (ISO 8820-3, from memory). */
  public List<Double> ratingsA() {
    return ratingsA;
  }

  /** Opening-time limits for a rating of this family, lowest multiple first. */
  public List<FuseGate> gates(double ratingA) {
    return switch (this) {
      case REGULAR_BLADE -> ratingA <= 30 ? REGULAR_TO_30 : REGULAR_35_40;
      case SMALL_BLADE -> SMALL;
      case LARGE_BLADE -> LARGE;
    };
  }
}
