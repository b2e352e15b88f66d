package org.loomwright.model.condition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;

class ConditionPropertyTest {
  private static final List<String> TRAITS = List.of("tow-prep", "rear-feed", "roof", "a.b/c:1");
  private static final List<String> VALUES = List.of("yes", "no", "2");
  private static final Pattern AND = Pattern.compile("[01](?: and [01])+");
  private static final Pattern OR = Pattern.compile("[01](?: or [01])+");

  @Property(tries = 2000)
  void printedAndParsedIsTheSame(@ForAll("exprs") Expr expr) {
    Condition condition = Condition.of(expr);
    assertThat(Condition.of(condition.text()).expr()).isEqualTo(expr);
    assertThat(ConditionParser.parse(bracketed(expr))).isEqualTo(expr);
    Statistics.label("with parentheses")
        .collect(condition.text().contains("("))
        .coverage(c -> c.check(true).percentage(p -> p > 10));
  }

  @Property(tries = 1000)
  void noParenthesesCanBeLeftOut(@ForAll("exprs") Expr expr) {
    String text = expr.print();
    for (int open = text.indexOf('('); open >= 0; open = text.indexOf('(', open + 1)) {
      if (text.startsWith("in ", Math.max(0, open - 3))) {
        continue;
      }
      int close = closing(text, open);
      String without =
          text.substring(0, open) + text.substring(open + 1, close) + text.substring(close + 1);
      assertThat(ConditionParser.parse(without)).as(text).isNotEqualTo(expr);
    }
  }

  @Property(tries = 2000)
  void holdsAgreesWithTheTruthTable(
      @ForAll("exprs") Expr expr, @ForAll("builds") Map<String, String> build) {
    boolean holds = Condition.of(expr).holds(build);
    assertThat(holds).isEqualTo(truth(bracketed(expr), build));
    Statistics.label("holds")
        .collect(holds)
        .coverage(
            c -> {
              c.check(true).percentage(p -> p > 10);
              c.check(false).percentage(p -> p > 10);
            });
  }

  @Property(tries = 500)
  void combinatorsAgreeWithTheTruthTable(
      @ForAll("exprs") Expr left,
      @ForAll("exprs") Expr right,
      @ForAll("builds") Map<String, String> build) {
    Condition a = Condition.of(left);
    Condition b = Condition.of(right);
    assertThat(a.and(b).holds(build)).isEqualTo(a.holds(build) & b.holds(build));
    assertThat(a.or(b).holds(build)).isEqualTo(a.holds(build) | b.holds(build));
    assertThat(a.negate().holds(build)).isEqualTo(!a.holds(build));
  }

  @Property(tries = 5000)
  void garbageIsRefusedInOneWayOnly(@ForAll("garbage") String text) {
    boolean read;
    try {
      Condition condition = Condition.of(text);
      assertThat(Condition.of(condition.expr()).expr()).isEqualTo(condition.expr());
      read = true;
    } catch (ConditionException e) {
      assertThat(e.position()).isBetween(0, text.length());
      assertThat(e.getMessage()).doesNotContain("\n").doesNotContain("\0");
      read = false;
    }
    Statistics.label("read")
        .collect(read)
        .coverage(
            c -> {
              c.check(true).percentage(p -> p > 3);
              c.check(false).percentage(p -> p > 3);
            });
  }

  @Provide
  Arbitrary<String> garbage() {
    Arbitrary<String> words =
        Arbitraries.of(
                "a",
                "b",
                "=",
                "!=",
                "(",
                ")",
                "in",
                "and",
                "or",
                "not",
                "always",
                "never",
                ",",
                "unknown",
                "AND",
                "a = b",
                "c in (d, e)",
                "&&",
                "-",
                "\n")
            .list()
            .ofMaxSize(9)
            .map(l -> String.join(" ", l));
    Arbitrary<String> slips =
        Combinators.combine(
                exprs(2), Arbitraries.integers().between(0, 200), Arbitraries.chars().ascii())
            .as(
                (e, at, c) -> {
                  String text = e.print();
                  int place = at % text.length();
                  return text.substring(0, place) + c + text.substring(place + 1);
                });
    return Arbitraries.oneOf(words, slips, Arbitraries.strings().ofMaxLength(40));
  }

