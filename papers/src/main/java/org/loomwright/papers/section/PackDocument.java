package org.loomwright.papers.section;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.loomwright.papers.page.Html;

/** The whole pack as one document of markup. */
public final class PackDocument {
  private PackDocument() {}

  /** The document of a pack. */
  public static String of(Pack pack) {
    List<Section> sections = Pack.sections();
    Html html = new Html();
    html.open("div", "run-kit")
        .words(pack.order().kit().name() + "\n" + pack.ident())
        .close("div")
        .line(
            "div",
            "run-vehicle",
            pack.order().vehicle().name()
                + ", vehicle revision "
                + pack.order().vehicle().revision());
    Cover.write(pack, html);
    for (Section section : sections) {
      html.open("section", section.layout().cssClass(), section.id())
          .line("div", "run-section", section.title())
          .line("h1", "", section.title());
      section.write(pack, html);
      html.close("section");
    }
    return "<html lang=\"en\"><head><meta charset=\"UTF-8\"/><title>"
        + Html.escape(pack.order().kit().name() + ", " + pack.ident())
        + "</title><meta name=\"subject\" content=\"printed pack of a wiring kit\"/>"
        + "<style>"
        + style()
        + "</style><bookmarks>"
        + bookmarks(sections)
        + "</bookmarks></head><body>"
        + html.markup()
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
