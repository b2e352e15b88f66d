package org.loomwright.planner.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.vehicle.Run;
import org.loomwright.physics.SumException;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.network.ConductorHeat;
import org.loomwright.physics.wire.Conductor;

/**
 * Conductor temperatures for the proof's networks: each lead as a single wire at its current in the
 * hottest air on its way, never above what its insulation is rated for; factory wires as loaded.
 *
 * <p>A bundle can only make a lead hotter. So the resistances are the least there can be, and a
 * drop that fails here fails in any bundle; that no lead gets too hot in its bundle, and what drop
 * that brings, the plan's own checks judge.
 */
final class LeadHeat {
  /** Where no current has heated anything yet, °C. */
  static final double COLD_C = 20;

  private final Subject subject;
  private final Map<List<Object>, Double> known = new HashMap<>();

  LeadHeat(Subject subject) {
    this.subject = subject;
  }

  /** Heat of a network's wires, those that are leads by name. */
  ConductorHeat of(Map<String, Lead> leads) {
    return (wire, currentA) -> {
      Lead lead = leads.get(wire.name());
      return OptionalDouble.of(
          lead == null ? GroupModel.FACTORY_WIRE_C : conductorC(lead, wire.conductor(), currentA));
    };
  }

  private double conductorC(Lead lead, Conductor conductor, double currentA) {
    double airC = ambientC(lead);
    double ratingC = wire(lead).map(it -> it.rating().celsius()).orElse(airC);
    return known.computeIfAbsent(
        List.of(conductor, airC, ratingC, currentA),
        key -> Math.min(ratingC, alone(conductor, airC, ratingC, currentA)));
  }

  private static double alone(Conductor conductor, double airC, double ratingC, double currentA) {
    try {
      return WireHeat.temperature(WireHeat.Lying.single(conductor, airC), currentA).conductorC();
    } catch (SumException meltsOrOutsideTheSums) {
      return ratingC;
    }
  }

  /** Hottest air on a lead's way, °C. */
  double ambientC(Lead lead) {
    DoubleStream places =
        DoubleStream.concat(
            DoubleStream.of(placeC(lead.a().place()), placeC(lead.b().place())),
            subject.vehicle().runs().stream()
                .filter(run -> lead.runs().contains(run.id()))
                .mapToDouble(this::runC));
    return places.max().orElseThrow();
  }

  private double runC(Run run) {
    double endsC = Math.max(placeC(run.from()), placeC(run.to()));
    return run.ambient().map(it -> Math.max(it.celsius(), endsC)).orElse(endsC);
  }

  private double placeC(String place) {
    return subject.vehicle().place(place).map(it -> it.ambient().celsius()).orElse(-60.0);
  }

  private Optional<Wire> wire(Lead lead) {
    return subject.order().parts().wire(lead.wire());
  }
}
