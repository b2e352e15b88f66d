package org.loomwright.planner.proof;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.plan.With;

/**
 * A random small vehicle with facts that depend on random traits, and a random guide for it that is
 * right in many places and wrong in some.
 */
final class RandomKit {
  private static final int CAVITIES = 4;

  final KitOrder order;
  final List<Case> cases;
  final Design design;
  final Guide guide;

  private final Random random;
  private final List<Trait> traits = new ArrayList<>();
  private final TreeSet<String> asked = new TreeSet<>();
  private final Condition[] wired = new Condition[CAVITIES];
  private final Condition[] fed = new Condition[2];

  RandomKit(long seed) {
    random = new Random(seed);
    // Two to six traits mostly; now and then ten of two values: 1024 combinations.
    int number = random.nextInt(25) == 0 ? 10 : 2 + random.nextInt(5);
    for (int i = 0; i < number; i++) {
      TellHow how = random.nextInt(3) == 0 ? TellHow.MEASURE_ISOLATED : TellHow.LOOK;
      traits.add(
          number < 7 && random.nextInt(3) == 0
              ? Docs.trait("t" + i, how, List.of(), "a", "a", "b", "b", "c", "c")
              : Docs.trait("t" + i, how, List.of(), "a", "a", "b", "b"));
    }
    Shop shop = new Shop();
    shop.traits = traits;
    shop.rules = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      Condition both = literal(any()).and(literal(any()));
      shop.rules.add(new Exclusion(both, "never built", Optional.empty()));
    }
    shop.circuits = new ArrayList<>();
    for (int i = 0; i < CAVITIES; i++) {
      wired[i] = condition();
      shop.circuits.add(
          Docs.circuit(
              "c" + i,
              CircuitKind.SIGNAL,
              "s",
              "unit u" + i,
              "cavity floor " + (i + 1),
              wired[i].text()));
    }
    shop.slots = new ArrayList<>();
    for (int i = 0; i < fed.length; i++) {
      fed[i] = condition();
      shop.slots.add(Docs.slot("F" + i, "A", fed[i].text()));
    }
    order = shop.order();
    guide = write();
    Case one = Shop.oneCase("A1", "A", "all", "always");
    cases = List.of(one);
    design = design();
  }

  /** All conditions of landings, by lead. */
  Condition right(String lead) {
    int i = Integer.parseInt(lead.substring(1));
    return i < CAVITIES ? wired[i].negate() : fed[i - CAVITIES];
  }

  private Guide write() {
    Script script = new Script().then(Script.caution("caution/general", "Read."));
    int numbered = 0;
    List<Integer> leads = new ArrayList<>();
    for (int i = 0; i < CAVITIES + fed.length; i++) {
      leads.add(i);
    }
    Collections.shuffle(leads, random);
    for (int lead : leads.subList(0, 1 + random.nextInt(2))) {
      Condition right = right("L" + lead);
      for (String trait : right.traits()) {
        if (random.nextInt(12) > 0 && asked.add(trait)) {
          Trait it = traits.stream().filter(t -> t.id().equals(trait)).findFirst().orElseThrow();
          boolean asTold = random.nextInt(8) > 0;
          script.then(asTold ? Script.ask(it) : Script.ask(it, TellHow.LOOK));
        }
      }
      if (random.nextInt(10) == 0) {
        script.then(land(lead));
        continue;
      }
      script.then(Script.caution("look" + numbered++, "So."));
      Condition taken = random.nextInt(8) == 0 ? condition() : right;
      Condition rest = random.nextInt(8) == 0 ? condition() : taken.negate();
      int number = numbered++;
      script.branch(
          List.of(taken.text(), rest.text()),
          List.of(
              s -> s.then(land(lead)),
              s -> {
                s.then(Script.caution("skip" + number, "Not so."));
                if (random.nextInt(3) == 0) {
                  Trait more = any();
                  s.then(renamed(Script.ask(more), "ask/" + more.id() + "/" + number));
                }
              }));
      script.then(Script.caution("meet" + numbered++, "Go on."));
    }
    return script.then(Script.caution("end", "Done.")).guide();
  }

  private static Step renamed(Step it, String id) {
    return With.changed(it, "id", id);
  }

  private Step land(int lead) {
    Undo undo = lead < CAVITIES && random.nextInt(3) == 0 ? Undo.EASILY : Undo.NOT_AT_ALL;
    return Script.act("land/L" + lead, new Act.Land("L" + lead, "a", landing(lead)), undo);
  }

  private static Landing landing(int lead) {
    return lead < CAVITIES
        ? new Landing.InCavity(
            "floor", String.valueOf(lead + 1), "T-floor", Optional.empty(), false)
        : new Landing.InSlot("rear", "F" + (lead - CAVITIES), "T-blade");
  }

  /** Leads of which only end a is told of, landing as given. */
  static List<Lead> leads(int number, IntFunction<Landing> landing) {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      LeadEnd a = new LeadEnd("floor", List.of(new EndUse(landing.apply(i), List.of("A1"), true)));
      leads.add(
          new Lead(
              "L" + i,
              "L" + i,
              "a lead",
              "A",
              List.of(),
              "W2.5",
              2.5,
              Colour.of("red"),
              a,
              new LeadEnd("floor", List.of(new EndUse(Shop.PARKED, List.of("A1"), true))),
              List.of(),
              100,
              100,
              100,
              0,
              0,
              1,
              0));
    }
    return leads;
  }

  private Design design() {
    return new Design(
        leads(CAVITIES + fed.length, RandomKit::landing),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new PartNumber(
                "P",
                "all",
                List.of(),
                List.of("A1"),
                1,
                List.of(),
                0,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "EUR")));
  }

  private Trait any() {
    return traits.get(random.nextInt(traits.size()));
  }

  private Condition literal(Trait trait) {
    return trait.is(trait.values().get(random.nextInt(trait.values().size())).id());
  }

  private Condition condition() {
    Condition one = literal(any());
    return switch (random.nextInt(5)) {
      case 0 -> one;
      case 1 -> one.and(literal(any()));
      case 2 -> one.or(literal(any()));
      case 3 -> one.and(literal(any())).negate();
      default -> one.or(literal(any()).and(literal(any())));
    };
  }

  /** Every combination of values, possible or not. */
  List<Map<String, String>> combinations() {
    List<Map<String, String>> all = new ArrayList<>(List.of(Map.of()));
    for (Trait trait : traits) {
      List<Map<String, String>> next = new ArrayList<>();
      for (Map<String, String> start : all) {
        trait
            .values()
            .forEach(
                value -> {
                  Map<String, String> more = new TreeMap<>(start);
                  more.put(trait.id(), value.id());
                  next.add(more);
                });
      }
      all = next;
    }
    return all;
  }

  @Override
  public String toString() {
    return Arrays.toString(wired)
        + Arrays.toString(fed)
        + order.vehicle().rules().stream().map(it -> it.exclude().text()).toList()
        + guide.edges().stream()
            .map(it -> it.from() + "->" + it.to() + " if " + it.when().text())
            .toList()
        + BigInteger.valueOf(combinations().size());
  }
}
