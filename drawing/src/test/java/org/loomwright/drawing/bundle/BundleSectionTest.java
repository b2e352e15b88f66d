package org.loomwright.drawing.bundle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.w3c.dom.Element;

class BundleSectionTest {

  @Property(tries = 200)
  void drawsEveryWireAtItsTrueSizeAndNamesIt(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 42) int wires) {
    Random lot = new Random(seed);
    Bundle bundle = bundle(lot, wires);
    List<Lead> leads = leads(lot, wires - lot.nextInt(2));
    String svg = BundleSection.svg(bundle, leads, Lettering.fitted());

    assertThat(svg).isEqualTo(BundleSection.svg(bundle, leads, Lettering.fitted()));
    Looked section = Looked.at(svg);
    section.isSound();
    assertThat(section.texts().stream().map(Looked.Text::words))
        .containsExactlyInAnyOrderElementsOf(bundle.leads());
    List<Element> drawn = section.elements("circle", "wire");
    Element round = section.elements("circle", "bundle").get(0);
    for (int i = 0; i < wires; i++) {
      Bundle.Wire wire = bundle.wires().get(i);
      Element it = drawn.get(i);
      assertThat(2 * Looked.number(it, "r") + Looked.number(it, "stroke-width"))
          .isCloseTo(wire.diameterMm(), within(0.05));
      assertThat(Looked.number(it, "cx") - Looked.number(round, "cx"))
          .isCloseTo(wire.xMm(), within(0.03));
      assertThat(Looked.number(it, "cy") - Looked.number(round, "cy"))
          .isCloseTo(wire.yMm(), within(0.03));
    }
    // Millimetres of the paper are millimetres of the bundle.
    String[] box = svg.split("viewBox=\"0 0 ", 2)[1].split("\"", 2)[0].split(" ", 2);
    assertThat(svg).contains("width=\"" + box[0] + "mm\" height=\"" + box[1] + "mm\"");
  }

  /** For people to look at: the pictures are left beside the compiled classes. */
  @Test
  void leavesPicturesToLookAt() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    for (int wires : new int[] {1, 5, 14, 40}) {
      Random lot = new Random(wires);
      String svg = BundleSection.svg(bundle(lot, wires), leads(lot, wires), Lettering.fitted());
      Path file = folder.resolve(String.format(Locale.ROOT, "section-%d.svg", wires));
      assertThat(Files.writeString(file, svg)).isNotEmptyFile();
    }
  }

  /** Wires on rings; close enough to a real bundle for a drawing. */
  private static Bundle bundle(Random lot, int count) {
    List<Bundle.Wire> wires = new ArrayList<>();
    int ring = 0;
    int on = 0;
    for (int i = 0; i < count; i++) {
      int most = ring == 0 ? 1 : 6 * ring;
      double angle = 2 * Math.PI * on / most;
      wires.add(
          new Bundle.Wire(
              "L" + (i + 1),
              3.2 * ring * Math.cos(angle),
              3.2 * ring * Math.sin(angle),
              1.2 + 2 * lot.nextDouble()));
      on++;
      if (on == most) {
        ring++;
        on = 0;
      }
    }
    double diameter = 6.4 * (on == 0 ? ring - 1 : ring) + 3.2;
    return new Bundle(
        "r",
        "a",
        "b",
        1000,
        wires,
        diameter,
        Optional.empty(),
        diameter + (lot.nextBoolean() ? 0.6 : 0),
        20,
        Optional.empty(),
        List.of());
  }

  private static List<Lead> leads(Random lot, int count) {
    PlainColour[] plain = PlainColour.values();
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String colour = plain[lot.nextInt(plain.length)].word();
      String both = lot.nextBoolean() ? colour : colour + "/" + plain[lot.nextInt(14)].word();
      LeadEnd end = new LeadEnd("a", List.of());
      leads.add(
          new Lead(
              "L" + (i + 1),
              "",
              "",
              "A",
              List.of(),
              "W",
              1,
              Colour.of(both),
              end,
              end,
              List.of(),
              1,
              1,
              1,
              1,
              1,
              1,
              1));
    }
    return leads;
  }
}
