package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.papers.page.Html;

/** Where formulas, values and limits come from. */
final class SourcesSection implements Section {
  private final List<String> sources;

  SourcesSection(List<String> sources) {
    this.sources = List.copyOf(sources);
  }

  @Override
  public String id() {
    return "sources";
  }

  @Override
  public String title() {
    return "Sources";
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
            "p",
            "",
            "\u201CCommon practice\u201D is a habit of the trade without a publication behind it;"
                + " \u201Cfrom memory\u201D was not compared with the publication. Check both before you"
                + " rely on them.")
        .open("div", "notes");
    sources.forEach(it -> html.line("p", "source", pack.names().prose(it)));
    html.close("div");
  }
}
