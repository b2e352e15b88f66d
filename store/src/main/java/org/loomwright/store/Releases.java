package org.loomwright.store;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.loomwright.model.design.Verdict;

/** Released kits: which texts exactly, what was proven, and which papers came of it. */
public final class Releases {
  private final Database database;
  private final Clock clock;

  Releases(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Releases a kit.
   *
   * @throws StoreException when a check fails, a marginal one has no reason, a pinned revision is
   *     not in the store, or a document, or the pack, is missing, or the pack is too large, or its
   *     papers name another number than it would get; nothing is written then
   */
  public Release release(ReleaseDraft draft) {
    checkDraft(draft);
    return database.write(
        handle -> {
          List<Release.PinnedText> pins = new ArrayList<>();
          for (Pin pin : draft.pins()) {
            pins.add(new Release.PinnedText(pin, hash(handle, draft, pin)));
          }
          long number = next(ReleaseRows.of(handle, draft.kit()));
          if (draft.number().filter(it -> it != number).isPresent()) {
            throw refused(
                draft,
                "its papers name number "
                    + draft.number().get()
                    + ", but the next release is number "
                    + number
                    + ", as another was made meanwhile; release it again");
          }
          Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
          Map<String, String> pack = new TreeMap<>();
          draft
              .pack()
              .forEach(
                  (name, bytes) -> {
                    String hash = Hashes.of(bytes);
                    PackFiles.keep(handle, hash, bytes);
                    pack.put(name, hash);
                  });
          Release release =
              new Release(draft.kit(), number, pins, draft.verdict(), pack, true, draft.by(), now);
          Revisions.Tail tail = Revisions.tail(handle, "release");
          ReleaseRows.insert(
              handle,
              tail.seq() + 1,
              release,
              ReleaseRows.seal(tail.seal(), tail.seq() + 1, release));
          return release;
        });
  }

  /** Number that the next release of a kit gets. */
  public long next(String kit) {
    return next(of(kit));
  }

  private static long next(List<Release> known) {
    return known.stream().mapToLong(Release::number).max().orElse(0) + 1;
  }

  /** All releases of a kit, newest first. */
  public List<Release> of(String kit) {
    return database.read(handle -> ReleaseRows.of(handle, kit));
  }

  /** All releases of all kits, newest first. */
  public List<Release> all() {
    List<Release> all =
        new ArrayList<>(
            database.read(
                handle ->
                    ReleaseRows.all(handle).stream().map(ReleaseRows.Sealed::release).toList()));
    Collections.reverse(all);
    return all;
  }

  /** One release of a kit. */
  public Optional<Release> find(String kit, long number) {
    return of(kit).stream().filter(it -> it.number() == number).findFirst();
  }

  /**
   * A file of a release's pack, byte for byte as it was when it was released.
   *
   * @return empty when there is no such release or file, or only its hash is known
   * @throws StoreException when the bytes are no longer those
   */
  public Optional<byte[]> file(String kit, long number, String name) {
    return database.read(
        handle -> {
          Optional<String> hash = ReleaseRows.fileHash(handle, kit, number, name);
          Optional<byte[]> bytes = hash.flatMap(it -> PackFiles.bytes(handle, it));
          if (bytes.isPresent() && !hash.equals(bytes.map(Hashes::of))) {
            throw new StoreException(
                "kit '"
                    + kit
                    + "', release "
                    + number
                    + ": its file '"
                    + name
                    + "' is damaged; restore a backup");
          }
          return bytes;
        });
  }

  private static String hash(Handle handle, ReleaseDraft draft, Pin pin) {
    Revision revision =
        Revisions.version(handle, pin.key(), pin.number())
            .map(Version::revision)
            .orElseThrow(
                () ->
                    refused(
                        draft,
                        pin.key().shown()
                            + " has no revision "
                            + pin.number()
                            + " in the store; save it before it is released"));
    if (revision.retired()) {
      throw refused(
          draft, pin.key().shown() + " is retired; bring it back, or plan the kit without it");
    }
    return revision.contentHash();
  }

  private static void checkDraft(ReleaseDraft draft) {
    if (draft.verdict() == Verdict.FAILS) {
      throw refused(draft, "a check or the proof fails; change the kit until all hold");
    }
    if (draft.verdict() == Verdict.MARGINAL && draft.by().why().isBlank()) {
      throw refused(
          draft, "a check is marginal; say why it may go out all the same, it is kept with it");
    }
    Map<String, Long> kinds = new TreeMap<>();
    TreeSet<DocumentKey> keys = new TreeSet<>();
    for (Pin pin : draft.pins()) {
      kinds.merge(pin.key().kind(), 1L, Long::sum);
      if (!keys.add(pin.key())) {
        throw refused(draft, pin.key().shown() + " is pinned twice; pin one revision of it");
      }
    }
    for (String kind : List.of("vehicle", "equipment", "kit", "parts", "rules")) {
      if (!kinds.containsKey(kind)) {
        throw refused(draft, "no revision of its " + kind + " is pinned; pin what it was made of");
      }
    }
    for (String kind : List.of("vehicle", "kit", "rules")) {
      if (kinds.getOrDefault(kind, 0L) > 1) {
        throw refused(draft, "more than one " + kind + " is pinned; a kit is made of one");
      }
    }
    if (!keys.contains(new DocumentKey("kit", draft.kit()))) {
      throw refused(draft, "the pinned kit is another one; pin a revision of this kit");
    }
    PackFiles.fault(draft.pack())
        .ifPresent(
            why -> {
              throw refused(draft, why);
            });
  }

  private static StoreException refused(ReleaseDraft draft, String why) {
    return new StoreException("kit '" + draft.kit() + "' can't be released: " + why);
  }
}
