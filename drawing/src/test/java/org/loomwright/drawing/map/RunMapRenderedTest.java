package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.RenderedTexts;

/** Maps of fifty kits as a browser sets them, with the browser's own boxes of text. */
class RunMapRenderedTest {
  private static final double[] WIDTHS = {98, 175, 269};

  @Test
  void noTextLiesOnAnother() {
    List<String> maps = new ArrayList<>();
    for (int seed = 0; seed < 50; seed++) {
      Kits.Drawn kit = Kits.of(seed, 1 + seed % 20, seed % 41, Kits.Marked.values()[seed % 3]);
      for (Lettering lettering : List.of(Lettering.fitted(), Lettering.text())) {
        maps.add(
            RunMap.svg(
                kit.plan(), kit.vehicle(), Optional.empty(), WIDTHS[seed / 3 % 3], lettering));
      }
    }
    RenderedTexts.of(maps).areSound();
  }
}