  @Provide
  Arbitrary<Map<String, String>> builds() {
    return Arbitraries.of(VALUES)
        .list()
        .ofSize(TRAITS.size())
        .map(
            values ->
                TRAITS.stream()
                    .collect(Collectors.toMap(t -> t, t -> values.get(TRAITS.indexOf(t)))));
  }

  @Provide
  Arbitrary<Expr> exprs() {
    return exprs(4);
  }

  private static Arbitrary<Expr> exprs(int depth) {
    Arbitrary<Expr> is =
        Combinators.combine(Arbitraries.of(TRAITS), Arbitraries.of(VALUES)).as(Expr.Is::new);
    Arbitrary<Expr> in =
        Combinators.combine(
                Arbitraries.of(TRAITS),
                Arbitraries.of(VALUES).list().uniqueElements().ofMinSize(1).ofMaxSize(3))
            .as(Expr.In::new);
    if (depth == 0) {
      Arbitrary<Expr> constant = Arbitraries.of(new Expr.Always(), new Expr.Never());
      return Arbitraries.frequencyOf(Tuple.of(6, is), Tuple.of(3, in), Tuple.of(1, constant));
    }
    Arbitrary<Expr> inner = Arbitraries.lazy(() -> exprs(depth - 1));
    Arbitrary<List<Expr>> parts = inner.list().ofMinSize(2).ofMaxSize(3);
    return Arbitraries.oneOf(
        is, in, inner.map(Expr.Not::new), parts.map(Expr.And::new), parts.map(Expr.Or::new));
  }

  /** Every part in parentheses: the reading that leaves nothing to precedence. */
  private static String bracketed(Expr expr) {
    if (expr instanceof Expr.Not not) {
      return "not (" + bracketed(not.part()) + ")";
    }
    String word = expr instanceof Expr.And ? " and " : " or ";
    return expr.parts().isEmpty()
        ? expr.print()
        : expr.parts().stream()
            .map(p -> "(" + bracketed(p) + ")")
            .collect(Collectors.joining(word));
  }

  private static int closing(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      depth += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    throw new AssertionError("no closing parenthesis in " + text);
  }

  /**
   * An evaluator on the bracketed text alone, sharing nothing with the parser: every statement is
   * replaced by 1 or 0, then the inmost parentheses are worked out until one digit is left.
   */
  private static boolean truth(String text, Map<String, String> build) {
    String t = text;
    for (String trait : TRAITS) {
      String quoted = Pattern.quote(trait);
      for (String value : VALUES) {
        boolean is = value.equals(build.get(trait));
        t = t.replaceAll(quoted + " = " + value, is ? "1" : "0");
        t = t.replaceAll(quoted + " != " + value, is ? "0" : "1");
      }
      t =
          Pattern.compile(quoted + " in \\(([^)]*)\\)")
              .matcher(t)
              .replaceAll(
                  m -> List.of(m.group(1).split(", ", -1)).contains(build.get(trait)) ? "1" : "0");
    }
    t = t.replace("always", "1").replace("never", "0");
    String before;
    do {
      before = t;
      t = t.replace("(0)", "0").replace("(1)", "1").replace("not 0", "1").replace("not 1", "0");
      t = AND.matcher(t).replaceAll(m -> m.group().contains("0") ? "0" : "1");
      t = OR.matcher(t).replaceAll(m -> m.group().contains("1") ? "1" : "0");
    } while (!t.equals(before));
    assertThat(t).as(text).matches("[01]");
    return t.equals("1");
  }
}
