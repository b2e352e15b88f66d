package org.loomwright.physics.cutting;

/** Slow but obviously right: each piece on each spool opened so far, or on a new one. */
final class BruteForce {
  private final int stock;
  private final int kerf;
  private final int[] pieces;
  private int best;

  private BruteForce(int stock, int kerf, int[] pieces) {
    this.stock = stock;
    this.kerf = kerf;
    this.pieces = pieces;
    this.best = pieces.length;
  }

  static int spools(int stock, int kerf, int... pieces) {
    BruteForce force = new BruteForce(stock, kerf, pieces);
    force.place(0, new int[pieces.length], 0);
    return force.best;
  }

  private void place(int piece, int[] used, int open) {
    if (piece == pieces.length) {
      best = Math.min(best, open);
      return;
    }
    for (int spool = 0; spool <= open && spool < used.length; spool++) {
      int before = used[spool];
      used[spool] = before + pieces[piece] + (before > 0 ? kerf : 0);
      if (used[spool] <= stock) {
        place(piece + 1, used, Math.max(open, spool + 1));
      }
      used[spool] = before;
    }
  }
}
