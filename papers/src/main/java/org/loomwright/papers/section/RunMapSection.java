package org.loomwright.papers.section;

import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.papers.page.Html;

/** Where the leads lie in the vehicle. */
final class RunMapSection implements Section {
  private static final double WIDTH_MM = 174;
  private static final double HEIGHT_MM = 229;

  private final Optional<byte[]> picture;

  /**
   * @param picture bytes of the picture of the vehicle's plan view, PNG or JPEG
   */
  RunMapSection(Optional<byte[]> picture) {
    this.picture = picture;
  }

  @Override
  public String id() {
    return "map";
  }

  @Override
  public String title() {
    return "Run map";
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line(
        "p",
        "",
        "Numbered places and the leads between them. Cards say what ends where, in which cases.");
    List<String> pages =
        RunMap.pages(
            pack.plan(), pack.order().vehicle(), picture, WIDTH_MM, HEIGHT_MM, pack.lettering());
    pages.forEach(html::picture);
  }
}
