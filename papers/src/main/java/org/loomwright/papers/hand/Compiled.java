package org.loomwright.papers.hand;

import java.util.List;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Conditions as data that a script evaluates without a parser: {@code true}, {@code false}, {@code
 * ["is", trait, value]}, {@code ["in", trait, [values]]}, {@code ["not", part]}, {@code ["all",
 * [parts]]}, {@code ["any", [parts]]}.
 */
final class Compiled {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  private Compiled() {}

  /**
   * Compiles a condition.
   *
   * @throws IllegalArgumentException when nobody knows on which builds it holds
   */
  static JsonNode of(Condition condition) {
    return of(condition.expr());
  }

  private static JsonNode of(Expr expr) {
    if (expr instanceof Expr.Always) {
      return MAKE.booleanNode(true);
    }
    if (expr instanceof Expr.Never) {
      return MAKE.booleanNode(false);
    }
    if (expr instanceof Expr.Is is) {
      return MAKE.arrayNode().add("is").add(is.trait()).add(is.value());
    }
    if (expr instanceof Expr.In in) {
      ArrayNode values = MAKE.arrayNode();
      in.values().forEach(values::add);
      return MAKE.arrayNode().add("in").add(in.trait()).add(values);
    }
    if (expr instanceof Expr.Not not) {
      return MAKE.arrayNode().add("not").add(of(not.part()));
    }
    if (expr instanceof Expr.And and) {
      return MAKE.arrayNode().add("all").add(all(and.parts()));
    }
    if (expr instanceof Expr.Or or) {
      return MAKE.arrayNode().add("any").add(all(or.parts()));
    }
    throw new IllegalArgumentException("a guide can't ask for what is unknown: " + expr.print());
  }

  private static ArrayNode all(List<Expr> parts) {
    ArrayNode list = MAKE.arrayNode();
    parts.forEach(it -> list.add(of(it)));
    return list;
  }
}
