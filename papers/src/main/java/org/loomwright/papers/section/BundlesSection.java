package org.loomwright.papers.section;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.bundle.BundleSection;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.quantity.Display;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/** Each bundle with its section at true scale, covering, clips and holes. */
final class BundlesSection implements Section {
  @Override
  public String id() {
    return "bundles";
  }

  @Override
  public String title() {
    return "Bundles";
  }

  @Override
  public void write(Pack pack, Html html) {
    List<Bundle> bundles = pack.plan().harness().bundles();
    if (bundles.isEmpty()) {
      html.line("p", "", "No leads of this kit lie together.");
      return;
    }
    html.line(
        "p",
        "",
        "Sections are drawn at true scale: 1 mm on this sheet is 1 mm of the bundle. Lengths are as"
            + " made, tolerance of the run included.");
    html.open("table", "bundles");
    for (Bundle bundle : bundles) {
      html.open("tr", "").open("td", "section");
      html.picture(BundleSection.svg(bundle, pack.plan().design().leads(), pack.lettering()));
      html.close("td").open("td", "");
      html.line("p", "title", heading(pack, bundle));
      html.open("table", "facts");
      for (String[] fact : facts(pack, bundle)) {
        html.open("tr", "").line("td", "what", fact[0]).line("td", "", fact[1]).close("tr");
      }
      html.close("table").close("td").close("tr");
    }
    html.close("table");
  }

  private static String heading(Pack pack, Bundle bundle) {
    return Figures.capital(pack.names().place(bundle.from()))
        + " to "
        + pack.names().place(bundle.to());
  }

  private static List<String[]> facts(Pack pack, Bundle bundle) {
    List<String[]> facts = new ArrayList<>();
    facts.add(new String[] {"Along", LeadsSection.run(pack, bundle.run())});
    facts.add(
        new String[] {"Leads", bundle.leads().size() + ": " + String.join(", ", bundle.leads())});
    facts.add(
        new String[] {
          "Size",
          length(pack, bundle.lengthMm())
              + " long, "
              + fine(pack, bundle.diameterMm())
              + " across, "
              + fine(pack, bundle.overallMm())
              + " over the covering"
        });
    facts.add(
        new String[] {
          "Covering",
          bundle
              .covering()
              .map(it -> covering(pack, it))
              .orElse("none on file takes this bundle and its heat")
        });
    facts.add(
        new String[] {
          "Bends", "radius of at least " + length(pack, Math.ceil(bundle.bendRadiusMm()))
        });
    facts.add(
        new String[] {
          "Clips",
          bundle.clips().map(it -> clips(pack, it)).orElse("none on file takes this bundle")
        });
    for (Bundle.Passage it : bundle.passages()) {
      facts.add(new String[] {"Hole", passage(pack, it)});
    }
    return facts;
  }

  private static String covering(Pack pack, Bundle.Covered it) {
    return pack.names().part(it.part())
        + " ("
        + it.part()
        + "), over "
        + length(pack, it.lengthMm())
        + it.tapeMm().map(tape -> ", " + metres(pack, tape) + " of tape").orElse("")
        + it.fill().map(fill -> ", filled to " + Figures.share(fill)).orElse("");
  }

  private static String clips(Pack pack, Bundle.Clips it) {
    return it.count()
        + " of "
        + pack.names().part(it.part())
        + " ("
        + it.part()
        + ")"
        + (it.count() > 1 ? ", " + length(pack, it.spacingMm()) + " apart" : "");
  }

  private static String passage(Pack pack, Bundle.Passage it) {
    return it.hole()
        + ", "
        + it.grommet()
            .map(part -> "fit " + pack.names().part(part) + " (" + part + ")")
            .orElse("as it is")
        + ": bore "
        + fine(pack, it.boreMm())
        + ", filled to "
        + Figures.share(it.fill());
  }

  private static double tenths(double mm) {
    return Math.round(10 * mm) / 10.0;
  }

  private static String length(Pack pack, double mm) {
    return Figures.mm(mm, pack.units()) + " " + pack.units().lengthUnit();
  }

  private static String fine(Pack pack, double mm) {
    double shown = pack.units() == Display.METRIC ? tenths(mm) : mm;
    return Figures.fineMm(shown, pack.units()) + " " + pack.units().lengthUnit();
  }

  private static String metres(Pack pack, double mm) {
    return pack.units() == Display.METRIC
        ? Figures.quantity(Math.ceil(mm / 10) / 100) + " m"
        : length(pack, mm);
  }
}
