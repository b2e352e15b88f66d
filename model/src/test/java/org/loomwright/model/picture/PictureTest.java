package org.loomwright.model.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HexFormat;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PictureTest {
  /** A PNG of 3 × 2 px up to its size, as ISO/IEC 15948 clause 11.2.2 lays it out. */
  private static final byte[] PNG =
      bytes("89504e470d0a1a0a 0000000d 49484452 00000003 00000002 0800000000 b81f39c6");

  /** A JPEG of 5 × 4 px: application data, a frame header of a single component. */
  private static final byte[] JPEG =
      bytes("ffd8 ffe0 0004 0000 ffff c0 000b 08 0004 0005 01 01 11 00 ffd9");

  /** The same with a note that it is to be turned by a quarter. */
  private static final byte[] TURNED =
      bytes(
          "ffd8 ffe1 0022 457869660000 4d4d002a00000008 0001 0112 0003 00000001 00060000 00000000"
              + " ffc0 000b 08 0004 0005 01 01 11 00 ffd9");

  @Test
  void readsTheSizeOfEither() {
    assertThat(Picture.of(PNG)).hasToString("image/png 3 × 2");
    assertThat(Picture.of(JPEG)).hasToString("image/jpeg 5 × 4");
    assertThat(Picture.of(PNG).dataUri()).startsWith("data:image/png;base64,iVBORw0KGgo");
    assertThat(Picture.of(JPEG)).isEqualTo(Picture.of(JPEG.clone())).isNotEqualTo(Picture.of(PNG));
  }

  @Test
  void refusesWhatIsNeitherWhateverItIsCalled() {
    assertThatThrownBy(() -> Picture.of("<svg/>".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
        .hasMessageContaining("neither a PNG nor a JPEG");
    assertThatThrownBy(() -> Picture.of(new byte[0])).hasMessageContaining("neither");
  }

  @Test
  void refusesTooLargeAndTurned() {
    assertThatThrownBy(() -> Picture.of(Arrays.copyOf(PNG, Picture.LARGEST_BYTES + 1)))
        .hasMessageContaining("8 MB");
    assertThat(Picture.of(Arrays.copyOf(PNG, Picture.LARGEST_BYTES)).widthPx()).isEqualTo(3);
    assertThatThrownBy(() -> Picture.of(TURNED)).hasMessageContaining("save it upright");
    byte[] upright = TURNED.clone();
    upright[31] = 1;
    assertThat(Picture.of(upright)).hasToString("image/jpeg 5 × 4");
  }

  /** Cut off anywhere and spoilt anywhere, it is read or refused in words, never anything else. */
  @Property
  void damageIsRefusedInWords(
      @ForAll @IntRange(max = 60) int length,
      @ForAll @IntRange(max = 59) int at,
      @ForAll byte value) {
    for (byte[] good : new byte[][] {PNG, JPEG, TURNED}) {
      byte[] bad = Arrays.copyOf(good, Math.min(length, good.length));
      if (at < bad.length) {
        bad[at] = value;
      }
      try {
        assertThat(Picture.of(bad).widthPx()).isPositive();
      } catch (IllegalArgumentException refusal) {
        assertThat(refusal.getMessage()).isNotBlank();
      }
    }
  }

  private static byte[] bytes(String hex) {
    return HexFormat.of().parseHex(hex.replace(" ", ""));
  }
}
