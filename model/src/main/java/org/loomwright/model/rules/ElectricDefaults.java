package org.loomwright.model.rules;

import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.PowerSource;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Electric values for sums, each with where it comes from: what the vehicle or the part says of
 * itself, else what the shop's rules say, else a default from practice.
 */
public final class ElectricDefaults {
  /** Between the 12 V and the 24 V systems of ISO 16750-2. */
  private static final double BETWEEN_SYSTEMS_V = 18;

  private static final Sourced<Resistance> CONTACT =
      ohms("5 mΩ", "default, common practice: 5 to 10 mΩ for a crimp and its contact");
  private static final Sourced<Resistance> SPLICE =
      ohms("0.5 mΩ", "default, common practice for a crimped splice");
  private static final Sourced<Resistance> GROUND_POINT =
      ohms("2.5 mΩ", "default: bonding limit of aircraft practice, 2.5 mΩ (from memory)");
  private static final Sourced<Resistance> BODY =
      ohms("1 mΩ", "default, common practice for a welded steel body");
  private static final Sourced<Resistance> FEED_CABLE =
      ohms("5 mΩ", "default, common practice: cable and joints from the battery to a bus bar");
  private static final Sourced<Resistance> STRONG_SOURCE =
      ohms("5 mΩ", "default, common practice for a full, warm starter battery (from memory)");
  private static final Sourced<Resistance> WEAK_SOURCE =
      ohms("20 mΩ", "default, common practice for an old, cold starter battery (from memory)");
  private static final Sourced<Voltage> FUSE_DROP =
      volts(
          "150 mV",
          "default: ISO 8820-3, largest voltage drop at rated current (from memory); a maker's"
              + " data sheet shows 96 mV at 40 A");
  private static final Sourced<Voltage> HIGHEST_12 =
      volts("16 V", "default: ISO 16750-2, 12 V systems, codes A to D (from memory)");
  private static final Sourced<Voltage> HIGHEST_24 =
      volts("32 V", "default: ISO 16750-2, 24 V systems, codes E to H (from memory)");
  private static final Sourced<Percent> SPLICE_BALANCE =
      new Sourced<>(
          Percent.of("15 %"),
          "default, common practice: no more than about six times the copper on one side of a"
              + " splice as on the other");

  private ElectricDefaults() {}

  /** Resistance of a crimp and its contact of which no part is known. */
  public static Sourced<Resistance> contact(Rules rules) {
    return ruled(rules, Electrics::contact).orElse(CONTACT);
  }

  /** Resistance of a terminal's crimp and its contact with the other half. */
  public static Sourced<Resistance> contact(Rules rules, Terminal terminal) {
    return terminal
        .contactResistance()
        .map(it -> new Sourced<>(it, "terminal " + terminal.id() + ": " + terminal.source()))
        .orElseGet(() -> contact(rules));
  }

  /** Resistance of a splice, conductor to conductor, of which no part is known. */
  public static Sourced<Resistance> splice(Rules rules) {
    return ruled(rules, Electrics::splice).orElse(SPLICE);
  }

  /** Resistance of a splice, conductor to conductor. */
  public static Sourced<Resistance> splice(Rules rules, Splice splice) {
    return splice
        .resistance()
        .map(it -> new Sourced<>(it, "splice " + splice.id() + ": " + splice.source()))
        .orElseGet(() -> splice(rules));
  }

  /** Resistance of a ring on its stud, crimp included. */
  public static Sourced<Resistance> groundPoint(Rules rules) {
    return ruled(rules, Electrics::groundPoint).orElse(GROUND_POINT);
  }

  /** Resistance from a stud back to the battery's negative post. */
  public static Sourced<Resistance> body(Rules rules, GroundStud stud) {
    return stud.resistance()
        .map(it -> new Sourced<>(it, "vehicle: " + stud.name()))
        .orElseGet(() -> body(rules));
  }

