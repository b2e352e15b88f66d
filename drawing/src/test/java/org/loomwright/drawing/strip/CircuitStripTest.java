package org.loomwright.drawing.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Looked;
import org.loomwright.drawing.ink.Looked.Text;
import org.loomwright.drawing.ink.OddWords;
import org.loomwright.drawing.strip.StripPart.Device;
import org.loomwright.drawing.strip.StripPart.Wire;

class CircuitStripTest {

  @Test
  void drawsEverySymbolInItsOwnShape() {
    List<String> shapes = new ArrayList<>();
    for (Symbol symbol : Symbol.values()) {
      StripCircuit one =
          new StripCircuit("x", List.of(Circuits.device("place", symbol, "words")), List.of());
      String svg = CircuitStrip.svg(one, 98, Lettering.fitted());
      Looked.at(svg).isSound();
      shapes.add(svg);
    }
    assertThat(shapes).doesNotHaveDuplicates();
  }

  @Test
  void wrapsAndNamesWhereTheLineGoesOn() {
    Looked wide = strip(Circuits.pump(), 600);
    assertThat(letters(wide)).containsExactly("B", "A", "A", "B");
    assertThat(words(wide)).contains("From the source to the load →", "Back to the source →");

    Looked narrow = strip(Circuits.pump(), 98);
    List<String> letters = new ArrayList<>(letters(narrow));
    assertThat(letters).hasSizeGreaterThan(6);
    // Each letter ends one row and begins the next; the last leads to the first.
    Collections.rotate(letters, -1);
    for (int i = 0; i < letters.size(); i += 2) {
      assertThat(letters.get(i)).isEqualTo(letters.get(i + 1));
    }
    assertThat(letters.stream().distinct().count()).isEqualTo(letters.size() / 2);
  }

  @Test
  void saysEverythingOfAWire() {
    StripCircuit one =
        new StripCircuit(
            "x",
            List.of(Circuits.wire("dash", "L-7", "1.5 mm²", "RD/YE", "310 mm", "0.004 Ω", "8 A")),
            List.of());
    assertThat(words(strip(one, 98)))
        .contains("dash", "L-7", "1.5 mm² RD/YE 310 mm", "0.004 Ω", "8 A");
  }

  @Property(tries = 200)
  void neverPutsTextOverText(
      @ForAll("circuits") StripCircuit circuit,
      @ForAll @DoubleRange(min = 90, max = 500) double width) {
    String svg = CircuitStrip.svg(circuit, width, Lettering.fitted());

    Looked strip = Looked.at(svg);
    strip.isSound();
    assertThat(CircuitStrip.svg(circuit, width, Lettering.fitted())).isEqualTo(svg);
    // No part is lost, and all stand in order: rows downwards, in a row to the right.
    List<StripPart> parts = Stream.concat(circuit.out().stream(), circuit.back().stream()).toList();
    assertThat(strip.elements("path", "lead"))
        .hasSize((int) parts.stream().filter(Wire.class::isInstance).count());
    assertThat(strip.elements("circle", "splice")).hasSize(count(parts, Symbol.SPLICE));
    assertThat(strip.elements("rect", "fuse")).hasSize(count(parts, Symbol.FUSE));
    assertThat(strip.elements("path", "plus")).hasSize(count(parts, Symbol.BATTERY));
    assertThat(strip.elements("path", "socket")).hasSize(count(parts, Symbol.CONTACT_PAIR));
    assertThat(strip.elements("circle", "stud")).hasSize(count(parts, Symbol.GROUND_POINT));
    String all = String.join("", words(strip)).replace(" ", "");
    for (StripPart part : parts) {
      String place = part.place();
      if (place.matches("[A-Za-z]+")) {
        assertThat(all).contains(place);
      }
    }
  }

  /** For people to look at: the pictures are left beside the compiled classes. */
  @Test
  void leavesPicturesToLookAt() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    for (double width : new double[] {98, 170, 260}) {
      String svg = CircuitStrip.svg(Circuits.pump(), width, Lettering.fitted());
      Path file = folder.resolve("strip-" + (int) width + ".svg");
      assertThat(Files.writeString(file, svg)).isNotEmptyFile();
    }
  }

  @Test
  void refusesANarrowPicture() {
    assertThatThrownBy(() -> CircuitStrip.svg(Circuits.pump(), 40, Lettering.text()))
        .hasMessageContaining("too narrow");
  }

  @Provide
  Arbitrary<StripCircuit> circuits() {
    Arbitrary<List<String>> figures = OddWords.any().list().ofMaxSize(4);
    Arbitrary<String> place =
        Arbitraries.oneOf(Arbitraries.of("dash", "engine bay", "bulkhead"), OddWords.any());
    Arbitrary<StripPart> device =
        Combinators.combine(place, Arbitraries.of(Symbol.class), OddWords.any(), figures)
            .as(Device::new);
    Arbitrary<StripPart> wire =
        Combinators.combine(
                place,
                OddWords.any(),
                Arbitraries.of("0.35 mm²", "120 mm²"),
                OddWords.any(),
                Arbitraries.of("12 mm", "12500 mm"),
                figures)
            .as(Wire::new);
    Arbitrary<List<StripPart>> parts = Arbitraries.oneOf(device, wire).list().ofMaxSize(30);
    return Combinators.combine(OddWords.any(), parts, parts).as(StripCircuit::new);
  }

  private static int count(List<StripPart> parts, Symbol symbol) {
    return (int)
        parts.stream().filter(it -> it instanceof Device d && d.symbol() == symbol).count();
  }

  private static Looked strip(StripCircuit circuit, double width) {
    Looked strip = Looked.at(CircuitStrip.svg(circuit, width, Lettering.fitted()));
    strip.isSound();
    return strip;
  }

  private static List<String> words(Looked strip) {
    return strip.texts().stream().map(Text::words).collect(Collectors.toList());
  }

  /** The letters in the marks, in the order drawn. */
  private static List<String> letters(Looked strip) {
    return words(strip).stream().filter(it -> it.matches("[A-Z][0-9]*")).toList();
  }
}
