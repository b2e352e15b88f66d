package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.physics.network.Joint;

/** Resistance of what is no length of wire: by the part landed, else by rules or default. */
final class Resistances {
  private final Subject subject;

  Resistances(Subject subject) {
    this.subject = subject;
  }

  /**
   * A resistance with a name for people.
   *
   * @param words what it is, with where it is
   * @param kind what sort of thing it is
   * @param ohm resistance, ohm
   * @param source where the figure comes from
   */
  record Known(String words, Joint.Kind kind, double ohm, String source) {
    static Known of(String words, Joint.Kind kind, Sourced<Resistance> resistance) {
      return new Known(words, kind, resistance.value().ohms(), resistance.source());
    }
  }

  /** The landed end of a lead; empty for a parked one. */
  Optional<Known> end(Lead lead, String end, Landing landing) {
    String at = " at end " + end + " of lead " + lead.id();
    if (landing instanceof Landing.InCavity it) {
      return Optional.of(terminal(it.terminal(), at));
    } else if (landing instanceof Landing.InHousing it) {
      return Optional.of(terminal(it.terminal(), at));
    } else if (landing instanceof Landing.InSlot it) {
      return Optional.of(terminal(it.terminal(), at));
    } else if (landing instanceof Landing.IntoCircuit it) {
      return Optional.of(splice(it.splice(), at));
    } else if (landing instanceof Landing.InJoint it) {
      return Optional.of(splice(it.splice(), at));
    } else if (landing instanceof Landing.OnGround it) {
      return Optional.of(
          Known.of(
              "ring " + it.ring() + at,
              Joint.Kind.GROUND_POINT,
              ElectricDefaults.groundPoint(rules())));
    }
    return Optional.empty();
  }

  /** The fuse behind a feed; empty where no rating is known. */
  Optional<Known> fuse(Source feed) {
    if (feed.fuseA().isEmpty() || !(feed.fuseA().getAsDouble() > 0)) {
      return Optional.empty();
    }
    double ratingA = feed.fuseA().getAsDouble();
    Optional<Fuse> part = feed.kitFuse() ? part(feed, ratingA) : Optional.empty();
    Sourced<Resistance> resistance =
        part.map(it -> ElectricDefaults.fuse(rules(), it))
            .orElseGet(() -> ElectricDefaults.fuse(rules(), Current.ofAmperes(ratingA)));
    return Optional.of(
        Known.of(
            "the " + Figures.of(ratingA) + " A fuse of " + feed.words(),
            Joint.Kind.FUSE,
            resistance));
  }

  private Optional<Fuse> part(Source feed, double ratingA) {
    Optional<String> id =
        FeedSpot.of(subject, feed)
            .flatMap(
                spot ->
                    subject.design().fuses().stream()
                        .filter(it -> it.block().equals(spot.block().id()))
                        .filter(it -> it.slot().equals(spot.slot().id()))
                        .filter(it -> it.ratingA() == ratingA)
                        .map(FuseFit::part)
                        .findFirst());
    return id.flatMap(
        it -> subject.order().parts().fuses().stream().filter(f -> f.id().equals(it)).findFirst());
  }

  private Known terminal(String id, String at) {
    Optional<Terminal> part = subject.order().parts().terminal(id);
    return Known.of(
        "the contact of terminal " + id + at,
        Joint.Kind.CONTACT,
        part.map(it -> ElectricDefaults.contact(rules(), it))
            .orElseGet(() -> ElectricDefaults.contact(rules())));
  }

  private Known splice(String id, String at) {
    Optional<Splice> part =
        subject.order().parts().splices().stream().filter(it -> it.id().equals(id)).findFirst();
    return Known.of(
        "splice " + id + at,
        Joint.Kind.SPLICE,
        part.map(it -> ElectricDefaults.splice(rules(), it))
            .orElseGet(() -> ElectricDefaults.splice(rules())));
  }

  private Rules rules() {
    return subject.order().rules();
  }
}
