package org.loomwright.physics.protection;

import java.util.List;

/**
 * Fuses of ISO 8820 with their usual ratings and opening-time limits: blades (part 3), cartridges
 * with female contacts (part 4), bolt-down strips (part 5).
 */
public enum FuseFamily {
  /** Regular blade, type C. */
  REGULAR_BLADE(
      "blade type C",
      List.of(1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0)),
  /** Small blade, type F. */
  SMALL_BLADE("blade type F", List.of(2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0)),
  /** Large blade, type E. */
  LARGE_BLADE("blade type E", List.of(20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0, 70.0, 80.0)),
  /** Cartridge with female contacts, type A of ISO 8820-4 (from memory). */
  CARTRIDGE("cartridge type A", List.of(20.0, 25.0, 30.0, 40.0, 50.0, 60.0)),
  /** Bolt-down strip, holes 30 mm apart, SF30 of ISO 8820-5 (from memory). */
  STRIP_30(
      "bolt-down strip SF30",
      List.of(30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 100.0, 125.0, 150.0, 175.0, 200.0)),
  /** Bolt-down strip, holes 51 mm apart, SF51 of ISO 8820-5 (from memory). */
  STRIP_51(
      "bolt-down strip SF51",
      List.of(
          60.0, 80.0, 100.0, 125.0, 150.0, 175.0, 200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 450.0,
          500.0));

  private static final double FOREVER = Double.POSITIVE_INFINITY;

  /** 100 h. */
  private static final double HUNDRED_HOURS_S = 360_000;

  private static final double FOUR_HOURS_S = 14_400;

  private static final String MEMORY = "ISO 8820-3 (from memory)";
  private static final String CARTRIDGE_MEMORY = "ISO 8820-4 (from memory)";
  private static final String STRIP_MEMORY = "ISO 8820-5 (from memory)";
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

  private static final List<FuseGate> CARTRIDGES =
      List.of(
          new FuseGate(1.10, HUNDRED_HOURS_S, FOREVER, CARTRIDGE_MEMORY),
          new FuseGate(1.35, 60, 1800, CARTRIDGE_MEMORY),
          new FuseGate(2.00, 4, 60, CARTRIDGE_MEMORY),
          new FuseGate(3.50, 0.2, 7, CARTRIDGE_MEMORY),
          new FuseGate(6.00, 0.04, 1, CARTRIDGE_MEMORY));

  private static final List<FuseGate> STRIPS =
      List.of(
          new FuseGate(1.00, FOUR_HOURS_S, FOREVER, STRIP_MEMORY),
          new FuseGate(1.35, 120, 1800, STRIP_MEMORY),
          new FuseGate(2.00, 1, 15, STRIP_MEMORY),
          new FuseGate(3.50, 0.3, 5, STRIP_MEMORY),
          new FuseGate(6.00, 0.1, 1, STRIP_MEMORY));

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

  /** Usual ratings, A, smallest first (ISO 8820, from memory). */
  public List<Double> ratingsA() {
    return ratingsA;
  }

  /** Opening-time limits for a rating of this family, lowest multiple first. */
  public List<FuseGate> gates(double ratingA) {
    return switch (this) {
      case REGULAR_BLADE -> ratingA <= 30 ? REGULAR_TO_30 : REGULAR_35_40;
      case SMALL_BLADE -> SMALL;
      case LARGE_BLADE -> LARGE;
      case CARTRIDGE -> CARTRIDGES;
      case STRIP_30, STRIP_51 -> STRIPS;
    };
  }

  /**
   * Largest current the fuse can interrupt, A, at the voltage of a 12 V or 24 V system: 1000 A for
   * blades and cartridges, 2000 A for strips (from memory; the data sheet of the fuse decides).
   */
  public double breakingCapacityA() {
    return switch (this) {
      case REGULAR_BLADE, SMALL_BLADE, LARGE_BLADE, CARTRIDGE -> 1000;
      case STRIP_30, STRIP_51 -> 2000;
    };
  }
}
