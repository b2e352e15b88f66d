package org.loomwright.planner.electrics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Way;

/**
 * Cases of components whose loads return through one another's grounds, taken together.
 *
 * @param cases case ids, one per component
 * @param ways how each need is met
 * @param leads added leads that carry something here
 * @param fuses fuses of the kit by the key of their slot
 * @param others worst current of all other components through each section ("section BLOCK
 *     SECTION") and stud ("stud STUD current"), A
 */
public record JointCase(
    List<String> cases,
    Map<NeedAt, Way> ways,
    List<PlacedLead> leads,
    Map<String, FittedFuse> fuses,
    Map<String, Double> others) {
  /** Copies, keeping the order. */
  public JointCase {
    cases = List.copyOf(cases);
    ways = Collections.unmodifiableMap(new LinkedHashMap<>(ways));
    leads = List.copyOf(leads);
    fuses = Collections.unmodifiableMap(new LinkedHashMap<>(fuses));
    others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
  }
}
