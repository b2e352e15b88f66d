package org.loomwright.cli.sum;

import org.loomwright.physics.packing.BundleSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum bundle}: diameter of a round bundle of wires. */
@Command(
    name = "bundle",
    description = "Diameter of a round bundle of wires, without covering.",
    sortOptions = false)
final class BundleSum extends Sum {

  @Option(
      names = "--diameters",
      required = true,
      paramLabel = "LIST",
      description = "Outside diameters of the wires in mm, such as \"2.1,2.1,3.0\".",
      converter = NumberList.DiametersReader.class)
  private NumberList.Diameters diameters;

  @Override
  Answer answer() {
    BundleSize.Result result = BundleSize.of(new BundleSize.Input(diameters.mm()));
    return Answer.of(
        result.trace(), Figure.of("diameterMm", "bundle diameter", result.diameterMm(), "mm"));
  }
}
