package org.loomwright.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.loomwright.papers.PackWriter;
import org.loomwright.web.shop.KitPages;

/** The pack of a kit as one file. */
final class PackFile {
  /** A date of its own would make two files of the same pack differ. */
  private static final LocalDateTime DATE = LocalDateTime.of(2026, 1, 1, 0, 0);

  private PackFile() {}

  /**
   * Makes it.
   *
   * @throws IOException when the temporary folder can't be written
   * @throws org.loomwright.drawing.board.BoardTooSmall when the harness finds no room on the board
   */
  static byte[] zip(KitPages kit) throws IOException {
    Path folder = Files.createTempDirectory("loomwright-pack");
    try {
      List<Path> files = PackWriter.write(kit.order(), kit.plan(), folder);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
        for (Path file : files) {
          ZipEntry entry = new ZipEntry(file.getFileName().toString());
          entry.setTimeLocal(DATE);
          zip.putNextEntry(entry);
          Files.copy(file, zip);
          zip.closeEntry();
        }
      }
      return bytes.toByteArray();
    } finally {
      remove(folder);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }
}
