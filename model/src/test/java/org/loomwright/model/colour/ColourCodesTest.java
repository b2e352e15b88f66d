package org.loomwright.model.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

/** Letter codes against the published list of IEC 60757. */
class ColourCodesTest {
  @Test
  void everyPlainColourHasTheCodeAndPlaceOfTheStandard() {
    List<PlainColour> ours = List.of(PlainColour.values());
    int compared = 0;
    for (Row row : ReferenceTables.colourCodes().rows()) {
      if (row.text("colour").equals("green-and-yellow")) {
        // Kept for protective earth, which no vehicle lead is.
        continue;
      }
      PlainColour colour = ours.get((int) row.number("order") - 1);
      assertThat(colour.word()).as(row.where()).isEqualTo(row.text("colour"));
      assertThat(colour.code()).as(row.where()).isEqualTo(row.text("code"));
      compared++;
    }
    assertThat(compared).isEqualTo(ours.size());
  }

  @Test
  void twoColoursAreJoinedInTheOrderOfTheStandard() {
    for (PlainColour base : PlainColour.values()) {
      for (PlainColour tracer : PlainColour.values()) {
        String code = Colour.of(base.word() + "/" + tracer.word()).code();
        assertThat(code)
            .isEqualTo(
                base.ordinal() <= tracer.ordinal()
                    ? base.code() + tracer.code()
                    : tracer.code() + base.code());
      }
    }
  }
}
