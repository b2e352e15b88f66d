package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.equipment.NeedKind;

/**
 * Values that the guide asks to be taken: whether one is to be taken can be known at its step, none
 * is taken twice, none is compared with one that was not taken; and every load that the kit wires
 * is measured under load and tried, with power on, after the last hand was laid on its wiring.
 *
 * <p>Read by their ids: "drop-feed/NEED", "drop-ground/NEED" and "voltage/NEED", each with a band,
 * "works/NEED" and "works-together"; further ones of a need end in "/2", "/3" and so on.
 */
final class Readings implements StepCheck {
  private static final String FEED = "drop-feed/";
  private static final String GROUND = "drop-ground/";
  private static final String VOLTAGE = "voltage/";
  private static final String WORKS = "works/";
  private static final String TOGETHER = "works-together";
  private static final double SLACK = 1e-6;

  private final Subject subject;
  private final Map<String, List<Reading>> meant = new HashMap<>();

  Readings(Subject subject) {
    this.subject = subject;
    for (Step step : subject.guide().steps()) {
      for (Reading reading : step.readings()) {
        // A further one counts under the id without its number, too.
        Stream.of(reading.id(), reading.id().replaceFirst("/\\d+$", ""))
            .distinct()
            .forEach(id -> meant.computeIfAbsent(id, it -> new ArrayList<>()).add(reading));
      }
    }
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    Optional<Step> at = Optional.of(step);
    for (Reading reading : step.readings()) {
      Region when;
      try {
        when = subject.facts().of(reading.when());
      } catch (UnknownNameException e) {
        findings.failOn(
            here,
            Claim.DECIDED,
            at,
            "on which builds '" + reading.id() + "' is taken can't be read: " + e.getMessage());
        continue;
      }
      findings.require(true, here, Claim.DECIDED, at, "");
      for (Knowledge.Open open : new Knowledge(subject, progress).undecided(here, when)) {
        findings.failOn(
            open.builds(),
            Claim.DECIDED,
            at,
            "whether to take '"
                + reading.id()
                + "' can't be known here: "
                + subject.names(open.traits())
                + " was not asked before");
      }
      Region taken = here.and(when);
      findings.failOn(
          taken.and(progress.taken(reading.id())),
          Claim.COMPLETE,
          at,
          "'" + reading.id() + "' was taken before");
      reading
          .compareWith()
          .ifPresent(
              before ->
                  findings.failOn(
                      taken.minus(progress.taken(before)),
                      Claim.COMPLETE,
                      at,
                      "'"
                          + reading.id()
                          + "' is compared with '"
                          + before
                          + "', which was not taken"));
      if (ofWiring(reading.id())) {
        findings.failOn(
            taken.minus(progress.live()),
            Claim.ORDER,
            at,
            "'" + reading.id() + "' needs power, and the battery is disconnected");
      }
    }
  }

  /** Notes the values that a step takes. */
  static void take(Subject subject, Step step, Region here, Progress progress) {
    for (Reading reading : step.readings()) {
      try {
        progress.reading(reading.id(), here.and(subject.facts().of(reading.when())));
      } catch (UnknownNameException toldAlready) {
        progress.reading(reading.id(), subject.facts().regions().none());
      }
    }
  }

  /** Whether a value says something of wiring as it is, so that touching the wiring spoils it. */
  static boolean ofWiring(String id) {
    return id.startsWith(FEED)
        || id.startsWith(GROUND)
        || id.startsWith(VOLTAGE)
        || id.startsWith(WORKS)
        || id.equals(TOGETHER);
  }

  /**
   * Every load with added wires has its values.
   *
   * @param nets all nets at this end of the guide
   */
  void atEnd(
      Step step, List<NetAt> nets, List<PinNeed> needs, Progress progress, Findings findings) {
    Region none = subject.facts().regions().none();
    Map<PinNeed, Region> met = new HashMap<>();
    Map<PinNeed, Region> wired = new HashMap<>();
    for (NetAt net : nets) {
      for (Traced traced : net.traced()) {
        met.merge(traced.need(), net.builds(), Region::or);
        if (!traced.leads().isEmpty()) {
          wired.merge(traced.need(), net.builds(), Region::or);
          drop(step, net, traced, progress, findings);
        }
      }
    }
    for (PinNeed need : needs) {
      if (need.need().kind() == NeedKind.GROUND) {
        continue;
      }
      Region ground = need.returnsBy(needs).map(it -> wired.getOrDefault(it, none)).orElse(none);
      Region added = wired.getOrDefault(need, none).or(met.getOrDefault(need, none).and(ground));
      load(step, need, added, progress, findings);
    }
  }

  private void load(Step step, PinNeed need, Region added, Progress progress, Findings findings) {
    Optional<Step> at = Optional.of(step);
    findings.failOn(
        added.minus(taken(WORKS + need.id(), it -> true, progress)),
        Claim.COMPLETE,
        at,
        "nobody tries whether " + need.words() + " works ('" + WORKS + need.id() + "')");
    findings.failOn(
        added.minus(progress.taken(TOGETHER)),
        Claim.COMPLETE,
        at,
        "nobody tries whether all that was added works at once ('" + TOGETHER + "')");
    if (need.need().kind() == NeedKind.SUPPLY && need.need().minimumVoltage().isPresent()) {
      double leastV = need.need().minimumVoltage().get().volts();
      findings.failOn(
          added.minus(
              taken(
                  VOLTAGE + need.id(),
                  band -> band.low().filter(it -> it >= leastV - SLACK).isPresent(),
                  progress)),
          Claim.COMPLETE,
          at,
          "nobody measures at least "
              + Figures.of(leastV)
              + " V under load at "
              + need.words()
              + " ('"
              + VOLTAGE
              + need.id()
              + "')");
    }
  }

  private void drop(Step step, NetAt net, Traced traced, Progress progress, Findings findings) {
    NeedKind kind = traced.need().need().kind();
    if (kind == NeedKind.SIGNAL) {
      return;
    }
    boolean ground = kind == NeedKind.GROUND;
    String id = (ground ? GROUND : FEED) + traced.need().id();
    double limitV =
        NetworkLimits.limit(subject, traced, ground) * subject.vehicle().supply().volts();
    findings.failOn(
        net.builds()
            .minus(
                taken(
                    id,
                    band -> band.high().filter(it -> it <= limitV + SLACK).isPresent(),
                    progress)),
        Claim.COMPLETE,
        Optional.of(step),
        "nobody measures that the drop on the "
            + (ground ? "ground" : "feed")
            + " of "
            + traced.need().words()
            + " is "
            + Figures.of(limitV)
            + " V or less ('"
            + id
            + "')");
  }

  /** Builds on which a value was taken, under its id or a further one, with such a band. */
  private Region taken(String id, Predicate<Band> right, Progress progress) {
    Region taken = subject.facts().regions().none();
    for (Reading reading : meant.getOrDefault(id, List.of())) {
      if (id.startsWith(WORKS) || reading.band().filter(right).isPresent()) {
        taken = taken.or(progress.taken(reading.id()));
      }
    }
    return taken;
  }
}
