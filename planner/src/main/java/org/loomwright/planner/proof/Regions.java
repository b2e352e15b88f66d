package org.loomwright.planner.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntBinaryOperator;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;

/**
 * Sets of builds as reduced, ordered decision diagrams whose nodes branch on the values of a trait
 * (S. Minato, R. Bryant: shared decision diagrams, with many-valued variables). A trait with n
 * values is one variable with n branches, so "exactly one value per trait" holds by construction
 * and a set has exactly one node. Not safe for use by several threads at once.
 */
final class Regions {
  static final int NONE = 0;
  static final int ALL = 1;

  /** Most nodes before the walk is given up; about 1 GB. */
  private static final int MOST_NODES = 4_000_000;

  private record Key(int level, List<Integer> branches) {}

  private final List<Trait> traits;
  private final Map<String, Integer> levels = new LinkedHashMap<>();
  private final List<int[]> branches = new ArrayList<>();
  private final List<Integer> levelOf = new ArrayList<>();
  private final Map<Key, Integer> unique = new HashMap<>();
  private final Map<Long, Integer> ands = new HashMap<>();
  private final Map<Integer, Integer> nots = new HashMap<>();
  private final Map<Integer, BigInteger> counts = new HashMap<>();

  /**
   * @param traits traits in the order of the diagrams; those that rules tie together are best close
   */
  Regions(List<Trait> traits) {
    this.traits = List.copyOf(traits);
    for (int i = 0; i < traits.size(); i++) {
      levels.put(traits.get(i).id(), i);
    }
    for (int leaf = 0; leaf < 2; leaf++) {
      branches.add(new int[0]);
      levelOf.add(traits.size());
    }
  }

  List<Trait> traits() {
    return traits;
  }

  Region none() {
    return new Region(this, NONE);
  }

  Region all() {
    return new Region(this, ALL);
  }

  /**
   * Builds on which a trait has a value.
   *
   * @throws UnknownNameException when the vehicle has no such trait or value
   */
  Region is(String trait, String value) {
    int level = level(trait);
    List<TraitValue> values = traits.get(level).values();
    int[] next = new int[values.size()];
    for (int i = 0; i < next.length; i++) {
      next[i] = values.get(i).id().equals(value) ? ALL : NONE;
    }
    if (Arrays.stream(next).noneMatch(it -> it == ALL)) {
      throw new UnknownNameException(
          "trait '" + trait + "' has no value '" + value + "' in this vehicle");
    }
    return new Region(this, node(level, next));
  }

  Region and(Region a, Region b) {
    return new Region(this, and(a.node(), b.node()));
  }

  Region or(Region a, Region b) {
    return new Region(this, not(and(not(a.node()), not(b.node()))));
  }

  Region not(Region a) {
    return new Region(this, not(a.node()));
  }

  Region forget(Region a, Set<String> names) {
    BitSet gone = new BitSet();
    names.forEach(name -> gone.set(level(name)));
    return new Region(this, forget(a.node(), gone, new HashMap<>()));
  }

  Region restrict(Region a, String trait, int value) {
    return new Region(this, restrict(a.node(), level(trait), value, new HashMap<>()));
  }

  BigInteger count(Region a) {
    return count(a.node()).multiply(width(0, levelOf.get(a.node())));
  }

  SortedSet<String> support(Region a) {
    Set<Integer> seen = new TreeSet<>();
    BitSet found = new BitSet();
    support(a.node(), seen, found);
    SortedSet<String> names = new TreeSet<>(Comparator.comparing(levels::get));
    found.stream().forEach(level -> names.add(traits.get(level).id()));
    return names;
  }

  /**
   * One build of a region that is not empty: the value index of each trait it depends on along one
   * path; first values first.
   */
  Map<String, Integer> anyOf(Region a) {
    Map<String, Integer> values = new LinkedHashMap<>();
    int at = a.node();
    while (at > ALL) {
      int[] next = branches.get(at);
      int value = 0;
      while (next[value] == NONE) {
        value++;
      }
      values.put(traits.get(levelOf.get(at)).id(), value);
      at = next[value];
    }
    return values;
  }

