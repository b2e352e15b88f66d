package org.loomwright.web.shop;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.store.WorkspaceContent;

/** What became of a vehicle since something was found on it. */
public final class VehicleChange {
  /** Kinds of documents that tell of real vehicles and kits; no plan rests on them. */
  private static final List<String> SEEN =
      List.of(DocumentKind.FINDING.word(), DocumentKind.JOB.word(), DocumentKind.BATCH.word());

  private VehicleChange() {}

  /** The document of a finding's vehicle. */
  public static DocumentKey vehicle(Finding finding) {
    return new DocumentKey(DocumentKind.VEHICLE.word(), finding.vehicle());
  }

  /**
   * Number of the vehicle's revision to compare from: the last before the one the finding was taken
   * into, where it says which and the store has both; else the newest of the time when the finding
   * was written.
   *
   * @param history revisions of the vehicle, newest first; one at least
   */
  public static long from(Store store, Finding finding, List<Revision> history) {
    long first = history.get(history.size() - 1).number();
    Optional<Long> taken =
        finding.takenInto().flatMap(it -> taken(store, history, it)).filter(it -> it > first);
    if (taken.isPresent()) {
      return taken.get() - 1;
    }
    List<Revision> own =
        store.documents().history(new DocumentKey(DocumentKind.FINDING.word(), finding.id()));
    return own.stream()
        .skip(Math.max(0, own.size() - 1))
        .findFirst()
        .flatMap(
            written ->
                history.stream().filter(it -> !it.savedAt().isAfter(written.savedAt())).findFirst())
        .map(Revision::number)
        .orElse(first);
  }

  /** The first revision whose text calls itself so. */
  private static Optional<Long> taken(Store store, List<Revision> history, String called) {
    Optional<Long> number = Optional.empty();
    for (Revision it : history) {
      boolean same =
          store
              .documents()
              .version(it.key(), it.number())
              .filter(version -> called(version).equals(called))
              .isPresent();
      if (same) {
        number = Optional.of(it.number());
      }
    }
    return number;
  }

  /** What a revision of a document calls itself; empty when it does not say. */
  public static String called(Version version) {
    return JsonText.parse(version.content()) instanceof JsonText.Tree tree
        ? tree.node().path("revision").asString("")
        : "";
  }

  /**
   * What an answer rests on, for telling whether it changed: neither the jobs and batches, which it
   * is held against when it is shown, nor pictures, which are added at every job.
   */
  public static Object state(Store store) {
    return List.of(
        store.documents().newest().stream()
            .filter(it -> !SEEN.contains(it.key().kind()))
            .filter(it -> !it.key().kind().equals(DocumentKey.PICTURE))
            .map(it -> it.key().shown() + " " + it.number())
            .toList(),
        store.releases().all().size());
  }

  /**
   * The documents with an older revision of a vehicle, and as they are; empty when they can't be.
   */
  public static Optional<ImpactDesk.Two> documents(Store store, Version older) {
    WorkspaceContent content = store.workspaces().content();
    // What is said of things of the vehicle now would not fit the older one.
    Predicate<NamedText> planned =
        it ->
            Optional.ofNullable(content.revisions().get(it.name()))
                .filter(known -> SEEN.contains(known.key().kind()))
                .isEmpty();
    List<NamedText> before =
        content.with(older.revision().key(), older.content()).stream().filter(planned).toList();
    return WorkspaceReader.read(before, PastPictures.of(store)) instanceof Read.Good one
            && WorkspaceReader.read(content.documents(), content.pictures())
                instanceof Read.Good two
        ? Optional.of(
            new ImpactDesk.Two(
                one.workspace(), two.workspace(), released(store, older.revision().key())))
        : Optional.empty();
  }

  /** Releases made for a vehicle, of kits in use and of others, newest first. */
  private static List<ReleasedOrder.Result> released(Store store, DocumentKey vehicle) {
    return store.releases().all().stream()
        .filter(it -> it.pins().stream().anyMatch(pin -> pin.pin().key().equals(vehicle)))
        .map(it -> ReleasedOrder.read(store, it))
        .toList();
  }
}
