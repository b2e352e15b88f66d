package org.loomwright.store;

import java.util.Optional;

/**
 * Papers that are kept byte for byte: those a {@link Draft} was saved with, and the files of packs.
 */
public final class Papers {
  private final Database database;

  Papers(Database database) {
    this.database = database;
  }

  /** The hash by which a paper is found again: SHA-256 of its bytes, lower-case hexadecimal. */
  public static String hash(byte[] paper) {
    return Hashes.of(paper);
  }

  /**
   * A paper.
   *
   * @return empty when none of this hash is kept
   * @throws StoreException when the bytes are no longer those
   */
  public Optional<byte[]> find(String hash) {
    Optional<byte[]> bytes = database.read(handle -> PackFiles.bytes(handle, hash));
    if (bytes.filter(it -> !Hashes.of(it).equals(hash)).isPresent()) {
      throw new StoreException("the paper " + hash + " is damaged; restore a backup");
    }
    return bytes;
  }
}
