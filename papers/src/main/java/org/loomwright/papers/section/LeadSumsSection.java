package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Lead;
import org.loomwright.papers.calculation.Calculation;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** The sums of one lead, on pages of its own. */
final class LeadSumsSection implements Section {
  private final Calculation.Subject subject;

  LeadSumsSection(Calculation.Subject subject) {
    this.subject = subject;
  }

  @Override
  public String id() {
    return "lead-" + subject.lead();
  }

  @Override
  public String title() {
    return subject.title();
  }

  @Override
  public void write(Pack pack, Html html) {
    pack.plan().design().leads().stream()
        .filter(it -> it.id().equals(subject.lead()))
        .findFirst()
        .ifPresent(it -> facts(pack, it, html));
    ProtectionCharts.write(pack, subject.lead(), html);
    SumsTables.write(pack, subject, html);
  }

  private void facts(Pack pack, Lead lead, Html html) {
    Names names = pack.names();
    List<String[]> facts = new ArrayList<>();
    facts.add(new String[] {"Label", lead.label()});
    facts.add(new String[] {"Purpose", lead.what()});
    facts.add(
        new String[] {
          "Wire",
          names.part(lead.wire())
              + " ("
              + lead.wire()
              + "), "
              + Figures.area(lead.areaMm2())
              + " mm², "
              + lead.colour().text()
        });
    facts.add(new String[] {"From", names.end(lead.a()).replace("\n", "; ")});
    facts.add(new String[] {"To", names.end(lead.b()).replace("\n", "; ")});
    facts.add(
        new String[] {
          "Route",
          lead.runs().stream()
              .map(it -> LeadsSection.run(pack, it))
              .collect(Collectors.joining("; "))
        });
    facts.add(
        new String[] {
          "Length",
          Figures.mm(lead.lengthMm()) + " mm finished, path " + Figures.mm(lead.pathMm()) + " mm"
        });
    ambient().ifPresent(it -> facts.add(new String[] {"Ambient", it}));
    facts.add(new String[] {"Load", Figures.amps(lead.currentA()) + " A at most, in any case"});
    facts.add(new String[] {"Fuse", fuse(pack, lead)});
    html.open("table", "facts");
    for (String[] fact : facts) {
      html.open("tr", "").line("td", "what", fact[0]).line("td", "", fact[1]).close("tr");
    }
    html.close("table");
  }

  private java.util.Optional<String> ambient() {
    return subject.inputs().stream()
        .filter(it -> it.what().equals("ambient") && it.unit().equals("°C"))
        .map(it -> it.value() + " °C, line " + it.number())
        .findFirst();
  }

  private static String fuse(Pack pack, Lead lead) {
    if (lead.own().isPresent()) {
      return "none: a lead of the user's own, tied to no feed; what the equipment puts on it the"
          + " equipment has to protect";
    }
    if (lead.fuseA() == 0) {
      return "none of its own: a ground, judged with the fuses of the feeds it serves";
    }
    List<FuseFit> fitted =
        pack.plan().design().fuses().stream().filter(it -> it.leads().contains(lead.id())).toList();
    String where =
        fitted.stream()
            .map(it -> "slot " + it.slot() + " of " + pack.names().owner(it.block()))
            .distinct()
            .collect(Collectors.joining(" or "));
    return Figures.amps(lead.fuseA()) + " A" + (where.isEmpty() ? ", the factory's" : ", " + where);
  }
}
