package org.loomwright.web.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.FaceLegend;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;

/**
 * What the page of a connector or fuse block shows, in one view. Picture and words come from the
 * same view.
 *
 * @param vehicle its vehicle
 * @param id its id
 * @param name its name
 * @param sort "connector" or "fuse block"
 * @param cavityWord "cavity" or "slot"
 * @param place name of its place
 * @param openings what is opened to get at it
 * @param part housing, in words
 * @param notes what else is to be known of it
 * @param recipe how it is opened, filled and locked
 * @param sections sections of a fuse block
 * @param picture its face; empty when there is none on file
 * @param view the view in words
 * @param fitterView whether it is the view of the fitter
 * @param turns the other views
 * @param rows its cavities
 * @param sought the cavity asked for; empty for none
 * @param signs legend of the picture
 * @param photo photo with the cavities marked; empty when there is none
 */
public record FaceView(
    Vehicle vehicle,
    String id,
    String name,
    String sort,
    String cavityWord,
    String place,
    String openings,
    String part,
    List<String> notes,
    ServiceRecipe recipe,
    List<Section> sections,
    String picture,
    String view,
    boolean fitterView,
    List<Turn> turns,
    List<Row> rows,
    Optional<Row> sought,
    List<FaceLegend.Sign> signs,
    String photo) {
  /**
   * Another view of the same face.
   *
   * @param id name in the page
   * @param words what it does
   * @param href its address
   * @param on whether it is the one shown
   */
  public record Turn(String id, String words, String href, boolean on) {}

  /**
   * A cavity or slot.
   *
   * @param number as moulded
   * @param anchor its name in the page
   * @param href the page with it marked
   * @param position where it is in this view; empty without a face
   * @param state what is in it before a kit comes; empty without a face
   * @param lines what is known of it
   * @param sought whether it is the one asked for
   */
  public record Row(
      String number,
      String anchor,
      String href,
      String position,
      String state,
      List<String> lines,
      boolean sought) {
    public Row {
      lines = List.copyOf(lines);
    }
  }

  public FaceView {
    notes = List.copyOf(notes);
    sections = List.copyOf(sections);
    turns = List.copyOf(turns);
    rows = List.copyOf(rows);
    signs = List.copyOf(signs);
  }

  /** Whether there is a face on file, on which cavities can be named. */
  public boolean hasFace() {
    return !picture.isEmpty();
  }

  /**
   * A face.
   *
   * @param part part of the address that names it
   * @param wanted what the address asks for: "side", "latch" and "cavity"; empty when it doesn't
   */
  public static Optional<FaceView> of(
      Shop shop, Vehicle vehicle, String part, Map<String, String> wanted, Display units) {
    Optional<FaceView> connector =
        vehicle.connectors().stream()
            .filter(it -> Href.part(it.id()).equals(part))
            .findFirst()
            .map(
                it ->
                    new FaceMaker(shop, vehicle, wanted, FaceThing.of(vehicle, it, shop, units))
                        .make());
    return connector.or(
        () ->
            vehicle.fuseBlocks().stream()
                .filter(it -> Href.part(it.id()).equals(part))
                .findFirst()
                .map(
                    it ->
                        new FaceMaker(shop, vehicle, wanted, FaceThing.of(vehicle, it, shop, units))
                            .make()));
  }
}
