package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.ProtectionCurve;
import org.loomwright.model.design.ProtectionCurve.At;
import org.loomwright.planner.plan.Demo;

/** The lines of protection against the checks of the same plan, which know nothing of them. */
class ProtectionCurvesTest {
  private static final double FOR_GOOD_S = 360_000;

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void everyFusedLeadHasItsCurvesAndNoGroundHasOne(String kit) {
    Plan plan = Demo.plan(kit);
    for (Lead lead : plan.design().leads()) {
      List<ProtectionCurve> own = curves(plan, lead);
      if (lead.fuseA() == 0) {
        assertThat(own).as(lead.id()).isEmpty();
        continue;
      }
      assertThat(own).as(lead.id()).isNotEmpty();
      assertThat(own)
          .extracting(ProtectionCurve::fuse)
          .doesNotHaveDuplicates()
          .allMatch(it -> it.matches("fuse \\d+(\\.\\d+)? A (in slot .+ of .+|of .+)"))
          .anyMatch(it -> it.startsWith("fuse " + plain(lead.fuseA()) + " A "));
      assertThat(own).allMatch(it -> it.wire().equals(plain(lead.areaMm2()) + " mm²"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void faultsAndTimesAreThoseOfTheChecks(String kit) {
    Plan plan = Demo.plan(kit);
    for (Lead lead : plan.design().leads()) {
      for (ProtectionCurve curve : curves(plan, lead)) {
        Check end = check(plan, "fault at the end of the line", lead);
        assertThat(traced(end, "fault at the end of the line"))
            .contains(curve.smallestFaultA().orElseThrow());
        assertThat(traced(end, "fault near the source"))
            .contains(curve.largestFaultA().orElseThrow());
      }
      if (curves(plan, lead).size() == 1) {
        ProtectionCurve curve = curves(plan, lead).get(0);
        double smallestA = curve.smallestFaultA().orElseThrow();
        assertThat(latestS(curve, smallestA))
            .isCloseTo(check(plan, "fault at the end of the line", lead).figure(), relative(1e-3));
        Check overload = check(plan, "overload", lead);
        double worstA = traced(overload, "overload: worst current").get(0);
        // The line is drawn through points; the true one lies between its neighbours.
        assertThat(overload.limit())
            .isBetween(next(curve.damage(), worstA).timeS(), last(curve.damage(), worstA).timeS());
        assertThat(curve.loads())
            .filteredOn(it -> it.name().equals("steady load"))
            .singleElement()
            .satisfies(
                it -> assertThat(it.currentA()).isEqualTo(traced(overload, "steady load").get(0)));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void linesFallAndTheWireLiesAboveItsFuse(String kit) {
    for (ProtectionCurve curve : Demo.plan(kit).protections()) {
      for (List<At> line : List.of(curve.earliest(), curve.latest(), curve.damage())) {
        for (int i = 1; i < line.size(); i++) {
          assertThat(line.get(i).currentA()).isGreaterThanOrEqualTo(line.get(i - 1).currentA());
          assertThat(line.get(i).timeS()).isLessThanOrEqualTo(line.get(i - 1).timeS());
        }
        assertThat(line).allMatch(it -> it.currentA() > 0 && it.timeS() > 0);
      }
      // All checks of the demo hold, so from the smallest fault on the fuse is first.
      for (At at : curve.damage()) {
        if (at.currentA() >= curve.smallestFaultA().orElseThrow()
            && at.currentA() <= curve.largestFaultA().orElseThrow()) {
          assertThat(latestS(curve, at.currentA()) * 0.999).isLessThanOrEqualTo(at.timeS());
        }
      }
      assertThat(curve.loads()).isNotEmpty().allMatch(it -> it.currentA() > 0 && it.timeS() > 0);
      // Sound use never opens the fuse.
      for (ProtectionCurve.Load load : curve.loads()) {
        assertThat(load.timeS()).isLessThanOrEqualTo(earliestS(curve, load.currentA()));
      }
    }
  }

  /** Latest opening read off the drawn line: the corner at or before a current, lowest there. */
  private static double latestS(ProtectionCurve curve, double currentA) {
    return read(curve.latest(), currentA, FOR_GOOD_S);
  }

  /** The last corner at or before a current. */
  private static At last(List<At> line, double currentA) {
    return line.stream()
        .filter(it -> it.currentA() <= currentA)
        .reduce((one, two) -> two)
        .orElse(new At(currentA, FOR_GOOD_S));
  }

  /** The first corner beyond a current. */
  private static At next(List<At> line, double currentA) {
    return line.stream().filter(it -> it.currentA() > currentA).findFirst().orElseThrow();
  }

  private static double earliestS(ProtectionCurve curve, double currentA) {
    if (curve.earliest().isEmpty() || currentA < curve.earliest().get(0).currentA()) {
      return FOR_GOOD_S;
    }
    return read(curve.earliest(), currentA, FOR_GOOD_S);
  }

  /** Straight between corners on log-log axes, as drawn. */
  private static double read(List<At> line, double currentA, double before) {
    double time = before;
    for (int i = 0; i < line.size(); i++) {
      At at = line.get(i);
      if (at.currentA() > currentA) {
        if (i == 0) {
          return before;
        }
        At last = line.get(i - 1);
        double share =
            Math.log(currentA / last.currentA()) / Math.log(at.currentA() / last.currentA());
        return last.timeS() * Math.pow(at.timeS() / last.timeS(), share);
      }
      time = at.timeS();
    }
    return time;
  }

  private static List<ProtectionCurve> curves(Plan plan, Lead lead) {
    return plan.protections().stream().filter(it -> it.lead().equals(lead.id())).toList();
  }

  private static Check check(Plan plan, String name, Lead lead) {
    return plan.checks().stream()
        .filter(it -> it.id().equals(name + "/" + lead.id()))
        .findFirst()
        .orElseThrow();
  }

  private static List<Double> traced(Check check, String what) {
    return check.trace().stream()
        .filter(it -> it.what().equals(what) && it.unit().equals("A"))
        .map(it -> it.value())
        .toList();
  }

  private static org.assertj.core.data.Percentage relative(double share) {
    return org.assertj.core.data.Percentage.withPercentage(100 * share);
  }

  private static String plain(double value) {
    return new java.math.BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
