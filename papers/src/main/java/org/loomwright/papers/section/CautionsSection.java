package org.loomwright.papers.section;

import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Caution;
import org.loomwright.papers.words.Cautions;

/** Cautions, right before the guide. */
final class CautionsSection implements Section {
  @Override
  public String id() {
    return "cautions";
  }

  @Override
  public String title() {
    return "Cautions";
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "lead",
        "Read all of them before the first step. The guide says each again, right before the step"
            + " that calls for it.");
    boolean gravest = true;
    for (Caution it : Cautions.of(pack.plan().guide())) {
      html.open("div", gravest ? "box grave" : "box")
          .line("p", "title", it.title())
          .line("p", "", it.text())
          .line("p", "note", "Guide, " + steps(it.steps()))
          .close("div");
      gravest = false;
    }
  }

  private static String steps(List<Integer> numbers) {
    return (numbers.size() == 1 ? "step " : "steps ")
        + numbers.stream().map(it -> Integer.toString(it)).collect(Collectors.joining(", "));
  }
}
