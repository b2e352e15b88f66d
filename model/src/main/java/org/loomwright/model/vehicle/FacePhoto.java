package org.loomwright.model.vehicle;

import java.util.List;
import org.loomwright.model.picture.PictureFile;

/**
 * A photo of a face, with points by which cavities are found in it.
 *
 * @param file name of a PNG or JPEG file in the workspace's folder, "sub-folder/name" below it
 * @param side side seen
 * @param points three points or more, not on one line; four or more undo the perspective
 */
public record FacePhoto(String file, Side side, List<PhotoPoint> points) implements PictureFile {
  public FacePhoto {
    points = List.copyOf(points);
  }
}
