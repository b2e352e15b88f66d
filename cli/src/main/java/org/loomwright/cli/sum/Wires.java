package org.loomwright.cli.sum;

import java.util.OptionalInt;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.SumException;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.UnknownConductorException;
import picocli.CommandLine.ITypeConverter;

/** From what people write about a wire to what the sums reckon with. */
final class Wires {

  static final String HELP = "Size of the wire, such as \"2.5 mm²\" or \"14 AWG\".";

  private Wires() {}

  /**
   * The conductor of a size.
   *
   * @throws WrongInput if no table holds that size
   */
  static Conductor conductor(WireSize size) {
    try {
      return find(size);
    } catch (UnknownConductorException unknown) {
      throw new WrongInput("--wire: " + unknown.getMessage());
    }
  }

  private static Conductor find(WireSize size) {
    OptionalInt gauge = size.awg();
    return gauge.isPresent() ? Conductor.awg(gauge.getAsInt()) : Conductor.metric(size.areaMm2());
  }

  /** Reads the name of an insulation material. */
  static final class InsulationReader implements ITypeConverter<Insulation> {
    @Override
    public Insulation convert(String text) {
      try {
        return Insulation.parse(text);
      } catch (SumException unknown) {
        throw new WrongInput(unknown.getMessage() + ".");
      }
    }
  }

  static double metres(Length length) {
    return length.mm() / 1000;
  }
}
