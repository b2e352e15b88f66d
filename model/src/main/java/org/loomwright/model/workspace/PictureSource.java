package org.loomwright.model.workspace;

import java.io.IOException;
import java.util.Optional;

/** Where picture files come from. */
@FunctionalInterface
interface PictureSource {
  /**
   * The bytes of a file, or empty when there is none of this name.
   *
   * @throws IOException when it is there and can't be read
   */
  Optional<byte[]> bytes(String name) throws IOException;
}
