package org.loomwright.papers.section;

import org.loomwright.papers.page.Html;

/** One section of the pack. */
public interface Section {

  /** Name used by links. */
  String id();

  /** Heading, also printed at the top of each of its pages. */
  String title();

  /** Whether its pages lie on their side. */
  default boolean isWide() {
    return false;
  }

  /** Writes what comes below the heading. */
  void write(Pack pack, Html html);
}
