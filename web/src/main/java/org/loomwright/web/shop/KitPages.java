package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.BoardTooSmall;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.drawing.strip.CircuitStrip;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.papers.circuit.KitCircuit;
import org.loomwright.papers.circuit.KitCircuits;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.section.Pack;
import org.loomwright.papers.section.Section;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.papers.words.Names;
import org.loomwright.papers.words.Standing;

/**
 * A planned kit with the markup of its stages. That of a stage is made when it is first asked for,
 * once; pages may be shared between threads.
 */
public final class KitPages {
  private static final double WIDE_MM = 230;
  private static final double NARROW_MM = 92;

  /**
   * A part of a stage.
   *
   * @param id its name in addresses
   * @param title its heading
   * @param markup what it shows, safe to put into a page
   */
  public record Part(String id, String title, String markup) {}

  private final Names names;
  private final Standing standing;
  private final List<CheckRow> checks;
  private final Map<Display, Map<Stage, Once<List<Part>>>> parts = new EnumMap<>(Display.class);

  private KitPages(KitOrder order, Plan plan) {
    this.names = new Names(order, plan);
    this.standing = Standing.of(plan);
    this.checks = List.copyOf(CheckRow.of(plan));
    for (Display units : Display.values()) {
      Pack pack = new Pack(names, Lettering.fitted(), units);
      Map<Stage, Once<List<Part>>> stages = new EnumMap<>(Stage.class);
      for (Stage stage : Stage.values()) {
        stages.put(stage, new Once<>(() -> make(pack, stage)));
      }
      parts.put(units, stages);
    }
  }

  /** A planned kit; no markup is made yet. */
  static KitPages of(KitOrder order, Plan plan) {
    return new KitPages(order, plan);
  }

  /** The kit, its plan and the names in it. */
  public Names names() {
    return names;
  }

  /** Whether it may be released. */
  public Standing standing() {
    return standing;
  }

  /** List of checks, the worst first. */
  public List<CheckRow> checks() {
    return checks;
  }

  /** The kit with its documents. */
  public KitOrder order() {
    return names.order();
  }

  /** Its plan. */
  public Plan plan() {
    return names.plan();
  }

  /** Parts of a stage, lengths and wire sizes in the wanted units. */
  public List<Part> of(Stage stage, Display units) {
    return Optional.ofNullable(parts.get(units))
        .flatMap(it -> Optional.ofNullable(it.get(stage)))
        .map(Once::get)
        .orElse(List.of());
  }

  private List<Part> make(Pack pack, Stage stage) {
    Map<String, Section> sections =
        Pack.sections().stream().collect(Collectors.toMap(Section::id, Function.identity()));
    String guide = Href.kit(order().kit().id(), Stage.GUIDE);
    List<Part> made = new ArrayList<>();
    for (String id : stage.sections()) {
      Section section = sections.get(id);
      if (section == null) {
        throw new IllegalStateException("the pack has no section '" + id + "'");
      }
      made.add(part(pack, section, guide));
    }
    if (stage == Stage.SUMS) {
      made.addAll(SumPictures.of(pack));
    }
    if (stage == Stage.PACK) {
      made.add(board(order(), plan()));
    }
    return List.copyOf(made);
  }

  private static Part part(Pack pack, Section section, String guide) {
    return switch (section.id()) {
      case "map" -> new Part("map", section.title(), map(pack));
      case "strips" -> new Part("strips", section.title(), strips(pack));
      default -> {
        Html html = new Html();
        section.writeForScreen(pack, html);
        yield new Part(section.id(), section.title(), PaperMarkup.forScreen(html.markup(), guide));
      }
    };
  }

  private static String map(Pack pack) {
    Optional<Picture> picture =
        pack.order()
            .vehicle()
            .planView()
            .flatMap(PlanView::picture)
            .flatMap(it -> pack.order().pictures().find(it.file()));
    return both(
        width ->
            RunMap.svg(
                pack.plan(),
                pack.order().vehicle(),
                picture,
                width,
                pack.lettering(),
                pack.units()));
  }

  private static String strips(Pack pack) {
    List<KitCircuit> circuits = KitCircuits.of(pack.names(), pack.units());
    if (circuits.isEmpty()) {
      return "<p>No circuit of this kit has been worked out.</p>";
    }
    Html html = new Html();
    StringBuilder markup = new StringBuilder();
    html.line(
        "p",
        "",
        "Each circuit from left to right, from the battery to the load and back; letters tell where"
            + " a line goes on. Shaded bands are places. Under each part: its resistance, current"
            + " and voltage drop.");
    markup.append(html.markup());
    for (KitCircuit it : circuits) {
      markup
          .append(new Html().line("h3", "", it.title() + ", " + it.in()).markup())
          .append(both(width -> CircuitStrip.svg(it.circuit(), width, pack.lettering())));
      if (!it.figures().isEmpty()) {
        markup.append(new Html().line("p", "note", it.figures()).markup());
      }
    }
    return markup.toString();
  }

  /** A picture for a desk and one for a phone; the style sheet shows the one that fits. */
  static String both(DoubleFunction<String> svg) {
    return "<div class=\"picture for-wide\">"
        + flexible(svg.apply(WIDE_MM))
        + "</div><div class=\"picture for-narrow\">"
        + flexible(svg.apply(NARROW_MM))
        + "</div>";
  }

  /** A picture that takes the room it is given. */
  static String flexible(String svg) {
    return svg.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\"");
  }

  private static Part board(KitOrder order, Plan plan) {
    String title = "Build board";
    StringBuilder markup = new StringBuilder();
    try {
      for (HarnessBoard board : HarnessBoard.of(plan, order)) {
        for (Sheet sheet : board.plan().sheets()) {
          String svg = BoardSvg.document(board.plan(), sheet, board.words());
          markup
              .append(
                  "<div class=\"picture scrolls as-written\" tabindex=\"0\" role=\"group\""
                      + " aria-label=\"Build board, scrolls sideways\">")
              .append(flexible(svg.substring(svg.indexOf("<svg"))))
              .append("</div>");
        }
      }
    } catch (BoardTooSmall small) {
      return new Part(
          "board",
          title,
          new Html()
              .line("p", "", "The board can't be laid out: " + small.getMessage() + ".")
              .markup());
    }
    return new Part(
        "board",
        title,
        markup.isEmpty()
            ? "<p>This kit has no harness to lay out.</p>"
            : "<p>Shown reduced; the pack holds it at true length.</p>" + markup);
  }
}
