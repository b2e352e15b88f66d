package org.loomwright.model.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestTest {
  @Test
  void findsWhatIsNearOnly() {
    List<String> words = List.of("tow-prep", "rear-feed", "F7");
    assertThat(Nearest.to("tow-perp", words)).contains("tow-prep");
    assertThat(Nearest.to("TowPrep", words)).contains("tow-prep");
    assertThat(Nearest.to("feed", words)).isEmpty();
    assertThat(Nearest.to("F8", words)).isEmpty();
    assertThat(Nearest.to("f7", words)).contains("F7");
  }

  @Test
  void listsTwelveAtMost() {
    assertThat(
            Nearest.list(
                List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14")))
        .isEqualTo("1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and 2 more");
  }

  /** The distance agrees with the definition, written down as a recursion. */
  @Property(tries = 300)
  void agreesWithTheDefinition(
      @ForAll @StringLength(max = 6) @CharRange(from = 'a', to = 'c') String a,
      @ForAll @StringLength(max = 6) @CharRange(from = 'a', to = 'c') String b) {
    assertThat(Nearest.edits(a, b)).isEqualTo(slow(a, b));
  }

  private static int slow(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.length() + b.length();
    }
    String shortA = a.substring(1);
    String shortB = b.substring(1);
    if (a.charAt(0) == b.charAt(0)) {
      return slow(shortA, shortB);
    }
    int least = 1 + Math.min(slow(shortA, shortB), Math.min(slow(a, shortB), slow(shortA, b)));
    boolean swapped =
        a.length() > 1
            && b.length() > 1
            && a.charAt(0) == b.charAt(1)
            && a.charAt(1) == b.charAt(0);
    return swapped ? Math.min(least, 1 + slow(a.substring(2), b.substring(2))) : least;
  }
}
