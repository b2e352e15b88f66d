package org.loomwright.model.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.VehicleNote;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;

/**
 * How often each value of a trait was met on real vehicles, beside the share on file.
 *
 * @param trait the trait
 * @param lines one per value, in the order of the vehicle
 * @param seen vehicles on which it was looked at
 */
public record ShareCount(Trait trait, List<Line> lines, int seen) {
  /**
   * Vehicles that the share on file counts for, beside those it takes in already, when it is
   * brought up to date. Our own choice: a handful of vehicles must not turn over what was known of
   * many, and fifty outweigh it.
   */
  public static final int ON_FILE = 10;

  /**
   * One value.
   *
   * @param value the value
   * @param count vehicles it was met on, those that the share on file takes in included
   * @param fileShare share on file, 0 to 1; equal shares where none is on file
   * @param percent share with both taken together, in whole per cent, 1 or more; those of a trait
   *     are 100 in all
   */
  public record Line(TraitValue value, int count, double fileShare, int percent) {
    private boolean isNew() {
      return value.counted().orElse(0) != count;
    }
  }

  public ShareCount {
    lines = List.copyOf(lines);
  }

  /** Whether vehicles were met that the shares on file do not take in yet. */
  public boolean isNew() {
    return lines.stream().anyMatch(Line::isNew);
  }

  /**
   * Counts of all traits of a vehicle. A vehicle that several jobs and findings speak of counts
   * once; it is known by its note. Findings are of vehicles that surprised somebody, so counts that
   * rest on few jobs lean that way.
   */
  public static List<ShareCount> of(Vehicle vehicle, List<Job> jobs, List<Finding> findings) {
    Map<String, Map<String, String>> seen = new LinkedHashMap<>();
    for (Job job : jobs) {
      if (job.vehicle().equals(vehicle.id())) {
        merge(seen, job.vehicleNote(), "job " + job.id(), job.answers());
      }
    }
    for (Finding finding : findings) {
      if (finding.vehicle().equals(vehicle.id())) {
        merge(seen, finding.vehicleNote().orElse(""), "finding " + finding.id(), finding.traits());
      }
    }
    return vehicle.traits().stream().map(it -> of(it, seen)).toList();
  }

  private static void merge(
      Map<String, Map<String, String>> seen, String note, String own, Map<String, String> traits) {
    String key = VehicleNote.key(note);
    seen.computeIfAbsent(key.isEmpty() ? own : "note " + key, it -> new LinkedHashMap<>())
        .putAll(traits);
  }

  private static ShareCount of(Trait trait, Map<String, Map<String, String>> seen) {
    Set<String> ids = new LinkedHashSet<>();
    trait.values().forEach(it -> ids.add(it.id()));
    List<String> met =
        seen.values().stream()
            .flatMap(it -> Optional.ofNullable(it.get(trait.id())).stream())
            .filter(ids::contains)
            .toList();
    List<Double> file = onFile(trait);
    long before = trait.values().stream().mapToLong(it -> it.counted().orElse(0)).sum();
    List<Integer> counts = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (int i = 0; i < file.size(); i++) {
      TraitValue value = trait.values().get(i);
      int count = (int) met.stream().filter(value.id()::equals).count();
      int fresh = count - value.counted().orElse(0);
      counts.add(count);
      weights.add(Math.max(0, file.get(i) * (ON_FILE + before) + fresh));
    }
    double all = weights.stream().mapToDouble(Double::doubleValue).sum();
    List<Double> exact = weights.stream().map(it -> 100 * it / all).toList();
    List<Integer> percent = whole(exact);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < file.size(); i++) {
      lines.add(new Line(trait.values().get(i), counts.get(i), file.get(i), percent.get(i)));
    }
    return new ShareCount(trait, lines, met.size());
  }

  /** Shares on file as parts of one; a value without a share counts like one of equal values. */
  private static List<Double> onFile(Trait trait) {
    double equal = 1.0 / trait.values().size();
    List<Double> shares =
        trait.values().stream().map(it -> it.share().map(Percent::fraction).orElse(equal)).toList();
    double all = shares.stream().mapToDouble(Double::doubleValue).sum();
    return shares.stream().map(it -> all == 0 ? equal : it / all).toList();
  }

  /**
   * Whole numbers that are 100 in all, each 1 or more, near to the given ones: what rounding leaves
   * goes to where most is missing, what it lacks is taken where most is too much.
   */
  private static List<Integer> whole(List<Double> exact) {
    int least = exact.size() > 100 ? 0 : 1;
    List<Integer> whole = new ArrayList<>();
    exact.forEach(it -> whole.add(Math.max(least, (int) Math.floor(it + 1e-9))));
    int left = 100 - whole.stream().mapToInt(Integer::intValue).sum();
    while (left != 0) {
      int step = Integer.signum(left);
      int at =
          IntStream.range(0, whole.size())
              .boxed()
              .filter(i -> step > 0 || whole.get(i) > least)
              .max(Comparator.comparingDouble(i -> step * (exact.get(i) - whole.get(i))))
              .orElseThrow();
      whole.set(at, whole.get(at) + step);
      left -= step;
    }
    return whole;
  }
}
