package org.loomwright.papers.calculation;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** An arithmetic formula as a tree. */
sealed interface Expression {

  /** Its value, with a value for each name in it. */
  double value(ToDoubleFunction<String> names);

  /** As it is printed, with words for each name in it. */
  String text(Function<String, String> names);

  /** How strongly it holds together: a part that holds less than the whole gets parentheses. */
  int strength();

  /** The same formula with every name replaced. */
  Expression with(Function<String, Expression> names);

  /** The names in it, in reading order. */
  default Set<String> names() {
    Set<String> found = new LinkedHashSet<>();
    with(
        name -> {
          found.add(name);
          return new Name(name);
        });
    return found;
  }

  /** A number as written. */
  record Number(double value, String written) implements Expression {
    @Override
    public double value(ToDoubleFunction<String> names) {
      return value;
    }

    @Override
    public String text(Function<String, String> names) {
      return written;
    }

    @Override
    public int strength() {
      return 5;
    }

    @Override
    public Expression with(Function<String, Expression> names) {
      return this;
    }
  }

  /** A quantity by name. */
  record Name(String name) implements Expression {
    @Override
    public double value(ToDoubleFunction<String> names) {
      return names.applyAsDouble(name);
    }

    @Override
    public String text(Function<String, String> names) {
      String words = names.apply(name);
      // A power of ten or a sign would be torn apart by what stands beside it.
      return words.contains("×") || words.startsWith("\u2212") ? "(" + words + ")" : words;
    }

    @Override
    public int strength() {
      return 5;
    }

    @Override
    public Expression with(Function<String, Expression> names) {
      return names.apply(name);
    }
  }

  /** A root or a natural logarithm. */
  record Call(Function1 function, Expression of) implements Expression {
    @Override
    public double value(ToDoubleFunction<String> names) {
      double inner = of.value(names);
      return function == Function1.ROOT ? Math.sqrt(inner) : Math.log(inner);
    }

    @Override
    public String text(Function<String, String> names) {
      return function.sign + "(" + of.text(names) + ")";
    }

    @Override
    public int strength() {
      return 5;
    }

    @Override
    public Expression with(Function<String, Expression> names) {
      return new Call(function, of.with(names));
    }
  }

  /** Functions of one number. */
  enum Function1 {
    ROOT("√"),
    LOGARITHM("ln ");

    private final String sign;

    Function1(String sign) {
      this.sign = sign;
    }
  }

  /** Two parts with a sign between them: one of + - * / ^. */
  record Operation(char sign, Expression left, Expression right) implements Expression {
    private static final Map<Character, String> SIGNS =
        Map.of('+', " + ", '-', " \u2212 ", '*', " × ", '/', " / ");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    @Override
    public double value(ToDoubleFunction<String> names) {
      double a = left.value(names);
      double b = right.value(names);
      return switch (sign) {
        case '+' -> a + b;
        case '-' -> a - b;
        case '*' -> a * b;
        case '/' -> a / b;
        default -> Math.pow(a, b);
      };
    }

    @Override
    public String text(Function<String, String> names) {
      String base = inside(left, strength() + (sign == '^' ? 1 : 0), names);
      if (sign == '^') {
        return right instanceof Number power && power.written().matches("\\d")
            ? base + SUPERSCRIPTS.charAt(power.written().charAt(0) - '0')
            : base + "^(" + right.text(names) + ")";
      }
      // a - (b + c) and a / (b * c) are not a - b + c and a / b * c.
      boolean strict = sign == '-' || sign == '/';
      return base + SIGNS.get(sign) + inside(right, strength() + (strict ? 1 : 0), names);
    }

    private static String inside(Expression part, int least, Function<String, String> names) {
      String words = part.text(names);
      return part.strength() < least ? "(" + words + ")" : words;
    }

    @Override
    public int strength() {
      return sign == '+' || sign == '-' ? 1 : sign == '^' ? 4 : 2;
    }

    @Override
    public Expression with(Function<String, Expression> names) {
      return new Operation(sign, left.with(names), right.with(names));
    }
  }
}
