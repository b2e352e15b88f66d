package org.loomwright.physics.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.Verdict;

final class StudStackTest {
  @Test
  void mostCurrentNextToTheMetal() {
    StudStack.Result stack =
        StudStack.of(
            2,
            List.of(
                new StudStack.Lug("L3", 1, 4),
                new StudStack.Lug("L1", 1, 9),
                new StudStack.Lug("L2", 2.5, 9)));
    assertThat(stack.outwards()).extracting(StudStack.Lug::name).containsExactly("L2", "L1", "L3");
    assertThat(stack.total()).isEqualTo(5);
    assertThat(stack.trace().lines().get(1).what())
        .isEqualTo("position of L2, counted from the metal");
    assertThat(stack.trace().lines().get(1).value()).isEqualTo(3);
    assertThat(StudStack.check(stack, 4, "vehicle").verdict()).isEqualTo(Verdict.FAILS);
  }

  /** The order of the list does not matter, and no lug sits outside one with less current. */
  @Property(tries = 200)
  void theSameStackWhateverTheOrder(@ForAll long seed, @ForAll @IntRange(max = 8) int count) {
    Random random = new Random(seed);
    List<StudStack.Lug> lugs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lugs.add(new StudStack.Lug("L" + i, 1 + random.nextInt(3), random.nextInt(4)));
    }
    StudStack.Result stack = StudStack.of(1, lugs);
    Collections.shuffle(lugs, random);
    assertThat(StudStack.of(1, lugs)).isEqualTo(stack);
    assertThat(stack.outwards()).hasSize(count);
    for (int i = 1; i < count; i++) {
      assertThat(stack.outwards().get(i).currentA())
          .isLessThanOrEqualTo(stack.outwards().get(i - 1).currentA());
    }
  }
}
