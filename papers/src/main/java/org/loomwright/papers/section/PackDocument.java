package org.loomwright.papers.section;

import java.util.List;
import org.loomwright.papers.page.Html;

/** The whole pack as one document of markup. */
public final class PackDocument {
  private PackDocument() {}

  /** The document of a pack. */
  public static String of(Pack pack) {
    List<Section> sections = Pack.sections();
    Html html = new Html();
    Shell.runningWords(pack, html);
    Cover.write(pack, html);
    for (Section section : sections) {
      Shell.write(pack, section, html);
    }
    return Shell.document(pack, "printed pack of a wiring kit", sections, html);
  }
}
