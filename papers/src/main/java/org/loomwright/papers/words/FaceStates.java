package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.drawing.CavityMark;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What is in the cavities of the vehicle before the kit comes, as far as it is the same on every
 * build. Whatever hangs on a trait, a fact that had to be made one included, is {@link
 * CavityMark#UNKNOWN}: one picture serves all builds.
 */
public final class FaceStates {
  private FaceStates() {}

  /** States of the cavities of a connector. */
  public static Map<String, CavityMark> of(Vehicle vehicle, Connector connector, Housing housing) {
    Map<String, CavityMark> states = new LinkedHashMap<>();
    for (Cavity it : housing.cavities()) {
      List<Claim> claims = wires(vehicle, new Spot.OfCavity(connector.id(), it.number()));
      connector
          .cavity(it.number())
          .ifPresent(
              fact -> {
                claim(claims, fact.blockedWhen(), CavityMark.BLOCKED);
                claim(claims, fact.pluggedWhen(), CavityMark.PLUGGED);
              });
      states.put(it.number(), state(it, claims));
    }
    return states;
  }

  /** States of the slots of a fuse block that stand on its face. */
  public static Map<String, CavityMark> of(Vehicle vehicle, FuseBlock block, Housing housing) {
    Map<String, CavityMark> states = new LinkedHashMap<>();
    for (Slot slot : block.slots()) {
      Optional<Cavity> cavity = housing.cavity(slot.id());
      if (cavity.isPresent()) {
        List<Claim> claims = wires(vehicle, new Spot.OfSlot(block.id(), slot.id()));
        if (!isAlways(slot.metalWhen())) {
          // Without its metal a slot holds no terminal.
          claims.add(new Claim(CavityMark.BLOCKED, isNever(slot.metalWhen())));
        }
        states.put(slot.id(), state(cavity.get(), claims));
      }
    }
    return states;
  }

  /** States of a new housing. */
  static Map<String, CavityMark> empty(Housing housing) {
    Map<String, CavityMark> states = new LinkedHashMap<>();
    housing.cavities().forEach(it -> states.put(it.number(), state(it, List.of())));
    return states;
  }

  /** A state, and whether it is so on all builds or only on some. */
  private record Claim(CavityMark mark, boolean always) {}

  private static List<Claim> wires(Vehicle vehicle, Spot spot) {
    List<Claim> claims = new ArrayList<>();
    for (Circuit it : vehicle.circuits()) {
      if (it.from().equals(spot) || it.to().contains(spot)) {
        claim(
            claims,
            Optional.of(it.presentWhen()),
            endsLoose(it, spot) ? CavityMark.LOOSE : CavityMark.WIRED);
      }
    }
    return claims;
  }

  /** Whether every other end of the wire is taped back. */
  private static boolean endsLoose(Circuit circuit, Spot spot) {
    return Stream.concat(Stream.of(circuit.from()), circuit.to().stream())
        .filter(it -> !it.equals(spot))
        .allMatch(Spot.Loose.class::isInstance);
  }

  private static void claim(List<Claim> claims, Optional<Condition> when, CavityMark mark) {
    when.filter(it -> !isNever(it)).ifPresent(it -> claims.add(new Claim(mark, isAlways(it))));
  }

  private static CavityMark state(Cavity cavity, List<Claim> claims) {
    if (cavity.closed()) {
      return CavityMark.BLOCKED;
    }
    if (claims.isEmpty()) {
      return CavityMark.EMPTY;
    }
    // What is always so leaves no room for anything else; two such contradict each other.
    List<CavityMark> sure =
        claims.stream().filter(Claim::always).map(Claim::mark).distinct().toList();
    return sure.size() == 1 ? sure.get(0) : CavityMark.UNKNOWN;
  }

  private static boolean isAlways(Condition when) {
    return when.expr() instanceof Expr.Always;
  }

  private static boolean isNever(Condition when) {
    return when.expr() instanceof Expr.Never;
  }
}
