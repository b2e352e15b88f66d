package org.loomwright.drawing.board;

/** A board on which something of a harness finds no room, however it is turned and cut. */
public final class BoardTooSmall extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  /**
   * Says what finds no room.
   *
   * @param message what it is, how large the board is, and what would help
   */
  public BoardTooSmall(String message) {
    super(message);
  }
}
