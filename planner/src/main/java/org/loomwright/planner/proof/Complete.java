package org.loomwright.planner.proof;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;

/**
 * The guide tells of every lead in the box and of no other, each end once and as the design has it
 * for the case; questions have an answer for every build; tools are listed.
 */
final class Complete implements StepCheck {
  private final Subject subject;

  Complete(Subject subject) {
    this.subject = subject;
  }

  @Override
  public void at(Step step, Region here, Progress progress, Findings findings) {
    Optional<Step> at = Optional.of(step);
    Set<String> unlisted = new TreeSet<>(step.tools());
    unlisted.removeAll(subject.guide().tools());
    findings.require(
        unlisted.isEmpty(), here, Claim.COMPLETE, at, "not in the list of tools: " + unlisted);
    answers(step, here, findings);
    step.act().ifPresent(act -> act(at, act, here, progress, findings));
  }

  private void answers(Step step, Region here, Findings findings) {
    if (step.ask().isEmpty()) {
      return;
    }
    Optional<Trait> trait =
        subject.vehicle().traits().stream()
            .filter(it -> it.id().equals(step.ask().get().trait()))
            .findFirst();
    if (trait.isEmpty()) {
      findings.failOn(
          here,
          Claim.COMPLETE,
          Optional.of(step),
          "the vehicle has no trait '" + step.ask().get().trait() + "' to ask for");
      return;
    }
    Set<String> offered = new HashSet<>();
    step.ask().get().answers().stream().map(Answer::value).forEach(offered::add);
    for (TraitValue value : trait.get().values()) {
      if (!offered.contains(value.id())) {
        findings.failOn(
            here.and(subject.facts().regions().is(trait.get().id(), value.id())),
            Claim.COMPLETE,
            Optional.of(step),
            "the question offers no answer '" + value.words() + "'");
      }
    }
  }

  private void act(Optional<Step> at, Act act, Region here, Progress progress, Findings findings) {
    Optional<Ends.Put> put = Ends.of(act);
    if (put.isPresent()) {
      put(at, act, put.get(), here, progress, findings);
    } else if (act instanceof Act.Lay lay) {
      findings.require(
          subject.lead(lay.lead()).isPresent(),
          here,
          Claim.COMPLETE,
          at,
          "the kit has no lead '" + lay.lead() + "'");
      findings.failOn(
          here.and(progress.done(act)),
          Claim.COMPLETE,
          at,
          "lead " + lay.lead() + " was laid before");
    } else {
      findings.failOn(here.and(progress.done(act)), Claim.COMPLETE, at, "the same was done before");
    }
  }

  private void put(
      Optional<Step> at, Act act, Ends.Put put, Region here, Progress progress, Findings findings) {
    Optional<LeadEnd> end = subject.end(put.lead(), put.end());
    findings.require(end.isPresent(), here, Claim.COMPLETE, at, "the kit has no " + put.words());
    if (end.isEmpty()) {
      return;
    }
    Region before =
        progress.landings(put.lead(), put.end()).values().stream()
            .reduce(subject.facts().regions().none(), Region::or);
    findings.failOn(here.and(before), Claim.COMPLETE, at, put.words() + " was dealt with before");
    boolean asMade =
        end.get().uses().stream()
            .anyMatch(use -> use.asMade() && use.landing().equals(put.landing()));
    findings.require(
        !(act instanceof Act.Land) || asMade,
        here,
        Claim.COMPLETE,
        at,
        put.words() + " does not come from the bench as this step lands it");
  }

  /** Every lead in the box is dealt with at both ends, as the design says for the case. */
  void atEnd(Step step, Region here, Progress progress, Findings findings) {
    Region sold = subject.facts().regions().none();
    for (Map.Entry<PartNumber, Region> it : subject.boxes().entrySet()) {
      sold = sold.or(it.getValue());
      if (here.meets(it.getValue())) {
        box(step, it.getKey(), here.and(it.getValue()), progress, findings);
      }
    }
    Optional<Step> at = Optional.of(step);
    findings.failOn(here.minus(sold), Claim.COMPLETE, at, "no part number is sold to these builds");
    for (Mount mount : subject.order().kit().mounts()) {
      String plug = mount.equipment() + "/" + mount.plug();
      findings.failOn(
          here.and(added(mount, progress)).minus(progress.done(new Act.PlugIn(plug))),
          Claim.COMPLETE,
          at,
          "no step plugs in '" + plug + "'");
    }
    fuses(at, here, progress, findings);
  }

