package org.loomwright.intake;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;

/** Pinouts as a shop may have them, with and without mistakes. */
final class RandomPinout {
  private static final List<String> SIZES = List.of("0.5", "0,75", "1", "1.5 mm²", "2.5", "4 mm2");
  private static final List<String> ENDS =
      List.of(
          "rear-block F7",
          "F9",
          "rear-ground",
          "body computer",
          "unit rear-lamps",
          "Trailer module",
          "step unit left",
          "the door pump",
          "floor lamp 2",
          "seat-block T1");
  private static final List<String> NAMES =
      List.of(
          "stop lamp",
          "left indicator",
          "tail lamp, right",
          "fog lamp",
          "ground return",
          "reverse",
          "permanent feed",
          "ignition feed 15",
          "wake-up line",
          "data high",
          "data low");
  private static final List<String> NOTES =
      List.of("", "", "in the grey sleeve", "see page 4; top", "5");

  private RandomPinout() {}

  /**
   * One table.
   *
   * @param meanings meaning of each column
   * @param rows texts
   */
  record Table(List<Meaning> meanings, List<List<String>> rows) {}

  /**
   * Makes a table with columns in any order.
   *
   * @param mistakes share of the cells that are spoilt
   */
  static Table of(Random random, Housing housing, double mistakes) {
    List<Meaning> meanings =
        new ArrayList<>(
            List.of(Meaning.CAVITY, Meaning.NAME, Meaning.SIZE, Meaning.COLOUR, Meaning.TO));
    if (random.nextBoolean()) {
      meanings.add(Meaning.NOTE);
    }
    Collections.shuffle(meanings, random);
    List<String> cavities =
        new ArrayList<>(housing.cavities().stream().map(Cavity::number).toList());
    if (random.nextBoolean()) {
      Collections.shuffle(cavities, random);
    }
    int count = Math.max(5, random.nextInt(cavities.size()) + 1);
    List<List<String>> rows = new ArrayList<>();
    for (String cavity : cavities.subList(0, Math.min(count, cavities.size()))) {
      rows.add(
          meanings.stream()
              .map(it -> random.nextDouble() < mistakes ? spoilt(random) : cell(random, it, cavity))
              .toList());
    }
    return new Table(meanings, rows);
  }

  private static String cell(Random random, Meaning meaning, String cavity) {
    return switch (meaning) {
      case CAVITY -> cavity;
      case NAME -> pick(random, NAMES);
      case SIZE -> pick(random, SIZES);
      case COLOUR -> colour(random);
      case TO -> pick(random, ENDS);
      default -> pick(random, NOTES);
    };
  }

  private static String colour(Random random) {
    PlainColour base = PlainColour.values()[random.nextInt(10)];
    PlainColour tracer = PlainColour.values()[random.nextInt(10)];
    return switch (random.nextInt(5)) {
      case 0 -> base.word();
      case 1 -> base.code() + "/" + tracer.code();
      case 2 -> base.code() + tracer.code();
      case 3 -> base.word().toUpperCase(Locale.ROOT) + " with " + tracer.word() + " stripe";
      default -> base.code().toLowerCase(Locale.ROOT);
    };
  }

  private static String spoilt(Random random) {
    return pick(
        random,
        List.of(
            "",
            "-",
            "rde",
            "99",
            "9999",
            "not used",
            "plugged",
            "BL",
            "rear-blok F7",
            "floor 2",
            "tow-socket 3",
            "x; y",
            "30",
            "0.5",
            "F1",
            "blocked",
            "red",
            "ground",
            "ﬀ 東"));
  }

  private static String pick(Random random, List<String> from) {
    return from.get(random.nextInt(from.size()));
  }

  static String header(Random random, Meaning meaning) {
    String header = meaning.headers().get(random.nextInt(meaning.headers().size()));
    return random.nextBoolean() ? header.toUpperCase(Locale.ROOT) : header;
  }

  static PastedTable table(List<List<String>> rows) {
    return new PastedTable(
        TableForm.TAB,
        IntStream.range(0, rows.size())
            .filter(i -> rows.get(i).stream().anyMatch(it -> !it.isEmpty()))
            .mapToObj(i -> new PastedTable.Row(i + 1, PastedTable.trimmed(rows.get(i))))
            .toList(),
        List.of());
  }
}
