package org.loomwright.model.design;

import java.util.List;

/**
 * What is made: leads, joints, housings, fuses and part numbers.
 *
 * @param leads leads
 * @param joints joints
 * @param housings housings the kit brings
 * @param fuses fuses
 * @param partNumbers part numbers
 */
public record Design(
    List<Lead> leads,
    List<Joint> joints,
    List<SuppliedHousing> housings,
    List<FuseFit> fuses,
    List<PartNumber> partNumbers) {
  public Design {
    leads = List.copyOf(leads);
    joints = List.copyOf(joints);
    housings = List.copyOf(housings);
    fuses = List.copyOf(fuses);
    partNumbers = List.copyOf(partNumbers);
  }
}
