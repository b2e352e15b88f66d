package org.loomwright.planner.kit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.quantity.Money;
import org.loomwright.planner.sizing.Prices;

/** Names and prices of all parts by part number, and the lines of a parts list. */
final class PriceList {
  private final Map<String, String> names = new HashMap<>();
  private final Map<String, Money> prices = new HashMap<>();
  private final KitOrder order;

  PriceList(KitOrder order) {
    this.order = order;
    Parts parts = order.parts();
    parts.wires().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.housings().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.terminals().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.seals().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.rings().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.splices().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.fuses().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.coverings().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.grommets().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.clips().forEach(it -> put(it.id(), it.name(), it.price()));
    parts.sundries().forEach(it -> put(it.id(), it.name(), it.price()));
  }

  private void put(String id, String name, Money price) {
    names.putIfAbsent(id, name);
    prices.putIfAbsent(id, price);
  }

  /** Lines in order of part number: pieces first, then what is bought by the metre. */
  List<PartLine> lines(PartsCount count) {
    double attrition = 1 + order.rules().partAttrition().value().fraction();
    double offcut = 1 + order.rules().wireAttrition().value().fraction();
    List<PartLine> lines = new ArrayList<>();
    count
        .pieces()
        .forEach(
            (part, quantity) ->
                lines.add(line(part, quantity, "pc", Math.ceil(quantity * attrition - 1e-9))));
    count
        .metres()
        .forEach(
            (part, quantity) ->
                lines.add(line(part, quantity, "m", Math.ceil(quantity * offcut * 100) / 100)));
    return lines;
  }

  /** Sum of the lines' totals. */
  static BigDecimal total(List<PartLine> lines) {
    return lines.stream().map(PartLine::total).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private PartLine line(String part, double quantity, String unit, double buy) {
    Money price = prices.get(part);
    if (price == null) {
      throw new IllegalStateException("part " + part + " has no price");
    }
    return new PartLine(
        part,
        names.getOrDefault(part, part),
        quantity,
        unit,
        buy,
        price.amount(),
        Prices.cents(price.amount().multiply(BigDecimal.valueOf(buy))),
        price.currency());
  }
}