  private int level(String trait) {
    Integer level = levels.get(trait);
    if (level == null) {
      throw new UnknownNameException("this vehicle has no trait '" + trait + "'");
    }
    return level;
  }

  private int node(int level, int[] next) {
    int first = next[0];
    if (Arrays.stream(next).allMatch(it -> it == first)) {
      return first;
    }
    Key key = new Key(level, Arrays.stream(next).boxed().toList());
    Integer known = unique.get(key);
    if (known != null) {
      return known;
    }
    if (branches.size() >= MOST_NODES) {
      throw new UnprovableException(
          "the sets of builds need more than " + MOST_NODES + " diagram nodes");
    }
    branches.add(next.clone());
    levelOf.add(level);
    unique.put(key, branches.size() - 1);
    return branches.size() - 1;
  }

  private int and(int a, int b) {
    if (a == NONE || b == NONE) {
      return NONE;
    }
    if (a == ALL || a == b) {
      return b;
    }
    if (b == ALL) {
      return a;
    }
    long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
    Integer known = ands.get(key);
    if (known != null) {
      return known;
    }
    int result = combine(a, b, this::and);
    ands.put(key, result);
    return result;
  }

  private int combine(int a, int b, IntBinaryOperator step) {
    int level = Math.min(levelOf.get(a), levelOf.get(b));
    int[] next = new int[traits.get(level).values().size()];
    for (int i = 0; i < next.length; i++) {
      next[i] = step.applyAsInt(branch(a, level, i), branch(b, level, i));
    }
    return node(level, next);
  }

  private int branch(int a, int level, int value) {
    return levelOf.get(a) == level ? branches.get(a)[value] : a;
  }

  private int not(int a) {
    if (a <= ALL) {
      return ALL - a;
    }
    Integer known = nots.get(a);
    if (known != null) {
      return known;
    }
    int[] next = Arrays.stream(branches.get(a)).map(this::not).toArray();
    int result = node(levelOf.get(a), next);
    nots.put(a, result);
    nots.put(result, a);
    return result;
  }

  private int forget(int a, BitSet gone, Map<Integer, Integer> memo) {
    if (a <= ALL) {
      return a;
    }
    Integer known = memo.get(a);
    if (known != null) {
      return known;
    }
    int level = levelOf.get(a);
    int[] next = Arrays.stream(branches.get(a)).map(it -> forget(it, gone, memo)).toArray();
    int result = gone.get(level) ? Arrays.stream(next).reduce(NONE, this::or) : node(level, next);
    memo.put(a, result);
    return result;
  }

  private int or(int a, int b) {
    return not(and(not(a), not(b)));
  }

  private int restrict(int a, int level, int value, Map<Integer, Integer> memo) {
    int at = levelOf.get(a);
    if (at > level) {
      return a;
    }
    if (at == level) {
      return branches.get(a)[value];
    }
    Integer known = memo.get(a);
    if (known != null) {
      return known;
    }
    int[] next =
        Arrays.stream(branches.get(a)).map(it -> restrict(it, level, value, memo)).toArray();
    int result = node(at, next);
    memo.put(a, result);
    return result;
  }

  private BigInteger count(int a) {
    if (a <= ALL) {
      return BigInteger.valueOf(a);
    }
    BigInteger known = counts.get(a);
    if (known != null) {
      return known;
    }
    int level = levelOf.get(a);
    BigInteger sum = BigInteger.ZERO;
    for (int next : branches.get(a)) {
      sum = sum.add(count(next).multiply(width(level + 1, levelOf.get(next))));
    }
    counts.put(a, sum);
    return sum;
  }

  private BigInteger width(int from, int to) {
    BigInteger width = BigInteger.ONE;
    for (int level = from; level < to; level++) {
      width = width.multiply(BigInteger.valueOf(traits.get(level).values().size()));
    }
    return width;
  }

  private void support(int a, Set<Integer> seen, BitSet found) {
    if (a <= ALL || !seen.add(a)) {
      return;
    }
    found.set(levelOf.get(a));
    for (int next : branches.get(a)) {
      support(next, seen, found);
    }
  }
}
