package org.loomwright.planner.kit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.sizing.Prices;
import org.loomwright.planner.watch.PlanningStopped;

/**
 * How many part numbers to carry. Tried are one number for all, and every division of the cases of
 * any one component into two or more numbers, each with only the leads its cases use; the cheapest
 * counts: share-weighted material, bench work and work to park what a case does not use, plus the
 * cost of carrying every number beyond the first. Divisions over several components at once are not
 * tried.
 */
final class Numbers {
  /** Components with more cases are only tried whole and fully divided. */
  private static final int MOST_CASES_DIVIDED = 6;

  private final KitOrder order;
  private final List<CaseSet> sets;
  private final List<Lead> leads;
  private final PartsOf parts;
  private final Prices prices;
  private final PriceList priceList;

  Numbers(KitOrder order, List<CaseSet> sets, List<Lead> leads, PartsOf parts) {
    this.order = order;
    this.sets = List.copyOf(sets);
    this.leads = List.copyOf(leads);
    this.parts = parts;
    this.prices = new Prices(order);
    this.priceList = new PriceList(order);
  }

  List<PartNumber> choose(Builds builds) {
    List<PartNumber> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (List<Set<String>> division : divisions()) {
      List<PartNumber> numbers = new ArrayList<>();
      for (Set<String> cases : division) {
        PlanningStopped.ifAsked();
        numbers.add(number(cases, builds));
      }
      double cost = cost(numbers);
      if (cost < least - 1e-6) {
        least = cost;
        best = numbers;
      }
    }
    return named(best);
  }

  // The most sold number is the first.
  private List<PartNumber> named(List<PartNumber> numbers) {
    List<PartNumber> ordered =
        numbers.stream()
            .sorted(Comparator.comparingDouble((PartNumber it) -> -it.share()))
            .toList();
    String stem = order.kit().id().toUpperCase(Locale.ROOT);
    List<PartNumber> named = new ArrayList<>();
    for (PartNumber it : ordered) {
      named.add(
          new PartNumber(
              ordered.size() == 1 ? stem : stem + "-" + (named.size() + 1),
              it.words(),
              it.leads(),
              it.cases(),
              it.share(),
              it.parts(),
              it.benchMinutes(),
              it.material(),
              it.labour(),
              it.currency()));
    }
    return named;
  }

  private List<List<Set<String>>> divisions() {
    Set<String> all =
        sets.stream()
            .flatMap(set -> set.ids().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    List<List<Set<String>>> divisions = new ArrayList<>();
    divisions.add(List.of(all));
    for (CaseSet set : sets) {
      if (set.members().size() < 2) {
        continue;
      }
      List<List<Set<String>>> blocks =
          set.members().size() <= MOST_CASES_DIVIDED
              ? partitions(set.ids())
              : List.of(set.ids().stream().map(Set::of).toList());
      for (List<Set<String>> partition : blocks) {
        if (partition.size() > 1) {
          divisions.add(
              partition.stream()
                  .map(
                      block -> {
                        Set<String> cases = new LinkedHashSet<>(all);
                        cases.removeIf(id -> set.ids().contains(id) && !block.contains(id));
                        return cases;
                      })
                  .toList());
        }
      }
    }
    return divisions;
  }

  /** All ways to divide a list into non-empty blocks. */
  static List<List<Set<String>>> partitions(List<String> items) {
    if (items.isEmpty()) {
      return List.of(List.of());
    }
    String first = items.get(0);
    List<List<Set<String>>> result = new ArrayList<>();
    for (List<Set<String>> rest : partitions(items.subList(1, items.size()))) {
      List<Set<String>> alone = new ArrayList<>();
      alone.add(new TreeSet<>(Set.of(first)));
      alone.addAll(rest);
      result.add(alone);
      for (int i = 0; i < rest.size(); i++) {
        List<Set<String>> with = new ArrayList<>(rest);
        Set<String> block = new TreeSet<>(rest.get(i));
        block.add(first);
        with.set(i, block);
        result.add(with);
      }
    }
    return result;
  }

  private PartNumber number(Set<String> wanted, Builds builds) {
    Region region = builds.possible();
    for (CaseSet set : sets) {
      region = region.and(any(set, wanted, builds));
    }
    // Cases that never come together with the number's own need no leads in it.
    Set<String> cases = new LinkedHashSet<>();
    for (CaseSet set : sets) {
      for (CaseSet.Member member : set.members()) {
        if (wanted.contains(member.id()) && member.region().meets(region)) {
          cases.add(member.id());
        }
      }
    }
    List<Lead> own = leads.stream().filter(lead -> used(lead, cases)).toList();
    List<PartLine> lines = priceList.lines(parts.count(own, cases));
    double minutes = parts.benchMinutes(own);
    return new PartNumber(
        "",
        Described.of(region).words(),
        own.stream().map(Lead::id).toList(),
        List.copyOf(cases),
        region.share(),
        lines,
        minutes,
        PriceList.total(lines),
        Prices.cents(BigDecimal.valueOf(prices.work(minutes))),
        prices.currency());
  }

  private static Region any(CaseSet set, Set<String> cases, Builds builds) {
    Region any = builds.none();
    for (CaseSet.Member member : set.members()) {
      if (cases.contains(member.id())) {
        any = any.or(member.region());
      }
    }
    return any;
  }

  private static boolean used(Lead lead, Set<String> cases) {
    return cases.stream().anyMatch(lead::isUsedIn);
  }

  private double cost(List<PartNumber> numbers) {
    double carry = Prices.amount(order.rules().numberCarryCost().value());
    double cost = carry * (numbers.size() - 1);
    double park = prices.work(Prices.minutes(order.rules().parkTime().value()));
    for (PartNumber number : numbers) {
      cost += number.share() * (number.material().doubleValue() + number.labour().doubleValue());
      for (Lead lead : leads) {
        if (number.leads().contains(lead.id())) {
          cost += park * parkedShare(lead, number);
        }
      }
    }
    return cost;
  }

  // Share of vehicles on which a lead of this number is parked; for the divided component its own
  // cases, for the others the whole share of the number times the share of the case.
  private double parkedShare(Lead lead, PartNumber number) {
    double share = 0;
    double served = 0;
    for (CaseSet set : sets) {
      if (set.letter().equals(lead.component())) {
        for (CaseSet.Member member : set.members()) {
          if (number.cases().contains(member.id())) {
            served += member.info().share();
            if (lead.a().landing(member.id()).orElse(null) instanceof Landing.Parked
                && !lead.isUsedIn(member.id())) {
              share += member.info().share();
            }
          }
        }
      }
    }
    return served == 0 ? 0 : number.share() * share / served;
  }
}
