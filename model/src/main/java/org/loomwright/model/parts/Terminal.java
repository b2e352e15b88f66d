package org.loomwright.model.parts;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.WireSize;

/**
 * A crimp terminal.
 *
 * @param id part number
 * @param name name for people
 * @param wireLeast smallest conductor it takes
 * @param wireMost largest conductor it takes
 * @param insulationLeast smallest insulation diameter its crimp holds
 * @param insulationMost largest insulation diameter its crimp holds
 * @param currentLimit most continuous current, whatever the wire and the place
 * @param currentLimits less current with thinner wire or in hotter places; empty when not known
 * @param contactResistance most resistance of its crimp and its contact, after use
 * @param strip strip length
 * @param crimpHeight conductor crimp height
 * @param tool crimp tool or die
 * @param plating contact plating
 * @param seal wire seal it is crimped with, where the housing is sealed
 * @param price price
 * @param source where the values come from
 */
public record Terminal(
    String id,
    String name,
    WireSize wireLeast,
    WireSize wireMost,
    Length insulationLeast,
    Length insulationMost,
    Current currentLimit,
    List<CurrentLimit> currentLimits,
    Optional<Resistance> contactResistance,
    Length strip,
    Optional<Length> crimpHeight,
    String tool,
    String plating,
    Optional<String> seal,
    Money price,
    String source) {
  public Terminal {
    currentLimits = List.copyOf(currentLimits);
  }
}
