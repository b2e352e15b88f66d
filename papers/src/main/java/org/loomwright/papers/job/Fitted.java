package org.loomwright.papers.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.walk.GuideWalk;

/** What of a kit is in one vehicle, by the answers of its job and the steps done. */
final class Fitted {
  private final Job job;
  private final Names names;
  private final GuideWalk walk;
  private final List<String> cases;
  private final Set<String> done;

  Fitted(Job job, KitOrder order, Plan plan) {
    this.job = job;
    this.names = new Names(order, plan);
    this.walk = GuideWalk.of(plan, order.vehicle(), job.answers());
    this.cases = walk.decidedCases().stream().map(Case::id).toList();
    this.done = Set.copyOf(job.done());
  }

  Job job() {
    return job;
  }

  Names names() {
    return names;
  }

  Plan plan() {
    return names.plan();
  }

  KitOrder order() {
    return names.order();
  }

  GuideWalk walk() {
    return walk;
  }

  /** Ids of the cases this vehicle has, as far as the answers decide them. */
  List<String> cases() {
    return cases;
  }

  /** Letters of which the answers do not decide the case. */
  Set<String> undecided() {
    Set<String> letters =
        plan().cases().stream().map(Case::component).collect(Collectors.toCollection(TreeSet::new));
    walk.decidedCases().forEach(it -> letters.remove(it.component()));
    return letters;
  }

  /** Steps this vehicle comes to. */
  List<Step> way() {
    return walk.stages().stream()
        .filter(GuideWalk.Stage::certain)
        .map(GuideWalk.Stage::step)
        .toList();
  }

  /** Steps of the way that change something, with what they change. */
  List<Step> acts() {
    return way().stream().filter(it -> it.act().isPresent()).toList();
  }

  boolean isDone(Step step) {
    return done.contains(step.id());
  }

  /** The part number that is fitted, where the kit has it. */
  Optional<PartNumber> partNumber() {
    return plan().design().partNumbers().stream()
        .filter(it -> job.partNumber().filter(it.id()::equals).isPresent())
        .findFirst();
  }

  /** Leads that are in this vehicle. */
  List<Lead> leads() {
    return plan().design().leads().stream()
        .filter(it -> partNumber().map(number -> number.leads().contains(it.id())).orElse(true))
        .filter(it -> landing(it.a()).isPresent() || landing(it.b()).isPresent())
        .toList();
  }

  /** How an end is left in this vehicle. */
  Optional<Landing> landing(LeadEnd end) {
    return cases.stream().flatMap(it -> end.landing(it).stream()).findFirst();
  }

  /** Whether an end is where it belongs: what the bench made needs no step. */
  boolean isLanded(Lead lead, String end) {
    return acts().stream()
        .filter(it -> it.act().filter(act -> concerns(act, lead.id(), end)).isPresent())
        .allMatch(this::isDone);
  }

  private static boolean concerns(Act act, String lead, String end) {
    return act instanceof Act.Land it && it.lead().equals(lead) && it.end().equals(end)
        || act instanceof Act.Change change
            && change.lead().equals(lead)
            && change.end().equals(end)
        || act instanceof Act.Park park && park.lead().equals(lead) && park.end().equals(end)
        || act instanceof Act.Lay lay && lay.lead().equals(lead);
  }

  /** Fuses of this vehicle's cases, for leads that are in it. */
  List<FuseFit> fuses() {
    Set<String> leads = leads().stream().map(Lead::id).collect(Collectors.toSet());
    return plan().design().fuses().stream()
        .filter(it -> it.cases().stream().anyMatch(cases::contains))
        .filter(it -> it.leads().stream().anyMatch(leads::contains))
        .toList();
  }

  /** Whether the step that fits a fuse was done. */
  boolean isFitted(FuseFit fuse) {
    return acts().stream()
        .filter(
            it ->
                it.act()
                    .filter(
                        act ->
                            act instanceof Act.FitFuse fit
                                && fit.block().equals(fuse.block())
                                && fit.slot().equals(fuse.slot()))
                    .isPresent())
        .allMatch(this::isDone);
  }

  /** Joints in which leads of this vehicle meet. */
  List<Joint> joints() {
    Set<String> used =
        leads().stream()
            .flatMap(it -> Stream.of(it.a(), it.b()))
            .flatMap(it -> landing(it).stream())
            .filter(Landing.InJoint.class::isInstance)
            .map(it -> ((Landing.InJoint) it).joint())
            .collect(Collectors.toSet());
    return plan().design().joints().stream().filter(it -> used.contains(it.id())).toList();
  }

  /**
   * The steps done that left something in the vehicle, the last first; those the answers do not
   * call for too, as they were done all the same.
   */
  List<Step> takenBack() {
    List<Step> back = new ArrayList<>(left());
    Collections.reverse(back);
    return back;
  }

  private List<Step> left() {
    return plan().guide().steps().stream()
        .filter(it -> isDone(it) && it.act().filter(Fitted::stays).isPresent())
        .toList();
  }

  private static boolean stays(Act act) {
    return !(act instanceof Act.Open
        || act instanceof Act.Close
        || act instanceof Act.Isolate
        || act instanceof Act.Reconnect);
  }

  /**
   * What was done and is in the vehicle though the answers do not call for it, in words; what the
   * guide does not know last.
   */
  List<String> astray() {
    List<Step> way = way();
    return Stream.concat(
            left().stream().filter(it -> !way.contains(it)).map(it -> stepWords(it.id())),
            job.done().stream()
                .filter(it -> plan().guide().step(it).isEmpty())
                .map(it -> stepWords(it) + " (not in this guide)"))
        .toList();
  }

  /** A step by its printed number and title; one the guide does not have by its id. */
  String stepWords(String id) {
    return plan()
        .guide()
        .step(id)
        .map(it -> "step " + it.number() + ", " + it.title())
        .orElse("step " + id);
  }
}
