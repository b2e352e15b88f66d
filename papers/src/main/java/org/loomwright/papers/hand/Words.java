package org.loomwright.papers.hand;

import java.util.Locale;
import org.loomwright.model.design.Act;

/** Constants and kinds as the script of the guide names them: lower case with hyphens. */
final class Words {
  private Words() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind of an act, e.g. "fit-fuse". */
  static String of(Act act) {
    return act.getClass()
        .getSimpleName()
        .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
        .toLowerCase(Locale.ROOT);
  }
}
