package org.loomwright.planner.proof;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.equipment.LoadForm;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.physics.network.ConstantCurrent;
import org.loomwright.physics.network.ConstantPower;
import org.loomwright.physics.network.ConstantResistance;
import org.loomwright.physics.network.Element;

/**
 * The loads of a group of nets: those of its needs, what else its grounds return, what the factory
 * has on its circuits, at their far end, and the kit's loads outside the group.
 *
 * <p>Loads outside the group are put straight between bus bar and stud, through as much wire as the
 * rules let lose: so each draws no more than it does for certain. Those fed from units, and
 * signals, are left out.
 */
final class GroupLoads {
  /** Feeds what returns over factory ground wires already, past the battery's resistance. */
  private static final String FACTORY = "factory loads";

  private static final String FACTORY_POSITIVE = "feed of factory loads";

  /** Nearly nothing: only so that the source of factory loads has a resistance at all, ohm. */
  private static final double FACTORY_OHM = 1e-4;

  private static final double LEAST_A = 1e-9;

  private final Subject subject;
  private final Rules rules;
  private final Group group;
  private final Map<PinNeed, PinNeed> returns;
  private final GroupModel model;
  private final Map<PinNeed, String> loads = new LinkedHashMap<>();
  private boolean factory;

  /**
   * @param returns the ground of each supply that has one
   * @param model the wiring, to which the loads are added
   */
  GroupLoads(Subject subject, Group group, Map<PinNeed, PinNeed> returns, GroupModel model) {
    this.subject = subject;
    this.rules = subject.order().rules();
    this.group = group;
    this.returns = returns;
    this.model = model;
  }

  /** Adds all loads; gives the name of each supply's load. */
  Map<PinNeed, String> add(List<Elsewhere.Other> others) {
    group.traced().forEach(this::load);
    group.traced().forEach(this::rest);
    group.nets().forEach(this::factoryLoads);
    others.forEach(this::other);
    return loads;
  }

  private void load(Traced traced) {
    PinNeed need = traced.need();
    if (need.need().kind() == NeedKind.GROUND || need.continuousA() == 0) {
      return;
    }
    String name = model.free(need.words());
    String to = groundOf(need).map(it -> model.node(it.node())).orElse(GroupModel.NEGATIVE);
    loads.put(need, name);
    model.add(draw(name, model.node(need.node()), to, need.need(), 0));
  }

  private Optional<PinNeed> groundOf(PinNeed need) {
    return Optional.ofNullable(returns.get(need)).filter(it -> group.traced(it).isPresent());
  }

  /** A ground may return more than the supplies of the kit bring. */
  private void rest(Traced traced) {
    PinNeed ground = traced.need();
    if (ground.need().kind() != NeedKind.GROUND) {
      return;
    }
    double broughtA =
        loads.keySet().stream()
            .filter(it -> groundOf(it).filter(ground::equals).isPresent())
            .mapToDouble(PinNeed::continuousA)
            .sum();
    double moreA = ground.continuousA() - broughtA;
    if (moreA > LEAST_A) {
      model.add(
          new ConstantCurrent(
              model.free("what else returns by " + ground.words()),
              GroupModel.POSITIVE,
              model.node(ground.node()),
              moreA));
    }
  }

  private void factoryLoads(NetAt net) {
    for (Circuit circuit : net.circuits()) {
      double loadA = circuit.load().map(it -> it.amperes()).orElse(0.0);
      if (net.servesOnlyNeeds(circuit) || !(loadA > 0)) {
        continue;
      }
      String name = model.free("what is on " + circuit.name() + " already");
      String far = model.node(Nodes.of(circuit));
      if (circuit.kind() != CircuitKind.GROUND) {
        model.add(new ConstantCurrent(name, far, GroupModel.NEGATIVE, loadA));
        continue;
      }
      if (!factory) {
        factory = true;
        model.add(
            new org.loomwright.physics.network.Source(
                FACTORY,
                GroupModel.NEGATIVE,
                FACTORY_POSITIVE,
                subject.vehicle().supplyLowest().volts(),
                FACTORY_OHM));
      }
      model.add(new ConstantCurrent(name, FACTORY_POSITIVE, far, loadA));
    }
  }

  private void other(Elsewhere.Other other) {
    PinNeed need = other.need();
    if (need.continuousA() == 0) {
      return;
    }
    String from = other.feed().map(model::bus).orElse(GroupModel.POSITIVE);
    String to = GroupModel.NEGATIVE;
    if (other.stud().isPresent()) {
      to = other.stud().get();
      model.stud(to);
    }
    double lostV =
        Math.max(rules.feedDrop().value().fraction(), rules.splicedFeedDrop().value().fraction())
            + rules.groundDrop().value().fraction();
    model.add(
        draw(
            model.free("elsewhere: " + need.words()),
            from,
            to,
            need.need(),
            lostV * subject.vehicle().supply().volts()));
  }

  // What a need calls its current is the most it draws anywhere in the supply range: a resistor at
  // the highest voltage, a constant power at the lowest it works at.
  private Element draw(String name, String from, String to, Need need, double lostV) {
    double mostA = need.continuous().amperes();
    return switch (need.draws().orElse(LoadForm.CURRENT)) {
      case CURRENT -> new ConstantCurrent(name, from, to, mostA);
      case RESISTANCE -> new ConstantResistance(name, from, to, (highestV() + lostV) / mostA);
      case POWER ->
          new ConstantPower(
              name,
              from,
              to,
              need.minimumVoltage()
                      .map(Voltage::volts)
                      .orElse(subject.vehicle().supplyLowest().volts())
                  * mostA,
              0);
    };
  }

  private double highestV() {
    return Math.max(
        subject.vehicle().supplyLowest().volts(),
        ElectricDefaults.supplyHighest(rules, subject.vehicle()).value().volts());
  }
}
