package org.loomwright.web.shop;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.document.Document;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.LoadedFile;
import org.loomwright.model.workspace.Problem;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.Workspace;

/**
 * The documents at one moment. When they can't be read there is none of them, only the problems.
 *
 * @param where where they were read from, in words
 * @param workspace the documents
 * @param files file of each document
 * @param problems what is wrong; then there are no documents
 */
public record Shop(
    String where, Workspace workspace, List<LoadedFile> files, List<Problem> problems) {
  public Shop {
    files = List.copyOf(files);
    problems = List.copyOf(problems);
  }

  /** What was read. */
  static Shop of(String where, Read read) {
    if (read instanceof Read.Good good) {
      return new Shop(where, good.workspace(), good.files(), List.of());
    }
    return new Shop(where, Workspace.empty(), List.of(), ((Read.Bad) read).problems());
  }

  /** A vehicle by the part of its address. */
  public Optional<Vehicle> vehicle(String part) {
    return find(workspace.vehicles(), part);
  }

  /** A piece of equipment by the part of its address. */
  public Optional<Equipment> equipment(String part) {
    return find(workspace.equipment(), part);
  }

  /** A parts list by the part of its address. */
  public Optional<Parts> parts(String part) {
    return find(workspace.parts(), part);
  }

  /** Rules by the part of their address. */
  public Optional<Rules> rules(String part) {
    return find(workspace.rules(), part);
  }

  /** A kit by the part of its address. */
  public Optional<Kit> kit(String part) {
    return find(workspace.kits(), part);
  }

  /** A kit with its documents, by the part of its address. */
  public Optional<KitOrder> order(String part) {
    return find(workspace.kits(), part)
        .flatMap(
            kit ->
                KitOrders.resolve(workspace, kit.id()) instanceof KitOrders.Found found
                    ? Optional.of(found.order())
                    : Optional.empty());
  }

  /** A finding by the part of its address. */
  public Optional<Finding> finding(String part) {
    return find(workspace.findings(), part);
  }

  /** A job by the part of its address. */
  public Optional<Job> job(String part) {
    return find(workspace.jobs(), part);
  }

  /** Kits for a vehicle. */
  public List<Kit> kitsOn(Vehicle vehicle) {
    return workspace.kits().stream().filter(it -> it.vehicle().equals(vehicle.id())).toList();
  }

  /** Kits that were made in one go, by the part of an address. */
  public Optional<Batch> batch(String part) {
    return find(workspace.batches(), part);
  }

  /** A housing of any parts list by its part number. */
  public Optional<Housing> housing(String part) {
    return workspace.parts().stream().flatMap(it -> it.housing(part).stream()).findFirst();
  }

  /** A picture by the name of its file. */
  public Optional<Picture> picture(String file) {
    return workspace.pictures().find(file);
  }

  /** Name of the file a document was read from. */
  public String file(Document document) {
    return files.stream()
        .filter(it -> it.document() == document)
        .map(LoadedFile::file)
        .findFirst()
        .orElse("");
  }

  private static <T extends Document> Optional<T> find(List<T> all, String part) {
    return all.stream().filter(it -> Href.part(it.id()).equals(part)).findFirst();
  }

  /** Reads the documents again only when they may have changed. */
  public static final class Reader {
    private final ShopSource source;
    private @Nullable Object state;
    private @Nullable Shop shop;

    /** A reader that has read nothing yet. */
    public Reader(ShopSource source) {
      this.source = source;
    }

    /** The documents as they are now. */
    public synchronized Shop now() {
      Object found = source.state();
      Shop known = shop;
      if (known != null && found.equals(state)) {
        return known;
      }
      Shop fresh = Shop.of(source.where(), source.read());
      state = found;
      shop = fresh;
      return fresh;
    }
  }
}
