package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.wire.Conductor;

/** Two supplies on slots of their own that return by one ground are solved together. */
class SharedGroundTest {
  private static final Pattern GROUND =
      Pattern.compile("the voltage drop is ([0-9.]+) V of [0-9.]+ V on the ground of winch");

  private final Shop shop = new Shop();
  private final PinNeed first = need("1", NeedKind.SUPPLY, "6 A");
  private final PinNeed second = need("2", NeedKind.SUPPLY, "4 A");
  private final PinNeed ground = need("3", NeedKind.GROUND, "7 A");
  private final List<PinNeed> needs = List.of(first, second, ground);

  private static PinNeed need(String pin, NeedKind kind, String current) {
    Pin it =
        new Pin(
            pin, "pin", Optional.of(Docs.need(kind, kind == NeedKind.SUPPLY ? "30" : "", current)));
    Plug plug = new Plug("p", "plug", "HS-heater", Optional.empty(), List.of(it));
    return new PinNeed(
        new Equipment("winch", "winch", "1", List.of(plug), List.of(), List.of()),
        plug,
        it,
        it.need().orElseThrow(),
        new Mount("winch", "p", Optional.of("floor"), Optional.empty()));
  }

  private Subject subject() {
    return new Subject(
        shop.order(), shop.cases(), shop.design(), shop.guide(), new Facts(shop.vehicle()));
  }

  private static Landing in(String terminal) {
    return new Landing.InHousing("H", "1", terminal, Optional.empty());
  }

  private static NetAt net(Subject subject, PinNeed need, Lead lead, Source source, Region builds) {
    Landing far = source.kind() == Source.Kind.GROUND ? Shop.STUD : Shop.F1;
    boolean ground = source.kind() == Source.Kind.GROUND;
    Link link =
        new Link(
            ground ? need.node() : source.node(),
            ground ? source.node() : need.node(),
            builds,
            Optional.of(lead),
            Optional.empty(),
            ground ? List.of(in("T-floor"), far) : List.of(far, in("T-floor")));
    return new NetAt(
        new Net(Set.of(need.node(), source.node()), List.of(link)),
        List.of(source),
        List.of(),
        List.of(new Traced(need, source, List.of(link))),
        builds,
        subject.guide().steps().get(0));
  }

  private static Source slot(String id) {
    return new Source(
        "slot rear " + id, Source.Kind.FEED, "30", OptionalDouble.of(20), true, "slot " + id);
  }

  @Test
  void takesFeedsAndGroundTogetherWhereBothAre() {
    shop.groundDrop = "0.001 %";
    Subject subject = subject();
    Region possible = subject.possible();
    Region tow = subject.facts().regions().is("tow", "yes").and(possible);
    List<Lead> leads = RandomKit.leads(3, i -> Shop.F1);
    Source stud =
        new Source(
            "ground sill", Source.Kind.GROUND, "", OptionalDouble.empty(), false, "the sill stud");
    List<NetAt> nets =
        List.of(
            net(subject, first, leads.get(0), slot("F1"), possible),
            net(subject, second, leads.get(1), slot("F2"), possible),
            net(subject, ground, leads.get(2), stud, tow));
    Map<PinNeed, PinNeed> returns = new LinkedHashMap<>();
    needs.forEach(it -> it.returnsBy(needs).ifPresent(to -> returns.put(it, to)));
    assertThat(returns).containsOnlyKeys(first, second).containsValue(ground);

    List<Group> groups = Groups.of(nets, returns);
    assertThat(groups).hasSize(3);
    assertThat(groups)
        .filteredOn(it -> it.nets().size() == 3)
        .extracting(Group::builds)
        .containsExactly(tow);
    assertThat(groups)
        .filteredOn(it -> it.nets().size() == 1)
        .extracting(Group::builds)
        .containsExactly(possible.minus(tow), possible.minus(tow));

    Findings findings = new Findings(possible);
    new NetworkLimits(subject, needs).check(subject.guide().steps().get(0), nets, findings);
    List<Fault> faults = findings.of(Claim.LIMITS);
    assertThat(faults).hasSize(1).first().extracting(Fault::builds).isEqualTo(tow);
    Matcher found = GROUND.matcher(faults.get(0).what());
    assertThat(found.find()).isTrue();
    // Both supplies return here, 10 A, more than the ground's own document says: 100 mm of 2.5 mm²,
    // floor terminal, ring, body.
    Conductor conductor = Copper.conductor(WireSize.of("2.5 mm²"), 4);
    double hotC = WireHeat.temperature(WireHeat.Lying.single(conductor, 40), 10).conductorC();
    double ohm = conductor.resistanceOhmPerM(hotC) * 0.1 + (1 + 2.5 + 1) / 1000;
    assertThat(Double.parseDouble(found.group(1))).isCloseTo(10 * ohm, within(0.0006));
    assertThat(findings.of(Claim.NO_BACK_FEED)).isEmpty();
  }
}
