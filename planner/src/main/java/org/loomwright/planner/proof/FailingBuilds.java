package org.loomwright.planner.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The possible builds of a vehicle on which a proof fails. Not safe for several threads at once.
 */
public final class FailingBuilds {
  private static final int MOST_TOLD = 4;

  private final Vehicle vehicle;
  private final Region possible;
  private final Region failing;

  FailingBuilds(Vehicle vehicle, Region possible, Region failing) {
    this.vehicle = vehicle;
    this.possible = possible;
    this.failing = failing.and(possible);
  }

  /**
   * What is known of one real vehicle.
   *
   * @param possible whether some build has all these answers
   * @param some whether the proof fails on some build that has them
   * @param all whether it fails on all of them; false when there is none
   * @param deciding ids of few traits not answered that tell which it is; empty when that is known
   */
  public record OneVehicle(boolean possible, boolean some, boolean all, List<String> deciding) {
    public OneVehicle {
      deciding = List.copyOf(deciding);
    }
  }

  /** Whether there is none. */
  public boolean isEmpty() {
    return failing.isEmpty();
  }

  /** Whether every possible build is one. */
  public boolean isAll() {
    return possible.within(failing);
  }

  /** Exact number. */
  public BigInteger count() {
    return failing.count();
  }

  /** Exact number of possible builds, failing or not. */
  public BigInteger possibleCount() {
    return possible.count();
  }

  /** The builds in the owner's words; the first few groups where there are many. */
  public String words() {
    BuildWords words = new BuildWords(vehicle);
    List<String> told = new ArrayList<>();
    Region open = failing;
    // Builds told already are free for the next group.
    Region others = possible;
    while (!open.isEmpty() && told.size() < MOST_TOLD) {
      Fewest.Cube cube = Fewest.of(others, open);
      told.add(words.of(cube));
      Region builds = cube.region(possible.in());
      open = open.minus(builds);
      others = others.minus(builds);
    }
    return told.isEmpty()
        ? "no build"
        : String.join("; or ", told) + (open.isEmpty() ? "" : "; and others");
  }

  /**
   * Whether a vehicle is one of them.
   *
   * @param answers trait to value as found on it; traits and values that the vehicle's document
   *     does not have are left out of account
   */
  public OneVehicle vehicle(Map<String, String> answers) {
    Region here = possible;
    for (Trait trait : vehicle.traits()) {
      String value = answers.get(trait.id());
      if (value != null
          && trait.values().stream().map(TraitValue::id).anyMatch(it -> it.equals(value))) {
        here = here.and(possible.in().is(trait.id(), value));
      }
    }
    Region bad = here.and(failing);
    Region good = here.minus(failing);
    return new OneVehicle(
        !here.isEmpty(),
        !bad.isEmpty(),
        !bad.isEmpty() && good.isEmpty(),
        bad.isEmpty() || good.isEmpty() ? List.of() : deciding(bad, good));
  }

  // Traits that tell the two apart, none of which can be left out.
  private static List<String> deciding(Region bad, Region good) {
    Set<String> telling = new TreeSet<>(bad.support());
    telling.addAll(good.support());
    Set<String> left = new TreeSet<>();
    for (String trait : telling) {
      left.add(trait);
      if (bad.forget(left).meets(good)) {
        left.remove(trait);
      }
    }
    telling.removeAll(left);
    return List.copyOf(telling);
  }
}
