package org.loomwright.web.shop;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something made when it is first asked for, once, whatever number of threads ask. What can't be
 * made is tried again when it is asked for again.
 */
final class Once<T> implements Supplier<T> {
  private final Supplier<T> maker;
  private volatile @Nullable T made;

  Once(Supplier<T> maker) {
    this.maker = maker;
  }

  @Override
  public T get() {
    T there = made;
    return there != null ? there : make();
  }

  private synchronized T make() {
    T there = made;
    if (there == null) {
      there = maker.get();
      made = there;
    }
    return there;
  }
}
