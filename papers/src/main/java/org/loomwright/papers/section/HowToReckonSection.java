package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;

/** How to read the calculation report, and what its letters stand for. */
final class HowToReckonSection implements Section {
  private static final List<List<String>> LETTERS =
      List.of(
          List.of("r₂₀", "Ω/m", "resistance of one metre of the wire with its conductor at 20 °C"),
          List.of(
              "r, r(T)",
              "Ω/m",
              "the same at temperature T: r₂₀ × (234.5 + T) / 254.5. Copper gains resistance as if it"
                  + " had none at −234.5 °C"),
          List.of("T, Ta, Ts", "°C", "temperature of the conductor, the air, the outside"),
          List.of("L, Lreturn", "m", "length of the lead; of the way back, where it counts"),
          List.of("R, I, V", "Ω, A, V", "resistance, current, voltage; V = I × R, heat = I² × R"),
          List.of("ρ₂₀", "Ω mm", "resistivity of copper at 20 °C"),
          List.of("S", "mm²", "copper area"),
          List.of(
              "D, d", "mm", "outside diameter of the wire or bundle, diameter of the conductor"),
          List.of(
              "q, Rth",
              "W/m, K m/W",
              "heat one metre gives off; kelvins from conductor to outside for one watt per metre"),
          List.of(
              "Nu, Ra, Pr",
              "",
              "Nusselt, Rayleigh and Prandtl number: how readily still air takes heat away"),
          List.of("ε, σ", "", "emissivity of the outside; the constant of Stefan and Boltzmann"),
          List.of(
              "I²t",
              "A²s",
              "what a fuse lets through, or a wire withstands, in a short circuit: current squared"
                  + " times time"),
          List.of(
              "k",
              "A √s/mm²",
              "what one mm² of copper withstands between two temperatures when no heat gets away:"
                  + " I²t = k² S²"));

  @Override
  public String id() {
    return "how";
  }

  @Override
  public String title() {
    return "How to read this report";
  }

  @Override
  public void write(Pack pack, Html html) {
    html.bullets(
            List.of(
                "Each lead has pages of its own; needs and shared parts of the vehicle follow.",
                "Inputs stand first, with the values the documents, the rules or the design give."
                    + " Every line has a number, and a line stands only once: where it is used"
                    + " again, its number is named.",
                "A reckoned line gives its formula in letters or words and, below it, the same with"
                    + " numbers. Those are the values of the lines named beside it, in that order."
                    + " Numbers that no line is named for are constants.",
                "A line without numbers put in is read from a table, assumed, or found by search or"
                    + " balance, as its formula says. A balance can be proved with the lines below"
                    + " it: what goes in comes out.",
                "Figures are rounded only in print. A sum done again with the printed numbers meets"
                    + " the printed figure up to its last digit but one.",
                "The margin is the distance from figure to limit, on the good side, as a share of the"
                    + " limit. Checks carry the numbers they have in the pack.",
                "Numbers in square brackets name the sources at the end."))
        .line("h2", "", "Letters");
    html.table(
        List.of(Column.key("Letter", 14), Column.text("Unit", 14), Column.text("Stands for", 72)),
        LETTERS);
    html.line("h2", "", "What it can't tell")
        .line(
            "p",
            "",
            "The sums are as good as what they start from. Lengths, temperatures and what the factory"
                + " wired are measured, told or assumed, and the documents say which. Sums for wires"
                + " in bundles and for air that stands still are models of the real thing, taken on"
                + " the cautious side. A trained person judges whether they fit the vehicle at hand.");
    if (!pack.plan().notes().isEmpty()) {
      html.line("h2", "", "How this plan was made").bullets(pack.plan().notes());
    }
  }
}
