package org.loomwright.model.workspace;

import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;

/** Checks the shop's rules for limits that nothing could meet. */
final class RulesChecks {
  private final Scope scope;

  private RulesChecks(Scope scope) {
    this.scope = scope;
  }

  static void check(Scope scope, Rules rules) {
    RulesChecks checks = new RulesChecks(scope);
    checks.share(rules, "fuseLoading", rules.fuseLoading());
    checks.share(rules, "hostLoadingCabin", rules.hostLoadingCabin());
    checks.share(rules, "hostLoadingEngineBay", rules.hostLoadingEngineBay());
    checks.share(rules, "feedDrop", rules.feedDrop());
    checks.share(rules, "splicedFeedDrop", rules.splicedFeedDrop());
    checks.share(rules, "groundDrop", rules.groundDrop());
    checks.positive(rules, "wireOverFuse", rules.wireOverFuse());
    scope.aboveZero(
        rules,
        "cutRounding.value",
        rules.cutRounding().value().mm(),
        rules.cutRounding().value().text());
    rules.electrics().ifPresent(it -> ElectricChecks.check(scope, it));
    rules.runs().ifPresent(it -> LayingChecks.check(scope, it));
  }

  private void share(Rules rules, String key, Sourced<Percent> share) {
    positive(rules, key, share);
    if (share.value().fraction() > 1) {
      scope.problem(
          rules,
          key + ".value",
          share.value().text(),
          "\"" + share.value() + "\" can't be right: the whole is 100 %");
    }
  }

  private void positive(Rules rules, String key, Sourced<Percent> share) {
    scope.aboveZero(rules, key + ".value", share.value().fraction(), share.value().text());
  }
}
