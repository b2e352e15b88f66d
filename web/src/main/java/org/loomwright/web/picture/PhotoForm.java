package org.loomwright.web.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.vehicle.FaceCorner;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.PhotoPoint;
import org.loomwright.model.vehicle.Side;

/**
 * What a person has said of a photo of a face: which picture, which side, and where points of the
 * face are in it.
 *
 * @param file name of the picture; empty when none is chosen
 * @param side side it shows
 * @param part whether it shows the loose part, so that it stands for all connectors with it
 * @param rows points as typed
 */
public record PhotoForm(String file, Side side, boolean part, List<Row> rows) {
  /** Most points taken. */
  private static final int MOST = 60;

  /** Rows that are there at least. */
  private static final int FEWEST = 4;

  public PhotoForm {
    rows = List.copyOf(rows);
  }

  /**
   * One point as typed.
   *
   * @param what "cavity 3" or "corner top-left"; empty for none
   * @param x px from the left
   * @param y px from the top
   */
  public record Row(String what, String x, String y) {
    /** Whether nothing was typed. */
    public boolean isEmpty() {
      return what.isEmpty() && x.isEmpty() && y.isEmpty();
    }

    static Row of(PhotoPoint point) {
      return new Row(
          point
              .cavity()
              .map(PhotoForm::cavity)
              .orElseGet(() -> point.corner().map(PhotoForm::corner).orElse("")),
          Integer.toString(point.x()),
          Integer.toString(point.y()));
    }

    /** The point; empty when it can't be read as one. */
    Optional<PhotoPoint> point() {
      Optional<Integer> left = number(x);
      Optional<Integer> top = number(y);
      Optional<String> cavity =
          what.startsWith("cavity ") ? Optional.of(what.substring(7)) : Optional.empty();
      Optional<FaceCorner> corner =
          Stream.of(FaceCorner.values()).filter(it -> corner(it).equals(what)).findFirst();
      return left.isEmpty() || top.isEmpty() || cavity.isEmpty() == corner.isEmpty()
          ? Optional.empty()
          : Optional.of(new PhotoPoint(cavity, corner, left.get(), top.get()));
    }

    static Optional<Integer> number(String text) {
      return text.matches("\\d{1,6}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
    }
  }

  static String cavity(String number) {
    return "cavity " + number;
  }

  static String corner(FaceCorner corner) {
    return "corner " + word(corner);
  }

  /** A constant as documents write it. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A photo that is on file. */
  public static PhotoForm of(FacePhoto photo, boolean part) {
    return new PhotoForm(
        photo.file(), photo.side(), part, withSpare(photo.points().stream().map(Row::of).toList()));
  }

  /** What a form says. */
  public static PhotoForm of(Map<String, List<String>> fields) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < MOST && fields.containsKey("what" + i); i++) {
      rows.add(
          new Row(
              one(fields, "what" + i), one(fields, "x" + i).strip(), one(fields, "y" + i).strip()));
    }
    rows.removeIf(Row::isEmpty);
    Side side =
        Stream.of(Side.values())
            .filter(it -> word(it).equals(one(fields, "side")))
            .findFirst()
            .orElse(Side.WIRE_SIDE);
    return new PhotoForm(
        one(fields, "picture"), side, one(fields, "of").equals("part"), withSpare(rows));
  }

  private static List<Row> withSpare(List<Row> typed) {
    List<Row> rows = new ArrayList<>(typed);
    while (rows.size() < Math.max(FEWEST, Math.min(MOST, typed.size() + 1))) {
      rows.add(new Row("", "", ""));
    }
    return rows;
  }

  private static String one(Map<String, List<String>> fields, String name) {
    return fields.getOrDefault(name, List.of()).stream().findFirst().orElse("");
  }

  /** The side as documents write it. */
  public String sideWord() {
    return word(side);
  }
}
