package org.loomwright.drawing.board.kit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan;
import org.loomwright.drawing.board.Point;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Tail;

/**
 * Measures each lead on the boards as they are laid out, along the drawn lines and over match
 * lines, and compares with the list of leads. Uses nothing of what made the boards but the names of
 * ends and splices.
 */
public final class LeadLengthCheck {
  /** Most difference, mm. */
  public static final double MOST_MM = 1;

  private static final double SAME_MM = 1e-6;

  private final Map<String, Map<String, Double>> beside = new LinkedHashMap<>();
  private final Map<String, String> tails = new LinkedHashMap<>();
  private final Map<String, String> joints = new LinkedHashMap<>();
  private final Map<String, String> places = new LinkedHashMap<>();

  private LeadLengthCheck(List<HarnessBoard> boards) {
    for (int i = 0; i < boards.size(); i++) {
      String prefix = i + "/";
      HarnessBoard board = boards.get(i);
      for (BoardPlan.Sheet sheet : board.plan().sheets()) {
        sheet(prefix, sheet);
      }
      board.tails().forEach((id, name) -> tails.put(id, prefix + name));
      board.joints().forEach((id, name) -> joints.put(id, prefix + name));
      board.places().forEach((id, name) -> places.put(id, prefix + name));
    }
  }

  /**
   * A lead whose length is not that of the board.
   *
   * @param lead id of the lead
   * @param listedMm finished length in the list of leads, mm
   * @param boardMm along the board, mm; not a number where the board does not join its ends
   */
  public record Difference(String lead, double listedMm, double boardMm) {
    @Override
    public String toString() {
      return Double.isNaN(boardMm)
          ? String.format(
              Locale.ROOT,
              "lead %s is %.1f mm long in the list of leads, and the board does not join its ends",
              lead,
              listedMm)
          : String.format(
              Locale.ROOT,
              "lead %s is %.1f mm long in the list of leads and %.1f mm on the board",
              lead,
              listedMm,
              boardMm);
    }
  }

  /** All leads that differ by more than 1 mm. */
  public static List<Difference> check(Plan plan, List<HarnessBoard> boards) {
    return measure(plan, boards).stream()
        .filter(it -> !(Math.abs(it.listedMm() - it.boardMm()) <= MOST_MM))
        .toList();
  }

  /** All leads with both lengths. */
  static List<Difference> measure(Plan plan, List<HarnessBoard> boards) {
    LeadLengthCheck check = new LeadLengthCheck(boards);
    return plan.design().leads().stream()
        .map(lead -> new Difference(lead.id(), lead.lengthMm(), check.lengthMm(plan, lead)))
        .toList();
  }

  /**
   * Refuses boards that differ from the list of leads.
   *
   * @throws IllegalStateException names the leads and both lengths
   */
  public static void require(Plan plan, List<HarnessBoard> boards) {
    List<Difference> differences = boards.isEmpty() ? List.of() : check(plan, boards);
    if (!differences.isEmpty()) {
      throw new IllegalStateException(
          "build board: "
              + String.join("; ", differences.stream().map(Difference::toString).toList()));
    }
  }

  private double lengthMm(Plan plan, Lead lead) {
    Optional<String> one = tip(plan, lead, lead.a(), true);
    Optional<String> other = tip(plan, lead, lead.b(), false);
    if (one.isEmpty() || other.isEmpty()) {
      return Double.NaN;
    }
    boolean turnsBack = lead.runs().isEmpty() && lead.a().place().equals(lead.b().place());
    String place = places.get(lead.a().place());
    if (turnsBack && place != null) {
      return betweenMm(one.get(), place) + betweenMm(place, other.get());
    }
    return betweenMm(one.get(), other.get());
  }

  private Optional<String> tip(Plan plan, Lead lead, LeadEnd end, boolean isSideA) {
    if (end.asMade() instanceof Landing.InJoint joint) {
      return Optional.ofNullable(joints.get(joint.joint()));
    }
    return plan.harness().tails().stream()
        .filter(tail -> tail.ends().contains(new Tail.End(lead.id(), isSideA)))
        .findFirst()
        .flatMap(tail -> Optional.ofNullable(tails.get(tail.id())));
  }

  private void sheet(String prefix, BoardPlan.Sheet sheet) {
    for (int i = 0; i < sheet.lines().size(); i++) {
      BoardPlan.Line line = sheet.lines().get(i);
      List<Point> points = line.points();
      String loose = prefix + "sheet " + sheet.number() + " line " + i + " ";
      String start = line.start().map(it -> prefix + it).orElse(loose + "start");
      String end = line.end().map(it -> prefix + it).orElse(loose + "end");
      join(start, end, alongMm(points, points.get(points.size() - 1)).orElseThrow());
      for (BoardPlan.Spot spot : sheet.splices()) {
        if (spot.branch().equals(line.branch())) {
          Optional<Double> at = alongMm(points, spot.at());
          if (at.isPresent()) {
            double whole = alongMm(points, points.get(points.size() - 1)).orElseThrow();
            join(start, prefix + spot.name(), at.get());
            join(prefix + spot.name(), end, whole - at.get());
          }
        }
      }
      for (BoardPlan.Match match : sheet.matches()) {
        String letter = prefix + "match line " + match.letter();
        if (apartMm(match.at(), points.get(0)) < SAME_MM) {
          join(start, letter, 0);
        }
        if (apartMm(match.at(), points.get(points.size() - 1)) < SAME_MM) {
          join(end, letter, 0);
        }
      }
    }
  }

  private void join(String one, String other, double mm) {
    beside.computeIfAbsent(one, any -> new LinkedHashMap<>()).put(other, mm);
    beside.computeIfAbsent(other, any -> new LinkedHashMap<>()).put(one, mm);
  }

  /** How far along a drawn line a point lies; empty where it lies beside it. */
  private static Optional<Double> alongMm(List<Point> line, Point point) {
    double before = 0;
    Optional<Double> found = Optional.empty();
    for (int i = 1; i < line.size(); i++) {
      double in = apartMm(line.get(i - 1), point);
      double out = apartMm(point, line.get(i));
      double whole = apartMm(line.get(i - 1), line.get(i));
      if (in + out - whole < 1e-9) {
        found = Optional.of(before + in);
      }
      before += whole;
    }
    return found;
  }

  private static double apartMm(Point one, Point other) {
    return Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm());
  }

  /** Shortest way over the drawn lines. */
  private double betweenMm(String from, String to) {
    Map<String, Double> reached = new LinkedHashMap<>();
    Deque<String> open = new ArrayDeque<>();
    reached.put(from, 0.0);
    open.add(from);
    while (!open.isEmpty()) {
      String at = open.remove();
      double soFar = reached.getOrDefault(at, 0.0);
      for (Map.Entry<String, Double> next : beside.getOrDefault(at, Map.of()).entrySet()) {
        double mm = soFar + next.getValue();
        if (mm < reached.getOrDefault(next.getKey(), Double.POSITIVE_INFINITY) - 1e-9) {
          reached.put(next.getKey(), mm);
          open.add(next.getKey());
        }
      }
    }
    return reached.getOrDefault(to, Double.NaN);
  }
}
