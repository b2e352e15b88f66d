package org.loomwright.store;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.loomwright.store.merge.Clash;
import org.loomwright.store.merge.JsonMerge;
import tools.jackson.databind.JsonNode;

/** The documents of a store with all their revisions. */
public final class Documents {
  private final Database database;
  private final Clock clock;

  Documents(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Saves a document as its new revision. When someone else saved since, both edits are merged
   * where they touch different parts; otherwise nothing is written and the conflict holds all three
   * texts.
   *
   * @param basedOn number of the revision the draft was made from; 0 for a new document
   * @throws StoreException when the text is no document of that key, when there never was such a
   *     revision, or when the database refuses; nothing is written then
   */
  public SaveResult save(Draft draft, long basedOn) {
    return database.write(handle -> save(handle, draft, basedOn));
  }

  /**
   * Makes an old text the newest again, as one more revision.
   *
   * @param number revision whose text is wanted back
   * @param seen newest revision the person knows of; later ones count as edits by others
   */
  public SaveResult goBack(DocumentKey key, long number, long seen, Signature by) {
    return database.write(
        handle -> save(handle, new Draft(key, existing(handle, key, number).content(), by), seen));
  }

  /** The newest revision of every document, sorted by kind and id; names of pictures too. */
  public List<Revision> newest() {
    return database.read(Revisions::newest);
  }

  /** The newest revision of a document. */
  public Optional<Version> newest(DocumentKey key) {
    return database.read(handle -> Revisions.newest(handle, key));
  }

  /** One revision of a document. */
  public Optional<Version> version(DocumentKey key, long number) {
    return database.read(handle -> Revisions.version(handle, key, number));
  }

  /** All revisions of a document, newest first; empty when there is no such document. */
  public List<Revision> history(DocumentKey key) {
    return database.read(handle -> Revisions.history(handle, key));
  }

  SaveResult save(Handle handle, Draft draft, long basedOn) {
    DocumentKey key = draft.key();
    Content yours = Content.of(key, draft.content());
    Optional<Version> newest = Revisions.newest(handle, key);
    if (newest.isEmpty()) {
      if (basedOn != 0) {
        throw noRevision(handle, key, basedOn);
      }
      return new SaveResult.Saved(insert(handle, draft, yours.text(), 0, Optional.empty()));
    }
    Version theirs = newest.get();
    Optional<Version> base =
        basedOn == 0 ? Optional.empty() : Optional.of(existing(handle, key, basedOn));
    if (theirs.content().equals(yours.text())) {
      return new SaveResult.Unchanged(theirs.revision());
    }
    if (basedOn == theirs.revision().number()) {
      return new SaveResult.Saved(
          insert(handle, draft, yours.text(), basedOn, Optional.of(theirs.revision())));
    }
    if (base.isEmpty()) {
      return conflict(base, theirs, yours, List.of());
    }
    return merged(handle, draft, base.get(), theirs, yours);
  }

  private SaveResult merged(
      Handle handle, Draft draft, Version base, Version theirs, Content yours) {
    Content before = Content.of(draft.key(), base.content());
    Content since = Content.of(draft.key(), theirs.content());
    JsonMerge.Result result = JsonMerge.merge(before.tree(), since.tree(), yours.tree());
    if (result instanceof JsonMerge.Clashing clashing) {
      return conflict(Optional.of(base), theirs, yours, clashing.clashes());
    }
    JsonNode tree = ((JsonMerge.Clean) result).tree();
    // All of this edit is there already; the texts may still differ in layout.
    if (tree.equals(since.tree())) {
      return new SaveResult.Unchanged(theirs.revision());
    }
    Content merged = Content.of(tree);
    // Two good edits can break a document only together; then a person has to look.
    if (!merged.good() && since.good() && yours.good()) {
      return conflict(Optional.of(base), theirs, yours, List.of());
    }
    Revision revision =
        insert(
            handle, draft, merged.text(), base.revision().number(), Optional.of(theirs.revision()));
    return new SaveResult.Merged(new Version(revision, merged.text()), theirs.revision());
  }

  private static SaveResult conflict(
      Optional<Version> base, Version theirs, Content yours, List<Clash> clashes) {
    List<Clash> parts =
        clashes.isEmpty()
            ? List.of(
                new Clash(
                    "",
                    base.map(Version::content),
                    Optional.of(theirs.content()),
                    Optional.of(yours.text())))
            : clashes;
    return new SaveResult.Conflict(base, theirs, yours.text(), parts);
  }

  private Revision insert(
      Handle handle, Draft draft, String content, long basedOn, Optional<Revision> newest) {
    // Both databases keep the text, so that finer parts than these would be kept too.
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    return Revisions.insert(handle, draft, content, basedOn, newest, now);
  }

  private static Version existing(Handle handle, DocumentKey key, long number) {
    return Revisions.version(handle, key, number)
        .orElseThrow(() -> noRevision(handle, key, number));
  }

  private static StoreException noRevision(Handle handle, DocumentKey key, long number) {
    return new StoreException(
        Revisions.newest(handle, key)
            .map(
                it ->
                    key.shown()
                        + " has no revision "
                        + number
                        + "; its newest is "
                        + it.revision().number())
            .orElse(key.shown() + " is not in the store; save it as new, based on revision 0"));
  }
}
