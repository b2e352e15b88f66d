package org.loomwright.intake;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Unpacks an archive with limits and packs it again, so that what reads it later can meet no more
 * than was counted here, whatever the archive says of itself.
 */
final class SafeZip {
  private SafeZip() {}

  /** Something about the archive that can't be accepted, in words. */
  static final class Refused extends IOException {
    private static final long serialVersionUID = 1L;

    Refused(String message) {
      super(message);
    }
  }

  /** The XML parts of the archive, by name without a leading stroke. */
  static Map<String, byte[]> parts(byte[] archive) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    long left = Limits.UNPACKED_BYTES;
    int entries = 0;
    byte[] buffer = new byte[8192];
    // By the directory at its end: sizes in front of the parts need not be there or be right.
    try (ZipFile zip = ZipFile.builder().setByteArray(archive).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        if (++entries > Limits.ENTRIES) {
          throw new Refused("the file holds more than " + Limits.ENTRIES + " parts");
        }
        String name =
            entry.getName().startsWith("/") ? entry.getName().substring(1) : entry.getName();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (InputStream in = zip.getInputStream(entry)) {
          for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            left -= read;
            if (left < 0) {
              throw new Refused(
                  "the file unpacks to more than " + (Limits.UNPACKED_BYTES >> 20) + " MB");
            }
            out.write(buffer, 0, read);
          }
        }
        String lower = name.toLowerCase(Locale.ROOT);
        boolean xml = lower.endsWith(".xml") || lower.endsWith(".rels");
        if (xml && parts.putIfAbsent(name, out.toByteArray()) != null) {
          throw new Refused("the file holds two parts named " + CellText.shown(name));
        }
      }
    }
    return parts;
  }

  static byte[] packed(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.setLevel(1);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
