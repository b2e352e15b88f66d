package org.loomwright.papers.section;

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
    html.line("p", "lead", "Read all of them before the first step of the guide.");
    boolean gravest = true;
    for (Caution it : Cautions.of(pack.order(), pack.plan())) {
      html.open("div", gravest ? "box grave" : "box")
          .line("p", "title", it.title())
          .line("p", "", it.text())
          .close("div");
      gravest = false;
    }
  }
}
