package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.physics.network.Element;
import org.loomwright.physics.network.Joint;
import org.loomwright.physics.network.Network;

/**
 * Turns a group of nets into a network.
 *
 * <p>The battery stands at a voltage that the vehicle's document gives at the fuse blocks with all
 * factory loads on, behind the internal resistance of a weak battery and the cable to the bus bar;
 * only added loads run through these (Thévenin). A factory circuit counts with its whole length at
 * 70 °C, as where along it a splice lies is not known.
 */
final class GroupModel {
  static final String NEGATIVE = "battery negative";
  static final String POSITIVE = "battery positive";
  static final String BATTERY = "battery";

  /** Temperature a loaded factory wire is taken to have, °C (common practice). */
  static final double FACTORY_WIRE_C = 70;

  private final Subject subject;
  private final Rules rules;
  private final Group group;
  private final Map<PinNeed, PinNeed> returns;
  private final Resistances resistances;
  private final List<Element> elements = new ArrayList<>();
  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> made = new LinkedHashSet<>();
  private final Map<String, String> sameAs = new LinkedHashMap<>();
  private final Map<String, Lead> leads = new LinkedHashMap<>();
  private final Map<Link, List<String>> ofLink = new LinkedHashMap<>();
  private final Map<Source, List<String>> ofSource = new LinkedHashMap<>();
  private final Map<Source, String> begins = new LinkedHashMap<>();

  /**
   * A group as a network.
   *
   * @param network the network, all loads on, leads still cold, the battery at its lowest
   * @param leads lead of each wire that is one
   * @param ofLink elements of each connection
   * @param ofSource elements between a source of the nets and where its drop is reckoned from
   * @param begins node from which the drop of a source's needs is reckoned
   * @param loads load of each supply
   */
  record Modelled(
      Network network,
      Map<String, Lead> leads,
      Map<Link, List<String>> ofLink,
      Map<Source, List<String>> ofSource,
      Map<Source, String> begins,
      Map<PinNeed, String> loads) {
    Modelled {
      leads = Collections.unmodifiableMap(new LinkedHashMap<>(leads));
      ofLink = Collections.unmodifiableMap(new LinkedHashMap<>(ofLink));
      ofSource = Collections.unmodifiableMap(new LinkedHashMap<>(ofSource));
      begins = Collections.unmodifiableMap(new LinkedHashMap<>(begins));
      loads = Collections.unmodifiableMap(new LinkedHashMap<>(loads));
    }
  }

  private GroupModel(Subject subject, Group group, Map<PinNeed, PinNeed> returns) {
    this.subject = subject;
    this.returns = returns;
    this.rules = subject.order().rules();
    this.group = group;
    this.resistances = new Resistances(subject);
  }

  /**
   * The network of a group.
   *
   * @param returns the ground of each supply that has one
   * @param others loads outside the group
   * @throws org.loomwright.physics.SumException when a figure is outside the range of the sums
   */
  static Modelled of(
      Subject subject, Group group, Map<PinNeed, PinNeed> returns, List<Elsewhere.Other> others) {
    return new GroupModel(subject, group, returns).make(others);
  }

  private Modelled make(List<Elsewhere.Other> others) {
    double lowestV = subject.vehicle().supplyLowest().volts();
    double weakOhm = ElectricDefaults.weakSource(rules, subject.vehicle()).value().ohms();
    elements.add(
        new org.loomwright.physics.network.Source(BATTERY, NEGATIVE, POSITIVE, lowestV, weakOhm));
    for (NetAt net : group.nets()) {
      for (Link link : net.net().links()) {
        if (isPin(link)) {
          sameAs.put(link.to(), link.from());
        }
      }
      net.sources().forEach(this::source);
      net.net().links().forEach(this::link);
    }
    Map<PinNeed, String> loads = new GroupLoads(subject, group, returns, this).add(others);
    return new Modelled(new Network(NEGATIVE, elements), leads, ofLink, ofSource, begins, loads);
  }

  private void source(Source source) {
    if (source.kind() == Source.Kind.GROUND) {
      ground(source);
    } else if (source.kind() == Source.Kind.FEED) {
      Optional<FeedSpot> spot = FeedSpot.of(subject, source);
      String bus = spot.map(this::bus).orElseGet(() -> unit(source));
      begins.put(source, bus);
      Optional<Resistances.Known> fuse = resistances.fuse(source);
      if (fuse.isPresent()) {
        ofSource.put(source, List.of(joint(fuse.get(), bus, source.node())));
      } else {
        sameAs.put(source.node(), bus);
      }
    }
  }

  private void ground(Source source) {
    begins.put(source, NEGATIVE);
    String name = stud(source.node());
    ofSource.put(source, List.of(name));
  }

  /** Makes the body behind a ground, once; gives its name. */
  String stud(String node) {
    Optional<GroundStud> stud =
        subject.vehicle().grounds().stream()
            .filter(it -> new Spot.OfGround(it.id()).text().equals(node))
            .findFirst();
    String name = "the body from " + stud.map(GroundStud::name).orElse(node);
    if (made.add(node)) {
      Sourced<Resistance> body =
          stud.map(it -> ElectricDefaults.body(rules, it))
              .orElseGet(() -> ElectricDefaults.body(rules));
      joint(Resistances.Known.of(name, Joint.Kind.RESISTOR, body), node, NEGATIVE);
    }
    return name;
  }

