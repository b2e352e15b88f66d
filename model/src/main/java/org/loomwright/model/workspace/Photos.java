package org.loomwright.model.workspace;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.picture.PictureFile;

/** Checks the photos of one document. */
final class Photos {
  private Photos() {}

  /** Notes each photo that is there already. */
  static void once(Scope scope, List<? extends PictureFile> photos) {
    Set<String> seen = new HashSet<>();
    for (PictureFile photo : photos) {
      if (!photo.file().isEmpty() && !seen.add(photo.file())) {
        scope.problem(
            photo, "file", photo.file(), "'" + photo.file() + "' is there twice; once is enough");
      }
    }
  }
}
