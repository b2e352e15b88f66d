package org.loomwright.web.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.PhotoFace;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.PhotoFit;
import org.loomwright.model.picture.PhotoMap;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.FaceCorner;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.PhotoPoint;

/**
 * A face laid on a photo by its points, and how well that fits.
 *
 * @param photo the photo with the points that could be read
 * @param wrong what is wrong with rows of the form, by their number from 0
 * @param fits whether the face lies on the photo
 * @param words how well it fits, or why it does not
 * @param svg the photo with the points, and with the cavities where it fits
 */
public record PhotoMarks(
    FacePhoto photo, Map<Integer, String> wrong, boolean fits, String words, String svg) {
  public PhotoMarks {
    wrong = Map.copyOf(wrong);
  }

  /**
   * Something a point can be.
   *
   * @param value as the form says it
   * @param words for people
   */
  public record Choice(String value, String words) {}

  /** What a point of a photo of a housing can be. */
  public static List<Choice> choices(Housing housing) {
    List<Choice> choices = new ArrayList<>();
    for (Cavity it : housing.cavities()) {
      choices.add(new Choice(PhotoForm.cavity(it.number()), "cavity " + it.number()));
    }
    if (!housing.round()) {
      for (FaceCorner it : FaceCorner.values()) {
        choices.add(
            new Choice(PhotoForm.corner(it), "corner, " + PhotoForm.word(it).replace('-', ' ')));
      }
    }
    return choices;
  }

  /**
   * Lays a face on a photo.
   *
   * @param href address of the picture's bytes
   */
  public static PhotoMarks of(Housing housing, PhotoForm form, Picture picture, String href) {
    Map<Integer, String> wrong = new HashMap<>();
    List<PhotoPoint> points = new ArrayList<>();
    List<Integer> rowOf = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < form.rows().size(); i++) {
      PhotoForm.Row row = form.rows().get(i);
      if (row.isEmpty()) {
        continue;
      }
      Optional<String> fault = fault(housing, row, picture, seen.putIfAbsent(row.what(), i));
      if (fault.isPresent()) {
        wrong.put(i, fault.get());
      } else {
        points.add(row.point().orElseThrow());
        rowOf.add(i);
      }
    }
    FacePhoto photo = new FacePhoto(form.file(), form.side(), points);
    if (points.size() < 3) {
      int missing = 3 - points.size();
      return new PhotoMarks(
          photo,
          wrong,
          false,
          (missing == 1 ? "One more point" : missing + " more points")
              + " at least, not on one line; with four the perspective is undone, with five a wrong"
              + " one is found.",
          plain(picture, href, form));
    }
    PhotoFit.Outcome outcome = PhotoFit.of(housing, photo);
    if (outcome instanceof PhotoFit.Wrong it) {
      it.point().ifPresent(at -> wrong.put(rowOf.get(at), it.message()));
      return new PhotoMarks(
          photo,
          wrong,
          false,
          it.point().isPresent()
              ? "The points don't fit together; look at point "
                  + (rowOf.get(it.point().get()) + 1)
                  + "."
              : sentence(it.message()),
          plain(picture, href, form));
    }
    PhotoMap map = ((PhotoFit.Fits) outcome).map();
    return new PhotoMarks(
        photo,
        wrong,
        wrong.isEmpty(),
        residual(map, rowOf),
        marked(housing, photo, picture, href, form));
  }

  private static Optional<String> fault(
      Housing housing,
      PhotoForm.Row row,
      Picture picture,
      @org.jspecify.annotations.Nullable Integer before) {
    if (choices(housing).stream().noneMatch(it -> it.value().equals(row.what()))) {
      return Optional.of("choose which cavity or corner this point is");
    }
    Optional<Integer> x = PhotoForm.Row.number(row.x());
    Optional<Integer> y = PhotoForm.Row.number(row.y());
    if (x.isEmpty() || y.isEmpty()) {
      return Optional.of(
          "write where it is in whole pixels from the left and from the top, or click it in the"
              + " picture");
    }
    if (x.get() >= picture.widthPx() || y.get() >= picture.heightPx()) {
      return Optional.of(
          "this lies outside the picture, which is "
              + picture.widthPx()
              + " px wide and "
              + picture.heightPx()
              + " px high");
    }
    return Optional.ofNullable(before)
        .map(it -> "point " + (it + 1) + " is the same; choose another cavity or corner");
  }

  private static String residual(PhotoMap map, List<Integer> rowOf) {
    if (!map.isChecked()) {
      return "The face is laid on the photo. With so few points nothing shows a wrong one: look"
          + " whether all cavities are met, or add one more point.";
    }
    int worst = map.worst();
    return String.format(
        Locale.ROOT,
        "The face is laid on the photo. The point that fits worst is point %d: it lies %.1f mm"
            + " (%.0f px) from where the others put it.",
        rowOf.get(worst) + 1,
        map.missMm(worst),
        map.missPx(worst));
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  private static String plain(Picture picture, String href, PhotoForm form) {
    String image =
        "<image href=\""
            + escaped(href)
            + "\" width=\""
            + picture.widthPx()
            + "\" height=\""
            + picture.heightPx()
            + "\"/>";
    return framed(picture, image, form);
  }

  private static String marked(
      Housing housing, FacePhoto photo, Picture picture, String href, PhotoForm form) {
    String svg =
        PhotoFace.svg(housing, photo, picture, Map.of(), 120, 100, Lettering.fitted())
            .replaceFirst(
                "width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"",
                "width=\"" + picture.widthPx() + "\" height=\"" + picture.heightPx() + "\"");
    // The browser has the picture already; in the page it would be sent again with every point.
    String data = picture.dataUri();
    int at = svg.indexOf(data);
    String light =
        at < 0 ? svg : svg.substring(0, at) + escaped(href) + svg.substring(at + data.length());
    return framed(picture, light, form);
  }

  private static String framed(Picture picture, String inner, PhotoForm form) {
    double size = Math.max(picture.widthPx(), picture.heightPx()) / 70.0;
    StringBuilder svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"fills\" viewBox=\"0 0 ")
        .append(picture.widthPx())
        .append(' ')
        .append(picture.heightPx())
        .append("\" role=\"img\" aria-label=\"Photo with its points\">")
        .append(inner);
    for (int i = 0; i < form.rows().size(); i++) {
      Optional<Integer> x = PhotoForm.Row.number(form.rows().get(i).x());
      Optional<Integer> y = PhotoForm.Row.number(form.rows().get(i).y());
      if (x.isPresent() && y.isPresent()) {
        cross(svg, x.get(), y.get(), size, i + 1);
      }
    }
    return svg.append("</svg>").toString();
  }

  private static void cross(StringBuilder svg, int x, int y, double size, int number) {
    String lines =
        String.format(
            Locale.ROOT,
            "M%1$.1f %2$d H%3$.1f M%4$d %5$.1f V%6$.1f",
            x - size,
            y,
            x + size,
            x,
            y - size,
            y + size);
    for (String[] pen : new String[][] {{"#fff", "0.28"}, {"#b3261e", "0.12"}}) {
      svg.append(
          String.format(
              Locale.ROOT,
              "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.2f\"/>",
              lines,
              pen[0],
              Double.parseDouble(pen[1]) * size));
    }
    svg.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" font-weight=\"700\" fill=\"#b3261e\""
                + " stroke=\"#fff\" stroke-width=\"%.2f\" paint-order=\"stroke\">%d</text>",
            x + 0.5 * size,
            y - 0.5 * size,
            1.5 * size,
            0.3 * size,
            number));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("\"", "&quot;").replace("<", "&lt;");
  }
}
