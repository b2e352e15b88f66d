package org.loomwright.planner.proof;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What is to be proven.
 *
 * @param order the order, unknown facts already traits
 * @param cases cases
 * @param design what is made
 * @param guide instructions
 * @param facts facts of the vehicle as sets of builds
 */
record Subject(KitOrder order, List<Case> cases, Design design, Guide guide, Facts facts) {
  Vehicle vehicle() {
    return order.vehicle();
  }

  Region possible() {
    return facts.possible();
  }

  Optional<Lead> lead(String id) {
    return design.leads().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  Optional<LeadEnd> end(String lead, String end) {
    return lead(lead)
        .flatMap(
            it ->
                switch (end) {
                  case "a" -> Optional.of(it.a());
                  case "b" -> Optional.of(it.b());
                  default -> Optional.empty();
                });
  }

  Optional<Case> caseOf(String id) {
    return cases.stream().filter(it -> it.id().equals(id)).findFirst();
  }

  Optional<PartNumber> partNumber(String id) {
    return design.partNumbers().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  Optional<Joint> joint(String id) {
    return design.joints().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  Optional<SuppliedHousing> housing(String id) {
    return design.housings().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  /** Builds of a case; empty when its condition names what the vehicle does not have. */
  Optional<Region> when(Case one) {
    try {
      return Optional.of(facts.of(one.when()));
    } catch (UnknownNameException e) {
      return Optional.empty();
    }
  }

  /**
   * The builds each part number is sold to. Where several serve a build, it gets the one with the
   * fewest leads; among equals the one named first.
   */
  Map<PartNumber, Region> boxes() {
    Map<PartNumber, Region> boxes = new LinkedHashMap<>();
    Region left = possible();
    for (PartNumber number :
        design.partNumbers().stream()
            .sorted(Comparator.comparingInt(it -> it.leads().size()))
            .toList()) {
      boxes.put(number, served(number).and(left));
      left = left.minus(served(number));
    }
    return boxes;
  }

  /** Builds with a case of every component in the list of a part number. */
  private Region served(PartNumber number) {
    Map<String, Region> byComponent = new TreeMap<>();
    for (Case one : cases) {
      Region served =
          number.cases().contains(one.id())
              ? when(one).orElse(possible().in().none())
              : possible().in().none();
      byComponent.merge(one.component(), served, Region::or);
    }
    return byComponent.values().stream().reduce(possible(), Region::and);
  }

  /** Traits by name, for people; in the order given. */
  String names(Collection<String> traits) {
    return traits.stream()
        .map(
            id ->
                vehicle().traits().stream()
                    .filter(trait -> trait.id().equals(id))
                    .findFirst()
                    .map(trait -> "'" + trait.name() + "'")
                    .orElse(id))
        .collect(Collectors.joining(", "));
  }

  boolean inEngineBay(String place) {
    return vehicle().place(place).map(Place::engineBay).orElse(false);
  }
}
