package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.job.Job;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockItem;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Stage;

/** Finds names, circuits, cavities and part numbers. */
public final class Finds {
  /** More would not be read. */
  public static final int MOST = 60;

  /**
   * Something that can be found.
   *
   * @param sort what it is
   * @param name its name
   * @param detail what tells it from others of its name
   * @param href where it is shown
   */
  public record Find(String sort, String name, String detail, String href) {
    private boolean has(List<String> words) {
      String text = (sort + " " + name + " " + detail).toLowerCase(Locale.ROOT);
      return words.stream().allMatch(text::contains);
    }
  }

  private Finds() {}

  /** What holds all of the words, in the order of the documents; nothing for no words. */
  public static List<Find> of(Shop shop, String sought) {
    List<String> words =
        Arrays.stream(sought.toLowerCase(Locale.ROOT).strip().split("\\s+", -1))
            .filter(it -> !it.isEmpty())
            .toList();
    return words.isEmpty() ? List.of() : all(shop).filter(it -> it.has(words)).toList();
  }

  private static Stream<Find> all(Shop shop) {
    List<Find> finds = new ArrayList<>();
    shop.workspace()
        .kits()
        .forEach(
            it -> finds.add(new Find("kit", it.name(), it.id(), Href.kit(it.id(), Stage.GAP))));
    shop.workspace().vehicles().forEach(it -> vehicle(shop, it, finds));
    shop.workspace().equipment().forEach(it -> equipment(it, finds));
    shop.workspace().parts().forEach(it -> parts(it, finds));
    shop.workspace()
        .rules()
        .forEach(it -> finds.add(new Find("rules", it.name(), it.id(), Href.rules(it.id()))));
    shop.workspace().findings().forEach(it -> finding(it, finds));
    shop.workspace().jobs().forEach(it -> job(it, finds));
    shop.workspace().batches().forEach(it -> batch(it, finds));
    return finds.stream();
  }

  private static void job(Job job, List<Find> finds) {
    finds.add(
        new Find(
            "job",
            job.name(),
            Told.joined(
                job.id(),
                job.state().words(),
                job.vehicleNote(),
                job.kit(),
                job.partNumber().orElse(""),
                job.serial().orElse("")),
            Href.job(job.id())));
  }

  private static void batch(Batch batch, List<Find> finds) {
    finds.add(
        new Find(
            "batch",
            batch.name(),
            Told.joined(
                batch.id(),
                batch.kit(),
                batch.partNumber(),
                String.join(" ", batch.items().stream().map(StockItem::serial).toList())),
            Href.batch(batch.id())));
  }

  private static void finding(Finding finding, List<Find> finds) {
    finds.add(
        new Find(
            "finding",
            finding.name(),
            Told.joined(
                finding.id(),
                finding.state().words(),
                finding.vehicle(),
                finding.at().map(FoundAt::text).orElse(""),
                finding.vehicleNote().orElse(""),
                finding.seen()),
            Href.finding(finding.id())));
  }

  private static void vehicle(Shop shop, Vehicle vehicle, List<Find> finds) {
    String page = Href.vehicle(vehicle.id());
    finds.add(new Find("vehicle", vehicle.name(), vehicle.id(), page));
    vehicle
        .traits()
        .forEach(
            it ->
                finds.add(
                    new Find(
                        "trait", it.name(), it.id(), page + "#" + Href.anchor("trait", it.id()))));
    for (Circuit it : vehicle.circuits()) {
      String ends =
          it.from().text()
              + " to "
              + String.join(", ", it.to().stream().map(spot -> spot.text()).toList());
      finds.add(
          new Find(
              "circuit",
              it.name(),
              Told.joined(
                  it.id(),
                  it.colour().text(),
                  it.colourAsSeen().orElse(""),
                  it.wire().text(),
                  ends),
              page + "#" + Href.anchor("circuit", it.id())));
    }
    for (Connector it : vehicle.connectors()) {
      String face = Href.face(vehicle.id(), it.id());
      finds.add(new Find("connector", it.name(), it.id() + ", " + it.housing(), face));
      shop.housing(it.housing())
          .ifPresent(
              housing ->
                  housing
                      .cavities()
                      .forEach(
                          cavity ->
                              finds.add(
                                  cavity("cavity", cavity.number(), it.name(), it.id(), face))));
    }
    for (FuseBlock it : vehicle.fuseBlocks()) {
      String face = Href.face(vehicle.id(), it.id());
      finds.add(new Find("fuse block", it.name(), it.id(), face));
      for (Slot slot : it.slots()) {
        finds.add(cavity("slot", slot.id(), it.name(), it.id(), face));
      }
    }
    vehicle
        .grounds()
        .forEach(
            it ->
                finds.add(
                    new Find(
                        "ground",
                        it.name(),
                        it.id() + ", " + it.thread(),
                        page + "#" + Href.anchor("ground", it.id()))));
  }

  private static Find cavity(String word, String number, String of, String id, String face) {
    return new Find(
        word,
        number + " of " + of,
        id + " " + number,
        face + "?cavity=" + Href.value(number) + "#" + Href.anchor("cavity", number));
  }

  private static void equipment(Equipment equipment, List<Find> finds) {
    String page = Href.equipment(equipment.id());
    finds.add(new Find("equipment", equipment.name(), equipment.id(), page));
    for (Plug plug : equipment.plugs()) {
      for (Pin pin : plug.pins()) {
        finds.add(
            new Find(
                "pin",
                pin.name(),
                plug.name() + ", cavity " + pin.cavity(),
                page + "#" + Href.anchor("plug", plug.id())));
      }
    }
  }

  private static void parts(Parts parts, List<Find> finds) {
    String page = Href.parts(parts.id());
    finds.add(new Find("parts list", parts.name(), parts.id(), page));
    parts.wires().forEach(it -> finds.add(part(page, "wire", it.id(), it.name())));
    for (Housing it : parts.housings()) {
      finds.add(part(page, "housing", it.id(), it.name()));
    }
    parts.terminals().forEach(it -> finds.add(part(page, "terminal", it.id(), it.name())));
    parts.seals().forEach(it -> finds.add(part(page, "seal", it.id(), it.name())));
    parts.rings().forEach(it -> finds.add(part(page, "ring terminal", it.id(), it.name())));
    parts.splices().forEach(it -> finds.add(part(page, "splice", it.id(), it.name())));
    parts.fuses().forEach(it -> finds.add(part(page, "fuse", it.id(), it.name())));
    parts.coverings().forEach(it -> finds.add(part(page, "covering", it.id(), it.name())));
    parts.grommets().forEach(it -> finds.add(part(page, "grommet", it.id(), it.name())));
    parts.clips().forEach(it -> finds.add(part(page, "clip", it.id(), it.name())));
    parts.sundries().forEach(it -> finds.add(part(page, "part", it.id(), it.name())));
  }

  private static Find part(String page, String sort, String id, String name) {
    return new Find(sort, name, id, page + "#" + Href.anchor("part", id));
  }
}
