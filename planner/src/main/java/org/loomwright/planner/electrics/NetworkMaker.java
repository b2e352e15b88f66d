package org.loomwright.planner.electrics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.physics.network.ConstantCurrent;
import org.loomwright.physics.network.Element;
import org.loomwright.physics.network.Joint;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.NetworkFindings;
import org.loomwright.physics.network.Source;
import org.loomwright.physics.network.Wire;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.sizing.Conductors;
import org.loomwright.planner.ways.Way;

/**
 * Builds the network of a joint case.
 *
 * <p>The battery stands at the voltage that the vehicle's document gives at the fuse blocks with
 * all factory loads on. So factory loads are not put on the bus bars again: by Thévenin's theorem
 * the added currents alone then lower that voltage, over the internal resistance and the cable.
 * Factory loads on a circuit that is spliced into are put at its far end, as they share its wire;
 * the electromotive force is raised by what they lose inside the source, so that they do not lower
 * the voltage twice. What they lose in the cable to their bus bar is counted again, on the cautious
 * side.
 */
final class NetworkMaker {
  /** Temperature a loaded factory wire is taken to have, °C (common practice). */
  static final double FACTORY_WIRE_C = 70;

  /** Most offset of a sensor's ground, V: 1 % of a 5 V sensor supply (from memory). */
  static final double SENSOR_OFFSET_V = 0.05;

  private final Vehicle vehicle;
  private final Rules rules;
  private final JointCase joint;
  private final List<Element> elements = new ArrayList<>();
  private final Set<String> made = new LinkedHashSet<>();
  private final Set<String> feeds = new LinkedHashSet<>();
  private final Map<String, String> sources = new LinkedHashMap<>();
  private final Map<NeedAt, String> pins = new LinkedHashMap<>();
  private final Map<String, String> pinOfTouch = new LinkedHashMap<>();

  private NetworkMaker(KitOrder order, JointCase joint) {
    this.vehicle = order.vehicle();
    this.rules = order.rules();
    this.joint = joint;
  }

  /** The network of a joint case. */
  static CaseNetwork of(KitOrder order, JointCase joint) {
    return new NetworkMaker(order, joint).make();
  }

  private CaseNetwork make() {
    for (NeedAt need : joint.ways().keySet()) {
      String pin = "pin " + need.id();
      pins.put(need, pin);
      touches(need).forEach(touch -> pinOfTouch.put(touch.key(), pin));
    }
    joint.leads().forEach(this::lead);
    joint.ways().forEach(this::already);
    double lowestV = vehicle.supplyLowest().volts();
    double highestV =
        Math.max(lowestV, ElectricDefaults.supplyHighest(rules, vehicle).value().volts());
    LoadMaker loads = new LoadMaker(lowestV, highestV, joint, pins, this::busNode, this::studNode);
    Map<NeedAt, String> loadNames = loads.add(elements);
    double factoryA = hostLoads();
    List<NetworkFindings.SensorGround> sensors = new ArrayList<>();
    for (GroundStud stud : vehicle.grounds()) {
      if (stud.sensor()) {
        sensors.add(
            new NetworkFindings.SensorGround(
                studNode(stud.id()), CaseNetwork.NEGATIVE, SENSOR_OFFSET_V));
      }
    }
    double internalOhm = ElectricDefaults.weakSource(rules, vehicle).value().ohms();
    double behindV = internalOhm * factoryA;
    elements.add(
        0,
        new Source(
            CaseNetwork.BATTERY,
            CaseNetwork.NEGATIVE,
            CaseNetwork.POSITIVE,
            lowestV + behindV,
            internalOhm));
    return new CaseNetwork(
        joint.cases(),
        new Network(CaseNetwork.NEGATIVE, elements),
        loadNames,
        pins,
        feeds,
        sources,
        sensors,
        lowestV + behindV,
        highestV + behindV);
  }

  // A pin is met in the vehicle's connector, or in a housing the kit brings where there is none.
  private static List<Touch> touches(NeedAt need) {
    List<Touch> touches = new ArrayList<>();
    String number = need.pin().cavity();
    need.mount().connector().ifPresent(it -> touches.add(new Touch.AtCavity(it, number, "")));
    String mount = need.equipment().id() + "/" + need.plug().id();
    touches.add(new Touch.AtHousing(mount, "", number, ""));
    return touches;
  }

