package org.loomwright.planner.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.kit.CaseSet;
import org.loomwright.planner.kit.Made;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.ways.Demand;
import org.loomwright.planner.ways.Reach;
import org.loomwright.planner.ways.Way;

/**
 * Writes the guide: preparation, questions that need power, isolating, questions behind panels,
 * acts place by place, fuses, power, measurements under load, closing, final trials; each caution
 * directly before what calls for it. All questions come before the first act, so no act can come
 * before an answer it relies on; what was opened for a question stays open for the acts.
 */
public final class GuideMaker {
  /** Id of the step at which the cases are written down. */
  static final String CASES = "prepare/cases";

  private final KitOrder order;
  private final Vehicle vehicle;
  private final Facts facts;
  private final Made made;
  private final Names names;
  private final FixedSteps fixed;
  private final CaseRegions regions;
  private final OpeningPlan openings;
  private final List<Draft> drafts = new ArrayList<>();

  private GuideMaker(KitOrder order, Facts facts, Made made) {
    this.order = order;
    this.vehicle = order.vehicle();
    this.facts = facts;
    this.made = made;
    this.names = new Names(order);
    this.fixed = new FixedSteps(order, names);
    this.regions = new CaseRegions(facts.builds(), made.sets(), made.design());
    this.openings = new OpeningPlan(vehicle, facts.builds(), names);
  }

  /** The guide of a designed kit. */
  public static Guide of(KitOrder order, Facts facts, Made made) {
    return new GuideMaker(order, facts, made).make();
  }

  private Guide make() {
    Region all = facts.builds().possible();
    drafts.add(fixed.prepare(all));
    drafts.add(fixed.restVoltage(all));
    List<List<Draft>> acts = acts();
    List<Question> questions =
        new Questions(vehicle, facts.builds(), decisions(acts), readings()).find();
    ask(questions, false);
    List<String> battery = Reach.inOrder(vehicle, vehicle.batteryOpenings());
    drafts.addAll(openings.open(battery, all));
    drafts.add(fixed.isolate(all, battery));
    ask(questions, true);
    drafts.add(cases());
    for (List<Draft> batch : acts) {
      drafts.addAll(openings.openAll(batch));
      drafts.addAll(batch);
    }
    Region served = regions.served();
    Readings readings =
        new Readings(order, made, regions, questions.stream().map(it -> it.trait().id()).toList());
    // The battery stays within reach until power is back, and harmless covers stay open so that
    // pins can be reached for the measurements.
    drafts.addAll(openings.closeBeforePower(battery));
    drafts.add(fixed.reconnect(served, battery));
    drafts.add(fixed.loadedDrop(served, readings.underLoad()));
    drafts.addAll(openings.close(List.of()));
    drafts.add(fixed.function(served, readings.atTheEnd()));
    List<Draft> cautioned =
        new CautionSteps(vehicle, new CautionCalls(order, made.design().leads())).before(drafts);
    return new GraphMaker(new CaseWords(made.sets(), regions), CASES).make(cautioned);
  }

  // What has to be known before the acts: the case in each component, and which plugs are there.
  private List<Region> decisions(List<List<Draft>> acts) {
    List<Region> decisions = new ArrayList<>(regions.all());
    decisions.add(regions.served());
    acts.stream().flatMap(List::stream).forEach(act -> decisions.add(act.on()));
    return decisions;
  }

  // An act that can't be undone easily must rest on a reading where a reading is possible.
  private Map<String, Region> readings() {
    Map<String, Region> readings = new TreeMap<>();
    for (CaseSet set : made.sets()) {
      for (CaseSet.Member member : set.members()) {
        Set<Touch> changed = changed(member.id());
        for (Way way : member.ways().values()) {
          boolean cut =
              way.leads().stream()
                  .anyMatch(it -> changed.contains(it.a()) || changed.contains(it.b()));
          if (way.undo().isHard() || cut) {
            way.demands().forEach(demand -> readings(demand, member, readings));
          }
        }
        for (CaseSet.Landed landed : member.landed()) {
          if (changed.contains(landed.draft().a())
              || changed.contains(landed.draft().b())
              || Reach.undo(vehicle, landed.draft().a()).isHard()
              || Reach.undo(vehicle, landed.draft().b()).isHard()) {
            readings(landed.demand(), member, readings);
          }
        }
      }
    }
    return readings;
  }

