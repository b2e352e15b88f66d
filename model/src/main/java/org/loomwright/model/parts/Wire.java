package org.loomwright.model.parts;

import java.util.List;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.WireSize;

/**
 * A wire type, in one or more colours.
 *
 * @param id part number
 * @param name name for people
 * @param size conductor size
 * @param diameter outside diameter of the insulation, largest
 * @param insulation insulation material, e.g. "PVC" or "XLPE"
 * @param rating highest conductor temperature the insulation bears without end
 * @param colours colours it can be bought in
 * @param price price of a metre
 * @param spool length of a spool
 * @param source where the values come from
 */
public record Wire(
    String id,
    String name,
    WireSize size,
    Length diameter,
    String insulation,
    Temperature rating,
    List<Colour> colours,
    Money price,
    Length spool,
    String source) {
  public Wire {
    colours = List.copyOf(colours);
  }
}
