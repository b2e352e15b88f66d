package org.loomwright.model.document;

/**
 * One document of a workspace. Documents name each other by {@link #id()}; a kit also names the
 * revisions it was designed against.
 */
public interface Document {
  /** Short name used by references, unique among documents of one kind. */
  String id();

  /** Name for people. */
  String name();

  /** Revision as the shop writes it, e.g. "3" or "B". */
  String revision();
}
