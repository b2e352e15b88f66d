package org.loomwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A workspace as a zip file. */
final class ZipFiles {
  /** All entries carry this day (the zip format's first), so that the same gives the same bytes. */
  static final java.time.LocalDateTime DAY = java.time.LocalDateTime.of(1980, 1, 1, 0, 0);

  private ZipFiles() {}

  /**
   * Reads from a stream, counting what really comes out: what a zip says of its sizes may be wrong
   * on purpose.
   *
   * @param place name of the zip for messages
   */
  static WorkspaceFiles read(InputStream stream, String place) {
    Map<String, byte[]> files = new TreeMap<>();
    boolean any = false;
    try (ZipInputStream zip = new ZipInputStream(stream)) {
      long total = 0;
      int entries = 0;
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        any = true;
        String name = checkedName(entry.getName(), place);
        byte[] bytes = zip.readNBytes(WorkspaceFiles.LARGEST_FILE + 1);
        total += bytes.length;
        if (bytes.length > WorkspaceFiles.LARGEST_FILE) {
          throw WorkspaceFiles.tooLarge(place, name);
        }
        if (++entries > WorkspaceFiles.MOST_FILES || total > WorkspaceFiles.MOST_BYTES) {
          throw WorkspaceFiles.tooMuch(place);
        }
        if (!entry.isDirectory() && files.put(name, bytes) != null) {
          throw new StoreException(place + ": the file '" + name + "' is in it twice");
        }
      }
    } catch (ZipException | java.io.EOFException | IllegalArgumentException e) {
      throw damaged(place, e);
    } catch (IOException e) {
      throw new StoreException(place + " can't be read (" + e + ")", e);
    }
    if (!any) {
      throw new StoreException(place + " is no zip file, or an empty one; name another file");
    }
    Map<String, byte[]> inner = withoutOuterFolder(files);
    inner.keySet().removeIf(name -> !WorkspaceFiles.matters(name));
    return new WorkspaceFiles(inner);
  }

  private static StoreException damaged(String place, Exception e) {
    return new StoreException(
        place + ": the zip file is damaged (" + e.getMessage() + "); copy it again", e);
  }

  private static String checkedName(String name, String place) {
    boolean leadsOut =
        name.startsWith("/")
            || name.contains("\\")
            || name.contains(":")
            || name.indexOf('\0') >= 0
            || java.util.Arrays.asList(name.split("/", -1)).contains("..");
    if (leadsOut) {
      throw new StoreException(
          place
              + ": the file '"
              + name.replaceAll("\\p{Cntrl}", "?")
              + "' would lie outside of the workspace; names are relative, with / between folder"
              + " and file");
    }
    return name;
  }

  /** Whoever zips a folder instead of what is in it means the same. */
  private static Map<String, byte[]> withoutOuterFolder(Map<String, byte[]> files) {
    String first = files.keySet().stream().findFirst().orElse("");
    String outer = first.substring(0, first.indexOf('/') + 1);
    if (outer.isEmpty() || !files.keySet().stream().allMatch(it -> it.startsWith(outer))) {
      return files;
    }
    Map<String, byte[]> inner = new TreeMap<>();
    files.forEach((name, bytes) -> inner.put(name.substring(outer.length()), bytes));
    return inner;
  }

  static void write(WorkspaceFiles files, OutputStream stream) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(stream);
    for (Map.Entry<String, byte[]> file : files.byName().entrySet()) {
      entry(zip, file.getKey());
      zip.write(file.getValue());
      zip.closeEntry();
    }
    zip.finish();
  }

  static void entry(ZipOutputStream zip, String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(DAY);
    zip.putNextEntry(entry);
  }

  static void write(WorkspaceFiles files, Path file) {
    NewFile.write(
        file,
        out -> {
          write(files, out);
          return files;
        });
  }
}
