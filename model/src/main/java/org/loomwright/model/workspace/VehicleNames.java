package org.loomwright.model.workspace;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.vehicle.Vehicle;
import tools.jackson.databind.JsonNode;

/** What the references of a vehicle, and those to a vehicle, may name. */
final class VehicleNames {
  private static final List<String> TRUTHS = List.of("yes", "no");

  private final JsonNode tree;
  private final Names names = new Names(true);
  private final Map<String, List<String>> traits = new LinkedHashMap<>();
  private final Set<String> facts = new LinkedHashSet<>();

  VehicleNames(JsonNode tree, Optional<Vehicle> vehicle) {
    this.tree = tree;
    names.add(Sort.TRAIT, Tree.ids(tree, "traits"));
    names.add(Sort.PLACE, Tree.ids(tree, "places"));
    names.add(Sort.OPENING, Tree.ids(tree, "openings"));
    names.add(Sort.RUN, Tree.ids(tree, "runs"));
    names.add(Sort.CONNECTOR, Tree.ids(tree, "connectors"));
    names.add(Sort.BLOCK, Tree.ids(tree, "fuseBlocks"));
    names.add(Sort.GROUND, Tree.ids(tree, "grounds"));
    names.add(Sort.CIRCUIT, Tree.ids(tree, "circuits"));
    for (JsonNode trait : Tree.items(tree, "traits")) {
      if (trait.path("id").isString()) {
        traits.put(trait.path("id").stringValue(), Tree.ids(trait, "values"));
      }
    }
    vehicle.ifPresent(
        it ->
            Fact.of(it)
                .forEach(
                    fact -> {
                      facts.add(fact.trait());
                      if (fact.when().isUnknown()) {
                        traits.putIfAbsent(fact.trait(), TRUTHS);
                      }
                    }));
    names.add(Sort.TRAIT, traits.keySet());
  }

  Names names() {
    return names;
  }

  /** Traits with their values, those that stand for unknown facts included. */
  Map<String, List<String>> traits() {
    return traits;
  }

  /** The sections and slots of a block; empty when there is no such block. */
  Optional<Names> inBlock(String block) {
    return Tree.find(tree, "fuseBlocks", block)
        .map(
            node -> {
              Names inside = new Names(true);
              inside.add(Sort.SECTION, Tree.ids(node, "sections"));
              inside.add(Sort.SLOT, Tree.ids(node, "slots"));
              return inside;
            });
  }

  /** The housing of a connector. */
  Optional<String> housing(String connector) {
    return Tree.find(tree, "connectors", connector)
        .map(node -> node.path("housing"))
        .filter(JsonNode::isString)
        .map(JsonNode::stringValue);
  }

  /** What is wrong with the traits and values a condition mentions. */
  Set<String> wrong(Condition condition) {
    Set<String> wrong = new LinkedHashSet<>();
    collect(condition.expr(), wrong);
    return wrong;
  }

  private void collect(Expr expr, Set<String> wrong) {
    if (expr instanceof Expr.Is is) {
      wrong(is.trait(), is.value()).ifPresent(wrong::add);
    } else if (expr instanceof Expr.In in) {
      in.values().forEach(value -> wrong(in.trait(), value).ifPresent(wrong::add));
    }
    expr.parts().forEach(part -> collect(part, wrong));
  }

  /**
   * What is wrong with a value that was seen on a real vehicle. A fact that is known by now may
   * have been looked at while it was not.
   */
  Optional<String> wrongSeen(String trait, String value) {
    return facts.contains(trait) && !traits.containsKey(trait) && TRUTHS.contains(value)
        ? Optional.empty()
        : wrong(trait, value);
  }

  /** What is wrong with a value of a trait. */
  Optional<String> wrong(String trait, String value) {
    List<String> values = traits.get(trait);
    if (values == null) {
      return Optional.of(
          names.wrong(Sort.TRAIT, trait).orElse("there is no trait '" + trait + "'"));
    }
    if (values.contains(value)) {
      return Optional.empty();
    }
    return Optional.of(
        "trait '"
            + trait
            + "' has no value '"
            + value
            + "'"
            + Nearest.hint(value, "its values are", values));
  }
}
