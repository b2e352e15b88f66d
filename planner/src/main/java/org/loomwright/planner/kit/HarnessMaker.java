package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.route.Laying;

/** The harness as made: bundles, tails and joints of the leads. */
final class HarnessMaker {
  private final KitOrder order;
  private final Laying laying;
  private final PulledTogether tree;

  HarnessMaker(KitOrder order, Laying laying, PulledTogether tree) {
    this.order = order;
    this.laying = laying;
    this.tree = tree;
  }

  Harness make(List<Sized> sized) {
    Map<Strand, String> ids = new LinkedHashMap<>();
    sized.forEach(it -> ids.put(it.strand(), it.lead().id()));
    List<Lead> leads = sized.stream().map(Sized::lead).toList();
    Lengths lengths = new Lengths(order, tree.strands());
    return new Harness(
        new BundleMaker(order).of(leads),
        tails(lengths, ids),
        lengths.joints(),
        tree.weighedMm(),
        tree.leastWeighedMm(),
        tree.exact(),
        laying.refusals(),
        tree.notes());
  }

  private static List<Tail> tails(Lengths lengths, Map<Strand, String> ids) {
    List<Tail> tails = new ArrayList<>();
    lengths
        .tails()
        .forEach(
            (key, ends) -> {
              List<Tail.End> made = new ArrayList<>();
              for (Tails.End end : ends) {
                String id = ids.get(end.strand());
                if (id != null) {
                  made.add(new Tail.End(id, end.sideA()));
                }
              }
              tails.add(
                  new Tail(
                      "T" + (tails.size() + 1),
                      key.place(),
                      key.kind(),
                      key.subject(),
                      made,
                      lengths.tailMm(key)));
            });
    return tails;
  }
}
