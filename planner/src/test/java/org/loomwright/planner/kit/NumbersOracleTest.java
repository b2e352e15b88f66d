package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.With;

/**
 * The part numbers chosen against every way to divide the cases of one letter, each priced build by
 * build.
 */
class NumbersOracleTest {
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void noDivisionOfTheDemoIsCheaper(String kit) {
    assertThat(compare(Kitchen.of(Demo.order(kit)))).isGreaterThan(1);
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void noDivisionIsCheaper(@ForAll long seed) {
    KitOrder drawn = EasyCar.of(seed);
    String carry = new Draw(seed).one(List.of("0.00", "0.10", "0.50", "2.00", "5.00"));
    Rules rules =
        With.changed(
            drawn.rules(), "numberCarryCost", new Sourced<>(Money.of(carry + " EUR"), "drawn"));
    KitOrder order = With.changed(drawn, "rules", rules);
    if (AllBuilds.of(order.vehicle()).isEmpty()) {
      Statistics.label("numbers").collect("no build");
      return;
    }
    Kitchen kitchen = Kitchen.of(order);
    compare(kitchen);
    int numbers = kitchen.design().partNumbers().size();
    Statistics.label("numbers").collect(numbers > 1 ? "several" : "one");
    Statistics.label("several numbers")
        .collect(numbers > 1)
        .coverage(c -> c.check(true).percentage(p -> p > 10));
    Statistics.label("could be divided")
        .collect(kitchen.sets().stream().anyMatch(set -> set.ids().size() > 1))
        .coverage(c -> c.check(true).percentage(p -> p > 40));
  }

  // Components with more than six cases are only tried whole and fully divided, as documented.
  private static List<List<Set<String>>> tried(List<String> cases) {
    if (cases.size() > 6) {
      return List.of(cases.stream().map(Set::of).toList());
    }
    return cases.isEmpty() ? List.of() : List.copyOf(divisions(cases));
  }

  // Number of divisions tried.
  private static int compare(Kitchen kitchen) {
    double chosen =
        cost(
            kitchen,
            kitchen.design().partNumbers().stream()
                .map(it -> (Set<String>) new TreeSet<>(it.cases()))
                .toList());
    Set<String> all = new TreeSet<>(kitchen.members().keySet());
    int tried = 1;
    assertThat(chosen).isLessThanOrEqualTo(cost(kitchen, List.of(all)) + 1e-6);
    for (CaseSet set : kitchen.sets()) {
      for (List<Set<String>> blocks : tried(set.ids())) {
        List<Set<String>> numbers = new ArrayList<>();
        for (Set<String> block : blocks) {
          Set<String> cases = new TreeSet<>(all);
          cases.removeAll(set.ids());
          cases.addAll(block);
          numbers.add(cases);
        }
        tried++;
        assertThat(chosen)
            .as("against %s", blocks)
            .isLessThanOrEqualTo(cost(kitchen, numbers) + 1e-6);
      }
    }
    checkChosen(kitchen);
    return tried;
  }

  // What each chosen number says of itself.
  private static void checkChosen(Kitchen kitchen) {
    for (PartNumber number : kitchen.design().partNumbers()) {
      Region builds = region(kitchen, number.cases());
      assertThat(number.share()).isCloseTo(builds.share(), within(1e-9));
      assertThat(number.leads())
          .containsExactlyElementsOf(used(kitchen, number.cases()).stream().map(Lead::id).toList());
      assertThat(number.material())
          .isEqualByComparingTo(
              number.parts().stream()
                  .map(PartLine::total)
                  .reduce(java.math.BigDecimal.ZERO, java.math.BigDecimal::add));
    }
  }

  /** All divisions of some cases by numbering their blocks. */
  private static Collection<List<Set<String>>> divisions(List<String> ids) {
    Map<String, List<Set<String>>> found = new HashMap<>();
    int count = (int) Math.pow(ids.size(), ids.size());
    for (int code = 0; code < count; code++) {
      Map<Integer, Set<String>> blocks = new HashMap<>();
      int rest = code;
      for (String id : ids) {
        blocks.computeIfAbsent(rest % ids.size(), block -> new TreeSet<>()).add(id);
        rest /= ids.size();
      }
      List<Set<String>> division = new ArrayList<>(blocks.values());
      found.put(new HashSet<>(division).toString(), division);
    }
    return found.values();
  }

  private static double cost(Kitchen kitchen, List<Set<String>> numbers) {
    Rules rules = kitchen.order().rules();
    double hour = rules.hourlyRate().value().amount().doubleValue();
    double cost = rules.numberCarryCost().value().amount().doubleValue() * (numbers.size() - 1);
    for (Set<String> wanted : numbers) {
      Region builds = region(kitchen, wanted);
      Set<String> cases = new HashSet<>(wanted);
      cases.removeIf(id -> !member(kitchen, id).region().meets(builds));
      List<Lead> leads = used(kitchen, cases);
      double material =
          PriceList.total(new PriceList(kitchen.order()).lines(kitchen.parts().count(leads, cases)))
              .doubleValue();
      double labour = Math.round(kitchen.parts().benchMinutes(leads) / 60 * hour * 100) / 100.0;
      cost += builds.share() * (material + labour);
      for (Lead lead : leads) {
        cost +=
            rules.parkTime().value().seconds()
                / 3600
                * hour
                * parkedShare(kitchen, lead, cases, builds.share());
      }
    }
    return cost;
  }

  private static double parkedShare(Kitchen kitchen, Lead lead, Set<String> cases, double share) {
    double served = 0;
    double parked = 0;
    for (CaseSet.Member member : kitchen.members().values()) {
      if (member.info().component().equals(lead.component()) && cases.contains(member.id())) {
        served += member.info().share();
        parked +=
            lead.a().landing(member.id()).filter(Landing.Parked.class::isInstance).isPresent()
                ? member.info().share()
                : 0;
      }
    }
    return served == 0 ? 0 : share * parked / served;
  }

  private static Region region(Kitchen kitchen, Collection<String> cases) {
    Region builds = kitchen.builds().possible();
    for (CaseSet set : kitchen.sets()) {
      Region any = kitchen.builds().none();
      for (CaseSet.Member member : set.members()) {
        any = cases.contains(member.id()) ? any.or(member.region()) : any;
      }
      builds = builds.and(any);
    }
    return builds;
  }

  private static List<Lead> used(Kitchen kitchen, Collection<String> cases) {
    return kitchen.leads().stream()
        .filter(
            lead ->
                Stream.of(lead.a(), lead.b())
                    .flatMap(end -> end.uses().stream())
                    .filter(use -> !(use.landing() instanceof Landing.Parked))
                    .map(EndUse::cases)
                    .anyMatch(own -> own.stream().anyMatch(cases::contains)))
        .toList();
  }

  private static CaseSet.Member member(Kitchen kitchen, String id) {
    return java.util.Objects.requireNonNull(kitchen.members().get(id), id);
  }
}
