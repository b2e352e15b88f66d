package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/** What stands under the map: what found no room on it, the leads, and what the signs mean. */
final class MapKey {
  private static final double EDGE_MM = 0.6;
  private static final double COLUMN_GAP_MM = 4;
  private static final double COLUMN_LEAST_MM = 62;
  private static final double SAMPLE_MM = 10;

  private final Scene scene;
  private final RunGraph graph;
  private final Plan plan;
  private final Vehicle vehicle;
  private final List<Boolean> always;
  private final double size;
  private final int columns;
  private final double columnMm;
  private final double widthMm;

  MapKey(Scene scene, Plan plan, Vehicle vehicle, List<Boolean> always, double widthMm) {
    this.scene = scene;
    this.graph = scene.graph();
    this.plan = plan;
    this.vehicle = vehicle;
    this.always = always;
    this.size = scene.size();
    this.widthMm = widthMm;
    this.columns =
        Math.max(
            1, (int) ((widthMm - 2 * EDGE_MM + COLUMN_GAP_MM) / (COLUMN_LEAST_MM + COLUMN_GAP_MM)));
    this.columnMm = (widthMm - 2 * EDGE_MM - (columns - 1) * COLUMN_GAP_MM) / columns;
  }

  /** Draws something at a point of a row. */
  private interface Drawer {
    void draw(Sheet sheet, double left, double top);
  }

  /**
   * An entry of a column.
   *
   * @param height its height, mm
   * @param drawer draws it
   */
  private record Entry(double height, Drawer drawer) {}

  List<RunMap.Block> blocks() {
    List<RunMap.Block> blocks = new ArrayList<>();
    if (!scene.extra().isEmpty()) {
      blocks.addAll(text("Also on the map: " + String.join("; ", scene.extra()) + "."));
    }
    List<Entry> cards = new ArrayList<>();
    for (Card card : scene.below()) {
      Card wide = new Card(card.stop(), graph.leads(), true, size, columnMm);
      cards.add(
          new Entry(
              wide.height() + 1,
              (sheet, left, top) -> wide.draw(sheet, graph.leads(), always, left, top)));
    }
    blocks.addAll(rows(cards));
    if (!graph.leads().isEmpty()) {
      blocks.addAll(head("Leads"));
      blocks.addAll(rows(graph.leads().stream().map(this::lead).toList()));
    }
    List<Entry> signs = signs();
    if (!signs.isEmpty()) {
      blocks.addAll(head("Signs"));
      blocks.addAll(rows(signs));
    }
    String left = runsLeft();
    if (!left.isEmpty()) {
      blocks.addAll(text(left));
    }
    return blocks;
  }

  private Entry lead(Lead lead) {
    boolean all = always.get(graph.leads().indexOf(lead));
    List<String> only = EndRows.only(plan, lead);
    String words =
        lead.id()
            + " "
            + lead.colour().text()
            + " ("
            + lead.colour().code()
            + "), "
            + lead.what()
            + (all
                ? ""
                : only.isEmpty()
                    ? "; parked in every case"
                    : (only.size() == 1 ? "; only in case " : "; only in cases ")
                        + String.join(", ", only));
    List<String> lines = Words.wrap(words, size, columnMm - SAMPLE_MM - 1.5);
    return new Entry(
        Words.height(lines, size) + 0.5,
        (sheet, left, top) -> {
          Card.swatch(sheet, lead, all, left, top + Words.PITCH * size / 2, SAMPLE_MM);
          sheet.lines(Hold.LEFT, left + SAMPLE_MM + 1.5, top, size, lines);
        });
  }

  private List<Entry> signs() {
    List<Entry> entries = new ArrayList<>();
    boolean unusedStop = graph.stops().stream().anyMatch(it -> !it.used());
    if (graph.stops().stream().anyMatch(it -> it.used())) {
      entries.add(
          sign(
              (sheet, left, top) -> stop(sheet, new Spot(left + SAMPLE_MM / 2, top + 2.2), true),
              "place where leads pass or end"));
    }
    if (unusedStop) {
      entries.add(
          sign(
              (sheet, left, top) -> stop(sheet, new Spot(left + SAMPLE_MM / 2, top + 2.2), false),
              "place without leads"));
    }
    Set<EndKind> kinds = new LinkedHashSet<>();
    for (EndKind kind : EndKind.values()) {
      if (graph.stops().stream()
          .flatMap(it -> it.ends().stream())
          .anyMatch(it -> it.kind() == kind)) {
        kinds.add(kind);
      }
    }
    for (EndKind kind : kinds) {
      entries.add(
          sign(
              (sheet, left, top) ->
                  EndPen.draw(sheet, kind, new Spot(left + SAMPLE_MM / 2, top + 2.2)),
              kind.words()));
    }
    if (always.contains(false)) {
      entries.add(
          sign(
              (sheet, left, top) ->
                  sheet.line(
                      "sample",
                      new Spot(left, top + 2.2),
                      new Spot(left + SAMPLE_MM, top + 2.2),
                      Sheet.INK,
                      1,
                      "4 1.2"),
              "lead with gaps: serves only the cases in brackets"));
    }
    state(entries, RunState.UNUSED, "run without leads");
    state(entries, RunState.FORBIDDEN, "run that may not be used");
    if (graph.runs().stream().anyMatch(it -> !it.joints().isEmpty())) {
      entries.add(
          sign(
              (sheet, left, top) ->
                  sheet.circle(
                      "joint",
                      new Spot(left + SAMPLE_MM / 2, top + 2.2),
                      1.1,
                      Sheet.INK,
                      "#fff",
                      0.3),
              "where a joint lies in its run"));
    }
    return entries;
  }

