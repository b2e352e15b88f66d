package org.loomwright.web.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.QuantityException;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.workspace.Problem;

/**
 * Reads typed distances and points strictly, and keeps what is wrong with them, each at its field.
 */
final class SpotReader {
  private final List<Problem> problems = new ArrayList<>();

  /** What was wrong so far. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Keeps a problem. */
  void wrong(String field, String value, String message) {
    problems.add(new Problem("", field, value, message));
  }

  /** A length; a bare number is in mm. */
  Optional<Length> length(String field, String typed, String what) {
    return quantity(field, typed, what + ", e.g. \"820 mm\" or \"32 1/2 in\"", "mm", Length::of);
  }

  /** A temperature; a bare number is in °C. */
  Optional<Temperature> temperature(String field, String typed, String what) {
    return quantity(field, typed, what + ", e.g. \"50 °C\"", "°C", Temperature::of);
  }

  private <T> Optional<T> quantity(
      String field, String typed, String what, String unit, Function<String, T> read) {
    String text = typed.strip();
    if (text.isEmpty()) {
      wrong(field, "", "write " + what);
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(text.matches("\\d+(\\.\\d+)?") ? text + " " + unit : text));
    } catch (QuantityException refused) {
      wrong(field, text, String.valueOf(refused.getMessage()));
      return Optional.empty();
    }
  }

  /** A point within a view; nothing typed at all is no point. */
  Optional<PlanSpot> spot(PlanView view, String field, String along, String down) {
    if (along.isBlank() && down.isBlank()) {
      return Optional.empty();
    }
    Optional<Length> x = length(field + ".along", along, "its distance from the left edge too");
    Optional<Length> y = length(field + ".down", down, "its distance from the top edge too");
    if (x.isEmpty() || y.isEmpty()) {
      return Optional.empty();
    }
    boolean insideAlong = within(field + ".along", x.get(), view.along(), "right edge", "long");
    boolean insideDown = within(field + ".down", y.get(), view.down(), "bottom edge", "wide");
    return insideAlong && insideDown
        ? Optional.of(new PlanSpot(x.get(), y.get()))
        : Optional.empty();
  }

  /** Points within a view, "ALONG, DOWN; ALONG, DOWN"; empty when one of them is wrong. */
  Optional<List<PlanSpot>> bends(PlanView view, String field, String typed) {
    List<PlanSpot> bends = new ArrayList<>();
    if (typed.isBlank()) {
      return Optional.of(bends);
    }
    for (String point : typed.strip().replaceFirst(";$", "").split(";", -1)) {
      String[] parts = point.split(",", -1);
      if (parts.length != 2) {
        wrong(
            field,
            point.strip(),
            "write each bend as its distance from the left edge, a comma, and from the top edge,"
                + " with semicolons between bends, e.g. \"1880, 2040; 2250, 1330\"");
        return Optional.empty();
      }
      Optional<Length> x = length(field, parts[0], "how far a bend is from the left edge");
      Optional<Length> y = length(field, parts[1], "how far a bend is from the top edge");
      if (x.isEmpty()
          || y.isEmpty()
          || !within(field, x.get(), view.along(), "right edge", "long")
          || !within(field, y.get(), view.down(), "bottom edge", "wide")) {
        return Optional.empty();
      }
      bends.add(new PlanSpot(x.get(), y.get()));
    }
    return Optional.of(bends);
  }

  private boolean within(String field, Length at, Length most, String edge, String size) {
    if (at.mm() <= most.mm()) {
      return true;
    }
    wrong(
        field,
        at.text(),
        at.text() + " lies past the " + edge + ": the view is " + most.text() + " " + size);
    return false;
  }
}
