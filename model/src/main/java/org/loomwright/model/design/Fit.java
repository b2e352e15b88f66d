package org.loomwright.model.design;

import java.util.List;

/**
 * What the equipment asks for beside wires.
 *
 * @param modules modules needed, in words, with the builds that need them
 * @param coding coding needed, in words, with the builds that need it
 */
public record Fit(List<String> modules, List<String> coding) {
  public Fit {
    modules = List.copyOf(modules);
    coding = List.copyOf(coding);
  }
}
