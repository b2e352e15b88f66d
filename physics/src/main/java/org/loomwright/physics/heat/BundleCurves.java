package org.loomwright.physics.heat;

/**
 * Bundle derating curves of AC 43.13-1B figure 11-5 / MIL-W-5088L: factor on the free-air current
 * by number of wires and by share of the bundle's capacity in use. Points read from the published
 * figure (±0.01).
 *
 * <p>Between points: linear in both directions. Below 20 % load: the 20 % curve, which is the
 * stricter. Above 19 wires, where our points end: factor at 19 times √(19/n), which lets the larger
 * bundle give off no more heat than 19 wires do - stricter than the figure.
 */
final class BundleCurves {
  static final String SOURCE =
      "AC 43.13-1B figure 11-5 / MIL-W-5088L bundle curves (points read from the figure, ±0.01)";

  private static final int[] WIRES = {1, 3, 4, 6, 7, 9, 10, 12, 13, 15, 16, 18, 19};

  private static final double[][] FACTOR = {
    {1, 1, 1, 1, 1},
    {0.935, 0.855, 0.815, 0.77, 0.725},
    {0.9075, 0.805, 0.75, 0.705, 0.66},
    {0.85, 0.725, 0.655, 0.605, 0.5725},
    {0.82, 0.695, 0.625, 0.57, 0.54},
    {0.775, 0.645, 0.575, 0.52, 0.485},
    {0.755, 0.6225, 0.55, 0.5, 0.465},
    {0.715, 0.585, 0.515, 0.465, 0.43},
    {0.6975, 0.5675, 0.495, 0.4475, 0.415},
    {0.67, 0.54, 0.465, 0.42, 0.385},
    {0.6575, 0.5275, 0.455, 0.41, 0.37},
    {0.635, 0.505, 0.4325, 0.3875, 0.35},
    {0.625, 0.495, 0.4225, 0.38, 0.3425},
  };

  private BundleCurves() {}

  /**
   * @param wires wires in the bundle, from 1
   * @param loadedShare share of capacity in use, above 0 to 1
   */
  static double factor(int wires, double loadedShare) {
    int last = WIRES.length - 1;
    if (wires > WIRES[last]) {
      return alongLoad(FACTOR[last], loadedShare) * Math.sqrt((double) WIRES[last] / wires);
    }
    int above = 0;
    while (WIRES[above] < wires) {
      above++;
    }
    double high = alongLoad(FACTOR[above], loadedShare);
    if (WIRES[above] == wires) {
      return high;
    }
    double low = alongLoad(FACTOR[above - 1], loadedShare);
    double part = (double) (wires - WIRES[above - 1]) / (WIRES[above] - WIRES[above - 1]);
    return low + part * (high - low);
  }

  /** Columns stand at 20, 40, 60, 80 and 100 %. */
  private static double alongLoad(double[] row, double loadedShare) {
    double position = Math.max(0, loadedShare * 5 - 1);
    int left = Math.min((int) position, row.length - 2);
    return row[left] + (position - left) * (row[left + 1] - row[left]);
  }
}
