package org.loomwright.papers.circuit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.drawing.strip.StripCircuit;
import org.loomwright.drawing.strip.StripPart;
import org.loomwright.drawing.strip.StripPart.Device;
import org.loomwright.drawing.strip.Symbol;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.NetworkBranch;
import org.loomwright.model.design.NetworkState;
import org.loomwright.model.quantity.Display;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/**
 * All circuits of a kit in which an added lead lies: one for each pin and each way it is wired.
 * Cases in which the same parts follow one another share one, with the figures of the case that
 * leaves the load the least voltage.
 */
public final class KitCircuits {
  private final Names names;

  private final Display units;

  private KitCircuits(Names names, Display units) {
    this.names = names;
    this.units = units;
  }

  /** The circuits of a plan, in the order of its needs. */
  public static List<KitCircuit> of(Names names) {
    return of(names, Display.METRIC);
  }

  /** The same, lengths and wire sizes in the wanted units. */
  public static List<KitCircuit> of(Names names, Display units) {
    return new KitCircuits(names, units).make();
  }

  /** A way in one state of the networks. */
  private record Found(
      NetworkState state,
      List<NetworkBranch> out,
      List<NetworkBranch> back,
      Optional<NetworkBranch> load) {
    /** What makes it the same as another. */
    List<String> parts() {
      List<String> parts = new ArrayList<>(named("out", out));
      parts.addAll(named("back", back));
      return parts;
    }

    static List<String> named(String way, List<NetworkBranch> branches) {
      List<String> parts = new ArrayList<>(List.of(way));
      branches.forEach(it -> parts.add(it.name()));
      return parts;
    }

    boolean hasLead() {
      return out.stream().anyMatch(it -> it.name().startsWith("lead "))
          || back.stream().anyMatch(it -> it.name().startsWith("lead "));
    }

    double leftV() {
      return load.map(it -> Math.abs(it.voltageV())).orElse(0.0);
    }
  }

  private List<KitCircuit> make() {
    List<KitCircuit> circuits = new ArrayList<>();
    Set<String> returned = new LinkedHashSet<>();
    for (NeedGap gap : names.plan().gap()) {
      if (isGround(gap.need())) {
        continue;
      }
      Map<List<String>, List<Found>> ways = new LinkedHashMap<>();
      for (NetworkState state : names.plan().networks()) {
        Found found = found(state, gap.need());
        if (!found.out().isEmpty()) {
          found.load().ifPresent(it -> returned.add(it.to()));
          if (found.hasLead()) {
            ways.computeIfAbsent(found.parts(), parts -> new ArrayList<>()).add(found);
          }
        }
      }
      fewest(ways.values()).forEach(same -> circuits.add(circuit(gap.need(), same)));
    }
    circuits.addAll(groundsAlone(returned));
    return circuits;
  }

  /**
   * So many of the ways that each way out and each way back is among them: what differs on one side
   * of the load only need not be drawn with everything on the other side.
   */
  private static List<List<Found>> fewest(Collection<List<Found>> ways) {
    List<List<Found>> kept = new ArrayList<>();
    Set<List<String>> drawn = new LinkedHashSet<>();
    for (int fresh = 2; fresh > 0; fresh--) {
      for (List<Found> way : ways) {
        List<String> out = Found.named("out", way.get(0).out());
        List<String> back = Found.named("back", way.get(0).back());
        int undrawn = (drawn.contains(out) ? 0 : 1) + (drawn.contains(back) ? 0 : 1);
        if (undrawn >= fresh) {
          kept.add(way);
          drawn.add(out);
          drawn.add(back);
        }
      }
    }
    return kept;
  }

  /** Grounds that return no supply of this kit. */
  private List<KitCircuit> groundsAlone(Set<String> returned) {
    List<KitCircuit> circuits = new ArrayList<>();
    for (NeedGap gap : names.plan().gap()) {
      String pin = Trail.pin(gap.need());
      if (!isGround(gap.need()) || returned.contains(pin)) {
        continue;
      }
      Map<List<String>, List<Found>> ways = new LinkedHashMap<>();
      for (NetworkState state : names.plan().networks()) {
        List<NetworkBranch> back = Trail.between(state, pin, Trail.NEGATIVE);
        Found found = new Found(state, List.of(), back, Optional.empty());
        if (found.hasLead()) {
          ways.computeIfAbsent(found.parts(), parts -> new ArrayList<>()).add(found);
        }
      }
      ways.values().forEach(same -> circuits.add(circuit(gap.need(), same)));
    }
    return circuits;
  }

