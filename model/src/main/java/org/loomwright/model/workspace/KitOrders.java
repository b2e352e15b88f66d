package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.document.Document;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.picture.PictureFile;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.vehicle.KnownVehicle;
import org.loomwright.model.vehicle.Vehicle;

/** Finds a kit in a workspace and gathers what it refers to. */
public final class KitOrders {
  private KitOrders() {}

  /** What came of looking for a kit. */
  public sealed interface Resolved {}

  /** The kit, ready to be planned. */
  public record Found(KitOrder order) implements Resolved {}

  /** There is no such kit, or it is not clear which one is meant. */
  public record NotFound(Problem problem) implements Resolved {}

  /**
   * The kit with this id.
   *
   * @param workspace a workspace that was read without problems
   */
  public static Resolved resolve(Workspace workspace, String kitId) {
    List<String> ids = workspace.kits().stream().map(Kit::id).toList();
    return find(workspace.kits(), kitId)
        .<Resolved>map(kit -> new Found(order(workspace, kit)))
        .orElseGet(
            () ->
                notFound(
                    kitId,
                    "there is no kit '"
                        + kitId
                        + "'"
                        + (ids.isEmpty()
                            ? "; the folder holds no kit"
                            : Nearest.fullHint(kitId, "the kits are", ids))));
  }

  /**
   * The only kit of the workspace.
   *
   * @param workspace a workspace that was read without problems
   */
  public static Resolved only(Workspace workspace) {
    List<String> ids = workspace.kits().stream().map(Kit::id).toList();
    if (ids.size() == 1) {
      return resolve(workspace, ids.get(0));
    }
    return notFound(
        "",
        ids.isEmpty()
            ? "the folder holds no kit; add a document of kind kit"
            : "there are several kits, so say which one is meant: " + Nearest.list(ids));
  }

  private static NotFound notFound(String kitId, String message) {
    return new NotFound(new Problem("", "", kitId, message));
  }

  private static KitOrder order(Workspace workspace, Kit kit) {
    List<Equipment> equipment =
        kit.mounts().stream()
            .map(mount -> mount.equipment())
            .distinct()
            .map(id -> present(workspace.equipment(), id))
            .toList();
    List<Parts> lists = kit.parts().stream().map(id -> present(workspace.parts(), id)).toList();
    Vehicle vehicle = present(workspace.vehicles(), kit.vehicle());
    Parts parts = merged(kit, lists);
    return new KitOrder(
        kit,
        KnownVehicle.of(vehicle),
        equipment,
        parts,
        present(workspace.rules(), kit.rules()),
        pictures(vehicle, parts, workspace.pictures()));
  }

  /** Pictures of the vehicle and of parts; photos of findings and jobs change no kit. */
  private static Pictures pictures(Vehicle vehicle, Parts parts, Pictures all) {
    Set<String> named =
        Stream.of(
                vehicle.planView().flatMap(it -> it.picture()).stream(),
                vehicle.connectors().stream().flatMap(it -> it.photo().stream()),
                vehicle.fuseBlocks().stream().flatMap(it -> it.photo().stream()),
                parts.housings().stream().flatMap(it -> it.photo().stream()))
            .flatMap(it -> it)
            .map(PictureFile::file)
            .collect(Collectors.toSet());
    Map<String, Picture> used = new LinkedHashMap<>(all.byName());
    used.keySet().retainAll(named);
    return new Pictures(used);
  }

  private static <T extends Document> Optional<T> find(List<T> documents, String id) {
    return documents.stream().filter(it -> it.id().equals(id)).findFirst();
  }

  private static <T extends Document> T present(List<T> documents, String id) {
    return find(documents, id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "a workspace with problems: no document '" + id + "'"));
  }

  private static Parts merged(Kit kit, List<Parts> lists) {
    return new Parts(
        kit.id(),
        lists.stream().map(Parts::name).collect(Collectors.joining(", ")),
        lists.stream().map(Parts::revision).collect(Collectors.joining(", ")),
        first(lists, Parts::wires, it -> it.id()),
        first(lists, Parts::housings, it -> it.id()),
        first(lists, Parts::terminals, it -> it.id()),
        first(lists, Parts::seals, it -> it.id()),
        first(lists, Parts::rings, it -> it.id()),
        first(lists, Parts::splices, it -> it.id()),
        first(lists, Parts::fuses, it -> it.id()),
        first(lists, Parts::coverings, it -> it.id()),
        first(lists, Parts::grommets, it -> it.id()),
        first(lists, Parts::clips, it -> it.id()),
        first(lists, Parts::sundries, it -> it.id()));
  }

  private static <T> List<T> first(
      List<Parts> lists, Function<Parts, List<T>> parts, Function<T, String> id) {
    Map<String, T> first = new LinkedHashMap<>();
    for (Parts list : lists) {
      parts.apply(list).forEach(part -> first.putIfAbsent(id.apply(part), part));
    }
    return new ArrayList<>(first.values());
  }
}
