package org.loomwright.physics.memo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;

class MemoTest {
  private final List<Integer> worked = new ArrayList<>();
  private final Memo<Integer, Integer> squares = new Memo<>(2);

  private int square(int number) {
    return squares.of(
        number,
        it -> {
          worked.add(it);
          return it * it;
        });
  }

  @Test
  void theSameIsWorkedOutOnce() {
    assertThat(square(3)).isEqualTo(9);
    assertThat(square(3)).isEqualTo(9);
    assertThat(worked).containsExactly(3);
  }

  @Test
  void whatWasNotAskedForLongestIsDropped() {
    square(1);
    square(2);
    square(1);
    square(3);
    square(1);
    assertThat(worked).containsExactly(1, 2, 3);
    assertThat(square(2)).isEqualTo(4);
    assertThat(worked).containsExactly(1, 2, 3, 2);
  }

  @Test
  void aFailureIsPassedOnAndNotRemembered() {
    assertThatThrownBy(
            () ->
                squares.of(
                    5,
                    it -> {
                      throw new SumException("outside the range");
                    }))
        .isInstanceOf(SumException.class);
    assertThat(square(5)).isEqualTo(25);
  }
}
