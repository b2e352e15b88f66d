package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.KnownVehicle;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.papers.words.Figures;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.web.shop.Href;

/** What is not the same on all builds of a vehicle. */
final class Differences {
  private Differences() {}

  /**
   * Something that is so on some builds only.
   *
   * @param when its condition, what is not known made a trait
   * @param words its condition as written
   */
  record Fact(String sort, String name, String href, Condition when, String words) {
    VehicleView.Differing row(Builds builds, List<Trait> traits) {
      Region region = builds.where(when).and(builds.possible());
      return new VehicleView.Differing(
          sort,
          Figures.capital(name),
          href,
          words,
          traits.stream().map(it -> cell(region, it)).toList());
    }

    /** Whether it is so on builds with some values of the trait only. */
    boolean narrows(Builds builds, Trait trait) {
      return builds.where(when).and(builds.possible()).values(trait.id()).size()
          < trait.values().size();
    }

    private static String cell(Region region, Trait trait) {
      List<String> values = region.values(trait.id());
      return values.size() == trait.values().size() ? "" : String.join(" or ", values);
    }
  }

  /** All of them, in the order of the document. */
  static List<Fact> of(Vehicle vehicle) {
    Vehicle known = KnownVehicle.of(vehicle);
    List<Fact> facts = new ArrayList<>();
    for (int i = 0; i < vehicle.circuits().size(); i++) {
      Circuit it = vehicle.circuits().get(i);
      if (Told.differs(it.presentWhen())) {
        facts.add(
            new Fact(
                "circuit",
                it.name(),
                "#" + Href.anchor("circuit", it.id()),
                known.circuits().get(i).presentWhen(),
                Told.when(it.presentWhen())));
      }
    }
    for (int i = 0; i < vehicle.fuseBlocks().size(); i++) {
      facts.addAll(block(vehicle, vehicle.fuseBlocks().get(i), known.fuseBlocks().get(i)));
    }
    for (int i = 0; i < vehicle.connectors().size(); i++) {
      facts.addAll(connector(vehicle, vehicle.connectors().get(i), known.connectors().get(i)));
    }
    return facts;
  }

  private static List<Fact> block(Vehicle vehicle, FuseBlock block, FuseBlock known) {
    List<Fact> facts = new ArrayList<>();
    String href = Href.face(vehicle.id(), block.id());
    for (int i = 0; i < block.sections().size(); i++) {
      Section it = block.sections().get(i);
      if (Told.differs(it.fedWhen())) {
        facts.add(
            new Fact(
                "feed",
                it.name() + " of " + block.name() + " is fed",
                href,
                known.sections().get(i).fedWhen(),
                Told.when(it.fedWhen())));
      }
    }
    for (int i = 0; i < block.slots().size(); i++) {
      Slot it = block.slots().get(i);
      if (Told.differs(it.metalWhen())) {
        facts.add(
            new Fact(
                "slot",
                "slot " + it.id() + " of " + block.name() + " has its metal",
                href,
                known.slots().get(i).metalWhen(),
                Told.when(it.metalWhen())));
      }
    }
    return facts;
  }

  private static List<Fact> connector(Vehicle vehicle, Connector connector, Connector known) {
    List<Fact> facts = new ArrayList<>();
    String href = Href.face(vehicle.id(), connector.id());
    if (connector.presentWhen().isPresent() && known.presentWhen().isPresent()) {
      Condition when = connector.presentWhen().get();
      if (Told.differs(when)) {
        facts.add(
            new Fact(
                "connector",
                connector.name() + " is there",
                href,
                known.presentWhen().get(),
                Told.when(when)));
      }
    }
    for (int i = 0; i < connector.cavities().size(); i++) {
      CavityFact it = connector.cavities().get(i);
      CavityFact sure = known.cavities().get(i);
      String cavity = "cavity " + it.cavity() + " of " + connector.name();
      fact(cavity + " is plugged", href, it.pluggedWhen(), sure.pluggedWhen(), facts);
      fact(cavity + " is blocked", href, it.blockedWhen(), sure.blockedWhen(), facts);
    }
    return facts;
  }

  private static void fact(
      String name,
      String href,
      Optional<Condition> when,
      Optional<Condition> known,
      List<Fact> facts) {
    if (when.isPresent() && known.isPresent() && Told.differs(when.get())) {
      facts.add(new Fact("cavity", name, href, known.get(), Told.when(when.get())));
    }
  }
}
