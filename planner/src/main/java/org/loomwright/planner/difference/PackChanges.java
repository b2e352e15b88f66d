package org.loomwright.planner.difference;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;

/** Part numbers, what they cost and what is in them. */
final class PackChanges {
  private PackChanges() {}

  static List<Change> numbersAndCost(Two two) {
    List<Change> changes = new ArrayList<>();
    int was = two.before().design().partNumbers().size();
    int is = two.after().design().partNumbers().size();
    if (was != is) {
      changes.add(
          Change.neutral(Topic.PACK, Words.count(is, "part number") + " to carry, was " + was));
    }
    cost(two).ifPresent(changes::add);
    return changes;
  }

  /** The mean over the mix of builds, so that plans with other part numbers can be compared. */
  private static Optional<Change> cost(Two two) {
    List<PartNumber> old = two.before().design().partNumbers();
    List<PartNumber> now = two.after().design().partNumbers();
    if (old.isEmpty() || now.isEmpty()) {
      return Optional.empty();
    }
    String currency = now.get(0).currency();
    String was = Words.money(mean(old), old.get(0).currency());
    String is = Words.money(mean(now), currency);
    return was.equals(is)
        ? Optional.empty()
        : Optional.of(
            new Change(
                old.get(0).currency().equals(currency)
                    ? Weight.ofGrowth(mean(old).doubleValue(), mean(now).doubleValue())
                    : Weight.NEUTRAL,
                "a kit costs " + is + " in material and bench work, was " + was,
                Topic.PACK));
  }

  private static BigDecimal mean(List<PartNumber> numbers) {
    double shares = numbers.stream().mapToDouble(PartNumber::share).sum();
    double sum =
        numbers.stream()
            .mapToDouble(
                it ->
                    it.material().add(it.labour()).doubleValue()
                        * (shares > 0 ? it.share() / shares : 1.0 / numbers.size()))
            .sum();
    return BigDecimal.valueOf(sum);
  }

  /** Parts that came, went or are needed in another quantity, on any part number. */
  static List<Change> parts(Two two) {
    Map<String, PartLine> before = most(two.before());
    Map<String, PartLine> after = most(two.after());
    List<String> added = new ArrayList<>();
    List<String> gone = new ArrayList<>();
    List<String> other = new ArrayList<>();
    after.forEach(
        (part, line) -> {
          PartLine old = before.get(part);
          if (old == null) {
            added.add(line.name());
          } else if (Math.abs(old.quantity() - line.quantity()) >= 0.005) {
            other.add(
                line.name()
                    + " "
                    + Words.figure(line.quantity(), old.quantity(), line.unit())
                    + " (was "
                    + Words.figure(old.quantity(), line.quantity(), "")
                    + ")");
          }
        });
    before.forEach(
        (part, line) -> {
          if (!after.containsKey(part)) {
            gone.add(line.name());
          }
        });
    List<Change> changes = new ArrayList<>();
    told(two, "parts list, new: ", added, changes);
    told(two, "parts list, gone: ", gone, changes);
    told(two, "parts list, other quantity: ", other, changes);
    return changes;
  }

  private static void told(Two two, String what, List<String> lines, List<Change> changes) {
    if (!lines.isEmpty()) {
      changes.add(Change.neutral(Topic.PACK, what + Words.few(lines, two.detail())));
    }
  }

  /** Each part with the line of the part number that needs most of it. */
  private static Map<String, PartLine> most(Plan plan) {
    Map<String, PartLine> most = new LinkedHashMap<>();
    for (PartNumber number : plan.design().partNumbers()) {
      for (PartLine line : number.parts()) {
        most.merge(line.part(), line, (one, two) -> two.quantity() > one.quantity() ? two : one);
      }
    }
    return most;
  }
}
