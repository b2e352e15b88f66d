package org.loomwright.physics.memo;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Remembers the results of a sum by its whole input, those asked for last. For sums only whose
 * result follows from the input alone: then remembering changes the time they take and nothing
 * else. May be shared between threads; two that ask for the same at the same time may both work it
 * out.
 *
 * @param <K> input: immutable, with equality by value
 * @param <V> result: immutable
 */
public final class Memo<K, V> {
  private static final float LOAD = 0.75f;

  private final Map<K, V> known;

  /**
   * @param most results kept, above zero; beyond that the one not asked for longest is dropped
   */
  public Memo(int most) {
    this.known =
        new LinkedHashMap<>(16, LOAD, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The result for an input.
   *
   * @param sum works it out when it is not known; what it throws is passed on and not remembered
   */
  public V of(K input, Function<? super K, ? extends V> sum) {
    synchronized (known) {
      V there = known.get(input);
      if (there != null) {
        return there;
      }
    }
    V made = sum.apply(input);
    synchronized (known) {
      known.put(input, made);
    }
    return made;
  }
}
