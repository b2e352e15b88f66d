package org.loomwright.model.workspace;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.picture.PictureFile;
import org.loomwright.model.picture.Pictures;

/** Finds and reads the pictures that documents name. */
final class PictureChecks {
  private PictureChecks() {}

  /**
   * The pictures that could be read.
   *
   * @param problems takes a problem for each name without a usable picture
   */
  static Pictures read(List<Source> sources, PictureSource files, List<Problem> problems) {
    Map<String, Picture> pictures = new LinkedHashMap<>();
    for (Source source : sources) {
      Scope scope = new Scope(source, problems);
      List<PictureFile> named = new ArrayList<>();
      for (Object owner : source.bound().paths().keySet()) {
        if (owner instanceof PictureFile file && !file.file().isEmpty()) {
          named.add(file);
        }
      }
      named.sort(Comparator.comparing(scope::path));
      for (PictureFile it : named) {
        if (!pictures.containsKey(it.file())) {
          try {
            Optional<byte[]> bytes = files.bytes(it.file());
            if (bytes.isPresent()) {
              pictures.put(it.file(), Picture.of(bytes.get()));
            } else {
              scope.problem(
                  it,
                  "file",
                  it.file(),
                  "there is no picture '"
                      + it.file()
                      + "'; put it into the folder of the documents, or write its name as it is"
                      + " there, capitals included");
            }
          } catch (IllegalArgumentException e) {
            scope.problem(it, "file", it.file(), "'" + it.file() + "': " + e.getMessage());
          } catch (IOException e) {
            scope.problem(
                it,
                "file",
                it.file(),
                "'" + it.file() + "' can't be read; see whether this account may open it");
          }
        }
      }
    }
    return new Pictures(pictures);
  }
}
