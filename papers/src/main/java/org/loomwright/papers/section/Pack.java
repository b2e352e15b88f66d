package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Display;
import org.loomwright.papers.words.Names;

/**
 * What the sections are made from.
 *
 * @param names the kit, its plan and the names in it
 * @param lettering how text gets into pictures
 * @param units units lengths and wire sizes are shown in
 */
public record Pack(Names names, Lettering lettering, Display units) {

  /** As printed: in metric units. */
  public Pack(Names names, Lettering lettering) {
    this(names, lettering, Display.METRIC);
  }

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
