package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.words.Names;

/**
 * What the sections are made from.
 *
 * @param names the kit, its plan and the names in it
 * @param lettering how text gets into pictures
 */
public record Pack(Names names, Lettering lettering) {

  /** The kit as ordered. */
  public KitOrder order() {
    return names.order();
  }

  /** The plan. */
  public Plan plan() {
    return names.plan();
  }

  /** Kit id and revision, as printed on every page. */
  public String ident() {
    return "kit " + order().kit().id() + " · revision " + order().kit().revision();
  }

  /** The sections after the cover, in printed order. */
  public static List<Section> sections() {
    return List.of(
        new HowToReadSection(),
        new GapSection(),
        new NumbersSection(),
        new CasesSection(),
        new LeadsSection(),
        new RunMapSection(),
        new BundlesSection(),
        new StripsSection(),
        new CutSection(),
        new PartsSection(),
        new FacesSection(),
        new ChecksSection(),
        new CautionsSection(),
        new GuideSection(),
        new ProofSection());
  }
}
