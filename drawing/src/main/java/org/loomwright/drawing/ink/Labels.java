package org.loomwright.drawing.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds room for labels: never over other text, over drawn lines only where it can't be helped. */
public final class Labels {
  /** Free room kept between two labels, mm. */
  private static final double GAP = 0.6;

  private final Box frame;
  private final List<Box> taken = new ArrayList<>();
  private final List<Weighed> lines = new ArrayList<>();

  private record Weighed(Segment line, double costPerMm) {}

  /**
   * @param frame where labels may stand
   * @param taken boxes already written
   */
  public Labels(Box frame, List<Box> taken) {
    this.frame = frame;
    this.taken.addAll(taken);
  }

  /** Keeps labels off a box, e.g. a mark. */
  public void keepOff(Box box) {
    taken.add(box);
  }

  /**
   * Keeps labels off lines where there is a choice.
   *
   * @param costPerMm how bad a millimetre of the line under a label is, in places of the order of
   *     wishes
   */
  public void avoid(List<Segment> segments, double costPerMm) {
    segments.forEach(it -> lines.add(new Weighed(it, costPerMm)));
  }

  /**
   * Takes the best place.
   *
   * @param wanted places, the most wanted first
   * @return the place taken; empty when each lies over other text or outside the frame
   */
  public Optional<Box> place(List<Box> wanted) {
    record Choice(Box box, double cost) {}
    List<Choice> free = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      Box box = wanted.get(i);
      Box kept = box.grown(GAP);
      if (box.within(frame) && taken.stream().noneMatch(kept::overlaps)) {
        free.add(new Choice(box, i + crossed(kept)));
      }
    }
    Optional<Box> best =
        free.stream().min(Comparator.comparingDouble(Choice::cost)).map(Choice::box);
    best.ifPresent(taken::add);
    return best;
  }

  private double crossed(Box box) {
    return lines.stream()
        .mapToDouble(it -> it.costPerMm() * it.line().inside(box).map(Segment::length).orElse(0.0))
        .sum();
  }
}