  private void state(List<Entry> entries, RunState state, String words) {
    if (graph.runs().stream().noneMatch(it -> it.state() == state)) {
      return;
    }
    entries.add(
        sign(
            (sheet, left, top) -> {
              Spot from = new Spot(left, top + 2.2);
              sheet.line("sample", from, new Spot(left + SAMPLE_MM, top + 2.2), "#8a8a8a", 0.5, "");
              for (int side = -1; side <= 1 && state == RunState.FORBIDDEN; side += 2) {
                sheet.line(
                    "cross",
                    new Spot(left + SAMPLE_MM / 2 - 1.3, top + 2.2 - side * 1.3),
                    new Spot(left + SAMPLE_MM / 2 + 1.3, top + 2.2 + side * 1.3),
                    Sheet.INK,
                    0.45,
                    "");
              }
            },
            words));
  }

  private static void stop(Sheet sheet, Spot at, boolean used) {
    sheet.circle("sample", at, 1.9, "#fff", used ? Sheet.INK : "#777", used ? 0.5 : 0.3);
    sheet.circle("sample", at, 1.2, used ? Sheet.INK : "#fff", used ? Sheet.INK : "#777", 0.25);
  }

  private Entry sign(Drawer symbol, String words) {
    List<String> lines = Words.wrap(words, size, columnMm - SAMPLE_MM - 1.5);
    double down = Math.max(0, 2.2 - Words.PITCH * size / 2);
    double height = Math.max(EndPen.SIDE_MM + 0.4, down + Words.height(lines, size));
    return new Entry(
        height + 0.5,
        (sheet, left, top) -> {
          symbol.draw(sheet, left, top);
          sheet.lines(Hold.LEFT, left + SAMPLE_MM + 1.5, top + down, size, lines);
        });
  }

  private String runsLeft() {
    List<String> words = new ArrayList<>();
    for (String line : plan.harness().runsLeft()) {
      String named = line;
      for (Run run : vehicle.runs()) {
        named = named.replace("run " + run.id() + " along ", "");
      }
      words.add(named);
    }
    if (words.isEmpty()) {
      vehicle.runs().stream()
          .filter(it -> it.restraint() || it.highVoltage())
          .forEach(
              it ->
                  words.add(
                      it.follows()
                          + (it.restraint() ? ": restraint wiring" : "")
                          + (it.highVoltage() ? ": high voltage" : "")));
    }
    return words.isEmpty() ? "" : "Runs that may not be used: " + String.join("; ", words) + ".";
  }

  private List<RunMap.Block> head(String words) {
    List<String> lines = List.of(words);
    return List.of(
        block(
            Words.height(lines, 1.15 * size),
            2,
            (sheet, left, top) -> {
              sheet.line(
                  "rule",
                  new Spot(EDGE_MM, top),
                  new Spot(widthMm - EDGE_MM, top),
                  Sheet.INK,
                  0.3,
                  "");
              sheet.lines(Hold.LEFT, left, top + 0.2, 1.15 * size, lines);
            }));
  }

  private List<RunMap.Block> text(String words) {
    List<RunMap.Block> blocks = new ArrayList<>();
    List<String> lines = Words.wrap(words, size, widthMm - 2 * EDGE_MM - 0.1);
    blocks.add(
        block(
            Words.height(lines, size),
            2,
            (sheet, left, top) -> sheet.lines(Hold.LEFT, left, top, size, lines)));
    return blocks;
  }

  /** Entries in columns, read downwards, in rows of equal place so that pages may part them. */
  private List<RunMap.Block> rows(List<Entry> entries) {
    List<RunMap.Block> blocks = new ArrayList<>();
    int perColumn = (entries.size() + columns - 1) / columns;
    for (int row = 0; row < perColumn; row++) {
      List<Entry> across = new ArrayList<>();
      for (int column = 0;
          column < columns && row + column * perColumn < entries.size();
          column++) {
        across.add(entries.get(row + column * perColumn));
      }
      blocks.add(
          block(
              across.stream().mapToDouble(Entry::height).max().orElse(0),
              0.3,
              (sheet, left, top) -> {
                for (int column = 0; column < across.size(); column++) {
                  across
                      .get(column)
                      .drawer()
                      .draw(sheet, left + column * (columnMm + COLUMN_GAP_MM), top);
                }
              }));
    }
    return blocks;
  }

  private static RunMap.Block block(double height, double gap, Drawer drawer) {
    return new RunMap.Block() {
      @Override
      public double heightMm() {
        return height;
      }

      @Override
      public double gapMm() {
        return gap;
      }

      @Override
      public void draw(Sheet sheet, double top) {
        drawer.draw(sheet, EDGE_MM, top);
      }
    };
  }
}
