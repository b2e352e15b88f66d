package org.loomwright.planner.landing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Seal;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.SpliceMethod;
import org.loomwright.model.parts.Sundry;
import org.loomwright.model.parts.SundryUse;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.SplicePolicy;

/** Chooses the parts an end is made with, for a given wire and current. */
public final class EndParts {
  private static final double SLACK = 1e-9;

  private final KitOrder order;
  private final Parts parts;

  /** The end parts of an order. */
  public EndParts(KitOrder order) {
    this.order = order;
    this.parts = order.parts();
  }

  /**
   * The landing with its parts, empty when no part on file takes this wire there.
   *
   * @param currentA most continuous current through the end
   * @param pullPlug whether a seal plug has to come out of the cavity first
   * @param otherAreaMm2 copper of the other conductors in the same splice
   */
  public Optional<Landing> make(
      Touch touch, Wire wire, double currentA, boolean pullPlug, double otherAreaMm2) {
    return make(touch, wire, currentA, pullPlug, new Beside(otherAreaMm2, 0));
  }

  /**
   * The other conductors in a splice.
   *
   * @param areaMm2 their copper
   * @param diameterMm thickest insulation of them, zero when not known
   */
  public record Beside(double areaMm2, double diameterMm) {}

  /** The same, with the insulation of the other conductors in the same splice. */
  public Optional<Landing> make(
      Touch touch, Wire wire, double currentA, boolean pullPlug, Beside beside) {
    if (touch instanceof Touch.AtCavity at) {
      return order
          .vehicle()
          .connector(at.connector())
          .map(Connector::housing)
          .flatMap(parts::housing)
          .flatMap(
              housing ->
                  inHousing(
                      housing,
                      at.cavity(),
                      wire,
                      currentA,
                      ambientC(at.place()),
                      Platings.atConnector(order, at.connector())))
          .map(
              end ->
                  new Landing.InCavity(
                      at.connector(), at.cavity(), end.terminal(), end.seal(), pullPlug));
    } else if (touch instanceof Touch.AtHousing at) {
      return parts
          .housing(at.housing())
          .flatMap(
              housing ->
                  inHousing(
                      housing,
                      at.cavity(),
                      wire,
                      currentA,
                      ambientC(at.place()),
                      Platings.atHousing(order, at.mount())))
          .map(end -> new Landing.InHousing(at.mount(), at.cavity(), end.terminal(), end.seal()));
    } else if (touch instanceof Touch.AtSlot at) {
      return order
          .vehicle()
          .fuseBlock(at.block())
          .flatMap(block -> block.slot(at.slot()))
          .map(Slot::terminal)
          .flatMap(parts::terminal)
          .filter(terminal -> takes(terminal, wire, currentA, ambientC(at.place())))
          .map(terminal -> new Landing.InSlot(at.block(), at.slot(), terminal.id()));
    } else if (touch instanceof Touch.AtGround at) {
      return order
          .vehicle()
          .ground(at.ground())
          .map(GroundStud::thread)
          .flatMap(thread -> ring(thread, wire, currentA))
          .map(ring -> new Landing.OnGround(at.ground(), ring.id()));
    } else if (touch instanceof Touch.AtCircuit at) {
      return order
          .vehicle()
          .circuit(at.circuit())
          .map(Circuit::wire)
          // A splice into a wire that goes on holds that wire twice.
          .flatMap(host -> splice(2 * host.areaMm2() + wire.size().areaMm2(), wire.diameter().mm()))
          .map(splice -> new Landing.IntoCircuit(at.circuit(), at.place(), splice.id()));
    }
    if (touch instanceof Touch.AtLoose at) {
      return cap().map(it -> new Landing.Parked(at.place(), it.id()));
    }
    Touch.AtJoint at = (Touch.AtJoint) touch;
    return splice(
            beside.areaMm2() + wire.size().areaMm2(),
            Math.max(beside.diameterMm(), wire.diameter().mm()))
        .map(splice -> new Landing.InJoint(at.joint(), splice.id()));
  }

  /** The cheapest end cap, for parked ends. */
  public Optional<Sundry> cap() {
    return sundry(SundryUse.END_CAP);
  }

