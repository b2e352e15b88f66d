package org.loomwright.intake;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.vehicle.Spot;

/**
 * Reads a fuse as tables give it: a slot ("F7"), a rating ("15 A"), or both ("F7 15A").
 *
 * @param slot the slot, if it names one
 * @param rating the rating, if it gives one
 */
record FuseText(Optional<Spot.OfSlot> slot, Optional<Current> rating) {
  private static final Pattern RATING =
      Pattern.compile(
          "(?i)(.*?)[ ,;:/(]*\\b([0-9]{1,3}(?:[.,][0-9]{1,2})?) ?(?:A|amps?|amperes?)\\)?");
  private static final Pattern BARE = Pattern.compile("[0-9]{1,3}(?:[.,][0-9]{1,2})?");

  /** The fuse a cell names. */
  static Fact<FuseText> read(String text, FarEnd ends) {
    String line = CellText.line(text);
    if (line.length() > 80) {
      return wrong(text, "is too long for a fuse");
    }
    Matcher matcher = RATING.matcher(line);
    String slotText = line;
    Optional<Current> rating = Optional.empty();
    if (matcher.matches()) {
      slotText = matcher.group(1).strip();
      rating = rating(matcher.group(2));
    } else if (BARE.matcher(line).matches() && ends.find(line).isEmpty()) {
      slotText = "";
      rating = rating(line);
    }
    if (rating.isPresent() && rating.get().amperes() <= 0) {
      return wrong(text, "can't be right: a fuse has more than 0 A");
    }
    if (slotText.isEmpty()) {
      return rating.isPresent()
          ? new Fact.Known<>(new FuseText(Optional.empty(), rating))
          : wrong(text, "is no fuse");
    }
    Optional<Fact<Spot>> found = ends.find(slotText);
    if (found.isEmpty()) {
      return wrong(text, "names no slot on file");
    }
    if (found.get() instanceof Fact.Wrong<Spot> wrong) {
      return new Fact.Wrong<>(wrong.message());
    }
    return found.get().known().orElseThrow() instanceof Spot.OfSlot slot
        ? new Fact.Known<>(new FuseText(Optional.of(slot), rating))
        : wrong(text, "is no fuse slot");
  }

  private static Optional<Current> rating(String number) {
    return Optional.of(Current.of(number.replace(',', '.') + " A"));
  }

  private static Fact<FuseText> wrong(String text, String what) {
    return new Fact.Wrong<>(
        CellText.shown(text) + " " + what + "; write e.g. 'rear-block F7', '15 A' or 'F7 15 A'");
  }
}
