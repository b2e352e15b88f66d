package org.loomwright.web.view;

import java.util.List;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * How much was seen on a thing that the records did not say.
 *
 * @param words how many findings, in words
 * @param all where they are listed
 * @param add where one is added
 * @param any whether there is one
 */
public record FindingCount(String words, String all, String add, boolean any) {
  /** On a vehicle. */
  public static FindingCount of(Shop shop, Vehicle vehicle) {
    return of(on(shop, vehicle), Href.findings(vehicle.id()), Href.newFinding(vehicle.id()));
  }

  /** On a connector or fuse block of a vehicle. */
  public static FindingCount of(Shop shop, Vehicle vehicle, String face) {
    boolean block = vehicle.fuseBlock(face).isPresent();
    return of(
        on(shop, vehicle).stream()
            .filter(it -> it.at().filter(at -> at.isOn(face)).isPresent())
            .toList(),
        Href.findings(vehicle.id(), face),
        Href.newFinding(vehicle.id(), block ? FoundAt.block(face) : FoundAt.connector(face)));
  }

  private static List<Finding> on(Shop shop, Vehicle vehicle) {
    return shop.workspace().findings().stream()
        .filter(it -> it.vehicle().equals(vehicle.id()))
        .toList();
  }

  private static FindingCount of(List<Finding> findings, String all, String add) {
    long open = findings.stream().filter(Finding::isOpen).count();
    String number = findings.size() == 1 ? "1 finding" : findings.size() + " findings";
    String words =
        findings.isEmpty()
            ? "No findings"
            : number + (open == 0 ? ", none open" : ", " + open + " open");
    return new FindingCount(words, all, add, !findings.isEmpty());
  }
}
