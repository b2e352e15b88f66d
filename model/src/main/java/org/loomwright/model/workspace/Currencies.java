package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.Clip;
import org.loomwright.model.parts.Covering;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Grommet;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Seal;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Sundry;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.rules.Rules;

/** Checks that all prices are in one currency, as sums of several can't be compared. */
final class Currencies {
  private record Price(Scope scope, Object owner, String key, Money money) {}

  private final List<Price> prices = new ArrayList<>();

  private Currencies() {}

  static void check(List<Source> sources, List<Problem> problems) {
    Currencies all = new Currencies();
    for (Source source : sources) {
      Scope scope = new Scope(source, problems);
      source
          .bound()
          .document()
          .filter(Parts.class::isInstance)
          .map(Parts.class::cast)
          .ifPresent(it -> all.parts(scope, it));
      source
          .bound()
          .document()
          .filter(Rules.class::isInstance)
          .map(Rules.class::cast)
          .ifPresent(it -> all.rules(scope, it));
    }
    all.compare();
  }

  private void parts(Scope scope, Parts parts) {
    for (Wire it : parts.wires()) {
      add(scope, it, "price", it.price());
    }
    for (Housing it : parts.housings()) {
      add(scope, it, "price", it.price());
    }
    for (Terminal it : parts.terminals()) {
      add(scope, it, "price", it.price());
    }
    for (Seal it : parts.seals()) {
      add(scope, it, "price", it.price());
    }
    for (Ring it : parts.rings()) {
      add(scope, it, "price", it.price());
    }
    for (Splice it : parts.splices()) {
      add(scope, it, "price", it.price());
    }
    for (Fuse it : parts.fuses()) {
      add(scope, it, "price", it.price());
    }
    for (Covering it : parts.coverings()) {
      add(scope, it, "price", it.price());
    }
    for (Grommet it : parts.grommets()) {
      add(scope, it, "price", it.price());
    }
    for (Clip it : parts.clips()) {
      add(scope, it, "price", it.price());
    }
    for (Sundry it : parts.sundries()) {
      add(scope, it, "price", it.price());
    }
  }

  private void rules(Scope scope, Rules rules) {
    add(scope, rules.hourlyRate(), "value", rules.hourlyRate().value());
    add(scope, rules.numberCarryCost(), "value", rules.numberCarryCost().value());
  }

  private void add(Scope scope, Object owner, String key, Money money) {
    // A refused price has a stand-in, which says nothing.
    if (scope.sound(owner)) {
      prices.add(new Price(scope, owner, key, money));
    }
  }

  /** The currency of most prices is taken for the right one; the first of a document is named. */
  private void compare() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    prices.forEach(price -> counts.merge(price.money().currency(), 1, Integer::sum));
    if (counts.size() < 2) {
      return;
    }
    String usual =
        counts.entrySet().stream()
            .max(Comparator.comparingInt(Map.Entry::getValue))
            .orElseThrow()
            .getKey();
    Map<String, List<Price>> others = new LinkedHashMap<>();
    prices.stream()
        .filter(price -> !price.money().currency().equals(usual))
        .forEach(
            price ->
                others
                    .computeIfAbsent(price.scope().source().file(), key -> new ArrayList<>())
                    .add(price));
    for (List<Price> odd : others.values()) {
      Price first = odd.get(0);
      int more = odd.size() - 1;
      first
          .scope()
          .problem(
              first.owner(),
              first.key(),
              first.money().text(),
              "\""
                  + first.money()
                  + "\" is in another currency than most prices, which are in "
                  + usual
                  + (more == 0 ? "" : " (and so are " + more + " more of this document)")
                  + "; use one currency");
    }
  }
}
