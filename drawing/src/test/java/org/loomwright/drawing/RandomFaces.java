package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.FaceEdge;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Key;
import org.loomwright.model.parts.KeyForm;
import org.loomwright.model.parts.LatchForm;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/** Random faces of every kind. Cavities of all but the scatters lie apart, as moulded ones do. */
enum RandomFaces {
  ROWS {
    @Override
    Face draw(Random random) {
      int rows = 1 + random.nextInt(4);
      int columns = 1 + random.nextInt(14);
      return new Face(
          10 + 4 * columns,
          6 + 4.2 * rows,
          false,
          rows(random, rows, columns, 4, 4, 4, random.nextBoolean() ? 0 : 0.2));
    }
  },
  /** Rows whose cavities are some large, some small. */
  MIXED_ROWS {
    @Override
    Face draw(Random random) {
      List<Cavity> cavities = new ArrayList<>();
      double y = 4;
      double widest = 0;
      int rows = 1 + random.nextInt(4);
      for (int row = 0; row < rows; row++) {
        double high = 2.5 + 4 * random.nextDouble();
        double x = 2 + 2 * random.nextDouble();
        int count = 1 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
          double wide = 2 + 4 * random.nextDouble();
          double low = random.nextBoolean() ? high : high * (0.6 + 0.4 * random.nextDouble());
          cavities.add(cavity(random, cavities.size() + 1, x + wide / 2, y + high / 2, wide, low));
          x += wide + 1;
        }
        widest = Math.max(widest, x);
        y += high + 1;
      }
      return new Face(widest + 2, y + 3, false, cavities);
    }
  },
  /** Large cavities beside rows of small ones. */
  BLOCKS {
    @Override
    Face draw(Random random) {
      List<Cavity> cavities = new ArrayList<>();
      int large = 1 + random.nextInt(3);
      for (int i = 0; i < large; i++) {
        cavities.add(cavity(random, i + 1, 5, 5 + 7.5 * i, 6, 6));
      }
      int rows = 1 + random.nextInt(4);
      int columns = 1 + random.nextInt(7);
      for (Cavity it : rows(random, rows, columns, 12, 4, large + 4, 0)) {
        cavities.add(it);
      }
      return new Face(18 + 4 * columns, Math.max(4 + 7.5 * large, 8 + 4.2 * rows), false, cavities);
    }
  },
  RINGS {
    @Override
    Face draw(Random random) {
      List<Cavity> cavities = new ArrayList<>();
      if (random.nextBoolean()) {
        cavities.add(Housings.cavity("1", 20, 20, 2, 2));
      }
      int rings = 1 + random.nextInt(3);
      for (int ring = 1; ring <= rings; ring++) {
        int count = 2 + random.nextInt(5 * ring);
        cavities.addAll(
            Housings.ring(
                count,
                5 * ring,
                20,
                cavities.size() + 1,
                random.nextBoolean() ? 0 : random.nextInt(360)));
      }
      return new Face(40, 40, true, cavities);
    }
  },
  /** A ring with gaps, as codings leave them. */
  BROKEN_RING {
    @Override
    Face draw(Random random) {
      List<Cavity> cavities = new ArrayList<>();
      int steps = 6 + random.nextInt(20);
      for (Cavity it : Housings.ring(steps, 14, 20, 1, random.nextInt(360))) {
        if (random.nextInt(3) > 0 || cavities.isEmpty()) {
          cavities.add(it);
        }
      }
      return new Face(40, 40, true, cavities);
    }
  },
  /** A round face filled row by row. */
  ROUND_ROWS {
    @Override
    Face draw(Random random) {
      List<Cavity> cavities = new ArrayList<>();
      int rows = 2 + random.nextInt(5);
      for (int row = 0; row < rows; row++) {
        double y = 20 + 5 * (row - (rows - 1) / 2.0);
        int most = (int) (Math.sqrt(17 * 17 - (y - 20) * (y - 20)) / 2.5);
        int count = 1 + random.nextInt(Math.max(1, most));
        for (int i = 0; i < count; i++) {
          double x = 20 + 5 * (i - (count - 1) / 2.0);
          cavities.add(cavity(random, cavities.size() + 1, x, y, 3, 3));
        }
      }
      return new Face(40, 40, true, cavities);
    }
  },
  SCATTER {
    @Override
    Face draw(Random random) {
      List<Cavity> cavities = new ArrayList<>();
      int count = 1 + random.nextInt(9);
      for (int i = 0; i < count; i++) {
        cavities.add(
            cavity(
                random,
                i + 1,
                2 + 26 * random.nextDouble(),
                2 + 16 * random.nextDouble(),
                1 + 3 * random.nextDouble(),
                1 + 3 * random.nextDouble()));
      }
      return new Face(30, 20, random.nextBoolean(), cavities);
    }
  };

  /** Outline and cavities. */
  record Face(double width, double height, boolean round, List<Cavity> cavities) {}

  abstract Face draw(Random random);

  /** A housing with everything a face may have. */
  Housing housing(Random random) {
    Face face = draw(random);
    boolean latch = random.nextInt(4) > 0;
    List<Key> keys = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      double angle = 2 * Math.PI * random.nextDouble();
      keys.add(
          new Key(
              random.nextBoolean() ? KeyForm.RIB : KeyForm.GROOVE,
              mm(
                  face.round()
                      ? face.width() / 2 * (1 + Math.cos(angle))
                      : face.width() * random.nextDouble()),
              mm(
                  face.round()
                      ? face.height() / 2 * (1 + Math.sin(angle))
                      : random.nextBoolean() ? 0 : face.height()),
              mm(0.5 + random.nextDouble()),
              mm(0.5 + 2 * random.nextDouble())));
    }
    return new Housing(
        "H-TEST",
        "test housing",
        mm(face.width()),
        mm(face.height()),
        face.round(),
        random.nextBoolean(),
        latch,
        face.cavities(),
        Optional.empty(),
        Money.of("1.00 EUR"),
        "invented",
        keys,
        latch && random.nextBoolean()
            ? Optional.of(
                new LatchForm(mm(face.width() * random.nextDouble()), mm(face.width() / 4)))
            : Optional.empty(),
        random.nextBoolean() ? Optional.of(FaceEdge.values()[random.nextInt(4)]) : Optional.empty(),
        Optional.empty());
  }

  /** Any of the kinds. */
  static Housing any(long seed) {
    Random random = new Random(seed);
    return values()[random.nextInt(values().length)].housing(random);
  }

  private static List<Cavity> rows(
      Random random, int rows, int columns, double left, double top, int first, double jitter) {
    boolean staggered = random.nextBoolean();
    List<Cavity> cavities = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        if (random.nextInt(8) == 0 && cavities.size() > 1) {
          continue;
        }
        cavities.add(
            cavity(
                random,
                first + cavities.size(),
                left
                    + 4 * column
                    + (staggered && row % 2 == 1 ? 2 : 0)
                    + jitter * random.nextDouble(),
                top + 4.2 * row + jitter * random.nextDouble(),
                3,
                3.5));
      }
    }
    return cavities;
  }

  private static Cavity cavity(
      Random random, int number, double x, double y, double width, double height) {
    Cavity open =
        new Cavity(
            "" + number,
            mm(x),
            mm(y),
            mm(width),
            mm(height),
            List.of(),
            Optional.empty(),
            false,
            random.nextInt(6) == 0);
    return random.nextInt(7) == 0 ? Housings.closed(open) : open;
  }

  private static Length mm(double value) {
    return Length.ofMm(Math.round(value * 1000) / 1000.0);
  }
}
