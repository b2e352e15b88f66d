package org.loomwright.model.workspace;

import java.util.List;
import org.loomwright.model.parts.CurrentLimit;
import org.loomwright.model.parts.Terminal;

/**
 * Checks a terminal's current table: its wires are wires the terminal takes, and nothing gets
 * better with a thinner wire or in a hotter place.
 */
final class CurrentTableChecks {
  private final Scope scope;
  private final Terminal terminal;

  private CurrentTableChecks(Scope scope, Terminal terminal) {
    this.scope = scope;
    this.terminal = terminal;
  }

  static void check(Scope scope, Terminal terminal) {
    if (!scope.sound(terminal)) {
      return;
    }
    CurrentTableChecks checks = new CurrentTableChecks(scope, terminal);
    List<CurrentLimit> points = terminal.currentLimits();
    for (int i = 0; i < points.size(); i++) {
      checks.alone(points.get(i));
      for (CurrentLimit earlier : points.subList(0, i)) {
        checks.pair(earlier, points.get(i));
      }
    }
  }

  private void alone(CurrentLimit it) {
    if (it.size().compareTo(terminal.wireLeast()) < 0
        || it.size().compareTo(terminal.wireMost()) > 0) {
      scope.problem(
          it,
          "size",
          it.size().text(),
          "the terminal does not take \""
              + it.size()
              + "\"; it takes \""
              + terminal.wireLeast()
              + "\" to \""
              + terminal.wireMost()
              + "\"");
    }
    if (it.current().compareTo(terminal.currentLimit()) > 0) {
      scope.problem(
          it,
          "current",
          it.current().text(),
          "\""
              + it.current()
              + "\" is more than 'currentLimit' of the terminal, which is \""
              + terminal.currentLimit()
              + "\"");
    }
  }

  private void pair(CurrentLimit earlier, CurrentLimit later) {
    int size = earlier.size().compareTo(later.size());
    int ambient = earlier.ambient().compareTo(later.ambient());
    if (size == 0 && ambient == 0) {
      scope.problem(
          later,
          "",
          later.current().text(),
          "\""
              + later.size()
              + "\" at \""
              + later.ambient()
              + "\" is already given by "
              + scope.path(earlier)
              + "; each wire and ambient temperature stands once");
    } else if (size >= 0 && ambient <= 0) {
      worse(earlier, later);
    } else if (size <= 0 && ambient >= 0) {
      worse(later, earlier);
    }
  }

  /** Notes a point that allows more than one with at least its wire at no more than its ambient. */
  private void worse(CurrentLimit better, CurrentLimit worse) {
    if (worse.current().compareTo(better.current()) > 0) {
      scope.problem(
          worse,
          "current",
          worse.current().text(),
          "\""
              + worse.current()
              + "\" is more than \""
              + better.current()
              + "\" of "
              + scope.path(better)
              + ", but a thinner wire or a hotter place allows no more");
    }
  }
}
