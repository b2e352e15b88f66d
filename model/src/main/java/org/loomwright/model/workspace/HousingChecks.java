package org.loomwright.model.workspace;

import java.util.List;
import java.util.Locale;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Key;
import org.loomwright.model.parts.LatchForm;
import org.loomwright.model.parts.Sundry;
import org.loomwright.model.parts.SundryUse;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.quantity.Length;

/** Checks a housing and the geometry of its face. */
final class HousingChecks {
  /** Lengths are read to this, mm: what is nearer touches and does not overlap. */
  private static final double TOUCH_MM = 0.01;

  /** Share of the radius up to which a key is at the edge of a round face. */
  private static final double KEY_ON_EDGE = 1.05;

  private final Scope scope;
  private final Housing housing;
  private final PartNames parts;

  private HousingChecks(Scope scope, Housing housing, PartNames parts) {
    this.scope = scope;
    this.housing = housing;
    this.parts = parts;
  }

  static void check(
      Scope scope, Housing housing, List<Sundry> sundries, PartNames parts, Pictures pictures) {
    new HousingChecks(scope, housing, parts).checkAll(sundries, pictures);
  }

  private void checkAll(List<Sundry> sundries, Pictures pictures) {
    positive(housing, "width", housing.width());
    positive(housing, "height", housing.height());
    scope.unique(housing.cavities(), "number", Cavity::number);
    for (Cavity cavity : housing.cavities()) {
      positive(cavity, "width", cavity.width());
      positive(cavity, "height", cavity.height());
      scope.references(cavity, "terminals", parts.names(), Sort.TERMINAL, cavity.terminals());
      cavity.plug().ifPresent(plug -> cavityPlug(cavity, plug, sundries));
      if (scope.sound(housing)) {
        filling(cavity);
        inside(cavity);
      }
    }
    if (scope.sound(housing)) {
      overlaps();
    }
    housing.keys().forEach(this::key);
    housing.latchForm().ifPresent(this::latch);
    housing
        .photo()
        .ifPresent(photo -> PhotoChecks.check(scope, photo, housing.id(), parts, pictures));
  }

  private void filling(Cavity cavity) {
    if (cavity.closed() && !cavity.terminals().isEmpty()) {
      scope.problem(
          cavity,
          "terminals",
          String.join(", ", cavity.terminals()),
          "a cavity that is moulded closed takes no terminals; leave them out, or \"closed\"");
    }
    if (cavity.closed() && cavity.plug().isPresent()) {
      scope.problem(
          cavity,
          "plug",
          cavity.plug().get(),
          "a cavity that is moulded closed takes no plug; leave it out, or \"closed\"");
    }
    if (housing.sealed() && cavity.plug().isEmpty() && !cavity.closed()) {
      scope.problem(
          cavity,
          "plug",
          "",
          "a cavity of a sealed housing needs the plug that seals it when empty");
    }
  }

  private void inside(Cavity cavity) {
    double beyondX = beyond(cavity.x(), cavity.width(), housing.width());
    double beyondY = beyond(cavity.y(), cavity.height(), housing.height());
    if (beyondX > TOUCH_MM) {
      outside(cavity, "x", cavity.x(), beyondX, housing.width(), "wide");
    } else if (beyondY > TOUCH_MM) {
      outside(cavity, "y", cavity.y(), beyondY, housing.height(), "high");
    } else if (housing.round()) {
      // Inside the ellipse that the centre may not leave.
      double x = share(cavity.x(), cavity.width(), housing.width());
      double y = share(cavity.y(), cavity.height(), housing.height());
      if (x * x + y * y > 1) {
        scope.problem(
            cavity,
            "x",
            cavity.x().text(),
            "the cavity reaches beyond the edge of the round face; correct 'x', 'y' or its size");
      }
    }
  }

  private void outside(
      Cavity cavity, String key, Length at, double beyondMm, Length face, String way) {
    scope.problem(
        cavity,
        key,
        at.text(),
        String.format(
            Locale.ROOT,
            "the cavity reaches %.2f mm beyond the face, which is \"%s\" %s; correct '%s' or its"
                + " size",
            beyondMm,
            face.text(),
            way,
            key));
  }

