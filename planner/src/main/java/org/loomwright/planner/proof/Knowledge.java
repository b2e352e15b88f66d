package org.loomwright.planner.proof;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.loomwright.model.vehicle.Trait;

/** What the fitter knows at a step: the answers given on the way to it. */
final class Knowledge {
  /** Most parts looked at for one test. */
  private static final int MOST_PARTS = 20_000;

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

  /** Finds where something fails for a part; more knowledge never makes it fail on more builds. */
  interface Test {
    Region failing(Part part);
  }

  /**
   * The parts on which a test fails, with exactly what is known there. Parts are made only as fine
   * as the answer needs: a part is done when counting only questions asked on every way to it
   * nothing fails, or when counting all questions asked on any way the same builds fail. Builds
   * that agree on all of the latter went the same way, as ways are decided by answers, so they
   * can't be told apart either.
   *
   * @param relevant traits to split by first
   * @throws UnprovableException when there are too many parts
   */
  List<Part> failing(Region here, SortedSet<String> relevant, Test test) {
    List<Part> found = new ArrayList<>();
    Deque<Region> left = new ArrayDeque<>(List.of(here));
    for (int splits = 0; !left.isEmpty(); splits++) {
      if (splits > MOST_PARTS) {
        throw new UnprovableException(
            "more than " + MOST_PARTS + " different sets of questions lead to one step");
      }
      Region builds = left.remove();
      Part less = part(builds, true);
      Region fails = test.failing(less);
      if (fails.isEmpty()) {
        continue;
      }
      Part more = part(builds, false);
      if (test.failing(more).equals(fails)) {
        found.add(more);
        continue;
      }
      Region by =
          partly(builds, relevant)
              .or(() -> partly(builds, fails.support()))
              .orElseGet(() -> partly(builds, allTraits()).orElseThrow());
      left.add(builds.and(by));
      left.add(builds.minus(by));
    }
    return found;
  }

  /**
   * Builds on which the answers leave open whether a condition holds.
   *
   * @param builds the builds
   * @param traits traits of the condition that were not asked
   */
  record Open(Region builds, SortedSet<String> traits) {}

  /** Where it can't be known at this point whether a build is one of these. */
  List<Open> undecided(Region here, Region when) {
    List<Open> open = new ArrayList<>();
    for (Part part : failing(here, when.support(), it -> undecided(it, when))) {
      SortedSet<String> traits = when.support();
      traits.retainAll(part.notAsked());
      open.add(new Open(undecided(part, when), traits));
    }
    return open;
  }

  private static Region undecided(Part part, Region when) {
    Region yes = part.builds().and(when).forget(part.notAsked());
    Region no = part.builds().minus(when).forget(part.notAsked());
    return yes.and(no).and(part.builds());
  }

  private SortedSet<String> allTraits() {
    SortedSet<String> names = new TreeSet<>();
    subject.vehicle().traits().forEach(trait -> names.add(trait.id()));
    return names;
  }

  /** Builds on whose way one of the traits was asked or measured, where on others it was not. */
  private Optional<Region> partly(Region builds, SortedSet<String> traits) {
    for (String trait : traits) {
      for (Region by : List.of(progress.asked(trait), progress.read(trait))) {
        if (builds.meets(by) && !builds.within(by)) {
          return Optional.of(by);
        }
      }
    }
    return Optional.empty();
  }

  /** Builds as one part, with the questions asked on every way to it, or on any. */
  private Part part(Region builds, boolean every) {
    SortedSet<String> notAsked = new TreeSet<>();
    SortedSet<String> notRead = new TreeSet<>();
    for (Trait trait : subject.vehicle().traits()) {
      if (!counts(builds, progress.asked(trait.id()), every)) {
        notAsked.add(trait.id());
      }
      if (trait.tell().how().isReading() && !counts(builds, progress.read(trait.id()), every)) {
        notRead.add(trait.id());
      }
    }
    return new Part(notAsked, notRead, builds);
  }

  private static boolean counts(Region builds, Region done, boolean every) {
    return every ? builds.within(done) : builds.meets(done);
  }
}
