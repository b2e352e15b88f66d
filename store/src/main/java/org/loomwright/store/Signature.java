package org.loomwright.store;

/**
 * Who saves, and why.
 *
 * @param who name of the person
 * @param why what the save is for, in their words; may be empty
 */
public record Signature(String who, String why) {
  private static final int LONGEST = 2_000;

  public Signature {
    if (who.isBlank()) {
      throw new StoreException("a save needs the name of the person who saves");
    }
    if (who.indexOf('\0') >= 0 || why.indexOf('\0') >= 0) {
      throw new StoreException("name and reason of a save can't hold the character 0");
    }
    if (who.length() > LONGEST || why.length() > LONGEST) {
      throw new StoreException(
          "name and reason of a save have at most " + LONGEST + " characters each");
    }
  }
}
