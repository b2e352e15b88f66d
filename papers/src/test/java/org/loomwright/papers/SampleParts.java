package org.loomwright.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Seal;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.SpliceMethod;
import org.loomwright.model.parts.Sundry;
import org.loomwright.model.parts.SundryUse;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;

/** Invented parts and rules. */
final class SampleParts {
  private SampleParts() {}

  static Parts parts() {
    return new Parts(
        "shop",
        "Shop parts",
        "4",
        List.of(
            wire("W-X25", "cross-linked wire 2.5 mm²", "2.5 mm²", "3.0 mm", "red", "black"),
            wire("W-X10", "cross-linked wire 1.0 mm²", "1.0 mm²", "2.1 mm", "red/white", "black")),
        List.of(
            grid("H-FLOOR", "floor housing, 12 way", 3, 4, true, false),
            grid("H-FUSE", "fuse block face", 2, 8, true, false),
            grid("H-STEP", "step housing, 4 way, sealed", 2, 2, false, true),
            round()),
        List.of(
            terminal("T-280", "blade terminal 2.8, tin", "5 mm", Optional.of("1.85 mm")),
            terminal("T-150", "sealed terminal 1.5, tin", "4.5 mm", Optional.of("1.12 mm")),
            terminal("T-630", "fuse terminal 6.3, tin", "6 mm", Optional.empty())),
        List.of(
            new Seal(
                "S-15",
                "wire seal, blue",
                Length.of("1.9 mm"),
                Length.of("2.4 mm"),
                Money.of("0.09 EUR"),
                "invented")),
        List.of(
            new Ring(
                "R-M6",
                "ring M6",
                "M6",
                WireSize.of("1 mm²"),
                WireSize.of("2.5 mm²"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Length.of("7 mm"),
                "hex die 3",
                Money.of("0.22 EUR"),
                "invented")),
        List.of(
            new Splice(
                "SP-1",
                "sealed crimp splice",
                SpliceMethod.CRIMP,
                WireSize.of("1 mm²"),
                WireSize.of("6 mm²"),
                Optional.empty(),
                Optional.empty(),
                Length.of("7.5 mm"),
                "splice pliers 2",
                Money.of("0.60 EUR"),
                "invented")),
        List.of(
            new Fuse(
                "F-15",
                "blade fuse 15 A",
                "blade",
                Current.of("15 A"),
                Optional.empty(),
                "light blue",
                Money.of("0.30 EUR"),
                "invented")),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new Sundry(
                "CAP-1", "end cap, adhesive", SundryUse.END_CAP, Money.of("0.15 EUR"), "invented"),
            new Sundry(
                "PLUG-1", "cavity plug", SundryUse.CAVITY_PLUG, Money.of("0.05 EUR"), "invented")));
  }

  static Rules rules() {
    return new Rules(
        "shop-rules",
        "Shop rules",
        "2",
        percent("80 %"),
        percent("80 %"),
        percent("60 %"),
        percent("100 %"),
        percent("3 %"),
        percent("10 %"),
        percent("1 %"),
        percent("10 %"),
        new Sourced<>(WireSize.of("1 mm²"), "common practice"),
        new Sourced<>(WireSize.of("0.5 mm²"), "common practice"),
        length("60 mm"),
        length("40 mm"),
        length("5 mm"),
        length("3 mm"),
        length("40 mm"),
        percent("8 %"),
        percent("5 %"),
        new Sourced<>(Money.of("48.00 EUR"), "the shop"),
        time("30 s"),
        time("40 s"),
        time("3 min"),
        time("12 s"),
        time("30 s"),
        time("12 s"),
        time("8 min"),
        time("4 min"),
        new Sourced<>(Money.of("1.50 EUR"), "the shop"),
        Optional.empty(),
        Optional.empty());
  }

  private static Sourced<Percent> percent(String text) {
    return new Sourced<>(Percent.of(text), "common practice");
  }

  private static Sourced<Length> length(String text) {
    return new Sourced<>(Length.of(text), "common practice");
  }

  private static Sourced<TimeSpan> time(String text) {
    return new Sourced<>(TimeSpan.of(text), "common practice");
  }

  private static Wire wire(
      String id, String name, String size, String diameter, String... colours) {
    return new Wire(
        id,
        name,
        WireSize.of(size),
        Length.of(diameter),
        "XLPE",
        Temperature.of("125 °C"),
        java.util.Arrays.stream(colours).map(Colour::of).toList(),
        Money.of("0.70 EUR"),
        Length.of("100 m"),
        "invented");
  }

  private static Terminal terminal(
      String id, String name, String strip, Optional<String> crimpHeight) {
    return new Terminal(
        id,
        name,
        WireSize.of("1 mm²"),
        WireSize.of("2.5 mm²"),
        Length.of("1.9 mm"),
        Length.of("3.1 mm"),
        Current.of("20 A"),
        List.of(),
        Optional.empty(),
        Length.of(strip),
        crimpHeight.map(Length::of),
        "die " + id,
        "tin",
        Optional.empty(),
        Money.of("0.18 EUR"),
        "invented");
  }

  /** A socket insert: nine contacts round four. */
  private static Housing round() {
    List<Cavity> cavities = new ArrayList<>();
    for (int i = 0; i < 13; i++) {
      double radius = i < 9 ? 17 : 7;
      double angle = i < 9 ? 2 * Math.PI * i / 9 : 2 * Math.PI * (i - 9) / 4 + Math.PI / 4;
      cavities.add(
          new Cavity(
              "" + (i + 1),
              Length.ofMm(Math.round((22 + radius * Math.sin(angle)) * 100) / 100.0),
              Length.ofMm(Math.round((22 - radius * Math.cos(angle)) * 100) / 100.0),
              Length.ofMm(6),
              Length.ofMm(6),
              List.of("T-280"),
              Optional.empty()));
    }
    return new Housing(
        "H-ROUND",
        "socket insert, 13 way",
        Length.ofMm(44),
        Length.ofMm(44),
        true,
        false,
        false,
        cavities,
        Optional.empty(),
        Money.of("6.20 EUR"),
        "invented");
  }

  private static Housing grid(
      String id, String name, int rows, int columns, boolean latch, boolean sealed) {
    List<Cavity> cavities = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        cavities.add(
            new Cavity(
                "" + (row * columns + column + 1),
                Length.ofMm(4 + 5 * column),
                Length.ofMm(4 + 6 * row),
                Length.ofMm(3.6),
                Length.ofMm(4.4),
                List.of("T-280"),
                sealed ? Optional.of("PLUG-1") : Optional.empty()));
      }
    }
    return new Housing(
        id,
        name,
        Length.ofMm(8 + 5 * (columns - 1)),
        Length.ofMm(8 + 6 * (rows - 1)),
        false,
        sealed,
        latch,
        cavities,
        Optional.of("lever on the left"),
        Money.of("1.40 EUR"),
        "invented");
  }
}
