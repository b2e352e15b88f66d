package org.loomwright.papers.section;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.loomwright.papers.page.Html;

/** What all papers have in common: head, running words, styles, bookmarks. */
final class Shell {
  private Shell() {}

  /** Kit, revision and vehicle, repeated on each page. */
  static void runningWords(Pack pack, Html html) {
    html.open("div", "run-kit")
        .words(pack.order().kit().name() + "\n" + pack.ident())
        .close("div")
        .line(
            "div",
            "run-vehicle",
            pack.order().vehicle().name()
                + ", vehicle revision "
                + pack.order().vehicle().revision());
  }

  /** A section with its heading. */
  static void write(Pack pack, Section section, Html html) {
    html.open("section", section.layout().cssClass(), section.id())
        .line("div", "run-section", section.title())
        .line("h1", "", section.title());
    section.write(pack, html);
    html.close("section");
  }

  /** The whole document. */
  static String document(Pack pack, String subject, List<Section> sections, Html body) {
    return "<html lang=\"en\"><head><meta charset=\"UTF-8\"/><title>"
        + Html.escape(pack.order().kit().name() + ", " + pack.ident())
        + "</title><meta name=\"subject\" content=\""
        + Html.escape(subject)
        + "\"/><style>"
        + style()
        + "</style><bookmarks>"
        + bookmarks(sections)
        + "</bookmarks></head><body>"
        + body.markup()
        + "</body></html>";
  }

  private static String bookmarks(List<Section> sections) {
    StringBuilder marks = new StringBuilder();
    for (Section section : sections) {
      marks
          .append("<bookmark name=\"")
          .append(Html.escape(section.title()))
          .append("\" href=\"#")
          .append(Html.escape(section.id()))
          .append("\"/>");
    }
    return marks.toString();
  }

  private static String style() {
    try (InputStream in = Html.class.getResourceAsStream("pack.css")) {
      if (in == null) {
        throw new IOException("the style sheet pack.css is missing from this program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
