package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.drawing.FaceLegend;
import org.loomwright.papers.page.Html;

/** How to read the pack. */
final class HowToReadSection implements Section {
  @Override
  public String id() {
    return "read";
  }

  @Override
  public String title() {
    return "How to read this pack";
  }

  @Override
  public void write(Pack pack, Html html) {
    contents(html);
    html.line("h2", "", "Cases")
        .line(
            "p",
            "",
            "Vehicles of one model differ. What is done to a vehicle depends on its case: a letter"
                + " for what it is about, a number for the kind of vehicle. The guide asks what it"
                + " needs to know and leads to the right case by itself.")
        .line("h2", "", "Leads")
        .line(
            "p",
            "",
            "Each lead carries its label near both ends. End A is the source side of a supply and"
                + " the consumer side of a ground. A lead can be used as made, have one end changed"
                + " in the vehicle, or be parked: capped, labelled and taped back, never live. The"
                + " list of leads says which in which case. Colours are words with their IEC 60757"
                + " letters, base and tracer; nothing hangs on colour or shade alone.")
        .line("h2", "", "Connector faces")
        .line(
            "p",
            "",
            "A face is drawn at true relative places, as it is seen from the side named below it."
                + " The mating side has a double wall, the wire side a single one. Numbers are"
                + " upright in every view, so they may not stand as they are moulded. States are"
                + " those before the kit is fitted, where they are the same on every build.");
    FacesSection.legend(FaceLegend.all(), html);
    html.line(
            "p",
            "",
            "The words beside a face are true for exactly the view they stand with. Every position"
                + " that is seen counts, blocked ones too. Where words and"
                + " the number moulded on the housing disagree, stop: it is another housing.")
        .line("h2", "", "Checks")
        .line(
            "p",
            "",
            "Each check gives its figure, its limit, how far it is from the limit as a share of the"
                + " limit, and where the limit comes from. It holds, is marginal or fails. A kit"
                + " with a failing check is not released; a marginal one needs a named person's"
                + " reason. How each figure was found stands in the calculation report,"
                + " calculations.pdf, under the same number.")
        .line("h2", "", "Guide")
        .line(
            "p",
            "",
            "Steps are followed by number. Where the way parts, a fork says where to go on; where"
                + " there is none, the next number follows. Tick the box when a step is done and"
                + " write measured values on the lines; beside each stands what it has to be and"
                + " what to do when it is not. Lines at the end of each part of the work are for"
                + " what does not look as described.");
    if (!pack.plan().notes().isEmpty()) {
      html.line("h2", "", "How this plan was made").bullets(pack.plan().notes());
    }
    html.line("h2", "", "What it was made from")
        .line("p", "", String.join(". ", documents(pack)) + ".");
  }

  /** Two columns, read downwards. */
  private static void contents(Html html) {
    List<Section> sections = Pack.sections();
    int rows = (sections.size() + 1) / 2;
    html.open("table", "contents");
    for (int row = 0; row < rows; row++) {
      html.open("tr", "");
      entry(sections.get(row), html);
      html.line("td", "gap", "");
      if (row + rows < sections.size()) {
        entry(sections.get(row + rows), html);
      } else {
        html.line("td", "gap", "").line("td", "gap", "");
      }
      html.close("tr");
    }
    html.close("table");
  }

  private static void entry(Section section, Html html) {
    html.open("td", "")
        .link(section.id(), "", section.title())
        .close("td")
        .open("td", "at")
        .link(section.id(), "at", "")
        .close("td");
  }

  private static List<String> documents(Pack pack) {
    List<String> lines = new java.util.ArrayList<>();
    lines.add(
        "Vehicle: "
            + pack.order().vehicle().name()
            + ", revision "
            + pack.order().vehicle().revision());
    pack.order()
        .equipment()
        .forEach(it -> lines.add("Equipment: " + it.name() + ", revision " + it.revision()));
    lines.add(
        "Parts: " + pack.order().parts().name() + ", revision " + pack.order().parts().revision());
    lines.add(
        "Rules: " + pack.order().rules().name() + ", revision " + pack.order().rules().revision());
    return lines;
  }
}
