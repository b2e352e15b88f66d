package org.loomwright.model.kit;

/** What the user wants of a way. */
public enum WishKind {
  FORBID,
  PREFER
}
