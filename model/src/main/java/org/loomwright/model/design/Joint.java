package org.loomwright.model.design;

import java.util.List;

/**
 * Where added leads meet; crimped on the bench.
 *
 * @param id id, e.g. "J1"
 * @param place where it lies
 * @param splice splice part
 * @param leads leads that meet in it
 */
public record Joint(String id, String place, String splice, List<String> leads) {
  public Joint {
    leads = List.copyOf(leads);
  }
}