  String bus(FeedSpot spot) {
    String section = spot.section().map(it -> it.name()).orElse(spot.slot().section());
    String node = "bus bar of " + section + " of " + spot.block().name();
    if (made.add(node)) {
      Sourced<Resistance> cable =
          spot.section()
              .map(it -> ElectricDefaults.feedCable(rules, it))
              .orElseGet(() -> ElectricDefaults.feedCable(rules));
      joint(
          Resistances.Known.of("the cable to the " + node, Joint.Kind.RESISTOR, cable),
          POSITIVE,
          node);
    }
    return node;
  }

  private String unit(Source source) {
    String node = "feed of " + source.words();
    if (made.add(node)) {
      joint(
          Resistances.Known.of(
              "the cable to the " + node, Joint.Kind.RESISTOR, ElectricDefaults.feedCable(rules)),
          POSITIVE,
          node);
    }
    return node;
  }

  /**
   * Whether it is the equipment's pin in its cavity: its contact counts with the lead's terminal.
   */
  private static boolean isPin(Link link) {
    return link.lead().isEmpty() && link.from().startsWith(Nodes.PIN);
  }

  private void link(Link link) {
    if (ofLink.containsKey(link) || isPin(link)) {
      return;
    }
    if (link.lead().isPresent()) {
      ofLink.put(link, lead(link, link.lead().get()));
    } else if (link.source().isPresent()) {
      ofLink.put(link, circuit(link, link.source().get()));
    } else {
      ofLink.put(
          link,
          List.of(
              joint(
                  Resistances.Known.of(
                      "the contact of " + link.from() + " at " + link.to(),
                      Joint.Kind.CONTACT,
                      ElectricDefaults.contact(rules)),
                  node(link.from()),
                  node(link.to()))));
    }
  }

  private List<String> lead(Link link, Lead lead) {
    List<String> parts = new ArrayList<>();
    Optional<Wire> wire = subject.order().parts().wire(lead.wire());
    if (wire.isEmpty()) {
      throw new org.loomwright.physics.SumException("the parts have no wire '" + lead.wire() + "'");
    }
    Optional<Resistances.Known> a = resistances.end(lead, "a", link.landings().get(0));
    Optional<Resistances.Known> b = resistances.end(lead, "b", link.landings().get(1));
    String from = a.isPresent() ? free("end a of lead " + lead.id()) : node(link.from());
    String to = b.isPresent() ? free("end b of lead " + lead.id()) : node(link.to());
    a.ifPresent(it -> parts.add(joint(it, node(link.from()), from)));
    String name = free("lead " + lead.id());
    leads.put(name, lead);
    parts.add(name);
    elements.add(
        new org.loomwright.physics.network.Wire(
            name,
            from,
            to,
            Copper.conductor(wire.get().size(), wire.get().diameter().mm()),
            lead.lengthMm() / 1000,
            LeadHeat.COLD_C));
    b.ifPresent(it -> parts.add(joint(it, to, node(link.to()))));
    return parts;
  }

  private List<String> circuit(Link link, Circuit circuit) {
    boolean ground = circuit.kind() == CircuitKind.GROUND;
    String start = free("start of " + circuit.name());
    List<String> parts = new ArrayList<>();
    parts.add(
        joint(
            ground
                ? Resistances.Known.of(
                    "the ground point of " + circuit.name(),
                    Joint.Kind.GROUND_POINT,
                    ElectricDefaults.groundPoint(rules))
                : Resistances.Known.of(
                    "the contact at the start of " + circuit.name(),
                    Joint.Kind.CONTACT,
                    ElectricDefaults.contact(rules)),
            node(link.from()),
            start));
    if (circuit.length().isPresent()) {
      String name = free("the wire of " + circuit.name());
      parts.add(name);
      elements.add(
          new org.loomwright.physics.network.Wire(
              name,
              start,
              node(link.to()),
              Copper.conductor(circuit.wire(), 0),
              circuit.length().get().mm() / 1000,
              FACTORY_WIRE_C));
    } else {
      // Its length is not on file; the crimp at its far end is all that can be counted.
      parts.add(
          joint(
              Resistances.Known.of(
                  "the far contact of " + circuit.name(),
                  Joint.Kind.CONTACT,
                  ElectricDefaults.contact(rules)),
              start,
              node(link.to())));
    }
    return parts;
  }

  void add(Element element) {
    elements.add(element);
  }

  private String joint(Resistances.Known known, String from, String to) {
    String name = free(known.words());
    elements.add(new Joint(name, from, to, known.kind(), known.ohm(), known.source()));
    return name;
  }

  String node(String node) {
    return sameAs.getOrDefault(node, node);
  }

  /** A name not taken yet. */
  String free(String name) {
    String free = name;
    for (int i = 2; !names.add(free); i++) {
      free = name + " (" + i + ")";
    }
    return free;
  }
}
