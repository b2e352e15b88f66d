package org.loomwright.drawing.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.picture.Picture;
import org.w3c.dom.Element;

class RunMapTest {
  private static final double LEAST_TEXT_MM = 1.8;

  @Property(tries = 250)
  void showsEverythingAndWritesOverNothing(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 26) int places,
      @ForAll @IntRange(min = 0, max = 42) int leads,
      @ForAll Kits.Marked marked,
      @ForAll @IntRange(min = 90, max = 280) int width) {
    Kits.Drawn kit = Kits.of(seed, places, leads, marked);
    String svg = svg(kit, width);

    assertThat(svg).isEqualTo(svg(kit, width)).doesNotContain("NaN").doesNotContain("Infinity");
    Looked map = Looked.at(svg);
    map.isSound();
    assertThat(map.elements("text", ""))
        .allMatch(it -> Looked.number(it, "font-size") >= LEAST_TEXT_MM - 1e-9);
    holds(map, kit);
    keepsTextOffBundles(map);
  }

  @Test
  void growsToHarnessesOfAnySize() {
    for (int size : new int[] {1, 2, 40, 60}) {
      for (Kits.Marked marked : Kits.Marked.values()) {
        Kits.Drawn kit = Kits.of(size, size, 2 * size, marked);
        Looked map = Looked.at(svg(kit, 175));
        map.isSound();
        holds(map, kit);
      }
    }
  }

  @Test
  void parksHatchedAndDashesWhatServesSomeCases() {
    Kits.Drawn kit = Kits.of(11, 8, 14, Kits.Marked.NONE);
    Looked map = Looked.at(svg(kit, 269));
    boolean parked =
        kit.plan().design().leads().stream()
            .flatMap(it -> java.util.stream.Stream.of(it.a(), it.b()))
            .anyMatch(it -> it.isParkedSomewhere());
    assertThat(parked).isTrue();
    assertThat(map.elements("path", "hatch")).isNotEmpty();
    for (Lead lead : kit.plan().design().leads()) {
      boolean some =
          lead.a().uses().stream().filter(EndUse::asMade).noneMatch(it -> it.cases().size() == 3);
      for (Element track : map.elements("path", "track track-" + lead.id())) {
        boolean gaps = track.hasAttribute("stroke-dasharray");
        assertThat(gaps).as(lead.id()).isEqualTo(some && !EndRows.always(kit.plan(), lead));
      }
    }
  }

  @Test
  void marksLieWhereTheyAreMarked() {
    Kits.Drawn kit = Kits.of(3, 7, 10, Kits.Marked.ALL);
    RunGraph graph = RunGraph.of(kit.plan(), kit.vehicle());
    MapLayout layout = MapLayout.of(graph, kit.vehicle().planView(), 10, 165, 24);
    for (int i = 0; i < graph.stops().size(); i++) {
      Spot wanted =
          layout.drawn(graph.stops().get(i).at().orElseThrow(), graph, kit.vehicle().planView());
      // Only stops on one another give way, by less than a stop's own width.
      assertThat(Plane.apart(wanted, layout.at().get(i))).isLessThan(9);
    }
    assertThat(layout.leastApart()).isGreaterThan(8.9);
  }

  @Test
  void treesWithoutMarksAreDrawnWithoutCrossings() {
    for (int seed = 0; seed < 60; seed++) {
      Kits.Drawn kit = Kits.of(seed, 2 + seed % 30, 20, Kits.Marked.NONE);
      RunGraph graph = RunGraph.of(kit.plan(), kit.vehicle());
      RunGraph tree =
          new RunGraph(
              graph.leads(),
              graph.stops(),
              graph.runs().stream().filter(it -> it.state() == RunState.USED).toList());
      MapLayout layout = MapLayout.of(tree, Optional.empty(), 8, 167, 24);
      List<Segment> lines = new ArrayList<>();
      for (MapRun run : tree.runs()) {
        Segment line = new Segment(layout.at().get(run.from()), layout.at().get(run.to()));
        assertThat(lines.stream().filter(it -> Plane.cross(it, line)))
            .as("seed %s", seed)
            .isEmpty();
        lines.add(line);
      }
    }
  }

  @Test
  void pagesHoldTheSameAsTheWhole() {
    Kits.Drawn kit = Kits.of(21, 12, 40, Kits.Marked.NONE);
    List<String> pages =
        RunMap.pages(kit.plan(), kit.vehicle(), Optional.empty(), 175, 235, Lettering.fitted());
    Set<String> words = new HashSet<>();
    for (String page : pages) {
      Looked looked = Looked.at(page);
      looked.isSound();
      looked.texts().forEach(it -> words.add(it.words()));
      String[] box = page.split("viewBox=\"", 2)[1].split("\"", 2)[0].split(" ", 4);
      assertThat(Double.parseDouble(box[3])).isLessThanOrEqualTo(235);
    }
    String all = String.join(" ", words);
    kit.plan().design().leads().forEach(it -> assertThat(all).contains(it.id() + " "));
  }

  @Test
  void laysTheVehiclesPictureUnderneath() {
    Kits.Drawn kit = Kits.of(5, 6, 8, Kits.Marked.ALL);
    byte[] png =
        Base64.getDecoder()
            .decode(
                "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsOrjOQAAAABJRU5E"
                    + "rkJggg==");
    String svg =
        RunMap.svg(
            kit.plan(), kit.vehicle(), Optional.of(Picture.of(png)), 175, Lettering.fitted());
    assertThat(Looked.at(svg).elements("image", "plan-view"))
        .singleElement()
        .satisfies(
            it -> assertThat(it.getAttribute("xlink:href")).startsWith("data:image/png;base64,"));
  }

  @Test
  void refusesANarrowPicture() {
    assertThatThrownBy(() -> svg(Kits.of(1, 3, 3, Kits.Marked.NONE), 60))
        .hasMessageContaining("too narrow");
  }

  /** For people to look at: the pictures are left beside the compiled classes. */
  @Test
  void leavesPicturesToLookAt() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    for (Kits.Marked marked : Kits.Marked.values()) {
      for (int width : new int[] {98, 175, 269}) {
        String name =
            String.format(
                Locale.ROOT, "map-%s-%d.svg", marked.name().toLowerCase(Locale.ROOT), width);
        Path file = folder.resolve(name);
        assertThat(Files.writeString(file, svg(Kits.of(7, 12, 40, marked), width)))
            .isNotEmptyFile();
      }
    }
  }

  private static String svg(Kits.Drawn kit, double width) {
    return RunMap.svg(kit.plan(), kit.vehicle(), Optional.empty(), width, Lettering.fitted());
  }

  /** Every lead, every end, every place in use, every length. */
  private static void holds(Looked map, Kits.Drawn kit) {
    String all =
        map.texts().stream()
            .map(Looked.Text::words)
            .collect(Collectors.joining(""))
            .replace(" ", "");
    for (Lead lead : kit.plan().design().leads()) {
      assertThat(all).contains((lead.id() + " " + lead.colour().text()).replace(" ", ""));
      if (!lead.runs().isEmpty()) {
        assertThat(map.elements("path", "track track-" + lead.id())).isNotEmpty();
      }
      for (org.loomwright.model.design.LeadEnd end : List.of(lead.a(), lead.b())) {
        for (EndUse use : end.uses()) {
          assertThat(all).contains(words(use.landing()).replace(" ", ""));
        }
        assertThat(all).contains(bare(kit, end.place()));
      }
    }
    for (Bundle bundle : kit.plan().harness().bundles()) {
      assertThat(all).contains(String.format(Locale.ROOT, "%.0fmm", bundle.lengthMm()));
      assertThat(all).contains(bare(kit, bundle.from())).contains(bare(kit, bundle.to()));
    }
    int used =
        RunGraph.of(kit.plan(), kit.vehicle()).stops().stream().filter(Stop::used).toList().size();
    assertThat(map.elements("circle", "stop")).hasSize(used);
  }

  private static String bare(Kits.Drawn kit, String place) {
    String name = kit.vehicle().place(place).orElseThrow().name();
    return (name.startsWith("the ") ? name.substring(4) : name).replace(" ", "");
  }

  private static String words(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return it.connector();
    } else if (landing instanceof Landing.InHousing it) {
      return it.housing();
    } else if (landing instanceof Landing.InSlot it) {
      return it.block();
    } else if (landing instanceof Landing.OnGround it) {
      return it.ground();
    } else if (landing instanceof Landing.IntoCircuit it) {
      return it.circuit();
    }
    return landing instanceof Landing.InJoint it ? "joint " + it.joint() : "parked";
  }

  /** Text stands on white cards and in stops, or clear of all bundles. */
  private static void keepsTextOffBundles(Looked map) {
    List<Box> cards = map.elements("rect", "card").stream().map(Looked::box).toList();
    List<Element> stops = new ArrayList<>(map.elements("circle", "badge"));
    for (Element bundle : map.elements("path", "bundle")) {
      double half = Looked.number(bundle, "stroke-width") / 2 - 0.5;
      List<Spot> line = new ArrayList<>();
      for (String corner : bundle.getAttribute("d").substring(1).split("L", -1)) {
        String[] pair = corner.split(",", 2);
        line.add(new Spot(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])));
      }
      for (Looked.Text text : map.texts()) {
        boolean elsewhere =
            cards.stream().anyMatch(it -> text.box().grown(-0.1).within(it))
                || stops.stream()
                    .anyMatch(
                        it ->
                            Plane.apart(
                                    new Spot(Looked.number(it, "cx"), Looked.number(it, "cy")),
                                    text.box())
                                < 0.1);
        if (!elsewhere) {
          assertThat(Segment.through(line))
              .as("'%s' on a bundle", text.words())
              .noneMatch(it -> it.inside(text.box().grown(half)).isPresent());
        }
      }
    }
  }
}
