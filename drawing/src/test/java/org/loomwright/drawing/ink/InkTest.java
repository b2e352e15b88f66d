package org.loomwright.drawing.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.LetterWidths;

class InkTest {
  private static final Box FRAME = new Box(2, 3, 12, 8);

  @Test
  void measuresLikeTheFace() {
    // Advance widths of the bold condensed face in units of 1/2048 em, read from its tables.
    assertThat(LetterWidths.ems("W") * 2048).isCloseTo(2033, within(1.0));
    assertThat(LetterWidths.ems("i") * 2048).isCloseTo(631, within(1.0));
    assertThat(LetterWidths.ems("Wi i"))
        .isCloseTo(
            LetterWidths.ems("W") + 2 * LetterWidths.ems("i") + LetterWidths.ems(" "),
            within(1e-12));
    assertThat(LetterWidths.ems("前")).isEqualTo(1);
  }

  @Property(tries = 300)
  void wrapsWithoutLosingACharacter(
      @ForAll("words") String text, @ForAll @DoubleRange(min = 1, max = 60) double width) {
    List<String> lines = Words.wrap(text, 2.6, width);

    assertThat(String.join("", lines).replace(" ", ""))
        .isEqualTo(text.replaceAll("[\\s\\p{Cntrl}]+", ""));
    for (String line : lines) {
      assertThat(
              2.6 * LetterWidths.ems(line) <= width || line.codePointCount(0, line.length()) == 1)
          .as("line '%s' in %s mm", line, width)
          .isTrue();
    }
  }

  @Provide
  Arbitrary<String> words() {
    return OddWords.any();
  }

  /** Against sampling the stretch finely. */
  @Test
  void cutsLinesToTheFrame() {
    Random random = new Random(20261);
    for (int i = 0; i < 2000; i++) {
      Segment line =
          new Segment(
              new Spot(random.nextInt(16), random.nextInt(12)),
              new Spot(random.nextInt(16), random.nextInt(12)));
      double inside = 0;
      int parts = 400;
      for (int k = 0; k < parts; k++) {
        double share = (k + 0.5) / parts;
        double x = line.from().x() + share * (line.to().x() - line.from().x());
        double y = line.from().y() + share * (line.to().y() - line.from().y());
        inside += new Box(x, y, x, y).within(FRAME) ? line.length() / parts : 0;
      }
      assertThat(line.inside(FRAME).map(Segment::length).orElse(0.0))
          .as("line %s", line)
          .isCloseTo(inside, within(2 * line.length() / parts + 1e-9));
    }
  }

  /** The hatched length times the distance between lines is the area, by the shoelace sum. */
  @Test
  void hatchesTheAreaAndNothingElse() {
    List<Spot> area =
        List.of(
            new Spot(3, 3.5), new Spot(11, 4), new Spot(7, 5), new Spot(10, 7.5), new Spot(3, 7));
    double twice = 0;
    for (int i = 0; i < area.size(); i++) {
      Spot a = area.get(i);
      Spot b = area.get((i + 1) % area.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    double pitch = 0.02;
    double hatched =
        Hatch.of(area, FRAME, pitch).stream().mapToDouble(Segment::length).sum()
            * pitch
            / Math.sqrt(2);
    assertThat(hatched).isCloseTo(Math.abs(twice) / 2, within(0.1));
    assertThat(Hatch.of(area, new Box(0, 0, 2, 2), pitch)).isEmpty();
  }

  @Test
  void putsLabelsBesideEachOtherAndOffLines() {
    Labels labels = new Labels(new Box(0, 0, 30, 10), List.of(Box.at(0, 0, 5, 3)));
    labels.avoid(List.of(new Segment(new Spot(10, 0), new Spot(10, 10))), 1);
    Box over = Box.at(1, 1, 4, 2);
    Box crossing = Box.at(8, 1, 4, 2);
    Box clear = Box.at(20, 1, 4, 2);
    Box out = Box.at(28, 1, 4, 2);

    assertThat(labels.place(List.of(over, out, crossing, clear))).contains(clear);
    assertThat(labels.place(List.of(over, out, crossing, clear))).contains(crossing);
    assertThat(labels.place(List.of(over, out, crossing, clear))).isEmpty();
  }

  @Test
  void writesThreeDigits() {
    assertThat(Figure.of(0)).isEqualTo("0");
    assertThat(Figure.of(1234.5)).isEqualTo("1230");
    assertThat(Figure.of(0.0123456)).isEqualTo("0.0123");
    assertThat(Figure.of(-67.25)).isEqualTo("-67.3");
    assertThat(Figure.of(1e6)).isEqualTo("1000000");
  }
}
