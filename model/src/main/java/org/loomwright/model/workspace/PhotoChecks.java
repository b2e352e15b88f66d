package org.loomwright.model.workspace;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.json.Paths;
import org.loomwright.model.parts.PhotoFit;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.PhotoPoint;

/** Checks the points by which a face is laid on a photo. */
final class PhotoChecks {
  private static final int FEWEST = 3;

  private PhotoChecks() {}

  static void check(
      Scope scope, FacePhoto photo, String housing, PartNames parts, Pictures pictures) {
    if (!scope.sound(photo)) {
      return;
    }
    if (photo.points().size() < FEWEST) {
      scope.problem(
          photo,
          "points",
          Integer.toString(photo.points().size()),
          "a photo needs three points at least, not on one line; four undo the perspective");
      return;
    }
    Map<String, Integer> seen = new HashMap<>();
    Optional<Picture> picture = pictures.find(photo.file());
    boolean good = true;
    for (int i = 0; i < photo.points().size(); i++) {
      PhotoPoint point = photo.points().get(i);
      Optional<String> wrong =
          wrong(point, housing, parts)
              .or(() -> twice(point, seen.get(name(point))))
              .or(() -> picture.flatMap(it -> outside(point, it)));
      seen.putIfAbsent(name(point), i);
      int index = i;
      wrong.ifPresent(
          message -> scope.problem(photo, Paths.item("points", index), name(point), message));
      good &= wrong.isEmpty();
    }
    if (good) {
      parts
          .housing(housing)
          .map(it -> PhotoFit.of(it, photo))
          .filter(PhotoFit.Wrong.class::isInstance)
          .map(PhotoFit.Wrong.class::cast)
          .ifPresent(
              wrong ->
                  scope.problem(
                      photo,
                      wrong.point().map(at -> Paths.item("points", at)).orElse("points"),
                      wrong.point().map(at -> name(photo.points().get(at))).orElse(photo.file()),
                      wrong.message()));
    }
  }

  private static Optional<String> wrong(PhotoPoint point, String housing, PartNames parts) {
    if (point.cavity().isPresent() == point.corner().isPresent()) {
      return Optional.of(
          "a point is the centre of a cavity or a corner of the face: give 'cavity' or 'corner',"
              + " and not both");
    }
    if (point.corner().isPresent()) {
      return parts
          .housing(housing)
          .filter(it -> it.round())
          .map(it -> "a round face has no corners; take cavities");
    }
    return parts.wrongCavity(housing, point.cavity().get());
  }

  private static Optional<String> twice(
      PhotoPoint point, @org.jspecify.annotations.Nullable Integer before) {
    return Optional.ofNullable(before)
        .map(it -> "'" + name(point) + "' is the point points[" + it + "] already; take another");
  }

  private static Optional<String> outside(PhotoPoint point, Picture picture) {
    return point.x() < picture.widthPx() && point.y() < picture.heightPx()
        ? Optional.empty()
        : Optional.of(
            "the point lies outside the picture, which is "
                + picture.widthPx()
                + " px wide and "
                + picture.heightPx()
                + " px high");
  }

  private static String name(PhotoPoint point) {
    return point
        .cavity()
        .or(() -> point.corner().map(it -> it.name().toLowerCase(java.util.Locale.ROOT)))
        .orElse("")
        .replace('_', '-');
  }
}
