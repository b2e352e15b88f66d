package org.loomwright.store;

/**
 * Something in a store that is not as it was written.
 *
 * @param where which document, picture or release
 * @param what what is wrong with it
 */
public record Damage(String where, String what) {
  /** On one line. */
  public String words() {
    return where + ": " + what;
  }
}
