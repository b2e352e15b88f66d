package org.loomwright.web.hand;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;

/**
 * Whatever is thought of a second time, and whenever (another answer, a step not done after all,
 * something odd, a wrong value): when the guide is at its end, the vehicle is as if all had been
 * done right at once, no wiring was touched with power on, nothing was measured with other power
 * than the step asks for, and nothing was worked on behind a closed panel.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SecondThoughtsTest {
  private static final int TRIALS = 80;

  private final BrowserSession session = BrowserSession.start();
  @TempDir private Path folder;

  @AfterAll
  void close() {
    session.close();
  }

  @ParameterizedTest
  @ValueSource(strings = {"crew-comfort", "trailer"})
  void theVehicleEndsAsIfTheRightAnswerHadBeenGivenAtOnce(String kit) {
    long seed = System.nanoTime();
    System.out.println("second thoughts seed " + seed);
    Random random = new Random(seed);
    DemoGuides demo = DemoGuides.of(kit);
    try (BrowserContext context = session.offline(Manner.PHONE)) {
      Page page = context.newPage();
      page.navigate(demo.file(folder).toUri().toString());
      for (int i = 0; i < TRIALS; i++) {
        Trial trial = trial(demo, random, Deed.values()[i % Deed.values().length]);
        Map<?, ?> found =
            (Map<?, ?>)
                page.evaluate(
                    HandScripts.own("changes.js"),
                    Map.of(
                        "first", trial.first(),
                        "second", trial.second(),
                        "number", demo.number(trial.second()).id(),
                        "until", trial.until(),
                        "deed", trial.deed().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        "at", trial.at()));
        List<String> done = new ArrayList<>();
        HandScripts.list(found, "done").forEach(it -> done.add(String.valueOf(it)));
        List<Step> walk = demo.walk(trial.second());
        assertThat(done)
            .as("steps done, %s", trial)
            .containsExactlyInAnyOrderElementsOf(walk.stream().map(Step::id).toList());
        Vehicle vehicle = new Vehicle(demo, trial.toString());
        HandScripts.list(found, "events").forEach(it -> vehicle.happens((Map<?, ?>) it));
        Vehicle straight = new Vehicle(demo, trial.toString());
        walk.forEach(it -> straight.happens(Map.of("what", "do", "step", it.id())));
        assertThat(vehicle.state()).as("the vehicle, %s", trial).isEqualTo(straight.state());
      }
    }
  }

  private enum Deed {
    ANSWER,
    NOT_DONE,
    ODD,
    VALUE
  }

  /**
   * A second thought.
   *
   * @param first what the vehicle is taken for at first
   * @param second what it is
   * @param until step, not yet done, at which the thought comes
   * @param deed what is thought
   * @param at step, done, that it is about
   */
  private record Trial(
      Map<String, String> first, Map<String, String> second, String until, Deed deed, String at) {}

  private static Trial trial(DemoGuides demo, Random random, Deed deed) {
    List<Map<String, String>> builds = new ArrayList<>(demo.builds());
    while (true) {
      Collections.shuffle(builds, random);
      Map<String, String> first = builds.get(0);
      List<Step> walk = demo.walk(first);
      List<Step> steps = walk.stream().filter(it -> isFor(it, deed, first)).toList();
      Step at = steps.get(random.nextInt(steps.size()));
      int from = walk.indexOf(at) + 1;
      String until =
          from == walk.size() || random.nextInt(4) == 0
              ? "the end"
              : walk.get(from + random.nextInt(walk.size() - from)).id();
      if (deed != Deed.ANSWER) {
        return new Trial(first, first, until, deed, at.id());
      }
      String trait = at.ask().orElseThrow().trait();
      for (Map<String, String> second : builds) {
        // The part number in the hand has to serve both, or the guide rightly stops.
        boolean near =
            !Objects.equals(second.get(trait), first.get(trait))
                && demo.number(second).equals(demo.number(first))
                && asked(demo, second).contains(trait)
                // What was answered beside it stays true.
                && asked(demo, first).stream()
                    .allMatch(
                        it -> it.equals(trait) || Objects.equals(first.get(it), second.get(it)));
        if (near) {
          return new Trial(first, second, until, deed, at.id());
        }
      }
    }
  }

  private static boolean isFor(Step step, Deed deed, Map<String, String> build) {
    return switch (deed) {
      case ANSWER -> step.ask().isPresent();
      case NOT_DONE -> step.ask().isEmpty();
      case ODD -> true;
      case VALUE ->
          step.readings().stream()
              .anyMatch(
                  it ->
                      it.kind() == ReadingKind.NUMBER
                          && it.band().isPresent()
                          && it.when().holds(build));
    };
  }

  private static List<String> asked(DemoGuides demo, Map<String, String> build) {
    return demo.walk(build).stream()
        .flatMap(it -> it.ask().stream())
        .map(it -> it.trait())
        .toList();
  }

  /** A vehicle on which things are done. */
  private static final class Vehicle {
    private final DemoGuides demo;
    private final String what;
    private final Map<String, String> landed = new LinkedHashMap<>();
    private final Set<String> laid = new HashSet<>();
    private final Set<String> fitted = new HashSet<>();
    private final Set<String> open = new HashSet<>();
    private boolean isolated;

    Vehicle(DemoGuides demo, String what) {
      this.demo = demo;
      this.what = what;
    }

    void happens(Map<?, ?> event) {
      Step step = demo.plan().guide().step(String.valueOf(event.get("step"))).orElseThrow();
      switch (String.valueOf(event.get("what"))) {
        case "do" -> does(step);
        case "back" -> takesBack(step);
        case "isolate" -> isolated = true;
        case "close" -> open.remove(((Act.Open) step.act().orElseThrow()).opening());
        case "undone" -> step.act().ifPresent(this::undo);
        // The shop says how to connect the battery with the wiring as it is.
        case "connect", "shop" -> isolated = false;
        default -> throw new AssertionError("a thing to do that is not known: " + event);
      }
    }

    private void does(Step step) {
      assertThat(open).as("open at %s, %s", step.id(), what).containsAll(step.openings());
      step.live()
          .ifPresent(
              it -> assertThat(isolated).as("power at %s, %s", step.id(), what).isEqualTo(!it));
      step.act().ifPresent(this::acts);
    }

    private void acts(Act act) {
      if (act instanceof Act.Isolate) {
        isolated = true;
      } else if (act instanceof Act.Reconnect) {
        isolated = false;
      } else if (act instanceof Act.Open it) {
        open.add(it.opening());
      } else if (act instanceof Act.Close it) {
        open.remove(it.opening());
      } else if (act instanceof Act.Lay it) {
        laid.add(it.lead());
      } else if (act instanceof Act.Land it) {
        landed.put(it.lead() + it.end(), it.landing().toString());
      } else if (act instanceof Act.Change it) {
        landed.put(it.lead() + it.end(), it.landing().toString());
      } else if (act instanceof Act.Park it) {
        landed.put(it.lead() + it.end(), it.landing().toString());
      } else {
        fitted.add(act.toString());
      }
    }

    private void takesBack(Step step) {
      assertThat(isolated).as("power when %s is taken back, %s", step.id(), what).isTrue();
      undo(step.act().orElseThrow());
    }

    private void undo(Act act) {
      if (act instanceof Act.Isolate) {
        isolated = false;
      } else if (act instanceof Act.Reconnect) {
        isolated = true;
      } else if (act instanceof Act.Open it) {
        open.remove(it.opening());
      } else if (act instanceof Act.Close it) {
        open.add(it.opening());
      } else if (act instanceof Act.Lay it) {
        laid.remove(it.lead());
      } else if (act instanceof Act.Land it) {
        landed.remove(it.lead() + it.end());
      } else if (act instanceof Act.Change it) {
        landed.remove(it.lead() + it.end());
      } else if (act instanceof Act.Park it) {
        landed.remove(it.lead() + it.end());
      } else {
        fitted.remove(act.toString());
      }
    }

    List<Object> state() {
      return List.of(new LinkedHashMap<>(landed), laid, fitted, open, isolated);
    }
  }
}
