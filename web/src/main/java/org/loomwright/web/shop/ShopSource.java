package org.loomwright.web.shop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.stream.Stream;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;

/** Where the documents come from. */
public interface ShopSource {
  /** Where that is, in words. */
  String where();

  /** Reads all documents. */
  Read read();

  /**
   * Something that differs when the documents may have changed since it was last asked for, and is
   * found faster than by reading them.
   */
  Object state();

  /** A folder of documents; changes in it show on the next page. */
  static ShopSource folder(Path folder) {
    return new ShopSource() {
      @Override
      public String where() {
        return folder.toString();
      }

      @Override
      public Read read() {
        return WorkspaceReader.read(folder);
      }

      @Override
      public Object state() {
        try (Stream<Path> files =
            Files.isDirectory(folder) ? Files.walk(folder, 2) : Stream.empty()) {
          return files.sorted().map(ShopSource::stamp).toList();
        } catch (IOException | UncheckedIOException unreadable) {
          // Reading says what is wrong; until it can be looked at the folder counts as unchanged.
          return List.of("unreadable");
        }
      }
    };
  }

  private static String stamp(Path file) {
    try {
      BasicFileAttributes it = Files.readAttributes(file, BasicFileAttributes.class);
      return file + "|" + (it.isDirectory() ? "" : it.size() + "|" + it.lastModifiedTime());
    } catch (IOException gone) {
      return file + "|gone";
    }
  }
}
