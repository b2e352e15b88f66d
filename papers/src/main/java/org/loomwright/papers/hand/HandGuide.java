package org.loomwright.papers.hand;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.page.OneFile;

/**
 * The guide as one HTML file that needs nothing else, pictures included. It works from a file or a
 * mail attachment, keeps what was answered in the browser, and prints.
 */
public final class HandGuide {
  /** Parts of the script, in the order they are put together. */
  private static final List<String> PARTS =
      List.of(
          "conditions.js",
          "numbers.js",
          "way.js",
          "undoing.js",
          "record.js",
          "keeping.js",
          "qr-tables.js",
          "qr.js",
          "elements.js",
          "facts.js",
          "readings.js",
          "questions.js",
          "screens.js",
          "changes.js",
          "paper.js",
          "summary.js",
          "run.js");

  private HandGuide() {}

  /**
   * The whole file.
   *
   * @param order kit with its documents
   * @param plan its plan
   * @param release number of the release; empty for a kit that is not released
   */
  public static String text(KitOrder order, Plan plan, Optional<Integer> release) {
    return new OneFile(
            "Guide: " + order.kit().name(),
            OneFile.resource(HandGuide.class, "hand.css"),
            PARTS.stream().map(it -> OneFile.resource(HandGuide.class, it)).toList(),
            HandData.of(order, plan, release).toString(),
            "<div id=\"damaged\" role=\"alert\"><h1>This file is damaged or incomplete: do not"
                + " work from it; ask for a new one.</h1><p>The same is shown where scripts are"
                + " switched off, as in the preview of a mail program: save the file and open it in"
                + " a browser before you ask.</p></div>\n<div id=\"app\" hidden></div>\n"
                + "<div id=\"paper\" hidden></div>")
        .text();
  }
}