  /** How far something reaches out of the face, mm; zero or less when not at all. */
  private static double beyond(Length centre, Length size, Length face) {
    return Math.max(size.mm() / 2 - centre.mm(), centre.mm() + size.mm() / 2 - face.mm());
  }

  /** Distance from the middle over the most a round face has room for. */
  private static double share(Length centre, Length size, Length face) {
    double room = (face.mm() - size.mm()) / 2 + TOUCH_MM;
    return (centre.mm() - face.mm() / 2) / room;
  }

  private void overlaps() {
    List<Cavity> all = housing.cavities();
    for (int i = 0; i < all.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (overlap(all.get(i), all.get(k))) {
          scope.problem(
              all.get(i),
              "",
              all.get(i).number(),
              "cavity '"
                  + all.get(i).number()
                  + "' lies over cavity '"
                  + all.get(k).number()
                  + "'; correct the place or size of one of them");
        }
      }
    }
  }

  private boolean overlap(Cavity one, Cavity other) {
    double x = Math.abs(one.x().mm() - other.x().mm());
    double y = Math.abs(one.y().mm() - other.y().mm());
    double roomX = (one.width().mm() + other.width().mm()) / 2 - TOUCH_MM;
    double roomY = (one.height().mm() + other.height().mm()) / 2 - TOUCH_MM;
    if (x >= roomX || y >= roomY) {
      return false;
    }
    boolean round = housing.round() || one.round() && other.round();
    return !round || x / roomX * (x / roomX) + y / roomY * (y / roomY) < 1;
  }

  private void key(Key key) {
    positive(key, "width", key.width());
    positive(key, "height", key.height());
    if (!scope.sound(key) || !scope.sound(housing)) {
      return;
    }
    if (key.x().mm() < 0 || key.x().mm() > housing.width().mm()) {
      scope.problem(key, "x", key.x().text(), off("a key", housing.width(), "wide"));
    }
    if (key.y().mm() < 0 || key.y().mm() > housing.height().mm()) {
      scope.problem(key, "y", key.y().text(), off("a key", housing.height(), "high"));
    }
    if (housing.round()) {
      double x = 2 * key.x().mm() / housing.width().mm() - 1;
      double y = 2 * key.y().mm() / housing.height().mm() - 1;
      if (Math.hypot(x, y) > KEY_ON_EDGE) {
        scope.problem(
            key,
            "x",
            key.x().text(),
            "the middle of a key must be on the face or its edge, which is round; correct 'x' or"
                + " 'y'");
      }
    }
  }

  private void latch(LatchForm latch) {
    positive(latch, "width", latch.width());
    if (!scope.sound(latch) || !scope.sound(housing)) {
      return;
    }
    if (!housing.latch()) {
      scope.problem(
          latch,
          "",
          "",
          "the housing has no latch to say this of; write \"latch\": true, or leave the key out");
    }
    if (latch.x().mm() < 0 || latch.x().mm() > housing.width().mm()) {
      scope.problem(latch, "x", latch.x().text(), off("the latch", housing.width(), "wide"));
    }
  }

  private static String off(String what, Length face, String way) {
    return "the middle of "
        + what
        + " must be on the face, which is \""
        + face.text()
        + "\" "
        + way;
  }

  private void cavityPlug(Cavity cavity, String plug, List<Sundry> sundries) {
    scope.reference(cavity, "plug", parts.names(), Sort.SUNDRY, plug);
    sundries.stream()
        .filter(it -> it.id().equals(plug) && scope.sound(it) && it.use() != SundryUse.CAVITY_PLUG)
        .findFirst()
        .ifPresent(
            it ->
                scope.problem(
                    cavity,
                    "plug",
                    plug,
                    "'"
                        + plug
                        + "' is not used as a cavity plug; its use is "
                        + it.use().name().toLowerCase(Locale.ROOT).replace('_', '-')));
  }

  private void positive(Object owner, String key, Length length) {
    scope.aboveZero(owner, key, length.mm(), length.text());
  }
}
