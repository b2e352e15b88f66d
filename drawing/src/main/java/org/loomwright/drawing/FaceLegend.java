package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomwright.drawing.CavityPen.Drawn;
import org.loomwright.drawing.Seen.Box;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.KeyForm;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/** The signs of a face with their words. */
public final class FaceLegend {
  private static final double WIDTH = 7.4;
  private static final double HEIGHT = 5.6;
  private static final double CAVITY_WIDTH = 4.2;
  private static final double CAVITY_HEIGHT = 3;
  private static final double RING = 0.55;

  private FaceLegend() {}

  /**
   * A sign.
   *
   * @param svg a small picture of it
   * @param words what it means
   */
  public record Sign(String svg, String words) {}

  /**
   * The signs used in one face, each with the numbers of its cavities.
   *
   * @param marks marks as given to the face
   */
  public static List<Sign> of(Housing housing, Map<String, CavityMark> marks) {
    Seen seen = Seen.of(housing, new View(Side.WIRE_SIDE, LatchDirection.UP));
    Map<String, CavityMark> all = Face.withClosed(seen, marks);
    Map<CavityMark, List<String>> numbers = new EnumMap<>(CavityMark.class);
    List<String> untold = new ArrayList<>();
    for (Seen.Spot it : seen.cavities()) {
      CavityMark mark = all.get(it.number());
      if (mark == null) {
        untold.add(it.number());
      } else {
        numbers.computeIfAbsent(mark, key -> new ArrayList<>()).add(it.number());
      }
    }
    List<Sign> signs = new ArrayList<>();
    numbers.forEach(
        (mark, of) -> signs.add(cavity(mark, mark.words() + ": " + String.join(", ", of))));
    if (!untold.isEmpty()) {
      signs.add(cavity(null, "nothing told: " + String.join(", ", untold)));
    }
    if (housing.latch()) {
      signs.add(latch("latch"));
    } else if (seen.keys().isEmpty()) {
      signs.add(bar("key"));
    }
    if (has(seen, KeyForm.RIB)) {
      signs.add(key(KeyForm.RIB, "key: rib"));
    }
    if (has(seen, KeyForm.GROOVE)) {
      signs.add(key(KeyForm.GROOVE, "key: groove"));
    }
    if (housing.sealed()) {
      signs.add(seal("sealed: each cavity has a wire seal or a plug"));
    }
    if (seen.lock().isPresent()) {
      signs.add(
          lock(
              housing.secondaryLock().map(it -> "secondary lock: " + it).orElse("secondary lock")));
    }
    return signs;
  }

  /** All signs there are, with the words for their shapes. */
  public static List<Sign> all() {
    List<Sign> signs = new ArrayList<>();
    for (CavityMark it : CavityMark.values()) {
      signs.add(cavity(it, it.shape() + ": " + it.words()));
    }
    signs.add(cavity(null, "thin plain frame: nothing told"));
    signs.add(latch("dark tab outside the wall: latch"));
    signs.add(bar("dark bar across the wall: key of a housing without latch"));
    signs.add(key(KeyForm.RIB, "dark bar: key that stands out"));
    signs.add(key(KeyForm.GROOVE, "light bar with a frame: key let in"));
    signs.add(seal("dotted line inside the wall: sealed housing"));
    signs.add(lock("striped bar outside the wall: secondary lock"));
    return signs;
  }

  private static boolean has(Seen seen, KeyForm form) {
    return seen.keys().stream().anyMatch(it -> it.form() == form);
  }

  private static Sign cavity(@Nullable CavityMark mark, String words) {
    CavityShape shape = new CavityShape(CAVITY_WIDTH, CAVITY_HEIGHT, false);
    return sign(
        new CavityPen((x, y, size, fill, text) -> "")
            .cavity(new Drawn(WIDTH / 2, HEIGHT / 2, shape), "", mark, RING),
        words);
  }

  /** A small face with something on its wall. */
  private static final Seen PIECE =
      new Seen(
          WIDTH - 3.2,
          2.5,
          false,
          List.of(),
          List.of(),
          Optional.of(new Box((WIDTH - 3.2) / 2, 0, 2.6, 0)),
          Optional.of(new Box((WIDTH - 3.2) / 2, 0, WIDTH - 3.2, 0)));

  private static FacePen pen() {
    return new FacePen(1.6, 2.8, 1);
  }

  private static Sign latch(String words) {
    return sign(
        pen().latch(PIECE, PIECE.latch().orElseThrow(), LatchDirection.UP, 2) + wall(), words);
  }

  private static Sign bar(String words) {
    return sign(wall() + pen().bar(PIECE, LatchDirection.UP), words);
  }

  private static Sign key(KeyForm form, String words) {
    return sign(
        wall() + pen().key(PIECE, new Seen.Ridge(form, new Box((WIDTH - 3.2) / 2, 0, 1.2, 2))),
        words);
  }

  private static Sign seal(String words) {
    return sign(wall() + pen().seal(PIECE), words);
  }

  private static Sign lock(String words) {
    return sign(pen().lock(PIECE, PIECE.lock().orElseThrow()) + wall(), words);
  }

  private static String wall() {
    return pen().wall(PIECE, false);
  }

  private static Sign sign(String svg, String words) {
    return new Sign(Markup.open(WIDTH, HEIGHT, words) + svg + "</svg>", words);
  }
}
