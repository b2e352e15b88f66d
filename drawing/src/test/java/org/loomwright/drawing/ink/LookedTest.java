package org.loomwright.drawing.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Sheet.Hold;

/** The checker of pictures itself, on pictures with a fault put in. */
class LookedTest {

  @Test
  void passesTextThatOnlyTouches() {
    Sheet sheet = new Sheet(Lettering.fitted());
    double next = 1 + Sheet.room(Hold.LEFT, 0, 0, 3, "left").width();
    sheet.text(Hold.LEFT, 1, 5, 3, "left");
    sheet.text(Hold.LEFT, next, 5, 3, "right");
    sheet.text(Hold.LEFT, 1, 5 + 1.3 * 3, 3, "Ägypten");

    Looked.at(sheet.svg(40, 20, "")).isSound();
    assertThat(sheet.texts()).hasSize(3);
  }

  @Test
  void findsTextOverText() {
    for (Lettering lettering : new Lettering[] {Lettering.text(), Lettering.fitted()}) {
      Sheet sheet = new Sheet(lettering);
      sheet.text(Hold.LEFT, 1, 5, 3, "left");
      sheet.text(Hold.RIGHT, 12, 6, 3, "right");
      assertThat(Looked.at(sheet.svg(40, 20, "")).overlaps())
          .containsExactly("'right' over 'left'");
    }
  }

  @Test
  void findsTextAndShapesOutside() {
    Sheet sheet = new Sheet(Lettering.fitted());
    sheet.text(Hold.RIGHT, 5, 10, 3, "long line");
    sheet.text(Hold.LEFT, 20, 19, 3, "low");
    sheet.rect("wide", Box.at(30, 5, 11, 2), "#fff", "#000", 1);
    sheet.circle("high", new Spot(20, 1), 2, "#fff", "#000", 1);
    sheet.line("steep", new Spot(20, 5), new Spot(20, 21), "#000", 1, "");
    sheet.polygon("left", java.util.List.of(new Spot(-1, 2), new Spot(3, 2)), "#fff", "#000", 1);

    assertThat(Looked.at(sheet.svg(40, 20, "")).outside())
        .hasSize(6)
        .anyMatch(it -> it.startsWith("text 'long line'"))
        .anyMatch(it -> it.startsWith("text 'low'"))
        .anyMatch(it -> it.startsWith("wide"))
        .anyMatch(it -> it.startsWith("high"))
        .anyMatch(it -> it.startsWith("steep"))
        .anyMatch(it -> it.startsWith("left"));
  }

  @Test
  void refusesWhatIsNoXml() {
    assertThatThrownBy(() -> Looked.at("<svg><text>a & b</text></svg>"))
        .isInstanceOf(AssertionError.class);
  }
}
