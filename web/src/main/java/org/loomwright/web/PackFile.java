package org.loomwright.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.loomwright.papers.PackStamp;
import org.loomwright.papers.PackWriter;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.web.shop.KitPages;
import org.loomwright.web.shop.Shop;

/** The pack of a kit as one file. */
final class PackFile {
  /** A date of its own would make two files of the same pack differ. */
  private static final LocalDateTime DATE = LocalDateTime.of(2026, 1, 1, 0, 0);

  private PackFile() {}

  /**
   * Writes the papers.
   *
   * @param stamp what they say of the kit beyond its plan
   * @return their bytes by the name of the file
   * @throws IOException when the temporary folder can't be written
   * @throws org.loomwright.drawing.board.BoardTooSmall when the harness finds no room on the board
   */
  static Map<String, byte[]> files(KitPages kit, PackStamp stamp) throws IOException {
    Path folder = Files.createTempDirectory("loomwright-pack");
    try {
      Map<String, byte[]> files = new LinkedHashMap<>();
      for (Path file : PackWriter.write(kit.order(), kit.plan(), folder, stamp)) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
      return files;
    } finally {
      remove(folder);
    }
  }

  /**
   * What the papers of a kit say beyond its plan.
   *
   * @param release the release they are made for; absent for none
   */
  static PackStamp stamp(Shop shop, KitPages kit, Optional<Integer> release) {
    String print = GuidePrint.of(kit.plan());
    return new PackStamp(release, shop.workspace().fitted(kit.order().kit().id(), release, print));
  }

  /** Answers with files as one zip file; the same files give the same bytes. */
  static void send(Context ctx, String name, Map<String, byte[]> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(DATE);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    }
    ctx.contentType("application/zip")
        .header(
            "Content-Disposition",
            "attachment; filename=\"" + name.replaceAll("[^A-Za-z0-9-]", "_") + ".zip\"")
        .result(bytes.toByteArray());
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
