package org.loomwright.planner.proof.planted;

import java.util.List;
import org.loomwright.model.planted.Fact;

/** A proof as it should be: plain Java and the model. */
public final class StandsAlone {

  private final List<Fact> facts;
  private final double[][] figures;

  StandsAlone(List<Fact> facts, double[][] figures) {
    this.facts = List.copyOf(facts);
    this.figures = figures.clone();
  }

  /** How much there is of it. */
  public int size() {
    int[] counts = {facts.size(), figures.length};
    return counts[0] + counts[1];
  }
}
