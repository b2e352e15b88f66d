package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.loomwright.model.vehicle.Trait;

/** What the fitter knows at a step: the answers given on the way to it. */
final class Knowledge {
  /** Most different sets of questions asked on the ways to one step. */
  private static final int MOST_PARTS = 100_000;

  private final Subject subject;
  private final Progress progress;

  Knowledge(Subject subject, Progress progress) {
    this.subject = subject;
    this.progress = progress;
  }

  /**
   * Builds on whose way the same traits were asked and measured. Two of them with the same answers
   * can't be told apart.
   *
   * @param notAsked traits the fitter has no answer for
   * @param notRead traits that a meter could tell and that were not measured
   * @param builds builds
   */
  record Part(SortedSet<String> notAsked, SortedSet<String> notRead, Region builds) {
    /** All possible builds that give the same answers as one of these. */
    Region known(Region possible) {
      return builds.forget(notAsked).and(possible);
    }
  }

  /** All builds as one part that counts only questions asked on every way: less is known. */
  Part atLeast(Region here) {
    SortedSet<String> notAsked = new TreeSet<>();
    SortedSet<String> notRead = new TreeSet<>();
    for (Trait trait : subject.vehicle().traits()) {
      if (!here.within(progress.asked(trait.id()))) {
        notAsked.add(trait.id());
      }
      if (trait.tell().how().isReading() && !here.within(progress.read(trait.id()))) {
        notRead.add(trait.id());
      }
    }
    return new Part(notAsked, notRead, here);
  }

  /**
   * The builds split by what was asked on their way.
   *
   * @throws UnprovableException when there are too many parts
   */
  List<Part> exactly(Region here) {
    List<Region> parts = List.of(here);
    for (Trait trait : subject.vehicle().traits()) {
      parts = split(parts, progress.asked(trait.id()));
      parts = split(parts, progress.read(trait.id()));
    }
    return parts.stream().map(this::atLeast).toList();
  }

  private static List<Region> split(List<Region> parts, Region by) {
    List<Region> finer = new ArrayList<>();
    for (Region part : parts) {
      Region in = part.and(by);
      if (in.isEmpty() || in.equals(part)) {
        finer.add(part);
      } else {
        finer.add(in);
        finer.add(part.minus(by));
      }
    }
    if (finer.size() > MOST_PARTS) {
      throw new UnprovableException(
          "more than " + MOST_PARTS + " different sets of questions lead to one step");
    }
    return finer;
  }
}
