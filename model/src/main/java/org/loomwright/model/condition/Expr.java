package org.loomwright.model.condition;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a condition says, as a tree. Printing a tree and parsing the text gives an equal tree.
 *
 * <p>{@link Unknown} stands alone; it is never a part of another expression.
 */
public sealed interface Expr {

  /** The text with as few parentheses as possible. */
  String print();

  /** The names of the traits it mentions. */
  default SortedSet<String> traits() {
    SortedSet<String> names = new TreeSet<>();
    parts().forEach(p -> names.addAll(p.traits()));
    return names;
  }

  /**
   * Whether it holds on a build.
   *
   * @param build the value of every trait mentioned, by trait name
   * @throws IllegalArgumentException if a trait that is needed is missing
   * @throws IllegalStateException for {@link Unknown}
   */
  boolean holds(Map<String, String> build);

  /** The expressions directly inside. */
  default List<Expr> parts() {
    return List.of();
  }

  /** The expression and all expressions inside it, outer before inner. */
  default Stream<Expr> walk() {
    return Stream.concat(Stream.of(this), parts().stream().flatMap(Expr::walk));
  }

  /** Holds on every build. */
  record Always() implements Expr {
    @Override
    public String print() {
      return Words.ALWAYS;
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return true;
    }
  }

  /** Holds on no build. */
  record Never() implements Expr {
    @Override
    public String print() {
      return Words.NEVER;
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return false;
    }
  }

  /** Nobody knows yet on which builds it holds. */
  record Unknown() implements Expr {
    @Override
    public String print() {
      return Words.UNKNOWN;
    }

    @Override
    public boolean holds(Map<String, String> build) {
      throw new IllegalStateException("It is not known whether this holds on any build");
    }
  }

  /** A trait has a value. */
  record Is(String trait, String value) implements Expr {
    /** Checks both names. */
    public Is {
      Words.checkedName(trait);
      Words.checkedName(value);
    }

    @Override
    public String print() {
      return trait + " = " + value;
    }

    @Override
    public SortedSet<String> traits() {
      return new TreeSet<>(List.of(trait));
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return valueOf(trait, build).equals(value);
    }
  }

  /** A trait has one of some values: one or more, each once, in the order as written. */
  record In(String trait, List<String> values) implements Expr {
    /** Checks all names. */
    public In {
      Words.checkedName(trait);
      values = List.copyOf(values);
      values.forEach(Words::checkedName);
      if (values.isEmpty() || new HashSet<>(values).size() < values.size()) {
        throw new IllegalArgumentException(
            "The values of " + trait + " must be one or more, each once, not " + values);
      }
    }

    @Override
    public String print() {
      return trait + " in (" + String.join(", ", values) + ")";
    }

    @Override
    public SortedSet<String> traits() {
      return new TreeSet<>(List.of(trait));
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return values.contains(valueOf(trait, build));
    }
  }

  /** Holds where the part does not. A negated {@link Is} is printed with "!=". */
  record Not(Expr part) implements Expr {
    /** Refuses unknown. */
    public Not {
      checkPart(part);
    }

    @Override
    public String print() {
      if (part instanceof Is is) {
        return is.trait + " != " + is.value;
      }
      return Words.NOT
          + (part instanceof And || part instanceof Or
              ? " (" + part.print() + ")"
              : " " + part.print());
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return !part.holds(build);
    }

    @Override
    public List<Expr> parts() {
      return List.of(part);
    }
  }

  /** Holds where all parts do; two or more parts, none of them an And itself. */
  record And(List<Expr> parts) implements Expr {
    /** Takes the parts of an inner And as its own. */
    public And {
      parts = flat(parts, p -> p instanceof And and ? and.parts : List.of(p));
    }

    @Override
    public String print() {
      return parts.stream()
          .map(p -> p instanceof Or ? "(" + p.print() + ")" : p.print())
          .collect(Collectors.joining(" and "));
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return parts.stream().allMatch(p -> p.holds(build));
    }
  }

  /** Holds where at least one part does; two or more parts, none of them an Or itself. */
  record Or(List<Expr> parts) implements Expr {
    /** Takes the parts of an inner Or as its own. */
    public Or {
      parts = flat(parts, p -> p instanceof Or or ? or.parts : List.of(p));
    }

    @Override
    public String print() {
      return parts.stream().map(Expr::print).collect(Collectors.joining(" or "));
    }

    @Override
    public boolean holds(Map<String, String> build) {
      return parts.stream().anyMatch(p -> p.holds(build));
    }
  }

  private static String valueOf(String trait, Map<String, String> build) {
    String value = build.get(trait);
    if (value == null) {
      throw new IllegalArgumentException("The build gives no value for the trait " + trait);
    }
    return value;
  }

  private static void checkPart(Expr part) {
    if (part instanceof Unknown) {
      throw new IllegalArgumentException("unknown can't be a part of a longer condition");
    }
  }

  private static List<Expr> flat(List<Expr> parts, Function<Expr, List<Expr>> inner) {
    List<Expr> flat = new ArrayList<>();
    parts.stream().flatMap(p -> inner.apply(p).stream()).forEach(flat::add);
    flat.forEach(Expr::checkPart);
    if (flat.size() < 2) {
      throw new IllegalArgumentException("and, or need two parts or more");
    }
    return List.copyOf(flat);
  }
}