  /** Resistance of the body from a place of which no stud is known to the negative post. */
  public static Sourced<Resistance> body(Rules rules) {
    return ruled(rules, Electrics::body).orElse(BODY);
  }

  /** Resistance from the battery to a section's bus bar. */
  public static Sourced<Resistance> feedCable(Rules rules, Section section) {
    return section
        .feedResistance()
        .map(it -> new Sourced<>(it, "vehicle: " + section.name()))
        .orElseGet(() -> feedCable(rules));
  }

  /** Resistance from the battery to a bus bar of which nothing is known. */
  public static Sourced<Resistance> feedCable(Rules rules) {
    return ruled(rules, Electrics::feedCable).orElse(FEED_CABLE);
  }

  /** Internal resistance of a full, warm battery. */
  public static Sourced<Resistance> strongSource(Rules rules, Vehicle vehicle) {
    return stated(vehicle, PowerSource::strong)
        .or(() -> ruled(rules, Electrics::strongSource))
        .orElse(STRONG_SOURCE);
  }

  /** Internal resistance of an old, cold battery. */
  public static Sourced<Resistance> weakSource(Rules rules, Vehicle vehicle) {
    return stated(vehicle, PowerSource::weak)
        .or(() -> ruled(rules, Electrics::weakSource))
        .orElse(WEAK_SOURCE);
  }

  /** Most voltage across a fuse at its rated current. */
  public static Sourced<Voltage> fuseDrop(Rules rules) {
    return ruled(rules, Electrics::fuseDrop).orElse(FUSE_DROP);
  }

  /**
   * Resistance of a fuse of which only the rating is known: the drop at rated current over the
   * rating.
   *
   * @throws IllegalArgumentException when the rating is zero
   */
  public static Sourced<Resistance> fuse(Rules rules, Current rating) {
    if (!(rating.amperes() > 0)) {
      throw new IllegalArgumentException("a fuse of \"" + rating + "\" has no resistance");
    }
    Sourced<Voltage> drop = fuseDrop(rules);
    return new Sourced<>(
        Resistance.ofOhms(drop.value().volts() / rating.amperes()),
        drop.value() + " over " + rating + "; " + drop.source());
  }

  /** Resistance of a fuse. */
  public static Sourced<Resistance> fuse(Rules rules, Fuse fuse) {
    return fuse.resistance()
        .map(it -> new Sourced<>(it, "fuse " + fuse.id() + ": " + fuse.source()))
        .orElseGet(() -> fuse(rules, fuse.rating()));
  }

  /** Highest voltage at the fuse blocks with the engine running. */
  public static Sourced<Voltage> supplyHighest(Rules rules, Vehicle vehicle) {
    return stated(vehicle, PowerSource::highest)
        .or(() -> ruled(rules, Electrics::supplyHighest))
        .orElse(vehicle.supply().volts() < BETWEEN_SYSTEMS_V ? HIGHEST_12 : HIGHEST_24);
  }

  /** Least share of a splice's copper on its thinner side. */
  public static Sourced<Percent> spliceBalance(Rules rules) {
    return ruled(rules, Electrics::spliceBalance).orElse(SPLICE_BALANCE);
  }

  private static <T> Optional<Sourced<T>> ruled(
      Rules rules, Function<Electrics, Optional<Sourced<T>>> value) {
    return rules
        .electrics()
        .flatMap(value)
        .map(it -> new Sourced<>(it.value(), "shop rules: " + it.source()));
  }

  private static <T> Optional<Sourced<T>> stated(
      Vehicle vehicle, Function<PowerSource, Optional<T>> value) {
    return vehicle
        .source()
        .flatMap(value)
        .map(it -> new Sourced<>(it, "vehicle: battery and alternator of " + vehicle.name()));
  }

  private static Sourced<Resistance> ohms(String text, String source) {
    return new Sourced<>(Resistance.of(text), source);
  }

  private static Sourced<Voltage> volts(String text, String source) {
    return new Sourced<>(Voltage.of(text), source);
  }
}
