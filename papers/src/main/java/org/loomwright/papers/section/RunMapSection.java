package org.loomwright.papers.section;

import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.papers.page.Html;

/** Where the leads lie in the vehicle. */
final class RunMapSection implements Section {
  private static final double WIDTH_MM = 174;
  private static final double HEIGHT_MM = 229;

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
    Vehicle vehicle = pack.order().vehicle();
    Optional<Picture> picture =
        vehicle
            .planView()
            .flatMap(PlanView::picture)
            .flatMap(it -> pack.order().pictures().find(it.file()));
    List<String> pages =
        RunMap.pages(pack.plan(), vehicle, picture, WIDTH_MM, HEIGHT_MM, pack.lettering());
    pages.forEach(html::picture);
  }
}
