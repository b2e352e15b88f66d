package org.loomwright.planner.proof;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.vehicle.Connector;

/** Which housing of the kit goes onto which plug of the equipment. */
final class Housings {
  private Housings() {}

  /**
   * Housings of the part that the plug mates with, at the place of the mount. Where several are
   * alike, those that a lead for a need of this very plug ends in.
   */
  static List<SuppliedHousing> of(Subject subject, PinNeed need) {
    String place =
        need.mount()
            .place()
            .or(
                () ->
                    need.mount()
                        .connector()
                        .flatMap(id -> subject.vehicle().connector(id))
                        .map(Connector::place))
            .orElse("");
    List<SuppliedHousing> alike =
        subject.design().housings().stream()
            .filter(it -> it.part().equals(need.plug().matesWith()))
            .filter(it -> it.place().equals(place))
            .toList();
    if (alike.size() < 2) {
      return alike;
    }
    String plug = need.equipment().id() + "/" + need.plug().id() + "/";
    return alike.stream()
        .filter(
            housing ->
                subject.design().leads().stream()
                    .filter(lead -> lead.needs().stream().anyMatch(it -> it.startsWith(plug)))
                    .anyMatch(lead -> endsIn(lead, housing)))
        .toList();
  }

  private static boolean endsIn(Lead lead, SuppliedHousing housing) {
    return Stream.concat(lead.a().uses().stream(), lead.b().uses().stream())
        .map(EndUse::landing)
        .map(
            it -> it instanceof Landing.InHousing in ? Optional.of(in.housing()) : Optional.empty())
        .anyMatch(it -> it.equals(Optional.of(housing.id())));
  }
}
