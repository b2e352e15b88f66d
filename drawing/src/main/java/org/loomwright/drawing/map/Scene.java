package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.PlanView;

/** Where everything on the map stands. */
final class Scene {
  private static final double STOP_MOST_MM = 7;
  private static final double STOP_LEAST_MM = 2.1;
  private static final double TRACK_MOST_MM = 1.15;
  private static final double JOINT_MM = 1.1;

  /** How far the crosses of a run that may not be used reach. */
  private static final double CROSS_MM = 1.5;

  private static final double LEADER_MOST_MM = 5;
  private static final double[] ALONG = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82};
  private static final double[] OFF = {1, 2.5, 4.5};

  /** Farthest that a leader costs, so that a card far off stands below the map instead. */
  private static final double COST_MOST = 110;

  /**
   * The same where only names stand on a narrow map: one far off would stretch the map, and is told
   * below with its number instead.
   */
  private static final double NARROW_COST_MOST = 14;

  /** The same for a name that stands below anyway. */
  private static final double NAME_COST_MOST = 9;

  private final RunGraph graph;
  private final Display units;
  private final MapLayout layout;
  private final double size;
  private final double pitch;
  private final double[] radius;
  private final List<List<Spot>> paths;
  private final Obstacles obstacles;
  private final List<Note> notes = new ArrayList<>();
  private final List<Placed> cards = new ArrayList<>();
  private final List<Card> below = new ArrayList<>();
  private final List<String> extra = new ArrayList<>();
  private final double top;
  private final double bottom;

  /** Lines of text beside what they belong to. */
  record Note(Box box, List<String> lines, boolean faint) {}

  /** A card on the map; its leader ends at the card's edge. */
  record Placed(int stop, Card card, Box box, Segment leader) {}

  /**
   * @param onMap whether what ends at the stops is written on the map
   * @param rowMm distance of rows where stops are laid out in rows
   */
  Scene(
      RunGraph graph,
      Optional<PlanView> view,
      double widthMm,
      boolean onMap,
      double rowMm,
      double size,
      Display units) {
    this.graph = graph;
    this.units = units;
    this.size = size;
    boolean roomForCards = onMap && graph.stops().stream().anyMatch(it -> it.at().isPresent());
    // Beside a plan view cards stand at its sides too.
    double edge = roomForCards ? Math.max(9, 0.11 * widthMm) : 9;
    this.layout = MapLayout.of(graph, view, edge, widthMm - edge, rowMm);
    double most = Math.max(1.4, Math.min(STOP_MOST_MM, 0.3 * layout.leastApart()));
    this.pitch = Math.min(TRACK_MOST_MM, (2 * most - 1.2) / graph.mostTracks());
    this.radius = new double[graph.stops().size()];
    for (int i = 0; i < radius.length; i++) {
      radius[i] = Math.min(most, Math.max(STOP_LEAST_MM, tracks(i) * pitch / 2 + 0.6));
    }
    this.paths = RunPaths.of(graph, layout, view, most, widthMm);
    this.obstacles = new Obstacles(0.5, widthMm - 0.5);
    double highest = layout.ground().map(Box::top).orElse(Double.POSITIVE_INFINITY);
    double lowest = layout.ground().map(Box::bottom).orElse(Double.NEGATIVE_INFINITY);
    for (int i = 0; i < radius.length; i++) {
      Spot at = layout.at().get(i);
      obstacles.add(new Obstacles.Disc(at, radius[i]));
      highest = Math.min(highest, at.y() - radius[i]);
      lowest = Math.max(lowest, at.y() + radius[i]);
    }
    for (int i = 0; i < paths.size(); i++) {
      double half = Math.max(0.4, graph.runs().get(i).leads().size() * pitch / 2);
      double reach = Math.max(CROSS_MM, Plane.MITER_MOST * half);
      for (Segment part : Segment.through(paths.get(i))) {
        obstacles.add(new Obstacles.Band(part, half));
        highest = Math.min(highest, Math.min(part.from().y(), part.to().y()) - reach);
        lowest = Math.max(lowest, Math.max(part.from().y(), part.to().y()) + reach);
      }
    }
    runNotes();
    joints();
    cards(onMap, widthMm, highest, lowest);
    for (Note note : notes) {
      highest = Math.min(highest, note.box().top());
      lowest = Math.max(lowest, note.box().bottom());
    }
    for (Placed placed : cards) {
      highest = Math.min(highest, placed.box().top());
      lowest = Math.max(lowest, placed.box().bottom());
    }
    this.top = highest - 0.6;
    this.bottom = lowest + 0.6;
  }

  /** Tracks that meet a stop's edge side by side. */
  private int tracks(int stop) {
    int most = graph.ending(stop).size();
    for (MapRun run : graph.runs()) {
      if (run.from() == stop || run.to() == stop) {
        most = Math.max(most, run.leads().size());
      }
    }
    return most;
  }

  private void runNotes() {
    for (int i = 0; i < paths.size(); i++) {
      MapRun run = graph.runs().get(i);
      if (run.from() == run.to()) {
        continue;
      }
      String length =
          units == Display.METRIC
              ? String.format(Locale.ROOT, "%.0f mm", run.lengthMm())
              : units.lengthMm(run.lengthMm());
      List<String> lines =
          switch (run.state()) {
            case USED ->
                List.of(
                    length, run.leads().size() + (run.leads().size() == 1 ? " lead" : " leads"));
            case UNUSED -> List.of(length);
            case FORBIDDEN -> List.of("not allowed");
          };
      if (!beside(i, lines, run.state() != RunState.USED)
          && !(run.state() == RunState.USED && beside(i, List.of(String.join(", ", lines)), false))
          && run.state() != RunState.UNUSED) {
        extra.add(
            graph.stops().get(run.from()).number()
                + " to "
                + graph.stops().get(run.to()).number()
                + ": "
                + String.join(", ", lines));
      }
    }
  }

  /** Writes lines beside a run, where there is room. */
  private boolean beside(int run, List<String> lines, boolean faint) {
    double width = Words.width(lines, size) + 0.2;
    double height = Words.height(lines, size);
    double half = Math.max(0.4, graph.runs().get(run).leads().size() * pitch / 2);
    for (int i = 0; i < 2 * ALONG.length * OFF.length; i++) {
      Plane.Facing facing = Plane.at(paths.get(run), ALONG[i / 2 % ALONG.length]);
      double across = facing.angle() + (i % 2 == 0 ? -1 : 1) * Math.PI / 2;
      double reach =
          half
              + OFF[i / 2 / ALONG.length]
              + Math.abs(Math.cos(across)) * width / 2
              + Math.abs(Math.sin(across)) * height / 2;
      Spot middle = Plane.away(facing.at(), across, reach);
      Box box = Box.at(middle.x() - width / 2, middle.y() - height / 2, width, height);
      if (obstacles.free(box)) {
        obstacles.add(box);
        notes.add(new Note(box, lines, faint));
        return true;
      }
    }
    return false;
  }

  private void joints() {
    for (int i = 0; i < paths.size(); i++) {
      for (MapRun.JointDot dot : graph.runs().get(i).joints()) {
        Spot at = jointAt(i, dot);
        double half = Math.max(JOINT_MM, graph.runs().get(i).leads().size() * pitch / 2);
        double width = Words.width(List.of(dot.id()), size) + 0.2;
        double height = Words.height(List.of(dot.id()), size);
        boolean written = false;
        for (int turn = 0; turn < 16 && !written; turn++) {
          double angle = -Math.PI / 2 + turn * Math.PI / 8;
          Spot middle = Plane.away(at, angle, half + 1.2 + width / 2);
          Box box = Box.at(middle.x() - width / 2, middle.y() - height / 2, width, height);
          written = obstacles.free(box);
          if (written) {
            obstacles.add(box);
            notes.add(new Note(box, List.of(dot.id()), false));
          }
        }
        if (!written) {
          MapRun run = graph.runs().get(i);
          extra.add(
              "joint "
                  + dot.id()
                  + " between "
                  + graph.stops().get(run.from()).number()
                  + " and "
                  + graph.stops().get(run.to()).number());
        }
      }
    }
  }

  /** Where the dot of a joint is drawn: never under a stop. */
  Spot jointAt(int run, MapRun.JointDot dot) {
    List<Spot> path = paths.get(run);
    double length = Plane.length(path);
    double from = radius[graph.runs().get(run).from()] + JOINT_MM;
    double to = radius[graph.runs().get(run).to()] + JOINT_MM;
    double share =
        from + to >= length ? 0.5 : Math.min(1 - to / length, Math.max(from / length, dot.share()));
    return Plane.at(path, share).at();
  }

  private void cards(boolean onMap, double widthMm, double highest, double lowest) {
    double most = Math.min(60, 0.3 * widthMm);
    List<Integer> order = new ArrayList<>();
    List<Card> all = new ArrayList<>();
    for (int i = 0; i < graph.stops().size(); i++) {
      all.add(Card.fitting(graph.stops().get(i), graph.leads(), size, most));
      order.add(i);
    }
    order.sort(
        (one, other) ->
            Double.compare(
                all.get(other).width() * all.get(other).height(),
                all.get(one).width() * all.get(one).height()));
    CardPlacer placer = new CardPlacer(obstacles, highest, lowest);
    Placed[] placed = new Placed[all.size()];
    for (int sweep = 0; sweep < 2; sweep++) {
      for (int i : order) {
        if (!onMap && !graph.stops().get(i).ends().isEmpty()) {
          continue;
        }
        if (placed[i] != null) {
          placer.remove(placed[i], half(i));
        }
        Optional<Placed> found =
            placer.place(
                i,
                all.get(i),
                layout.at().get(i),
                radius[i],
                half(i),
                onMap ? COST_MOST : NARROW_COST_MOST);
        placed[i] = found.orElse(null);
      }
    }
    for (int i = 0; i < placed.length; i++) {
      Stop stop = graph.stops().get(i);
      if (placed[i] != null) {
        cards.add(placed[i]);
        continue;
      }
      if (stop.ends().isEmpty()) {
        extra.add(stop.number() + ": " + stop.name());
        continue;
      }
      below.add(all.get(i));
      // Its name at least may find room on the map.
      Card name = Card.fitting(stop.withoutEnds(), graph.leads(), size, most);
      placer
          .place(i, name, layout.at().get(i), radius[i], 0.2, NAME_COST_MOST)
          .ifPresent(cards::add);
    }
  }

  /** Half the width of the tracks that lead from a stop to its card. */
  private double half(int stop) {
    return Math.max(0.2, graph.ending(stop).size() * leaderPitch(stop) / 2);
  }

  /** Distance of the tracks that lead from a stop to its card. */
  double leaderPitch(int stop) {
    return Math.min(pitch, LEADER_MOST_MM / Math.max(1, graph.ending(stop).size()));
  }

  RunGraph graph() {
    return graph;
  }

  MapLayout layout() {
    return layout;
  }

  double size() {
    return size;
  }

  double pitch() {
    return pitch;
  }

  double radius(int stop) {
    return radius[stop];
  }

  List<Spot> path(int run) {
    return paths.get(run);
  }

  List<Note> notes() {
    return List.copyOf(notes);
  }

  List<Placed> cards() {
    return List.copyOf(cards);
  }

  /** Cards that found no room on the map. */
  List<Card> below() {
    return List.copyOf(below);
  }

  /** What found no room on the map, in words. */
  List<String> extra() {
    return List.copyOf(extra);
  }

  double top() {
    return top;
  }

  double heightMm() {
    return bottom - top;
  }

  /** Writes a note, moved down. */
  void write(Sheet sheet, Note note, double down) {
    for (int i = 0; i < note.lines().size(); i++) {
      sheet.text(
          Hold.MIDDLE,
          (note.box().left() + note.box().right()) / 2,
          note.box().top() + down + (i + 0.5) * Words.PITCH * size,
          size,
          note.faint() ? "#555" : Sheet.INK,
          note.lines().get(i));
    }
  }
}
