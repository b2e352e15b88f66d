package org.loomwright.papers.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.strip.CircuitStrip;
import org.loomwright.drawing.strip.StripPart;
import org.loomwright.drawing.strip.StripPart.Device;
import org.loomwright.drawing.strip.StripPart.Wire;
import org.loomwright.drawing.strip.Symbol;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.NetworkBranch;
import org.loomwright.model.design.NetworkState;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.RandomKits;
import org.loomwright.papers.calculation.DemoKits;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.plan.Planner;

class KitCircuitsTest {

  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void circuitsOfTheDemo(String kit) {
    areRight(DemoKits.planned(kit));
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 8, 21})
  void circuitsOfRandomKits(long seed) {
    KitOrder order = RandomKits.of(seed);
    areRight(new Names(order, Planner.plan(order)));
  }

  private static void areRight(Names names) {
    List<KitCircuit> circuits = KitCircuits.of(names);
    assertThat(circuits).isNotEmpty().doesNotHaveDuplicates();
    assertThat(KitCircuits.of(names)).isEqualTo(circuits);
    Set<String> leads = new HashSet<>();
    for (KitCircuit it : circuits) {
      List<StripPart> parts =
          Stream.concat(it.circuit().out().stream(), it.circuit().back().stream()).toList();
      assertThat(it.in()).matches("in (every case|cases? .+)");
      parts.stream()
          .filter(Wire.class::isInstance)
          .forEach(wire -> leads.add(((Wire) wire).lead()));
      inOrder(it, names);
      voltagesAddUp(it);
      String svg = CircuitStrip.svg(it.circuit(), 223, Lettering.fitted());
      assertThat(svg).doesNotContain("NaN");
    }
    // Every lead that carries anything is somewhere.
    for (Lead lead : names.plan().design().leads()) {
      if (carries(names, lead)) {
        assertThat(leads).as("%s", lead.what()).contains(lead.id());
      }
    }
  }

  private static boolean carries(Names names, Lead lead) {
    return names.plan().networks().stream()
        .flatMap(it -> it.branches().stream())
        .anyMatch(it -> it.name().equals("lead " + lead.id()) && Math.abs(it.currentA()) > 0.01);
  }

  /** Battery first, the load last on the way out; wires of leads touch where they meet. */
  private static void inOrder(KitCircuit it, Names names) {
    List<StripPart> out = it.circuit().out();
    if (out.size() > 1) {
      assertThat(((Device) out.get(0)).symbol()).isEqualTo(Symbol.BATTERY);
    }
    assertThat(((Device) out.get(out.size() - 1)).symbol()).isEqualTo(Symbol.LOAD);
    List<String> order = new ArrayList<>();
    for (StripPart part : out) {
      if (part instanceof Wire wire) {
        order.add("lead " + wire.lead());
      }
    }
    // The same leads follow one another along some state of the networks.
    List<String> own = order.stream().filter(name -> isLead(names, name)).toList();
    assertThat(names.plan().networks().stream().anyMatch(state -> chain(state, own)))
        .as("%s: %s", it.title(), own)
        .isTrue();
  }

  private static boolean isLead(Names names, String name) {
    return names.plan().design().leads().stream().anyMatch(it -> name.equals("lead " + it.id()));
  }

  /** Whether current leaves each lead for the next, over contacts and joints alone. */
  private static boolean chain(NetworkState state, List<String> leads) {
    for (int i = 1; i < leads.size(); i++) {
      String before = leads.get(i - 1);
      String after = leads.get(i);
      NetworkBranch one = branch(state, before);
      NetworkBranch two = branch(state, after);
      if (one == null || two == null || Trail.between(state, one.to(), two.from()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private static @org.jspecify.annotations.Nullable NetworkBranch branch(
      NetworkState state, String name) {
    return state.branches().stream().filter(it -> it.name().equals(name)).findFirst().orElse(null);
  }

  /** Kirchhoff's second law over the printed figures, within what was rounded off. */
  private static void voltagesAddUp(KitCircuit it) {
    if (it.figures().isEmpty() || it.circuit().back().isEmpty()) {
      return;
    }
    double batteryV = volts(it.circuit().out().get(0).figures().get(0));
    double lostV = 0;
    int parts = 0;
    for (StripPart part :
        Stream.concat(it.circuit().out().stream(), it.circuit().back().stream()).toList()) {
      for (String figure : part.figures()) {
        if (figure.startsWith("drop ")) {
          lostV += volts(figure.substring(5));
          parts++;
        }
      }
    }
    StripPart load = it.circuit().out().get(it.circuit().out().size() - 1);
    assertThat(volts(load.figures().get(0)))
        .as("%s %s", it.title(), it.in())
        .isCloseTo(batteryV - lostV, within(0.005 * (parts + 2)));
  }

  private static double volts(String figure) {
    String[] words = figure.replace('\u00A0', ' ').split(" ", 2);
    return Double.parseDouble(words[0]) * (words[1].equals("mV") ? 1e-3 : 1);
  }
}
