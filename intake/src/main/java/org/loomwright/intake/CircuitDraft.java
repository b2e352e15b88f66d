package org.loomwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Ends and kind of the circuit a row speaks of. */
final class CircuitDraft {
  private CircuitDraft() {}

  /**
   * Both ends of a wire.
   *
   * @param from source end
   * @param to consumer ends, at least one
   */
  record Ends(Spot from, List<Spot> to) {
    Ends {
      to = List.copyOf(to);
    }

    Set<Spot> all() {
      Set<Spot> all = new LinkedHashSet<>(List.of(from));
      all.addAll(to);
      return all;
    }
  }

  /**
   * What a circuit carries.
   *
   * @param kind kind
   * @param feed supply kind or signal
   * @param guess what it was guessed from; empty when the row says it
   */
  record Carries(CircuitKind kind, String feed, Optional<String> guess) {}

  /** The ends, with the cavity of the row; empty when the row does not say the other end. */
  static Optional<Ends> ends(RowFacts row, Spot here, Optional<Spot> farEnd) {
    Optional<Spot> from = row.from().or(row::slot);
    Optional<Spot> to = row.to();
    if (from.isEmpty() && to.isEmpty()) {
      to = farEnd;
    }
    // Current comes from slots, and grounds are written from their stud, whatever the table's
    // order.
    boolean turned =
        to.filter(it -> it instanceof Spot.OfSlot || it instanceof Spot.OfGround).isPresent()
            && from.filter(it -> it instanceof Spot.OfSlot || it instanceof Spot.OfGround)
                .isEmpty();
    Optional<Spot> source = turned ? to : from;
    Optional<Spot> sink = turned ? from : to;
    Set<Spot> ends = new LinkedHashSet<>();
    if (source.isPresent()) {
      ends.add(here);
    }
    sink.ifPresent(ends::add);
    Spot first = source.orElse(here);
    ends.remove(first);
    return ends.isEmpty() ? Optional.empty() : Optional.of(new Ends(first, new ArrayList<>(ends)));
  }

  /** What the circuit carries. A name that speaks of a supply without saying which is refused. */
  static Fact<Carries> carries(RowFacts row, Ends ends, Vehicle vehicle) {
    if (row.feed().isPresent()) {
      return new Fact.Known<>(stated(row.feed().get()));
    }
    if (ends.from() instanceof Spot.OfGround) {
      return new Fact.Known<>(new Carries(CircuitKind.GROUND, "31", Optional.empty()));
    }
    if (ends.from() instanceof Spot.OfSlot at) {
      Optional<String> feed =
          vehicle
              .fuseBlock(at.block())
              .flatMap(block -> block.slot(at.slot()).map(Slot::section).flatMap(block::section))
              .map(Section::feed);
      return new Fact.Known<>(new Carries(CircuitKind.SUPPLY, feed.orElse("30"), Optional.empty()));
    }
    String words = " " + FarEnd.slug(row.name().orElse("")).replace('-', ' ') + " ";
    if (words.matches(".* (ground|earth|gnd|31) .*")) {
      return new Fact.Known<>(new Carries(CircuitKind.GROUND, "31", Optional.of("ground")));
    }
    boolean supply = words.matches(".* (feed|supply|power|live) .*");
    if (words.matches(".* (30|battery|permanent|constant) .*")
        && (supply || words.contains(" 30 "))) {
      return new Fact.Known<>(new Carries(CircuitKind.SUPPLY, "30", Optional.of("supply 30")));
    }
    if (words.matches(".* (15|ignition|switched) .*") && (supply || words.contains(" 15 "))) {
      return new Fact.Known<>(new Carries(CircuitKind.SUPPLY, "15", Optional.of("supply 15")));
    }
    if (supply) {
      return new Fact.Wrong<>(
          CellText.shown(row.name().orElse(""))
              + " speaks of a supply but not of which; add its DIN 72552 number, e.g. 'seat feed"
              + " 30'");
    }
    String signal = FarEnd.slug(row.name().orElse(""));
    return new Fact.Known<>(
        new Carries(
            CircuitKind.SIGNAL, signal.isEmpty() ? "unnamed" : signal, Optional.of("signal")));
  }

  /** Supply kinds of DIN 72552 that feed something; a number that is none of them is a signal. */
  static Carries stated(String feed) {
    String plain = feed.strip().toLowerCase(Locale.ROOT).replaceFirst("^(?:kl\\.?|terminal) ?", "");
    if (plain.equals("31") || plain.equals("ground") || plain.equals("gnd")) {
      return new Carries(CircuitKind.GROUND, "31", Optional.empty());
    }
    boolean supply = plain.matches("(15|30|54|55|56|57|58|61|75|87)[a-z]?|15/54|[lr]");
    String kept = plain.matches("[0-9/]+") ? plain : feed.strip();
    return new Carries(supply ? CircuitKind.SUPPLY : CircuitKind.SIGNAL, kept, Optional.empty());
  }
}