  /** The cheapest sundry part for a use. */
  public Optional<Sundry> sundry(SundryUse use) {
    return parts.sundries().stream()
        .filter(it -> it.use() == use)
        .min(Comparator.comparing((Sundry it) -> it.price().amount()).thenComparing(Sundry::id));
  }

  private double ambientC(String place) {
    return ContactLimit.ambientC(order, place);
  }

  private record Pinned(String terminal, Optional<String> seal) {}

  private Optional<Pinned> inHousing(
      Housing housing,
      String number,
      Wire wire,
      double currentA,
      double ambientC,
      List<Platings.Mate> mates) {
    List<Terminal> fitting =
        housing.cavity(number).map(Cavity::terminals).orElse(List.of()).stream()
            .map(parts::terminal)
            .flatMap(Optional::stream)
            .filter(terminal -> takes(terminal, wire, currentA, ambientC))
            // Of several that fit the one plated like the other half comes first; where none is,
            // the check of the platings fails by name.
            .sorted(
                Comparator.comparing(
                    (Terminal it) ->
                        mates.stream()
                            .anyMatch(mate -> !Platings.alike(mate.plating(), it.plating()))))
            .toList();
    for (Terminal terminal : fitting) {
      if (!housing.sealed()) {
        return Optional.of(new Pinned(terminal.id(), Optional.empty()));
      }
      Optional<Seal> seal = seal(terminal, wire);
      if (seal.isPresent()) {
        return Optional.of(new Pinned(terminal.id(), seal.map(Seal::id)));
      }
    }
    return Optional.empty();
  }

  // The terminal names the seal it was made for; another that fits the insulation serves as well.
  private Optional<Seal> seal(Terminal terminal, Wire wire) {
    double diameterMm = wire.diameter().mm();
    return parts.seals().stream()
        .filter(
            seal ->
                diameterMm >= seal.insulationLeast().mm() - SLACK
                    && diameterMm <= seal.insulationMost().mm() + SLACK)
        .min(
            Comparator.comparing((Seal seal) -> !terminal.seal().equals(Optional.of(seal.id())))
                .thenComparing(Seal::id));
  }

  private static boolean takes(Terminal terminal, Wire wire, double currentA, double ambientC) {
    double area = wire.size().areaMm2();
    double diameterMm = wire.diameter().mm();
    return area >= terminal.wireLeast().areaMm2() - SLACK
        && area <= terminal.wireMost().areaMm2() + SLACK
        && diameterMm >= terminal.insulationLeast().mm() - SLACK
        && diameterMm <= terminal.insulationMost().mm() + SLACK
        && ContactLimit.carries(terminal, wire, ambientC, currentA);
  }

  private Optional<Ring> ring(String thread, Wire wire, double currentA) {
    double area = wire.size().areaMm2();
    double diameterMm = wire.diameter().mm();
    return parts.rings().stream()
        .filter(
            ring ->
                ring.thread().equals(thread)
                    && area >= ring.wireLeast().areaMm2() - SLACK
                    && area <= ring.wireMost().areaMm2() + SLACK
                    && ring.insulationLeast()
                        .filter(least -> diameterMm < least.mm() - SLACK)
                        .isEmpty()
                    && ring.insulationMost()
                        .filter(most -> diameterMm > most.mm() + SLACK)
                        .isEmpty()
                    && ring.currentLimit()
                        .filter(most -> currentA > most.amperes() + SLACK)
                        .isEmpty())
        .min(Comparator.comparing((Ring it) -> it.price().amount()).thenComparing(Ring::id));
  }

  // A sleeve too small for the insulation is taken only where no other is left; its check then
  // fails by name.
  private Optional<Splice> splice(double copperMm2, double diameterMm) {
    SplicePolicy policy = order.vehicle().splicePolicy();
    return parts.splices().stream()
        .filter(
            it ->
                copperMm2 >= it.areaLeast().areaMm2() - SLACK
                    && copperMm2 <= it.areaMost().areaMm2() + SLACK
                    && (it.method() == SpliceMethod.CRIMP
                        || policy == SplicePolicy.CRIMP_OR_SOLDER))
        .min(
            Comparator.comparing(
                    (Splice it) ->
                        it.insulationMost()
                            .filter(most -> diameterMm > most.mm() + SLACK)
                            .isPresent())
                .thenComparing(it -> it.price().amount())
                .thenComparing(Splice::id));
  }
}
