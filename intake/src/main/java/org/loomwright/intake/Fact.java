package org.loomwright.intake;

import java.util.Optional;

/** What a cell was read as. */
sealed interface Fact<T> {
  /** It could be read. */
  record Known<T>(T value) implements Fact<T> {}

  /**
   * It could not.
   *
   * @param message what is wrong and what would be right
   */
  record Wrong<T>(String message) implements Fact<T> {}

  /** The value, if it could be read. */
  default Optional<T> known() {
    return this instanceof Known<T> known ? Optional.of(known.value()) : Optional.empty();
  }
}