  private void lead(PlacedLead lead) {
    String aNode = lead.name() + " end a";
    String bNode = lead.name() + " end b";
    end(lead, lead.draft().a(), aNode, lead.a(), true);
    wire("lead " + lead.name(), aNode, bNode, lead.conductor(), lead.lengthM(), lead.conductorC());
    end(lead, lead.draft().b(), bNode, lead.b(), false);
  }

  private void end(PlacedLead lead, Touch touch, String leadNode, Ohms ohms, boolean a) {
    String at = node(touch);
    joint(
        kind(touch).words() + " of " + lead.name() + " " + words(touch),
        a ? at : leadNode,
        a ? leadNode : at,
        kind(touch),
        ohms);
  }

  private static Joint.Kind kind(Touch touch) {
    if (touch instanceof Touch.AtCircuit || touch instanceof Touch.AtJoint) {
      return Joint.Kind.SPLICE;
    }
    return touch instanceof Touch.AtGround ? Joint.Kind.GROUND_POINT : Joint.Kind.CONTACT;
  }

  private String words(Touch touch) {
    if (touch instanceof Touch.AtCircuit at) {
      return "into " + circuit(at.circuit()).name();
    } else if (touch instanceof Touch.AtGround at) {
      return "on " + stud(at.ground()).name();
    } else if (touch instanceof Touch.AtSlot at) {
      return "in slot " + at.slot() + " of " + at.block();
    } else if (touch instanceof Touch.AtJoint at) {
      return "in joint " + at.joint();
    }
    return touch instanceof Touch.AtCavity at
        ? "in cavity " + at.cavity() + " of " + at.connector()
        : "in cavity " + ((Touch.AtHousing) touch).cavity() + " of the kit's housing";
  }

  private String node(Touch touch) {
    if (touch instanceof Touch.AtSlot at) {
      return slotNode(at);
    } else if (touch instanceof Touch.AtCircuit at) {
      return hostNode(circuit(at.circuit()));
    } else if (touch instanceof Touch.AtGround at) {
      return studNode(at.ground());
    } else if (touch instanceof Touch.AtJoint at) {
      return "joint " + at.joint();
    }
    return Optional.ofNullable(pinOfTouch.get(touch.key())).orElse(touch.key());
  }

  private String slotNode(Touch.AtSlot at) {
    String node = "slot " + at.slot() + " of " + at.block() + ", load side";
    if (made.add(node)) {
      FittedFuse fuse =
          Optional.ofNullable(joint.fuses().get(at.key()))
              .orElseThrow(() -> new IllegalStateException("no fuse for " + at.key()));
      String section =
          vehicle
              .fuseBlock(at.block())
              .flatMap((FuseBlock block) -> block.slot(at.slot()))
              .orElseThrow()
              .section();
      joint(
          "fuse in slot " + at.slot() + " of " + at.block(),
          busNode(at.block(), section),
          node,
          Joint.Kind.FUSE,
          fuse.resistance());
    }
    return node;
  }

  private String busNode(String blockId, String sectionId) {
    String node = "bus bar " + sectionId + " of " + blockId;
    if (made.add(node)) {
      Section section =
          vehicle.fuseBlock(blockId).flatMap(block -> block.section(sectionId)).orElseThrow();
      feeds.add(node);
      joint(
          "cable to bus bar " + sectionId + " of " + blockId,
          CaseNetwork.POSITIVE,
          node,
          Joint.Kind.RESISTOR,
          Ohms.of(ElectricDefaults.feedCable(rules, section)));
    }
    return node;
  }

  /** Node of a stud; its way back to the battery is there too. */
  private String studNode(String id) {
    String node = "stud " + id;
    if (made.add(node)) {
      joint(
          "body from " + stud(id).name(),
          node,
          CaseNetwork.NEGATIVE,
          Joint.Kind.RESISTOR,
          Ohms.of(ElectricDefaults.body(rules, stud(id))));
    }
    return node;
  }

