package org.loomwright.model.workspace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.picture.Picture;

/**
 * Picture files of a folder and of the folders directly in it, by name. Names are looked up in what
 * the folder lists, so that no name leads out of it and capitals count on every system.
 */
final class FolderPictures implements PictureSource {
  private final Map<String, Path> files;

  private FolderPictures(Map<String, Path> files) {
    this.files = files;
  }

  static FolderPictures of(Path folder) {
    try (Stream<Path> found = Files.isDirectory(folder) ? Files.walk(folder, 2) : Stream.empty()) {
      return new FolderPictures(
          found
              .filter(Files::isRegularFile)
              .collect(
                  Collectors.toMap(
                      it -> folder.relativize(it).toString().replace('\\', '/'),
                      it -> it,
                      (one, other) -> one,
                      TreeMap::new)));
    } catch (IOException | java.io.UncheckedIOException e) {
      // What can't be listed is noted where the texts are read; here it only has no pictures.
      return new FolderPictures(Map.of());
    }
  }

  @Override
  public Optional<byte[]> bytes(String name) throws IOException {
    Path file = files.get(name);
    if (file == null) {
      return Optional.empty();
    }
    // One byte more than allowed is enough to see that it is too large.
    try (var in = Files.newInputStream(file)) {
      return Optional.of(in.readNBytes(Picture.LARGEST_BYTES + 1));
    }
  }
}
