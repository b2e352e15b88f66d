package org.loomwright.papers.section;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.loomwright.drawing.strip.CircuitStrip;
import org.loomwright.papers.circuit.KitCircuit;
import org.loomwright.papers.circuit.KitCircuits;
import org.loomwright.papers.page.Html;

/** Every circuit of the kit from the battery to its load and back. */
final class StripsSection implements Section {
  private static final double WIDTH_MM = 174;

  /** Strips are drawn larger and printed smaller, their text still more than 1.8 mm high. */
  private static final double SCALE = 0.72;

  private static final Pattern SIZE =
      Pattern.compile("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"");

  @Override
  public String id() {
    return "strips";
  }

  @Override
  public String title() {
    return "Circuit strips";
  }

  @Override
  public void write(Pack pack, Html html) {
    List<KitCircuit> circuits = KitCircuits.of(pack.names());
    if (circuits.isEmpty()) {
      html.line("p", "", "No circuit of this kit has been worked out.");
      return;
    }
    html.line(
        "p",
        "",
        "Each circuit from left to right, from the battery to the load and back; letters tell where"
            + " a line goes on. Shaded bands are places. Under each part: its resistance, current"
            + " and voltage drop. Cases with the same parts share a strip; its figures are those of"
            + " the case that leaves the load the least voltage. Ways out and ways back are each"
            + " drawn once; in other cases they meet in other pairs.");
    for (KitCircuit it : circuits) {
      html.open("div", "keep")
          .line("h2", "", it.title() + ", " + it.in())
          .picture(scaled(CircuitStrip.svg(it.circuit(), WIDTH_MM / SCALE, pack.lettering())));
      if (!it.figures().isEmpty()) {
        html.line("p", "note", it.figures());
      }
      html.close("div");
    }
  }

  private static String scaled(String svg) {
    return SIZE.matcher(svg)
        .replaceFirst(
            it ->
                String.format(
                    Locale.ROOT,
                    "width=\"%.2fmm\" height=\"%.2fmm\"",
                    SCALE * Double.parseDouble(it.group(1)),
                    SCALE * Double.parseDouble(it.group(2))));
  }
}
