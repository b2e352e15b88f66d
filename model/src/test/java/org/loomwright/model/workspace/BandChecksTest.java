package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.vehicle.MeterBand;
import org.loomwright.model.vehicle.Tell;

class BandChecksTest {
  private static final String FILE = "alder-van.json";
  private static final String AT = "\"tools\": [\"meter\"]";

  private static Small with(String bands) {
    return Small.workspace().with(FILE, AT, AT + ", \"bands\": " + bands);
  }

  @Test
  void aMeasurementMayHaveBands() {
    Read.Good good =
        Small.good(with("{\"yes\": \"11 V or more\", \"no\": \"1 V or less\"}").read());
    Tell tell = good.workspace().vehicles().get(0).traits().get(1).tell();
    assertThat(tell.bands())
        .containsEntry("yes", MeterBand.of("11 V or more"))
        .containsEntry("no", MeterBand.of("1 V or less"));
    assertThat(with("{}").problems()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"yes": "11 V or more"} | traits[1].tell.bands: it has no band for no; give one to each value, or leave 'bands' out
          {"yes": "11 V or more", "no": "1 V or less", "nay": "4 V to 5 V"} | traits[1].tell.bands.nay: 'nay' is not one of the values; they are yes, no
          {"yes": "11 V or more", "no": "11.5 V or less"} | traits[1].tell.bands.no: numbers in it also lie in "11 V or more" of 'yes'; leave a gap between the bands
          {"yes": "11 V or more", "no": "11000 mV or less"} | traits[1].tell.bands.no: numbers in it also lie in "11 V or more" of 'yes'; leave a gap between the bands
          {"yes": "1 Ω or less", "no": "1 V or less"} | traits[1].tell.bands.no: this is a voltage, the band of 'yes' a resistance; one measurement reads one of them
          {"yes": "11 volts", "no": "1 V or less"} | traits[1].tell.bands.yes: '11 volts' is no band of a meter; write "11.5 V or more", "1 V or less" or "4.5 V to 5.5 V", with a point in broken numbers and V, mV, A, mA, Ω, kΩ, MΩ as units
          """)
  void eachMistakeIsNamedWithItsPlace(String bands, String problem) {
    assertThat(with(bands).problems()).isEqualTo(List.of(FILE + ", " + problem));
  }

  @Test
  void whatIsLookedAtHasNoBands() {
    String seen = "{\"yes\": \"a fuse sits in slot F7\", \"no\": \"slot F7 is empty\"}";
    assertThat(
            Small.workspace()
                .with(
                    FILE,
                    seen,
                    seen + ", \"bands\": {\"yes\": \"1 V or more\", \"no\": \"0 V or less\"}")
                .problems())
        .containsExactly(
            FILE
                + ", traits[0].tell.bands: only what is measured has bands; leave 'bands' out, or"
                + " make 'how' measure-live or measure-isolated");
  }
}
