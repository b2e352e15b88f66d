package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.SpliceMethod;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.View;

/** Short ways to write documents in tests; all data invented. */
final class Docs {
  static final View VIEW = new View(Side.WIRE_SIDE, LatchDirection.UP);

  private Docs() {}

  /**
   * A trait.
   *
   * @param values value id, words, value id, words …
   */
  static Trait trait(String id, TellHow how, List<String> openings, String... values) {
    List<TraitValue> all = new ArrayList<>();
    Map<String, String> expect = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i += 2) {
      all.add(new TraitValue(values[i], values[i + 1], Optional.empty()));
      expect.put(values[i], values[i + 1]);
    }
    return new Trait(
        id,
        id + " of it",
        all,
        new Tell(how, "floor", openings, TimeSpan.of("60 s"), "which?", expect, List.of()),
        Optional.empty());
  }

  static Section section(String id, String name, String feed, String fedWhen, String limit) {
    return new Section(
        id,
        name,
        feed,
        Condition.of(fedWhen),
        Optional.empty(),
        Current.of(limit),
        Current.of("10 A"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Slot slot(String id, String section, String metalWhen) {
    return new Slot(
        id,
        section,
        "blade",
        Current.of("30 A"),
        Condition.of(metalWhen),
        Optional.empty(),
        "upper",
        "lower",
        "T-blade",
        Optional.empty());
  }

  static Circuit circuit(
      String id, CircuitKind kind, String feed, String from, String to, String presentWhen) {
    return new Circuit(
        id,
        "the " + id + " wire",
        kind,
        feed.isEmpty() ? Optional.empty() : Optional.of(feed),
        Spot.of(from),
        List.of(Spot.of(to)),
        WireSize.of("2.5 mm²"),
        Optional.of(Length.of("1000 mm")),
        Colour.of("red"),
        Optional.empty(),
        Condition.of(presentWhen),
        Optional.empty(),
        Optional.of(Current.of("20 A")),
        Optional.empty(),
        Optional.of(Current.of("4 A")),
        List.of("floor"),
        false,
        Optional.empty());
  }

  static ServiceRecipe recipe(Undo undo) {
    return new ServiceRecipe(
        Optional.empty(), "push it in", undo, Optional.empty(), List.of("hands"));
  }

  static Need need(NeedKind kind, String feed, String continuous) {
    return new Need(
        kind,
        feed.isEmpty() ? Optional.empty() : Optional.of(feed),
        Current.of(continuous),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  static Housing housing(String id, String terminal, int cavities) {
    List<Cavity> all = new ArrayList<>();
    for (int i = 1; i <= cavities; i++) {
      all.add(
          new Cavity(
              String.valueOf(i),
              Length.ofMm(5 * i),
              Length.of("5 mm"),
              Length.of("3 mm"),
              Length.of("3 mm"),
              List.of(terminal),
              Optional.empty()));
    }
    return new Housing(
        id,
        id,
        Length.of("40 mm"),
        Length.of("20 mm"),
        false,
        false,
        true,
        all,
        Optional.empty(),
        Money.of("1.00 EUR"),
        "invented");
  }

  /**
   * Parts.
   *
   * @param contact resistance of a T-floor terminal
   */
  static Parts parts(String contact) {
    List<Fuse> fuses = new ArrayList<>();
    for (String rating : List.of("10 A", "15 A", "20 A", "25 A", "30 A")) {
      fuses.add(
          new Fuse(
              "FU-" + rating.replace(" A", ""),
              rating,
              "blade",
              Current.of(rating),
              Optional.empty(),
              "any",
              Money.of("0.20 EUR"),
              "invented"));
    }
    return new Parts(
        "parts",
        "Parts",
        "1",
        List.of(wire("W1", "1 mm²"), wire("W2.5", "2.5 mm²"), wire("W4", "4 mm²")),
        List.of(housing("HS-floor", "T-floor", 4), housing("HS-heater", "T-floor", 4)),
        List.of(terminal("T-floor", contact), terminal("T-blade", "1 mΩ")),
        List.of(),
        List.of(
            new Ring(
                "R-M6",
                "ring",
                "M6",
                WireSize.of("1 mm²"),
                WireSize.of("6 mm²"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Length.of("6 mm"),
                "tool",
                Money.of("0.20 EUR"),
                "invented")),
        List.of(splice("S-crimp", SpliceMethod.CRIMP), splice("S-solder", SpliceMethod.SOLDER)),
        fuses,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Terminal terminal(String id, String contact) {
    return new Terminal(
        id,
        id,
        WireSize.of("0.5 mm²"),
        WireSize.of("6 mm²"),
        Length.of("1 mm"),
        Length.of("6 mm"),
        Current.of("25 A"),
        List.of(),
        Optional.of(Resistance.of(contact)),
        Length.of("6 mm"),
        Optional.empty(),
        "tool",
        "tin",
        Optional.empty(),
        Money.of("0.10 EUR"),
        "invented");
  }

  private static Splice splice(String id, SpliceMethod method) {
    return new Splice(
        id,
        id,
        method,
        WireSize.of("1 mm²"),
        WireSize.of("10 mm²"),
        Optional.empty(),
        Optional.empty(),
        Length.of("8 mm"),
        "tool",
        Money.of("0.50 EUR"),
        "invented");
  }

  private static Wire wire(String id, String size) {
    return new Wire(
        id,
        id,
        WireSize.of(size),
        Length.of("4 mm"),
        "XLPE",
        Temperature.of("125 °C"),
        List.of(Colour.of("red")),
        Money.of("0.90 EUR"),
        Length.of("100 m"),
        "invented");
  }

  /**
   * Rules.
   *
   * @param feedDrop most drop on a feed
   * @param groundDrop most drop on a ground
   */
  static Rules rules(String feedDrop, String groundDrop) {
    Sourced<Length> mm = new Sourced<>(Length.of("50 mm"), "invented");
    Sourced<TimeSpan> time = new Sourced<>(TimeSpan.of("60 s"), "invented");
    Sourced<Money> money = new Sourced<>(Money.of("1.00 EUR"), "invented");
    return new Rules(
        "rules",
        "Rules",
        "1",
        percent("75 %"),
        percent("80 %"),
        percent("60 %"),
        percent("125 %"),
        percent(feedDrop),
        percent("10 %"),
        percent(groundDrop),
        percent("10 %"),
        new Sourced<>(WireSize.of("0.75 mm²"), "invented"),
        new Sourced<>(WireSize.of("0.35 mm²"), "invented"),
        mm,
        mm,
        mm,
        mm,
        mm,
        percent("5 %"),
        percent("5 %"),
        money,
        time,
        time,
        time,
        time,
        time,
        time,
        time,
        time,
        money,
        Optional.empty(),
        Optional.empty());
  }

  private static Sourced<Percent> percent(String text) {
    return new Sourced<>(Percent.of(text), "invented");
  }
}
