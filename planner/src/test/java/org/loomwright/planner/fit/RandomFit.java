package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.evidence.How;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.plan.With;

/**
 * Draws small orders whose traits are told in all ways, and whose equipment asks for modules and
 * coding.
 */
final class RandomFit {
  private RandomFit() {}

  static KitOrder order(long seed) {
    KitOrder easy = EasyCar.of(seed);
    Draw draw = new Draw(seed + 1);
    List<Trait> traits = new ArrayList<>();
    for (Trait trait : easy.vehicle().traits()) {
      traits.add(With.changed(trait, "tell", tell(draw)));
    }
    for (int i = draw.number(0, 2); i > 0; i--) {
      traits.add(
          new Trait(
              "extra-" + i,
              "extra " + i,
              List.of(
                  new TraitValue("x", "<extra x>", Optional.empty()),
                  new TraitValue("y", "<extra y>", Optional.empty())),
              tell(draw),
              Optional.empty()));
    }
    List<Exclusion> rules = new ArrayList<>(easy.vehicle().rules());
    if (draw.chance(40)) {
      rules.add(
          new Exclusion(draw.condition(traits).and(draw.condition(traits)), "", Optional.empty()));
    }
    Vehicle vehicle = With.changed(With.changed(easy.vehicle(), "traits", traits), "rules", rules);
    List<Trait> own = traits.stream().filter(it -> !it.id().contains("/")).toList();
    List<Equipment> equipment = new ArrayList<>();
    for (Equipment it : easy.equipment()) {
      equipment.add(
          With.changed(
              With.changed(it, "modules", demands("module", own, draw)),
              "coding",
              demands("coding", own, draw)));
    }
    return new KitOrder(easy.kit(), vehicle, equipment, easy.parts(), easy.rules());
  }

  private static Tell tell(Draw draw) {
    TellHow how =
        draw.chance(60)
            ? draw.one(List.of(TellHow.ASK_OWNER, TellHow.LOOK))
            : draw.one(List.of(TellHow.LOOK, TellHow.MEASURE_LIVE, TellHow.MEASURE_ISOLATED));
    List<String> openings =
        how != TellHow.ASK_OWNER && draw.chance(40)
            ? List.of(draw.one(List.of("flap", "cover", "lid")))
            : List.of();
    return new Tell(
        how,
        draw.one(List.of("middle", "rear")),
        openings,
        TimeSpan.of(draw.number(1, 9) + " min"),
        "Which?",
        Map.of(),
        List.of());
  }

  private static List<Demand> demands(String what, List<Trait> traits, Draw draw) {
    List<Demand> demands = new ArrayList<>();
    for (int i = draw.number(0, 2); i > 0; i--) {
      demands.add(
          new Demand(
              what + " " + i,
              draw.condition(traits),
              Optional.of(
                  new Evidence(
                      How.SEEN,
                      Optional.empty(),
                      Optional.empty(),
                      Optional.empty(),
                      Optional.empty()))));
    }
    return demands;
  }

  /** Answers to some questions: each with a probability in percent, any of its values. */
  static Map<String, String> answers(FitCheck check, Random random, int percent) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (FitQuestion question : check.questions()) {
      if (random.nextInt(100) < percent) {
        answers.put(
            question.id(),
            question.options().get(random.nextInt(question.options().size())).value());
      }
    }
    return answers;
  }
}
