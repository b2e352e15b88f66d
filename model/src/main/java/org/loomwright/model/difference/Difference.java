package org.loomwright.model.difference;

import java.util.Optional;

/**
 * One thing that differs between two revisions of a document.
 *
 * @param path where it stands; items with a key of their own by it, e.g. {@code
 *     runs[id="sill"].length}, others by their place, counted from 0: in the later revision, or in
 *     the earlier one for what was taken out
 * @param words the difference as a person would say it, one line, complete in itself
 * @param kind what sort of difference
 * @param before what stood there, cut short where long; empty when nothing did
 * @param after what stands there now, cut short where long; empty when nothing does
 */
public record Difference(
    String path, String words, Kind kind, Optional<String> before, Optional<String> after) {

  /** What sort of difference it is. */
  public enum Kind {
    ADDED,
    REMOVED,
    CHANGED,
    /** The same things in another order. */
    MOVED
  }
}
