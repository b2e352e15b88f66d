package org.loomwright.papers.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.drawing.strip.StripPart;
import org.loomwright.drawing.strip.StripPart.Device;
import org.loomwright.drawing.strip.StripPart.Wire;
import org.loomwright.drawing.strip.Symbol;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.NetworkBranch;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Branches of a network as parts of a strip: symbol, place, words, figures. */
final class PartMaker {
  private static final String FACTORY = "factory wiring";

  /** Less current says nothing about a resistance. */
  private static final double LEAST_A = 1e-3;

  private static final Pattern OF_LEAD =
      Pattern.compile("(contact|splice|ground point) of (\\S+) (?:in|into|on) (.+)");

  private static final Pattern SLOT = Pattern.compile("fuse in slot (\\S+) of (\\S+)");
  private static final Pattern BUS = Pattern.compile("cable to bus bar (\\S+) of (\\S+)");

  private final Names names;
  private final List<String> cases;
  private final Display units;

  /**
   * @param cases cases that stand together
   * @param units units of lengths and sizes
   */
  PartMaker(Names names, List<String> cases, Display units) {
    this.names = names;
    this.units = units;
    this.cases = List.copyOf(cases);
  }

  /** The battery as the start of a circuit. */
  Device battery(Optional<NetworkBranch> branch) {
    return new Device(
        place(names.order().vehicle().battery()),
        Symbol.BATTERY,
        "battery",
        branch.stream().map(it -> volts(Math.abs(it.voltageV()))).toList());
  }

  /** Parts of branches in order. */
  List<StripPart> parts(List<NetworkBranch> branches) {
    return branches.stream().map(this::part).toList();
  }

  StripPart part(NetworkBranch branch) {
    String name = branch.name();
    Matcher ofLead = OF_LEAD.matcher(name);
    Matcher slot = SLOT.matcher(name);
    Matcher bus = BUS.matcher(name);
    if (name.startsWith("lead ")) {
      return lead(name.substring("lead ".length()), branch);
    } else if (ofLead.matches() && lead(ofLead.group(2)).isPresent()) {
      return end(lead(ofLead.group(2)).get(), ofLead.group(1), ofLead.group(3), branch);
    } else if (slot.matches()) {
      return fuse(slot.group(2), slot.group(1), branch);
    } else if (bus.matches()) {
      return new Wire(
          FACTORY,
          "factory cable",
          "to " + section(bus.group(2), bus.group(1)),
          "",
          "",
          figures(branch));
    } else if (name.startsWith("fuse of ")) {
      return factoryFuse(name.substring("fuse of ".length()), branch);
    } else if (name.startsWith("wire of ")) {
      return factoryWire(name.substring("wire of ".length()), branch);
    } else if (name.startsWith("cable to ")) {
      String to = name.substring("cable to ".length()).replaceFirst(" for .*", "");
      return new Wire(
          FACTORY,
          "factory cable",
          "to " + names.prose(to.replaceFirst("^unit ", "")),
          "",
          "",
          figures(branch));
    } else if (name.startsWith("body from ")) {
      return new Device("body", Symbol.BODY, "body metal", figures(branch));
    }
    boolean ground = name.startsWith("ground point");
    return new Device(
        FACTORY,
        ground ? Symbol.GROUND_POINT : Symbol.CONTACT_PAIR,
        ground ? "ground point" : "contact",
        figures(branch));
  }

  private StripPart lead(String id, NetworkBranch branch) {
    Optional<Lead> known = lead(id);
    if (known.isEmpty()) {
      return new Wire(FACTORY, id, "", "", "", figures(branch));
    }
    Lead lead = known.get();
    String from = bare(place(lead.a().place()));
    String to = bare(place(lead.b().place()));
    return new Wire(
        from.equals(to) ? from : from + " → " + to,
        lead.id(),
        Figures.size(lead.areaMm2(), units),
        lead.colour().code(),
        length(lead.lengthMm()),
        figures(branch));
  }

