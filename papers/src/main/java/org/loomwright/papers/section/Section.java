package org.loomwright.papers.section;

import org.loomwright.papers.page.Html;

/** One section of the pack. */
public interface Section {

  /** Name used by links. */
  String id();

  /** Heading, also printed at the top of each of its pages. */
  String title();

  /** How its pages are laid out. */
  default Layout layout() {
    return Layout.PAGE;
  }

  /** How a section's pages are laid out. */
  enum Layout {
    /** Starts a new page. */
    PAGE(""),
    /** Goes on below the section before it. */
    FLOW("flow"),
    /** Starts a new page that lies on its side. */
    WIDE("wide");

    private final String cssClass;

    Layout(String cssClass) {
      this.cssClass = cssClass;
    }

    String cssClass() {
      return cssClass;
    }
  }

  /** Writes what comes below the heading. */
  void write(Pack pack, Html html);

  /** As {@link #write}, without what the pages show in a form of their own. */
  default void writeForScreen(Pack pack, Html html) {
    write(pack, html);
  }
}
