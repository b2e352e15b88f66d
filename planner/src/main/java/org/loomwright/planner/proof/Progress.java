package org.loomwright.planner.proof;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;

/**
 * How far the work has come, as sets of builds: for each thing that can be done, the builds on
 * which it is done by now. As each build walks one path, and steps are taken in an order that no
 * path contradicts, one such set per thing tells the state of every build at the step it has come
 * to; no split by state is needed.
 */
final class Progress {
  private final Region none;
  private final Map<String, Region> asked = new TreeMap<>();
  private final Map<String, Region> read = new TreeMap<>();
  private final Map<String, Region> open = new TreeMap<>();
  private final Map<String, Region> used = new TreeMap<>();
  private final Map<String, Region> closed = new TreeMap<>();
  private final Map<String, Region> cautions = new TreeMap<>();
  private final Map<String, Region> readings = new TreeMap<>();
  private final Map<Act, Region> acts = new LinkedHashMap<>();
  private Region live;

  Progress(Regions regions) {
    this.none = regions.none();
    this.live = regions.all();
  }

  /** Builds with the battery connected. */
  Region live() {
    return live;
  }

  /** Builds on which a trait was asked. */
  Region asked(String trait) {
    return asked.getOrDefault(trait, none);
  }

  /** Builds on which it was measured. */
  Region read(String trait) {
    return read.getOrDefault(trait, none);
  }

  Region open(String opening) {
    return open.getOrDefault(opening, none);
  }

  /** Builds on which something was done behind an opening since it was opened. */
  Region used(String opening) {
    return used.getOrDefault(opening, none);
  }

  /** Builds on which an opening was closed again. */
  Region closed(String opening) {
    return closed.getOrDefault(opening, none);
  }

  /** Builds that were shown a caution: "caution/fuses", or a further copy, "caution/fuses/2". */
  Region cautioned(String caution) {
    Region shown = none;
    for (Map.Entry<String, Region> it : cautions.entrySet()) {
      if (it.getKey().equals(caution) || it.getKey().startsWith(caution + "/")) {
        shown = shown.or(it.getValue());
      }
    }
    return shown;
  }

  /** Builds on which a value was taken. */
  Region taken(String reading) {
    return readings.getOrDefault(reading, none);
  }

  /** Values taken so far, with their builds. */
  Map<String, Region> readings() {
    return Collections.unmodifiableMap(readings);
  }

  Map<String, Region> cautions() {
    return Collections.unmodifiableMap(cautions);
  }

  Set<String> everOpened() {
    return Collections.unmodifiableSet(open.keySet());
  }

  Region done(Act act) {
    return acts.getOrDefault(act, none);
  }

  /** Builds on which some act of this sort was done. */
  Region done(Predicate<Act> sort) {
    return acts.entrySet().stream()
        .filter(it -> sort.test(it.getKey()))
        .map(Map.Entry::getValue)
        .reduce(none, Region::or);
  }

  Map<Act, Region> acts() {
    return Collections.unmodifiableMap(acts);
  }

  /** Landings of one lead end so far, with the builds that have them. */
  Map<Landing, Region> landings(String lead, String end) {
    Map<Landing, Region> found = new LinkedHashMap<>();
    acts.forEach(
        (act, builds) ->
            Ends.of(act)
                .filter(it -> it.lead().equals(lead) && it.end().equals(end))
                .ifPresent(it -> found.merge(it.landing(), builds, Region::or)));
    return found;
  }

  void ask(String trait, boolean reading, Region builds) {
    asked.merge(trait, builds, Region::or);
    if (reading) {
      read.merge(trait, builds, Region::or);
    }
  }

  void caution(String step, Region builds) {
    cautions.merge(step, builds, Region::or);
  }

  void reading(String id, Region builds) {
    readings.merge(id, builds, Region::or);
  }

  /** Something is done behind an opening. */
  void work(String opening, Region builds) {
    used.merge(opening, builds.and(open(opening)), Region::or);
  }

  void act(Act act, Region builds) {
    if (act instanceof Act.Isolate) {
      live = live.minus(builds);
    } else if (act instanceof Act.Reconnect) {
      live = live.or(builds);
    } else if (act instanceof Act.Open it) {
      open.merge(it.opening(), builds, Region::or);
      used.computeIfPresent(it.opening(), (id, old) -> old.minus(builds));
    } else if (act instanceof Act.Close it) {
      open.computeIfPresent(it.opening(), (id, old) -> old.minus(builds));
      closed.merge(it.opening(), builds, Region::or);
    } else {
      acts.merge(act, builds, Region::or);
      // What was measured of wiring before it was touched says nothing of it now.
      readings.replaceAll((id, old) -> Readings.ofWiring(id) ? old.minus(builds) : old);
    }
  }
}