  /**
   * Builds on which the kit brings a plug's housing or fills its connector. Elsewhere the plug may
   * have been in since an earlier fitting, which no record tells.
   */
  private Region added(Mount mount, Progress progress) {
    Optional<Connector> connector =
        mount.connector().flatMap(id -> subject.vehicle().connector(id));
    if (connector.isEmpty()) {
      return subject.possible();
    }
    Region filled =
        progress.done(
            act ->
                Ends.of(act)
                    .filter(put -> put.landing() instanceof Landing.InCavity)
                    .filter(
                        put ->
                            ((Landing.InCavity) put.landing())
                                .connector()
                                .equals(connector.get().id()))
                    .isPresent());
    return filled.or(subject.facts().present(connector.get()).not());
  }

  private void box(
      Step step, PartNumber number, Region here, Progress progress, Findings findings) {
    Optional<Step> at = Optional.of(step);
    for (Lead lead : subject.design().leads()) {
      boolean inBox = number.leads().contains(lead.id());
      for (String end : List.of("a", "b")) {
        Map<Landing, Region> landings = progress.landings(lead.id(), end);
        Region done =
            landings.values().stream().reduce(subject.facts().regions().none(), Region::or);
        String words = "end " + end + " of lead " + lead.id();
        if (!inBox) {
          findings.failOn(
              here.and(done),
              Claim.COMPLETE,
              at,
              words + " is dealt with, but part number " + number.id() + " does not hold it");
          continue;
        }
        LeadEnd made = subject.end(lead.id(), end).orElseThrow();
        if (!Ends.isBenchMade(made.asMade())) {
          findings.failOn(
              here.minus(done), Claim.COMPLETE, at, "no step lands, changes or parks " + words);
        }
        asDesigned(at, lead, made, words, landings, here, findings);
      }
    }
  }

  private void asDesigned(
      Optional<Step> at,
      Lead lead,
      LeadEnd end,
      String words,
      Map<Landing, Region> landings,
      Region here,
      Findings findings) {
    Map<Case, Region> cases = new LinkedHashMap<>();
    for (Case one : subject.cases()) {
      if (one.component().equals(lead.component())) {
        subject.when(one).map(here::and).ifPresent(builds -> cases.put(one, builds));
      }
    }
    cases.forEach(
        (one, builds) -> {
          Optional<Landing> wanted = end.landing(one.id());
          if (Ends.isBenchMade(end.asMade())
              && wanted.isPresent()
              && !wanted.get().equals(end.asMade())) {
            // The bench left it otherwise than this case needs it, so some step must change that.
            Region there = landings.getOrDefault(wanted.get(), subject.facts().regions().none());
            findings.failOn(
                builds.minus(there),
                Claim.COMPLETE,
                at,
                "no step lands, changes or parks " + words);
          }
          landings.forEach(
              (landing, done) -> {
                if (!end.landing(one.id()).equals(Optional.of(landing))) {
                  findings.failOn(
                      builds.and(done),
                      Claim.COMPLETE,
                      at,
                      words
                          + " is not where the design has it in case "
                          + one.id()
                          + " ("
                          + one.words()
                          + ")");
                }
              });
        });
  }

  private void fuses(Optional<Step> at, Region here, Progress progress, Findings findings) {
    for (FuseFit fuse : subject.design().fuses()) {
      Act.FitFuse fit = new Act.FitFuse(fuse.block(), fuse.slot(), fuse.ratingA());
      Region used =
          progress.done(
              act ->
                  Ends.of(act)
                      .filter(put -> put.landing() instanceof Landing.InSlot)
                      .map(put -> (Landing.InSlot) put.landing())
                      .filter(it -> it.block().equals(fuse.block()))
                      .filter(it -> it.slot().equals(fuse.slot()))
                      .isPresent());
      findings.failOn(
          here.and(used).minus(progress.done(fit)),
          Claim.COMPLETE,
          at,
          "no step puts the "
              + Figures.of(fuse.ratingA())
              + " A fuse into slot "
              + fuse.slot()
              + " of '"
              + fuse.block()
              + "'");
    }
  }
}
