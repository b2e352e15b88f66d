package org.loomwright.model.parts;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/**
 * A connector housing, harness side, with the geometry of its face. The latch is at the top in the
 * document's coordinates.
 *
 * @param id part number
 * @param name name for people
 * @param width width of the face
 * @param height height of the face
 * @param round whether the face is a circle
 * @param sealed whether each cavity needs a seal or a plug
 * @param latch whether it has a latch; a housing without one is drawn with its key instead
 * @param cavities cavities
 * @param secondaryLock what locks the terminals, in words
 * @param price price
 * @param source where the values come from
 */
public record Housing(
    String id,
    String name,
    Length width,
    Length height,
    boolean round,
    boolean sealed,
    boolean latch,
    List<Cavity> cavities,
    Optional<String> secondaryLock,
    Money price,
    String source) {
  public Housing {
    cavities = List.copyOf(cavities);
  }

  /** The cavity with this number. */
  public Optional<Cavity> cavity(String number) {
    return cavities.stream().filter(cavity -> cavity.number().equals(number)).findFirst();
  }
}