  // The far end of a factory circuit: where along it a splice lies is not known, so its whole
  // length counts.
  private String hostNode(Circuit circuit) {
    String far = "far end of " + circuit.name();
    if (!made.add(far)) {
      return far;
    }
    Ohms contact = Ohms.of(ElectricDefaults.contact(rules));
    boolean ground = circuit.kind() == CircuitKind.GROUND;
    String near = ground ? hostGround(circuit) : hostFeed(circuit);
    String begin = "start of " + circuit.name();
    Joint.Kind kind = ground ? Joint.Kind.GROUND_POINT : Joint.Kind.CONTACT;
    Ohms at = ground ? Ohms.of(ElectricDefaults.groundPoint(rules)) : contact;
    joint(
        kind.words() + " at the start of " + circuit.name(),
        ground ? begin : near,
        ground ? near : begin,
        kind,
        at);
    if (circuit.length().isPresent()) {
      wire(
          "wire of " + circuit.name(),
          ground ? far : begin,
          ground ? begin : far,
          Conductors.ofFactory(circuit.wire()),
          circuit.length().get().mm() / 1000,
          FACTORY_WIRE_C);
    } else {
      // Its length is not on file; the crimp at its far end is all that can be counted.
      joint(
          "far contact of " + circuit.name() + ", length not on file",
          ground ? far : begin,
          ground ? begin : far,
          Joint.Kind.CONTACT,
          contact);
    }
    return far;
  }

  private String hostFeed(Circuit circuit) {
    String feed;
    if (circuit.from() instanceof Spot.OfSlot from) {
      String section =
          vehicle
              .fuseBlock(from.block())
              .flatMap((FuseBlock block) -> block.slot(from.slot()))
              .orElseThrow()
              .section();
      feed = busNode(from.block(), section);
    } else {
      feed = "feed of " + circuit.name();
      feeds.add(feed);
      joint(
          "cable to " + circuit.from().text() + " for " + circuit.name(),
          CaseNetwork.POSITIVE,
          feed,
          Joint.Kind.RESISTOR,
          Ohms.of(ElectricDefaults.feedCable(rules)));
    }
    if (circuit.fuse().isEmpty()) {
      return feed;
    }
    String behind = "fuse of " + circuit.name() + ", load side";
    joint(
        "fuse of " + circuit.name(),
        feed,
        behind,
        Joint.Kind.FUSE,
        Ohms.of(ElectricDefaults.fuse(rules, circuit.fuse().get())));
    return behind;
  }

  private String hostGround(Circuit circuit) {
    if (circuit.from() instanceof Spot.OfGround from) {
      return studNode(from.ground());
    }
    String node = "ground of " + circuit.name();
    joint(
        "body from " + circuit.from().text() + " for " + circuit.name(),
        node,
        CaseNetwork.NEGATIVE,
        Joint.Kind.RESISTOR,
        Ohms.of(ElectricDefaults.body(rules)));
    return node;
  }

  // A need that a factory wire meets without any added lead.
  private void already(NeedAt need, Way way) {
    if (!way.leads().isEmpty() || way.host().isEmpty()) {
      return;
    }
    Circuit circuit = way.host().get();
    boolean ground = circuit.kind() == CircuitKind.GROUND;
    String pin = pins.getOrDefault(need, "");
    String far = hostNode(circuit);
    joint(
        "contact of " + circuit.name() + " at " + need.topic() + " (" + need.id() + ")",
        ground ? pin : far,
        ground ? far : pin,
        Joint.Kind.CONTACT,
        Ohms.of(ElectricDefaults.contact(rules)));
  }

  // What a factory circuit carries for the factory's own consumers, where leads are spliced in;
  // gives
  // their sum.
  private double hostLoads() {
    Set<String> done = new LinkedHashSet<>();
    double sumA = 0;
    for (Way way : joint.ways().values()) {
      Circuit circuit = way.host().orElse(null);
      if (circuit == null
          || circuit.kind() == CircuitKind.GROUND
          || way.leads().isEmpty() && circuit.to().size() == 1
          || !done.add(circuit.id())) {
        continue;
      }
      double loadA = circuit.load().map(Current::amperes).orElse(0.0);
      if (loadA > 0) {
        elements.add(
            new ConstantCurrent(
                "factory load on " + circuit.name(),
                hostNode(circuit),
                CaseNetwork.NEGATIVE,
                loadA));
        sumA += loadA;
      }
    }
    return sumA;
  }

  private void wire(
      String name, String from, String to, Conductor conductor, double lengthM, double c) {
    elements.add(new Wire(name, from, to, conductor, lengthM, c));
    sources.put(name, conductor.source());
  }

  private void joint(String name, String from, String to, Joint.Kind kind, Ohms ohms) {
    elements.add(new Joint(name, from, to, kind, ohms.ohm(), ohms.source()));
    sources.put(name, ohms.source());
  }

  private Circuit circuit(String id) {
    return vehicle.circuit(id).orElseThrow(() -> new IllegalStateException("no circuit " + id));
  }

  private GroundStud stud(String id) {
    return vehicle.ground(id).orElseThrow(() -> new IllegalStateException("no stud " + id));
  }
}
