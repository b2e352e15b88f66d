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
   *     revision, when a paper is too large, or when the database refuses; nothing is written then
   */
  public SaveResult save(Draft draft, long basedOn) {
    return database.write(handle -> save(handle, draft, basedOn));
  }

  /**
   * Says that a document is no longer used, as one more revision. It is left out where documents
   * are listed, read or exported; its history stays, and {@link #goBack}, or saving it on the
   * retiring revision, brings it back.
   *
   * @param basedOn newest revision the person knows of; when someone else saved since, nothing is
   *     written and the conflict holds what they saved
   * @return {@code Unchanged} when it is retired already
   * @throws StoreException when there is no such document or revision
   */
  public SaveResult retire(DocumentKey key, long basedOn, Signature by) {
    return database.write(handle -> retire(handle, key, basedOn, by));
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

  /** The newest revision of every document in use, sorted by kind and id; names of pictures too. */
  public List<Revision> newest() {
    return database.read(handle -> Revisions.newest(handle, false));
  }

  /** The newest revision of a document; empty when there is none or it is retired. */
  public Optional<Version> newest(DocumentKey key) {
    return database.read(
        handle -> Revisions.newest(handle, key).filter(it -> !it.revision().retired()));
  }

  /** The retiring revision of every document that is no longer used, sorted by kind and id. */
  public List<Revision> retired() {
    return database.read(handle -> Revisions.newest(handle, true));
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
      return new SaveResult.Saved(insert(handle, draft, yours.text(), 0, Optional.empty(), false));
    }
    Version theirs = newest.get();
    Optional<Version> base =
        basedOn == 0 ? Optional.empty() : Optional.of(existing(handle, key, basedOn));
    boolean seen = basedOn == theirs.revision().number();
    if (theirs.revision().retired() && !seen) {
      return retiredMeanwhile(base, theirs, yours);
    }
    if (theirs.content().equals(yours.text()) && !theirs.revision().retired()) {
      return new SaveResult.Unchanged(theirs.revision());
    }
    if (seen) {
      return new SaveResult.Saved(
          insert(handle, draft, yours.text(), basedOn, Optional.of(theirs.revision()), false));
    }
    // What others saved would not be in the papers.
    if (base.isEmpty() || !draft.papers().isEmpty()) {
      return conflict(base, theirs, yours, List.of());
    }
    return merged(handle, draft, base.get(), theirs, yours);
  }

  private SaveResult retire(Handle handle, DocumentKey key, long basedOn, Signature by) {
    Version newest =
        Revisions.newest(handle, key).orElseThrow(() -> noRevision(handle, key, basedOn));
    Version base = existing(handle, key, basedOn);
    if (newest.revision().retired()) {
      return new SaveResult.Unchanged(newest.revision());
    }
    if (basedOn != newest.revision().number()) {
      Clash whole =
          new Clash(
              "", Optional.of(base.content()), Optional.of(newest.content()), Optional.empty());
      return new SaveResult.Conflict(Optional.of(base), newest, "", List.of(whole));
    }
    String text = newest.content();
    Draft draft = new Draft(key, text, by);
    return new SaveResult.Saved(
        insert(handle, draft, text, basedOn, Optional.of(newest.revision()), true));
  }

  private static SaveResult retiredMeanwhile(
      Optional<Version> base, Version theirs, Content yours) {
    Clash whole =
        new Clash("", base.map(Version::content), Optional.empty(), Optional.of(yours.text()));
    return new SaveResult.Conflict(base, theirs, yours.text(), List.of(whole));
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
            handle,
            draft,
            merged.text(),
            base.revision().number(),
            Optional.of(theirs.revision()),
            false);
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
      Handle handle,
      Draft draft,
      String content,
      long basedOn,
      Optional<Revision> newest,
      boolean retired) {
    // Both databases keep the text, so that finer parts than these would be kept too.
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    List<String> papers = keep(handle, draft);
    return Revisions.insert(handle, draft, content, basedOn, newest, now, retired, papers);
  }

  /** Keeps the papers of a draft; their hashes, sorted. */
  private static List<String> keep(Handle handle, Draft draft) {
    for (byte[] it : draft.papers()) {
      if (it.length > PackFiles.LARGEST_FILE) {
        throw new StoreException(
            draft.key().shown()
                + " can't be saved: a paper made of it has "
                + it.length
                + " bytes; at most "
                + PackFiles.LARGEST_FILE
                + " are kept, so use fewer or smaller photos");
      }
      PackFiles.keep(handle, Hashes.of(it), it);
    }
    return draft.papers().stream().map(Hashes::of).distinct().sorted().toList();
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
