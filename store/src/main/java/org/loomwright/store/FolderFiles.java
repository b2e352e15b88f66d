package org.loomwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** A workspace as a folder. */
final class FolderFiles {
  private FolderFiles() {}

  static WorkspaceFiles read(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new StoreException(folder + " is no folder; name the one that holds the documents");
    }
    Map<String, byte[]> files = new TreeMap<>();
    try {
      long total = 0;
      for (Path file : files(folder)) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        try (InputStream in = Files.newInputStream(file)) {
          byte[] bytes = in.readNBytes(WorkspaceFiles.LARGEST_FILE + 1);
          total += bytes.length;
          if (bytes.length > WorkspaceFiles.LARGEST_FILE) {
            throw WorkspaceFiles.tooLarge(folder.toString(), name);
          }
          files.put(name, bytes);
        }
        if (files.size() > WorkspaceFiles.MOST_FILES || total > WorkspaceFiles.MOST_BYTES) {
          throw WorkspaceFiles.tooMuch(folder.toString());
        }
      }
    } catch (IOException e) {
      throw new StoreException(folder + " can't be read (" + e + "); allow reading it", e);
    }
    return new WorkspaceFiles(files);
  }

  private static Iterable<Path> files(Path folder) throws IOException {
    java.util.List<Path> files = new java.util.ArrayList<>();
    try (DirectoryStream<Path> children = Files.newDirectoryStream(folder)) {
      for (Path child : children) {
        if (Files.isDirectory(child) && !child.getFileName().toString().startsWith(".")) {
          try (DirectoryStream<Path> deeper = Files.newDirectoryStream(child)) {
            deeper.forEach(files::add);
          }
        } else {
          files.add(child);
        }
      }
    }
    files.removeIf(
        it ->
            !Files.isRegularFile(it)
                || !WorkspaceFiles.matters(folder.relativize(it).toString().replace('\\', '/')));
    return files;
  }

  /** Writes into a folder that is new or empty, so that nothing is written over. */
  static void write(WorkspaceFiles files, Path folder) {
    try {
      Files.createDirectories(folder);
      try (DirectoryStream<Path> present = Files.newDirectoryStream(folder)) {
        if (present.iterator().hasNext()) {
          throw new StoreException(folder + " is not empty; name a new folder");
        }
      }
      for (Map.Entry<String, byte[]> file : files.byName().entrySet()) {
        Path at = inside(folder, file.getKey());
        Files.createDirectories(at.getParent());
        Files.write(at, file.getValue());
      }
    } catch (IOException e) {
      throw new StoreException(
          folder + " can't be written (" + e + "); allow writing there or name another folder", e);
    }
  }

  /** Names come from documents, so none may lead out of the folder. */
  private static Path inside(Path folder, String name) {
    Path root = folder.toAbsolutePath().normalize();
    Path at = root.resolve(name).normalize();
    if (!at.startsWith(root) || at.equals(root) || Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
      throw new StoreException(
          "the file '" + name + "' would not lie in " + folder + " or be there twice; rename it");
    }
    return at;
  }
}
