package org.loomwright.planner.electrics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import org.loomwright.model.equipment.LoadForm;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.physics.network.ConstantCurrent;
import org.loomwright.physics.network.ConstantPower;
import org.loomwright.physics.network.ConstantResistance;
import org.loomwright.physics.network.Element;
import org.loomwright.planner.need.NeedAt;

/** The loads of a joint case: those of its needs, and the currents of all other components. */
final class LoadMaker {
  private final double lowestV;
  private final double highestV;
  private final JointCase joint;
  private final Map<NeedAt, String> pins;
  private final BinaryOperator<String> bus;
  private final UnaryOperator<String> stud;

  /**
   * @param lowestV lowest supply, V
   * @param highestV highest supply, V
   * @param pins node of each need's pin
   * @param bus node of a bus bar, by block and section
   * @param stud node of a stud
   */
  LoadMaker(
      double lowestV,
      double highestV,
      JointCase joint,
      Map<NeedAt, String> pins,
      BinaryOperator<String> bus,
      UnaryOperator<String> stud) {
    this.lowestV = lowestV;
    this.highestV = highestV;
    this.joint = joint;
    this.pins = pins;
    this.bus = bus;
    this.stud = stud;
  }

  /** Adds all loads; gives the name of each need's load. */
  Map<NeedAt, String> add(List<Element> elements) {
    Map<NeedAt, String> names = new LinkedHashMap<>();
    Map<NeedAt, Double> returnedA = new LinkedHashMap<>();
    pins.forEach(
        (need, pin) -> {
          if (need.need().kind() == NeedKind.GROUND || need.currentA() == 0) {
            return;
          }
          Optional<NeedAt> ground =
              Returns.of(need, joint.ways().keySet()).filter(pins::containsKey);
          ground.ifPresent(it -> returnedA.merge(it, need.currentA(), Double::sum));
          String name = "load " + need.topic() + " (" + need.id() + ")";
          names.put(need, name);
          elements.add(load(name, pin, ground.map(pins::get).orElse(CaseNetwork.NEGATIVE), need));
        });
    // A ground may return more than the supplies of this kit bring.
    pins.forEach(
        (need, pin) -> {
          double moreA = need.currentA() - returnedA.getOrDefault(need, 0.0);
          if (need.need().kind() == NeedKind.GROUND && moreA > 1e-9) {
            elements.add(
                new ConstantCurrent(
                    "other current of " + need.topic() + " (" + need.id() + ")",
                    CaseNetwork.POSITIVE,
                    pin,
                    moreA));
          }
        });
    others(elements);
    return names;
  }

  // What a need calls its current is the most it draws anywhere in the supply range: a resistor at
  // the highest voltage, a constant power at the lowest it works at.
  private Element load(String name, String from, String to, NeedAt need) {
    double mostA = need.currentA();
    return switch (need.need().draws().orElse(LoadForm.CURRENT)) {
      case CURRENT -> new ConstantCurrent(name, from, to, mostA);
      case RESISTANCE -> new ConstantResistance(name, from, to, highestV / mostA);
      case POWER ->
          new ConstantPower(
              name,
              from,
              to,
              need.need().minimumVoltage().map(Voltage::volts).orElse(lowestV) * mostA,
              0);
    };
  }

  // Other components: from bus bars to studs as far as both go, the rest to and from the battery.
  private void others(List<Element> elements) {
    Map<String, Double> drawn = new LinkedHashMap<>();
    Map<String, Double> returned = new LinkedHashMap<>();
    joint
        .others()
        .forEach(
            (resource, currentA) -> {
              String[] words = resource.split(" ", -1);
              if (words[0].equals("section")) {
                drawn.merge(bus.apply(words[1], words[2]), currentA, Double::sum);
              } else {
                returned.merge(stud.apply(words[1]), currentA, Double::sum);
              }
            });
    for (String from : new ArrayList<>(drawn.keySet())) {
      for (String to : new ArrayList<>(returned.keySet())) {
        double bothA = Math.min(drawn.getOrDefault(from, 0.0), returned.getOrDefault(to, 0.0));
        other(elements, from, to, bothA);
        drawn.merge(from, -bothA, Double::sum);
        returned.merge(to, -bothA, Double::sum);
      }
    }
    drawn.forEach((from, currentA) -> other(elements, from, CaseNetwork.NEGATIVE, currentA));
    returned.forEach((to, currentA) -> other(elements, CaseNetwork.POSITIVE, to, currentA));
  }

  private static void other(List<Element> elements, String from, String to, double currentA) {
    if (currentA > 1e-9) {
      elements.add(
          new ConstantCurrent("other components, " + from + " to " + to, from, to, currentA));
    }
  }
}
