package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Guide;
import org.loomwright.model.vehicle.Hazard;

/** Each flag of a place, run or connector calls for its caution before the step that meets it. */
class CautionsTest {
  private final Shop shop = new Shop();

  private static Arguments flag(String caution, String text, String step, Consumer<Shop> set) {
    return Arguments.of(caution, text, step, set);
  }

  static Stream<Arguments> flags() {
    return Stream.of(
        flag("caution/wet", "Water.", "land/L1/b", shop -> shop.wet = true),
        flag("caution/engine-bay", "Fans.", "ask/rear-feed", shop -> shop.engineBay = true),
        flag("caution/underneath", "Use stands.", "ask/rear-feed", shop -> shop.underneath = true),
        flag(
            "caution/high-voltage",
            "For trained people.",
            "ask/rear-feed",
            shop -> shop.highVoltage = true),
        flag("caution/moving", "It moves.", "lay/L1", shop -> shop.moving = true),
        flag(
            "caution/moving",
            "It moves.",
            "lay/L1",
            shop -> shop.near = Optional.of(Hazard.MOVING_PART)),
        flag(
            "caution/heat",
            "Hot exhaust.",
            "lay/L1",
            shop -> shop.near = Optional.of(Hazard.EXHAUST)),
        flag("caution/heat", "Hot.", "lay/L1", shop -> shop.runAmbient = Optional.of("81 °C")),
        flag("caution/pipes", "Pipes.", "lay/L1", shop -> shop.near = Optional.of(Hazard.PIPE)));
  }

  @ParameterizedTest
  @MethodSource("flags")
  void aFlagCallsForItsCaution(String caution, String text, String step, Consumer<Shop> set) {
    assertThat(shop.prove().proven()).isTrue();
    set.accept(shop);
    Counterexample found = ProofMakerTest.only(shop.prove(), "complete");
    assertThat(found.what()).isEqualTo("step '" + caution + "' does not come before this one");
    assertThat(found.step()).contains("(" + step + ")");
    shop.cautions.add(caution + ": " + text);
    assertThat(shop.prove().proven()).isTrue();
    Guide late = Script.moved(shop.guide(), caution, "reconnect");
    assertThat(ProofMakerTest.only(shop.prove(late), "complete").step()).contains(step);
  }

  @Test
  void restraintWiringNearbyCallsForItsCautionBeforeAMeter() {
    shop.restraint = true;
    Guide late = Script.moved(shop.guide(), "caution/restraint", "open/trim");
    Counterexample found = ProofMakerTest.only(shop.prove(late), "complete");
    assertThat(found.what()).contains("caution/restraint");
    assertThat(found.step()).contains("ask/rear-feed");
  }

  @Test
  void aCautionWithoutItsSubjectIsNone() {
    shop.underneath = true;
    shop.cautions.add("caution/underneath: Take care.");
    assertThat(ProofMakerTest.only(shop.prove(), "complete").what())
        .isEqualTo("step 'caution/underneath' says nothing of stands, support, pit");
  }

  @Test
  void eachCopyOnItsOwnBuildsCounts() {
    // The same caution in two copies, each on the builds that meet it only there.
    shop.cautions.removeIf(it -> it.startsWith("caution/parked"));
    Guide missing = shop.guide();
    assertThat(ProofMakerTest.only(shop.prove(missing), "complete").what())
        .isEqualTo("step 'caution/parked' does not come before this one");
    shop.cautions.addAll(List.of("caution/parked/2: Parked ends are dead."));
    assertThat(shop.prove().proven()).isTrue();
  }
}
