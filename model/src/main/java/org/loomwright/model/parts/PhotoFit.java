package org.loomwright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.model.picture.PhotoMap;
import org.loomwright.model.vehicle.FaceCorner;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.PhotoPoint;
import org.loomwright.model.vehicle.Side;

/** Lays the face of a housing on a photo of it. */
public final class PhotoFit {
  /** A point may be off by this share of the smallest cavity; more, and marks hit the neighbour. */
  private static final double MOST_OFF = 0.5;

  /** The nearest cavity may look this many times as large in area as the farthest. */
  private static final double MOST_PERSPECTIVE = 4;

  private PhotoFit() {}

  /** What came of it. */
  public sealed interface Outcome {}

  /**
   * The face lies on the photo.
   *
   * @param map from the face as on file, wire side and latch up, to the photo
   */
  public record Fits(PhotoMap map) implements Outcome {}

  /**
   * The points can't be right.
   *
   * @param point index of the point at fault; empty when it is all of them
   * @param message what is wrong and what would be right
   */
  public record Wrong(Optional<Integer> point, String message) implements Outcome {}

  /**
   * Fits a face to the points of a photo.
   *
   * @param housing housing in the photo
   * @param photo photo
   */
  public static Outcome of(Housing housing, FacePhoto photo) {
    List<PhotoMap.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < photo.points().size(); i++) {
      PhotoPoint point = photo.points().get(i);
      Optional<PhotoMap.Point> at = onFace(housing, point);
      if (at.isEmpty()) {
        return new Wrong(Optional.of(i), "the point is not on the face of '" + housing.id() + "'");
      }
      pairs.add(new PhotoMap.Pair(at.get().x(), at.get().y(), point.x(), point.y()));
    }
    PhotoMap map;
    try {
      map = PhotoMap.fit(pairs);
    } catch (IllegalArgumentException e) {
      return new Wrong(
          Optional.empty(),
          e.getMessage()
              + "; take cavities or corners far apart: three not on one line, or better four");
    }
    return judged(housing, photo, map);
  }

  private static Outcome judged(Housing housing, FacePhoto photo, PhotoMap map) {
    double smallest =
        housing.cavities().stream()
            .mapToDouble(it -> Math.min(it.width().mm(), it.height().mm()))
            .min()
            .orElse(0);
    int worst = map.worst();
    double off = map.missMm(worst);
    if (!(off <= MOST_OFF * smallest)) {
      return new Wrong(
          Optional.of(worst),
          String.format(
              Locale.ROOT,
              "the points don't fit together: this one lies %.1f mm (%.0f px) from where the others"
                  + " put it, and half the smallest cavity, %.1f mm, is the most; check the pixels"
                  + " and that each point is the cavity it says",
              off,
              map.missPx(worst),
              MOST_OFF * smallest));
    }
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    boolean mirrored = false;
    for (Cavity it : housing.cavities()) {
      double area = map.areaPx2(it.x().mm(), it.y().mm());
      if (!map.isInFront(it.x().mm(), it.y().mm())) {
        most = Double.POSITIVE_INFINITY;
      }
      mirrored |= area < 0;
      least = Math.min(least, Math.abs(area));
      most = Math.max(most, Math.abs(area));
    }
    if (!(most <= MOST_PERSPECTIVE * least)) {
      return new Wrong(
          Optional.empty(),
          "the points bend the face more than a usable photo would; check that each point is the"
              + " cavity it says, or take the photo more from the front");
    }
    if (mirrored != (photo.side() == Side.MATING_SIDE)) {
      return new Wrong(
          Optional.empty(),
          "by its points the photo shows the "
              + (mirrored ? Side.MATING_SIDE : Side.WIRE_SIDE).words()
              + ", but it is said to show the "
              + photo.side().words()
              + "; correct the side or the points");
    }
    return new Fits(map);
  }

  private static Optional<PhotoMap.Point> onFace(Housing housing, PhotoPoint point) {
    if (point.cavity().isPresent()) {
      return housing
          .cavity(point.cavity().get())
          .map(it -> new PhotoMap.Point(it.x().mm(), it.y().mm()));
    }
    return point.corner().filter(it -> !housing.round()).map(it -> corner(housing, it));
  }

  private static PhotoMap.Point corner(Housing housing, FaceCorner corner) {
    boolean right = corner == FaceCorner.TOP_RIGHT || corner == FaceCorner.BOTTOM_RIGHT;
    boolean bottom = corner == FaceCorner.BOTTOM_LEFT || corner == FaceCorner.BOTTOM_RIGHT;
    return new PhotoMap.Point(right ? housing.width().mm() : 0, bottom ? housing.height().mm() : 0);
  }
}
