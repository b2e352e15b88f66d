package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;

/**
 * A connector of the vehicle.
 *
 * @param id name used in references
 * @param name name for people
 * @param housing part that gives its face
 * @param matePlating plating of the terminals in the other half, e.g. "tin"
 * @param place where it is
 * @param openings what must be open to reach it
 * @param view how the fitter sees it
 * @param presentWhen builds that have it; absent means all
 * @param recipe how it is filled
 * @param restraint whether it belongs to airbags or pretensioners; never touched
 * @param highVoltage whether it belongs to the high-voltage system; never touched
 * @param cavities facts on single cavities
 * @param evidence how it is known
 * @param photo photo of its face as it sits in the vehicle
 */
public record Connector(
    String id,
    String name,
    String housing,
    Optional<String> matePlating,
    String place,
    List<String> openings,
    View view,
    Optional<Condition> presentWhen,
    ServiceRecipe recipe,
    boolean restraint,
    boolean highVoltage,
    List<CavityFact> cavities,
    Optional<Evidence> evidence,
    Optional<FacePhoto> photo) {
  public Connector {
    openings = List.copyOf(openings);
    cavities = List.copyOf(cavities);
  }

  /** A connector without a photo. */
  public Connector(
      String id,
      String name,
      String housing,
      Optional<String> matePlating,
      String place,
      List<String> openings,
      View view,
      Optional<Condition> presentWhen,
      ServiceRecipe recipe,
      boolean restraint,
      boolean highVoltage,
      List<CavityFact> cavities,
      Optional<Evidence> evidence) {
    this(
        id,
        name,
        housing,
        matePlating,
        place,
        openings,
        view,
        presentWhen,
        recipe,
        restraint,
        highVoltage,
        cavities,
        evidence,
        Optional.empty());
  }

  /** The facts of one cavity, empty when nothing special is known of it. */
  public Optional<CavityFact> cavity(String number) {
    return cavities.stream().filter(fact -> fact.cavity().equals(number)).findFirst();
  }
}
