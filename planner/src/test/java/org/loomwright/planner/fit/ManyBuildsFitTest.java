package org.loomwright.planner.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Plan;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.With;

/** Builds are never listed: thousands of millions of them are no more work than two hundred. */
class ManyBuildsFitTest {
  private static final int EXTRA = 24;

  @Test
  void answersGrowWithTheConditionsAndNotWithTheBuilds() {
    KitOrder demo = Demo.order(Demo.TRAILER);
    List<Trait> traits = new ArrayList<>(demo.vehicle().traits());
    for (int i = 0; i < EXTRA; i++) {
      traits.add(extra(i));
    }
    // Met where both traits of some pair are yes.
    String met =
        IntStream.range(0, EXTRA / 2)
            .mapToObj(i -> "(x" + 2 * i + " = yes and x" + (2 * i + 1) + " = yes)")
            .collect(Collectors.joining(" or "));
    List<Equipment> equipment =
        demo.equipment().stream()
            .map(
                it ->
                    With.changed(
                        it,
                        "modules",
                        List.of(new Demand("box", Condition.of(met), Optional.empty()))))
            .toList();
    KitOrder order =
        new KitOrder(
            demo.kit(),
            With.changed(demo.vehicle(), "traits", traits),
            equipment,
            demo.parts(),
            demo.rules());
    BigInteger builds = Builds.of(order.vehicle()).possible().count();
    assertThat(builds).isEqualTo(BigInteger.valueOf(200).shiftLeft(EXTRA));
    Plan plan = Demo.plan(Demo.TRAILER);
    FitCheck check =
        FitCheck.of(
            order, With.changed(plan, "proof", With.changed(plan.proof(), "builds", builds)));
    assertThat(check.questions()).hasSizeGreaterThanOrEqualTo(EXTRA);
    assertThat(check.modules().whole().nodes()).hasSizeLessThan(400);
    long seed = 6;
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      Map<String, String> answers = new LinkedHashMap<>();
      for (int j = 0; j < EXTRA; j++) {
        if (random.nextInt(100) < 60) {
          answers.put("x" + j, random.nextInt(100) < 30 ? "yes" : "no");
        }
      }
      assertThat(check.answer(answers).modules().outcome())
          .as("seed %s, %s", seed, answers)
          .isEqualTo(expected(answers));
      assertThat(check.answer(answers).wiring().outcome()).isEqualTo(Outcome.FITS);
    }
  }

  private static Outcome expected(Map<String, String> answers) {
    boolean open = false;
    for (int i = 0; i < EXTRA; i += 2) {
      String one = answers.getOrDefault("x" + i, "open");
      String other = answers.getOrDefault("x" + (i + 1), "open");
      if (one.equals("yes") && other.equals("yes")) {
        return Outcome.FITS;
      }
      open |= !one.equals("no") && !other.equals("no");
    }
    return open ? Outcome.OPEN : Outcome.DOES_NOT;
  }

  private static Trait extra(int number) {
    return new Trait(
        "x" + number,
        "extra " + number,
        List.of(
            new TraitValue("yes", "with " + number, Optional.empty()),
            new TraitValue("no", "without " + number, Optional.empty())),
        new Tell(
            TellHow.ASK_OWNER,
            "rear-bumper",
            List.of(),
            TimeSpan.of("1 min"),
            "Is it there?",
            Map.of(),
            List.of()),
        Optional.empty());
  }
}
