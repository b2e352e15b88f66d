package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.equipment.LoadForm;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.wire.Conductor;

/** Faults planted in the electrics fail the proof by name and figure; drops agree with Σ R·I. */
class NetworkProofTest {
  private static final Pattern DROP = Pattern.compile("the voltage drop is ([0-9.]+) V of");

  private final Shop shop = new Shop();

  @Test
  void findsATerminalOfHighResistance() {
    shop.contact = "25 mΩ";
    Counterexample found = ProofMakerTest.only(shop.prove(), "limits");
    // 12 A over 25 mΩ.
    assertThat(found.what())
        .contains("the contact of terminal T-floor at end")
        .contains("0.3 V")
        .containsPattern(DROP);
  }

  @Test
  void findsAGroundOnAStudOfHighResistance() {
    shop.body = "30 mΩ";
    Counterexample found = ProofMakerTest.only(shop.prove(), "limits");
    // 12 A over 30 mΩ.
    assertThat(found.what())
        .contains("on the ground of heater, ground (pin 2)")
        .contains("over the body from the sill stud, 0.36 V");
    assertThat(found.words()).isEqualTo("no ground wire at the floor connector");
  }

  @Test
  void findsALoadWhosePowerNoLineCanBring() {
    shop.supply = with(shop.supply, LoadForm.POWER, "11 V");
    shop.body = "400 mΩ";
    Counterexample found = ProofMakerTest.only(shop.prove(), "limits");
    // 132 W; what a source of 11.8 V can bring over 0.45 ohm is 11.8² / (4 · 0.45) = 77 W.
    assertThat(found.what()).contains("the voltage collapses").contains("heater, supply (pin 1)");
  }

  @Test
  void findsALoadThatGetsTooLittleVoltage() {
    shop.supply = with(shop.supply, LoadForm.CURRENT, "11.4 V");
    Counterexample found = ProofMakerTest.only(shop.prove(), "limits");
    assertThat(found.what())
        .contains("of at least 11.4 V across heater, supply (pin 1) at the lowest supply");
    // A resistor of the same highest current draws less of it at the lowest supply.
    shop.supply = with(shop.supply, LoadForm.RESISTANCE, "11.1 V");
    assertThat(ProofMakerTest.failed(shop.prove())).isEmpty();
    shop.supply = with(shop.supply, LoadForm.CURRENT, "11.1 V");
    assertThat(ProofMakerTest.failed(shop.prove())).containsExactly("limits");
  }

  @Test
  void findsAFuseInAHotPlace() {
    shop.blockPlace = "roof";
    Counterexample found = ProofMakerTest.only(shop.prove(), "limits");
    // 75 % of the rating, of which 75 % is left at 85 °C.
    assertThat(found.what()).contains("12 A of 11.25 A on the 20 A fuse");
  }

  @Test
  void findsAPeakThatOpensAWarmFuse() {
    shop.supply = withPeak(shop.supply, "40 A", "100 ms");
    assertThat(ProofMakerTest.failed(shop.prove())).isEmpty();
    shop.blockPlace = "roof";
    assertThat(ProofMakerTest.only(shop.prove(), "limits").what()).contains("20 A fuse");
    shop.supply = withPeak(Docs.need(NeedKind.SUPPLY, "30", "8 A"), "40 A", "100 ms");
    shop.ground = Docs.need(NeedKind.GROUND, "", "8 A");
    assertThat(ProofMakerTest.only(shop.prove(), "limits").what())
        .contains("at 85 °C may open at the peak of 40 A for 0.1 s");
    shop.blockPlace = "floor";
    assertThat(ProofMakerTest.failed(shop.prove())).isEmpty();
  }

  @Test
  void findsALineSoLongAndThinThatItsFuseDoesNotOpen() {
    shop.supply = Docs.need(NeedKind.SUPPLY, "30", "0.1 A");
    shop.ground = Docs.need(NeedKind.GROUND, "", "0.1 A");
    shop.supplyWire = "W1";
    shop.fuseA = 10;
    assertThat(ProofMakerTest.failed(shop.prove())).isEmpty();
    shop.lengthMm = 30_000;
    assertThat(ProofMakerTest.only(shop.prove(), "limits").what())
        .contains("10 A blade type C")
        .contains("does not protect lead L1")
        .contains("fault at the end of the line");
  }

  @Test
  void findsATerminalThatDoesNotBearTheCurrent() {
    shop.supply = Docs.need(NeedKind.SUPPLY, "30", "26 A");
    shop.ground = Docs.need(NeedKind.GROUND, "", "12 A");
    shop.supplyWire = "W4";
    shop.fuseA = 40;
    shop.lengthMm = 100;
    Counterexample found = ProofMakerTest.counterexample(shop.prove(), "limits");
    assertThat(found.what()).contains("26 A of 25 A through terminal T-");
  }

  /** A tree of one load: the drop is Σ R·I, and never below that of the lead alone when cold. */
  @Property(tries = 60)
  void dropsAreSumsOfResistanceTimesCurrent(
      @ForAll boolean ground,
      @ForAll @IntRange(min = 500, max = 5000) int lengthMm,
      @ForAll @IntRange(min = 1, max = 13) int currentA,
      @ForAll @IntRange(min = 1, max = 10) int contactMohm,
      @ForAll @IntRange(min = 1, max = 30) int bodyMohm) {
    Shop one = new Shop();
    one.supply = Docs.need(NeedKind.SUPPLY, "30", currentA + " A");
    one.ground = Docs.need(NeedKind.GROUND, "", currentA + " A");
    one.lengthMm = lengthMm;
    one.contact = contactMohm + " mΩ";
    one.body = bodyMohm + " mΩ";
    one.feedDrop = ground ? "90 %" : "0.001 %";
    one.groundDrop = ground ? "0.001 %" : "90 %";
    Matcher found = DROP.matcher(ProofMakerTest.counterexample(one.prove(), "limits").what());
    assertThat(found.find()).isTrue();
    double dropV = Double.parseDouble(found.group(1));
    Conductor conductor = Copper.conductor(WireSize.of("2.5 mm²"), 4);
    double hotC = WireHeat.temperature(WireHeat.Lying.single(conductor, 40), currentA).conductorC();
    double coldOhm = conductor.ohmPerM20C() * lengthMm / 1000;
    double leadOhm = coldOhm * (234.5 + hotC) / 254.5;
    // Feed: fuse of 150 mV at 20 A, blade terminal, floor terminal. Ground: floor terminal, ring,
    // body.
    double restOhm =
        ground ? (contactMohm + 2.5 + bodyMohm) / 1000 : 0.150 / 20 + (1.0 + contactMohm) / 1000;
    assertThat(dropV).isCloseTo((leadOhm + restOhm) * currentA, within(0.0006));
    assertThat(dropV).isGreaterThanOrEqualTo(coldOhm * currentA);
  }

  private static Need with(Need need, LoadForm draws, String minimumVoltage) {
    return new Need(
        need.kind(),
        need.feed(),
        need.continuous(),
        Optional.of(draws),
        Optional.empty(),
        need.peak(),
        need.peakTime(),
        Optional.empty(),
        Optional.of(Voltage.of(minimumVoltage)),
        false,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static Need withPeak(Need need, String peak, String time) {
    return new Need(
        need.kind(),
        need.feed(),
        need.continuous(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(Current.of(peak)),
        Optional.of(TimeSpan.of(time)),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty());
  }
}
