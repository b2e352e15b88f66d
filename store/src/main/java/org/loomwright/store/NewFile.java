package org.loomwright.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a file that is there complete and on the disk, or not at all. */
final class NewFile {
  private NewFile() {}

  /** What goes into it, and what it says of that. */
  interface Body<T> {
    T writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes under another name first.
   *
   * @throws StoreException when there is such a file already or it can't be written
   */
  static <T> T write(Path file, Body<T> body) {
    Path path = file.toAbsolutePath().normalize();
    if (Files.exists(path)) {
      throw new StoreException(path + " is there already; name a new file");
    }
    Path unfinished = path.resolveSibling(path.getFileName() + ".unfinished");
    try {
      Files.deleteIfExists(unfinished);
      T written;
      try (FileChannel channel =
          FileChannel.open(unfinished, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
        written = body.writeTo(out);
        out.flush();
        channel.force(true);
      }
      Files.move(unfinished, path);
      return written;
    } catch (FileAlreadyExistsException e) {
      throw new StoreException(path + " is there already; name a new file", e);
    } catch (IOException e) {
      remove(unfinished, e);
      throw new StoreException(
          path
              + " can't be written ("
              + e
              + "); check that its folder exists, may be written to and has room",
          e);
    } catch (RuntimeException e) {
      remove(unfinished, e);
      throw e;
    }
  }

  private static void remove(Path unfinished, Exception because) {
    try {
      Files.deleteIfExists(unfinished);
    } catch (IOException e) {
      because.addSuppressed(e);
    }
  }
}
