package org.loomwright.planner.proof;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.model.design.Step;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Spot;

/** Follows a need from its pin through the net to what feeds or grounds it. */
final class Trace {
  private final Subject subject;
  private final Findings findings;
  private final Step step;
  private final Region builds;

  Trace(Subject subject, Findings findings, Step step, Region builds) {
    this.subject = subject;
    this.findings = findings;
    this.step = step;
    this.builds = builds;
  }

  /** The way of a need; empty, and a fault kept, when it is not met. */
  Optional<Traced> of(PinNeed need, Net net, List<Source> sources, List<Circuit> circuits) {
    NeedKind kind = need.need().kind();
    if (kind == NeedKind.SIGNAL) {
      return signal(need, net, circuits);
    }
    Source.Kind wanted = kind == NeedKind.SUPPLY ? Source.Kind.FEED : Source.Kind.GROUND;
    Optional<Source> source = sources.stream().filter(it -> it.kind() == wanted).findFirst();
    if (source.isEmpty()) {
      fail(need, kind == NeedKind.SUPPLY ? "is connected to no live feed" : "reaches no ground");
      return Optional.empty();
    }
    if (kind == NeedKind.SUPPLY) {
      String feed = need.need().feed().orElse("");
      require(
          source.get().feed().equals(feed),
          need,
          "needs feed "
              + feed
              + " and gets "
              + source.get().feed()
              + " from "
              + source.get().words());
    } else {
      ground(need, source.get());
    }
    return net.path(need.node(), source.get().node())
        .map(path -> new Traced(need, source.get(), path));
  }

  private Optional<Traced> signal(PinNeed need, Net net, List<Circuit> circuits) {
    Optional<Circuit> circuit =
        circuits.stream()
            .filter(it -> it.kind() == CircuitKind.SIGNAL)
            .filter(it -> it.feed().equals(need.need().feed()))
            .findFirst();
    if (circuit.isEmpty()) {
      fail(need, "is not connected to the signal " + need.need().feed().orElse(""));
      return Optional.empty();
    }
    require(true, need, "");
    Source source =
        new Source(
            Nodes.of(circuit.get()),
            Source.Kind.SIGNAL,
            circuit.get().feed().orElse(""),
            OptionalDouble.empty(),
            false,
            circuit.get().name());
    return net.path(need.node(), source.node()).map(path -> new Traced(need, source, path));
  }

  private void ground(PinNeed need, Source source) {
    Optional<GroundStud> sensor =
        subject.vehicle().grounds().stream()
            .filter(it -> new Spot.OfGround(it.id()).text().equals(source.node()))
            .filter(GroundStud::sensor)
            .findFirst();
    require(sensor.isEmpty(), need, "returns through " + source.words() + ", which serves sensors");
  }

  private void fail(PinNeed need, String what) {
    require(false, need, what);
  }

  private void require(boolean holds, PinNeed need, String what) {
    findings.require(holds, builds, Claim.NEEDS_MET, Optional.of(step), need.words() + " " + what);
  }
}
