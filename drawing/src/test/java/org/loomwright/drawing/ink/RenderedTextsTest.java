package org.loomwright.drawing.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.ink.RenderedTexts.Outside;
import org.loomwright.drawing.ink.RenderedTexts.Overlap;

/** The look through a browser itself, on drawings with faults put in. */
class RenderedTextsTest {
  private static String drawing(String inside) {
    return "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\""
        + " height=\"50mm\" viewBox=\"0 0 100 50\" font-family=\"sans-serif\" font-size=\"4\">"
        + inside
        + "</svg>";
  }

  @Test
  void findsWhatIsWrongAndNothingElse() {
    RenderedTexts seen =
        RenderedTexts.of(
            List.of(
                drawing("<text x=\"5\" y=\"10\">upper</text><text x=\"5\" y=\"14\">lower</text>"),
                drawing("<text x=\"5\" y=\"10\">one</text><text x=\"9\" y=\"11\">other</text>"),
                drawing(
                    "<text x=\"90\" y=\"10\">far too long</text>"
                        + "<text x=\"5\" y=\"2\">H</text><text x=\"20\" y=\"49.5\">gypq</text>"),
                // Boxes of the turned texts overlap, the texts do not.
                drawing(
                    "<text transform=\"translate(30 40) rotate(-45)\">slanted</text>"
                        + "<text transform=\"translate(38 40) rotate(-45)\">beside it</text>"
                        + "<text transform=\"translate(70 40) rotate(-90)\">up</text>"
                        + "<text x=\"66\" y=\"38\">across</text>"),
                drawing(
                    "<svg x=\"0\" y=\"0\" width=\"20\" height=\"20\" viewBox=\"0 0 20 20\">"
                        + "<text x=\"40\" y=\"10\">cut</text></svg><text x=\"40\" y=\"10\">seen"
                        + "</text><text x=\"5\" y=\"30\">a<tspan x=\"5\" dy=\"5\">b</tspan>"
                        + "<tspan x=\"5\" dy=\"1\">c &amp; d</tspan></text>")));

    assertThat(seen.count()).isEqualTo(2 + 2 + 3 + 4 + 4);
    assertThat(seen.overlaps())
        .containsExactlyInAnyOrder(
            new Overlap(1, "one", "other"),
            new Overlap(3, "up", "across"),
            new Overlap(4, "b", "c & d"));
    assertThat(seen.outside())
        .containsExactlyInAnyOrder(
            new Outside(2, "far too long"), new Outside(2, "H"), new Outside(2, "gypq"));
  }
}
