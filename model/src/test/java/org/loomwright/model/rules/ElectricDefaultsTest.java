package org.loomwright.model.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Small;

/** The order of sources: the vehicle or part itself, the shop's rules, practice. */
class ElectricDefaultsTest {
  private static final Small BARE = Small.workspace();
  private static final Small RULED = Small.ruled();
  private static final Small STATED = Small.stated();

  @Test
  void practiceWhereNothingIsSaid() {
    KitOrder order = order(BARE);
    Rules rules = order.rules();
    assertThat(ElectricDefaults.contact(rules, terminal(order)).value().ohms()).isEqualTo(5e-3);
    assertThat(ElectricDefaults.splice(rules, splice(order)).value().ohms()).isEqualTo(0.5e-3);
    assertThat(ElectricDefaults.groundPoint(rules).value().ohms()).isEqualTo(2.5e-3);
    assertThat(ElectricDefaults.body(rules, stud(order)).value().ohms()).isEqualTo(1e-3);
    assertThat(ElectricDefaults.feedCable(rules, section(order)).value().ohms()).isEqualTo(5e-3);
    assertThat(ElectricDefaults.strongSource(rules, order.vehicle()).value().ohms())
        .isEqualTo(5e-3);
    assertThat(ElectricDefaults.weakSource(rules, order.vehicle()).value().ohms()).isEqualTo(20e-3);
    assertThat(ElectricDefaults.supplyHighest(rules, order.vehicle()).value().volts())
        .isEqualTo(16);
    assertThat(ElectricDefaults.spliceBalance(rules).value().fraction()).isEqualTo(0.15);
    Sourced<?> fuse = ElectricDefaults.fuse(rules, fuse(order));
    assertThat(ElectricDefaults.fuse(rules, fuse(order)).value().ohms())
        .isEqualTo(15e-3, within(1e-12));
    assertThat(fuse.source()).contains("150 mV over 10 A", "ISO 8820-3", "from memory");
    assertThat(ElectricDefaults.contact(rules).source()).contains("common practice");
  }

  @Test
  void rulesBeforePractice() {
    KitOrder order = order(RULED);
    Rules rules = order.rules();
    assertThat(ElectricDefaults.contact(rules, terminal(order)).value().text()).isEqualTo("4 mΩ");
    assertThat(ElectricDefaults.splice(rules, splice(order)).value().text()).isEqualTo("0.4 mΩ");
    assertThat(ElectricDefaults.groundPoint(rules).value().text()).isEqualTo("1.1 mΩ");
    assertThat(ElectricDefaults.body(rules, stud(order)).value().text()).isEqualTo("0.7 mΩ");
    assertThat(ElectricDefaults.feedCable(rules, section(order)).value().text()).isEqualTo("3 mΩ");
    assertThat(ElectricDefaults.strongSource(rules, order.vehicle()).value().text())
        .isEqualTo("4.5 mΩ");
    assertThat(ElectricDefaults.weakSource(rules, order.vehicle()).value().text())
        .isEqualTo("25 mΩ");
    assertThat(ElectricDefaults.supplyHighest(rules, order.vehicle()).value().text())
        .isEqualTo("15 V");
    assertThat(ElectricDefaults.spliceBalance(rules).value().text()).isEqualTo("20 %");
    assertThat(ElectricDefaults.fuse(rules, fuse(order)).value().ohms())
        .isEqualTo(12e-3, within(1e-12));
    assertThat(ElectricDefaults.contact(rules).source()).isEqualTo("shop rules: our bench");
  }

  @Test
  void ownValuesBeforeRules() {
    KitOrder order = order(STATED);
    Rules rules = order.rules();
    assertThat(ElectricDefaults.contact(rules, terminal(order)).value().text()).isEqualTo("2.2 mΩ");
    assertThat(ElectricDefaults.contact(rules, terminal(order)).source())
        .isEqualTo("terminal TM-28: a maker's data sheet");
    assertThat(ElectricDefaults.splice(rules, splice(order)).value().text()).isEqualTo("0.3 mΩ");
    assertThat(ElectricDefaults.body(rules, stud(order)).value().text()).isEqualTo("0.9 mΩ");
    assertThat(ElectricDefaults.feedCable(rules, section(order)).value().text()).isEqualTo("2 mΩ");
    assertThat(ElectricDefaults.strongSource(rules, order.vehicle()).value().text())
        .isEqualTo("6 mΩ");
    assertThat(ElectricDefaults.weakSource(rules, order.vehicle()).value().text())
        .isEqualTo("30 mΩ");
    assertThat(ElectricDefaults.supplyHighest(rules, order.vehicle()).value().text())
        .isEqualTo("14.8 V");
    assertThat(ElectricDefaults.fuse(rules, fuse(order)).value().text()).isEqualTo("7.5 mΩ");
  }

  @Test
  void twiceTheVoltageInALorry() {
    KitOrder order =
        order(
            BARE.with("alder-van.json", "\"supply\": \"12 V\"", "\"supply\": \"24 V\"")
                .with("alder-van.json", "\"11.8 V\"", "\"23.6 V\""));
    assertThat(ElectricDefaults.supplyHighest(order.rules(), order.vehicle()).value().volts())
        .isEqualTo(32);
  }

  @Test
  void aFuseOfNothingHasNoResistance() {
    Rules rules = order(BARE).rules();
    assertThatThrownBy(() -> ElectricDefaults.fuse(rules, Current.of("0 A")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 A");
  }

  private static KitOrder order(Small small) {
    return ((KitOrders.Found) KitOrders.resolve(Small.good(small.read()).workspace(), "fan-kit"))
        .order();
  }

  private static Terminal terminal(KitOrder order) {
    return order.parts().terminals().get(0);
  }

  private static Splice splice(KitOrder order) {
    return order.parts().splices().get(0);
  }

  private static Fuse fuse(KitOrder order) {
    return order.parts().fuses().get(0);
  }

  private static Section section(KitOrder order) {
    return order.vehicle().fuseBlocks().get(0).sections().get(0);
  }

  private static GroundStud stud(KitOrder order) {
    return order.vehicle().grounds().get(0);
  }
}
