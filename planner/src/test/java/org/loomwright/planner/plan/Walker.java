package org.loomwright.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;

/** Walks a guide as a fitter does who stands before one build. */
public final class Walker {
  private Walker() {}

  /** The same for a build that the guide may leave behind: as far as there is a way on. */
  public static List<Step> asFarAsItGoes(Guide guide, Map<String, String> build) {
    List<Step> taken = new ArrayList<>();
    Optional<String> at = Optional.of(guide.start());
    while (at.isPresent()) {
      String here = at.get();
      taken.add(guide.step(here).orElseThrow());
      at = guide.from(here).stream().filter(it -> it.when().holds(build)).map(Edge::to).findFirst();
    }
    return taken;
  }

  /** The steps of one build in the order in which they are taken. */
  public static List<Step> walk(Guide guide, Map<String, String> build) {
    List<Step> taken = new ArrayList<>();
    String at = guide.start();
    while (true) {
      taken.add(guide.step(at).orElseThrow());
      if (guide.ends().contains(at)) {
        return taken;
      }
      List<Edge> open = guide.from(at).stream().filter(it -> it.when().holds(build)).toList();
      if (open.size() != 1 || taken.size() > guide.steps().size()) {
        throw new IllegalStateException(build + " finds " + open.size() + " ways on at " + at);
      }
      at = open.get(0).to();
    }
  }
}
