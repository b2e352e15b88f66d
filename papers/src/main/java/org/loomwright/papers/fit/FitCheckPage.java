package org.loomwright.papers.fit;

import java.util.List;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.page.OneFile;
import org.loomwright.planner.fit.FitCheck;

/**
 * The fit check as one HTML file for customers: it holds everything it needs, asks nothing of any
 * network, keeps nothing, and says by itself when it did not arrive whole.
 */
public final class FitCheckPage {
  private FitCheckPage() {}

  /**
   * The page.
   *
   * @param order the kit with its documents
   * @param plan its plan
   * @param check its fit check
   * @param verifiedOn number of vehicles the kit was fitted to by this guide and signed for; 0 or
   *     more
   * @return the file's text: ASCII, lines end in a line feed
   */
  public static String text(KitOrder order, Plan plan, FitCheck check, int verifiedOn) {
    if (verifiedOn < 0) {
      throw new IllegalArgumentException("verified on " + verifiedOn + " vehicles");
    }
    return new OneFile(
            "Does it fit?",
            OneFile.resource(FitCheckPage.class, "fit-check.css"),
            List.of(
                OneFile.resource(FitCheckPage.class, "fit-answer.js"),
                OneFile.resource(FitCheckPage.class, "fit-page.js")),
            FitData.text(order, plan, check, verifiedOn),
            """
            <main id="page">
            <div class="broken" role="alert">
            <h1>This page is not whole</h1>
            <p>The file was damaged on its way, or scripts are turned off in your browser. Turn \
            scripts on, or ask the shop to send the file again. Do not rely on what is left of \
            it.</p>
            </div>
            </main>""")
        .text();
  }
}