  private StripPart end(Lead lead, String kind, String where, NetworkBranch branch) {
    boolean a = branch.from().endsWith("end a") || branch.to().endsWith("end a");
    LeadEnd end = a ? lead.a() : lead.b();
    Optional<Landing> landing = cases.stream().flatMap(it -> end.landing(it).stream()).findFirst();
    Symbol symbol =
        switch (kind) {
          case "splice" -> Symbol.SPLICE;
          case "ground point" -> Symbol.GROUND_POINT;
          default -> Symbol.CONTACT_PAIR;
        };
    String words = landing.map(names::landing).orElse(names.prose(where));
    return new Device(bare(place(end.place())), symbol, bare(words), figures(branch));
  }

  private StripPart fuse(String block, String slot, NetworkBranch branch) {
    Optional<FuseFit> fit =
        names.plan().design().fuses().stream()
            .filter(it -> it.block().equals(block) && it.slot().equals(slot))
            .findFirst();
    String place =
        names.order().vehicle().fuseBlock(block).map(it -> bare(place(it.place()))).orElse(FACTORY);
    return new Device(
        place,
        Symbol.FUSE,
        "fuse " + fit.map(it -> Figures.amps(it.ratingA()) + " A, ").orElse("") + "slot " + slot,
        figures(branch));
  }

  private StripPart factoryFuse(String circuit, NetworkBranch branch) {
    String rating =
        circuit(circuit)
            .flatMap(Circuit::fuse)
            .map(it -> " " + Figures.amps(it.amperes()) + " A")
            .orElse("");
    return new Device(FACTORY, Symbol.FUSE, "factory fuse" + rating, figures(branch));
  }

  private StripPart factoryWire(String name, NetworkBranch branch) {
    Optional<Circuit> circuit = circuit(name);
    return new Wire(
        FACTORY,
        bare(name),
        circuit
            .map(it -> units == Display.METRIC ? it.wire().text() : units.show(it.wire()))
            .orElse(""),
        circuit.map(it -> it.colour().code()).orElse(""),
        circuit.flatMap(Circuit::length).map(it -> length(it.mm())).orElse(""),
        figures(branch));
  }

  private String length(double lengthMm) {
    return Figures.mm(lengthMm, units) + " " + units.lengthUnit();
  }

  private Optional<Circuit> circuit(String name) {
    return names.order().vehicle().circuits().stream()
        .filter(it -> it.name().equals(name))
        .findFirst();
  }

  private Optional<Lead> lead(String id) {
    return names.plan().design().leads().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  private String section(String block, String section) {
    return names
        .order()
        .vehicle()
        .fuseBlock(block)
        .flatMap(it -> it.section(section).map(known -> bare(known.name())))
        .orElse(section + " of " + names.owner(block));
  }

  private String place(String id) {
    return names.place(id);
  }

  private static String bare(String words) {
    return words.startsWith("the ") ? words.substring(4) : words;
  }

  /** Resistance, current and drop. */
  static List<String> figures(NetworkBranch branch) {
    double currentA = Math.abs(branch.currentA());
    List<String> figures = new ArrayList<>();
    if (currentA > LEAST_A) {
      double ohm = Math.abs(branch.voltageV()) / currentA;
      figures.add(Figures.figure(significant(1000 * ohm), "mΩ"));
      figures.add(Figures.amps(currentA) + " A");
      figures.add("drop " + volts(Math.abs(branch.voltageV())));
    }
    return figures;
  }

  private static double significant(double value) {
    return new java.math.BigDecimal(value).round(new java.math.MathContext(3)).doubleValue();
  }

  /** A voltage; small ones in mV. */
  static String volts(double volts) {
    return volts < 0.1
        ? Figures.figure(significant(1000 * volts), "mV")
        : Figures.figure(volts, "V");
  }
}