  private static Found found(NetworkState state, String need) {
    List<NetworkBranch> out = Trail.between(state, Trail.POSITIVE, Trail.pin(need));
    Optional<NetworkBranch> load = Trail.load(state, need);
    List<NetworkBranch> back =
        load.map(it -> Trail.between(state, it.to(), Trail.NEGATIVE)).orElse(List.of());
    return new Found(state, out, back, load);
  }

  private KitCircuit circuit(String need, List<Found> same) {
    Found worst = same.stream().reduce((a, b) -> b.leftV() < a.leftV() ? b : a).orElseThrow();
    PartMaker maker = new PartMaker(names, worst.state().cases(), units);
    List<StripPart> out = new ArrayList<>();
    if (!worst.out().isEmpty()) {
      out.add(maker.battery(Trail.battery(worst.state())));
    }
    out.addAll(maker.parts(worst.out()));
    List<StripPart> back = new ArrayList<>(maker.parts(worst.back()));
    String place =
        out.size() > 1
            ? out.get(out.size() - 1).place()
            : back.isEmpty() ? "" : back.get(0).place();
    out.add(load(need, place, worst.load()));
    if (worst.load().isPresent() && worst.back().isEmpty()) {
      back.add(new Device(place, Symbol.BODY, "back by the equipment's own ground", List.of()));
    }
    String title = Figures.capital(names.pin(need));
    return new KitCircuit(
        title,
        cases(need, same),
        worst.load().isEmpty()
            ? ""
            : "Figures: "
                + Names.cases(worst.state().cases())
                + ", "
                + state(worst.state())
                + "; "
                + Figures.figure(worst.leftV(), "V")
                + " left at the load.",
        new StripCircuit(title, out, back));
  }

  /** The state in words, its supply rounded. */
  private String state(NetworkState state) {
    return java.util.regex.Pattern.compile("\\d+\\.\\d+")
        .matcher(state.state())
        .replaceAll(it -> Figures.quantity(Double.parseDouble(it.group())));
  }

  private Device load(String need, String place, Optional<NetworkBranch> load) {
    List<String> figures = new ArrayList<>();
    load.ifPresent(
        it -> {
          figures.add(PartMaker.volts(Math.abs(it.voltageV())));
          figures.add(Figures.amps(Math.abs(it.currentA())) + " A");
        });
    return new Device(place, Symbol.LOAD, names.pin(need), figures);
  }

  private boolean isGround(String need) {
    return names.order().equipment().stream()
        .anyMatch(
            equipment ->
                equipment.plugs().stream()
                    .anyMatch(
                        plug ->
                            plug.pins().stream()
                                .filter(
                                    pin ->
                                        need.equals(
                                            equipment.id() + "/" + plug.id() + "/" + pin.cavity()))
                                .flatMap(pin -> pin.need().stream())
                                .anyMatch(
                                    it ->
                                        it.kind()
                                            == org.loomwright.model.equipment.NeedKind.GROUND)));
  }

  /** Cases in which the circuit is so: those of its own components, where they tell anything. */
  private String cases(String need, List<Found> same) {
    Set<String> components = new LinkedHashSet<>();
    Optional<String> returned =
        same.get(0).load().filter(it -> it.to().startsWith("pin ")).map(it -> it.to().substring(4));
    names.plan().cases().stream()
        .filter(
            it ->
                it.ways().containsKey(need) || returned.filter(it.ways()::containsKey).isPresent())
        .forEach(it -> components.add(it.component()));
    for (String part : same.get(0).parts()) {
      names.plan().design().leads().stream()
          .filter(it -> part.equals("lead " + it.id()))
          .forEach(it -> components.add(it.component()));
    }
    Set<String> in =
        same.stream()
            .flatMap(it -> it.state().cases().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    List<String> told = new ArrayList<>();
    for (String component : components) {
      List<String> all =
          names.plan().cases().stream()
              .filter(it -> it.component().equals(component))
              .map(Case::id)
              .toList();
      List<String> here = all.stream().filter(in::contains).toList();
      if (here.size() < all.size()) {
        told.add(Names.cases(here));
      }
    }
    return told.isEmpty() ? "in every case" : "in " + String.join(", with ", told);
  }
}