  /** What ends touch in a case that are cut off as made: a cut is not undone. */
  private Set<Touch> changed(String caseId) {
    Set<Touch> changed = new HashSet<>();
    for (Lead lead : made.design().leads()) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        end.uses().stream()
            .filter(it -> !it.asMade() && it.cases().contains(caseId))
            .forEach(it -> changed.add(LeadSteps.touch(it.landing(), end.place())));
      }
    }
    return changed;
  }

  private void readings(Demand demand, CaseSet.Member member, Map<String, Region> readings) {
    for (String id : demand.holds().traits()) {
      Trait trait = facts.builds().traits().get(id);
      if (trait != null && trait.tell().how().isReading()) {
        readings.merge(id, member.region().and(regions.served()), Region::or);
      }
    }
  }

  private void ask(List<Question> questions, boolean isolated) {
    for (Question question : questions) {
      Tell tell = question.trait().tell();
      if (Phase.of(tell) == Phase.ISOLATED != isolated) {
        continue;
      }
      List<String> needed = Reach.inOrder(vehicle, tell.openings());
      drafts.addAll(openings.open(needed, question.on()));
      Draft draft =
          new Draft("ask/" + question.trait().id(), StepKind.ASK, tell.place(), question.on())
              .say(title(question.trait()), tell.question())
              .behind(needed)
              .asks(
                  new Ask(
                      question.trait().id(),
                      tell.how(),
                      question.trait().values().stream()
                          .map(
                              value ->
                                  new Answer(
                                      value.id(),
                                      value.words(),
                                      tell.expect().getOrDefault(value.id(), ""),
                                      band(tell, value.id())))
                          .toList()))
              .tools(tell.tools())
              .takes(tell.effort().seconds() / 60);
      if (tell.how().isReading()) {
        draft.live(Phase.of(tell) == Phase.LIVE);
      }
      drafts.add(draft);
    }
  }

  private static Optional<Band> band(Tell tell, String value) {
    return Optional.ofNullable(tell.bands().get(value))
        .map(
            it ->
                new Band(
                    it.low().map(BigDecimal::doubleValue),
                    it.high().map(BigDecimal::doubleValue),
                    it.unit().word()));
  }

  private String title(Trait trait) {
    Tell tell = trait.tell();
    return switch (tell.how()) {
      case ASK_OWNER -> "Ask the owner: " + trait.name();
      case LOOK -> "Look: " + trait.name();
      case MEASURE_LIVE -> "Measure with power on: " + trait.name();
      case MEASURE_ISOLATED -> "Measure with power off: " + trait.name();
    };
  }

  // From here on forks speak of cases, which are shorter to say than the answers behind them.
  private Draft cases() {
    StringBuilder text = new StringBuilder("Write down the case of each letter. ");
    for (CaseSet set : made.sets()) {
      for (CaseSet.Member member : set.members()) {
        text.append(member.id())
            .append(set.members().size() == 1 ? ": " : " if ")
            .append(member.info().words())
            .append(". ");
      }
    }
    return new Draft(CASES, StepKind.PREPARE, vehicle.battery(), regions.served())
        .say("Note the cases of this vehicle", text.toString().strip())
        .takes(1);
  }

  // Acts in batches that are worked off without going elsewhere.
  private List<List<Draft>> acts() {
    LeadSteps steps =
        new LeadSteps(order, facts, regions, names, new LayWords(order, made.harness(), names));
    List<List<Draft>> acts = new ArrayList<>();
    List<Draft> lays = new ArrayList<>();
    acts.add(lays);
    Map<Integer, List<Draft>> byPlace = new TreeMap<>();
    for (Lead lead : made.design().leads()) {
      lays.add(steps.lay(lead));
      byPlace
          .computeIfAbsent(rank(lead.a().place()), r -> new ArrayList<>())
          .addAll(steps.end(lead, true));
      byPlace
          .computeIfAbsent(rank(lead.b().place()), r -> new ArrayList<>())
          .addAll(steps.end(lead, false));
    }
    acts.addAll(byPlace.values());
    List<Draft> fuses = new ArrayList<>();
    acts.add(fuses);
    for (FuseFit fuse : made.design().fuses()) {
      List<String> reach =
          vehicle.fuseBlock(fuse.block()).map(it -> it.openings()).orElse(List.of());
      Region on = regions.of(fuse.cases());
      fuses.add(fixed.shortTest(fuse, on, Reach.inOrder(vehicle, reach)));
      fuses.add(fixed.fitFuse(fuse, on, Reach.inOrder(vehicle, reach), needs(fuse)));
    }
    plugs().forEach(plug -> acts.add(List.of(plug)));
    return acts;
  }

  private List<String> needs(FuseFit fuse) {
    Set<String> needs = new LinkedHashSet<>();
    for (Lead lead : made.design().leads()) {
      if (fuse.leads().contains(lead.id())) {
        needs.addAll(lead.needs());
      }
    }
    return List.copyOf(needs);
  }

  private List<Draft> plugs() {
    List<Draft> plugs = new ArrayList<>();
    Set<String> done = new LinkedHashSet<>();
    List<NeedAt> needs = Needs.of(order);
    for (NeedAt need : needs) {
      String plug = need.equipment().id() + "/" + need.plug().id();
      if (!done.add(plug)) {
        continue;
      }
      List<String> own =
          needs.stream().map(NeedAt::id).filter(id -> id.startsWith(plug + "/")).toList();
      List<String> reach =
          need.mount()
              .connector()
              .flatMap(vehicle::connector)
              .map(Connector::openings)
              .orElse(List.of());
      plugs.add(
          fixed
              .plugIn(
                  plug,
                  need.plug().name() + " of " + need.equipment().name(),
                  need.place(),
                  fitted(own).or(fittedByOwn(need.mount())),
                  own)
              .behind(Reach.inOrder(vehicle, reach)));
    }
    for (Mount mount : order.kit().mounts()) {
      String plug = mount.equipment() + "/" + mount.plug();
      if (!fittedByOwn(mount).isEmpty() && done.add(plug)) {
        plugs.add(ownPlug(mount, plug));
      }
    }
    return plugs;
  }

  // A plug without any need, to which a lead of the user's own leads.
  private Draft ownPlug(Mount mount, String id) {
    Optional<Connector> connector = mount.connector().flatMap(vehicle::connector);
    Region brought =
        connector.map(it -> regions.served().minus(facts.present(it))).orElseGet(regions::served);
    String equipment =
        order.equipment().stream()
            .filter(it -> it.id().equals(mount.equipment()))
            .findFirst()
            .map(it -> it.name())
            .orElse(mount.equipment());
    return fixed
        .plugIn(
            id,
            order.plug(mount).map(it -> it.name()).orElse(mount.plug()) + " of " + equipment,
            Needs.place(order, mount),
            fittedByOwn(mount).or(brought),
            List.of())
        .behind(Reach.inOrder(vehicle, connector.map(Connector::openings).orElse(List.of())));
  }

  // Builds on which the plug is new; where all its pins were wired before, it is plugged in
  // already.
  private Region fitted(List<String> needs) {
    Region any = facts.builds().none();
    for (Lead lead : made.design().leads()) {
      if (lead.needs().stream().anyMatch(needs::contains)) {
        any = any.or(regions.using(lead));
      }
    }
    return any;
  }

  // Builds on which a lead of the user's own ends in the plug's connector or housing.
  private Region fittedByOwn(Mount mount) {
    String plug = mount.equipment() + "/" + mount.plug();
    Region any = facts.builds().none();
    for (Lead lead : made.design().leads()) {
      if (lead.own().isEmpty()) {
        continue;
      }
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        for (EndUse use : end.uses()) {
          boolean here =
              use.landing() instanceof Landing.InCavity in
                      && mount.connector().filter(in.connector()::equals).isPresent()
                  || use.landing() instanceof Landing.InHousing of && of.housing().equals(plug);
          any = here ? any.or(regions.of(use.cases())) : any;
        }
      }
    }
    return any;
  }

  private int rank(String place) {
    List<String> ids = vehicle.places().stream().map(Place::id).toList();
    int index = ids.indexOf(place);
    return index < 0 ? ids.size() : index;
  }
}
