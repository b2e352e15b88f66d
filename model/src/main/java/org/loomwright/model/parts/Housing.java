package org.loomwright.model.parts;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.vehicle.FacePhoto;

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
 * @param latch whether it has a latch; a housing without one is known by its key, which is at the
 *     top then
 * @param cavities cavities
 * @param secondaryLock what locks the terminals, in words
 * @param price price
 * @param source where the values come from
 * @param keys what keeps it from being mated the wrong way; empty when not known
 * @param latchForm where the latch is, when not in the middle of the top edge
 * @param lockEdge edge at which the secondary lock is seen
 * @param photo photo of the loose part
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
    String source,
    List<Key> keys,
    Optional<LatchForm> latchForm,
    Optional<FaceEdge> lockEdge,
    Optional<FacePhoto> photo) {
  public Housing {
    cavities = List.copyOf(cavities);
    keys = List.copyOf(keys);
  }

  /** A housing of which no more than its cavities is known. */
  public Housing(
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
    this(
        id,
        name,
        width,
        height,
        round,
        sealed,
        latch,
        cavities,
        secondaryLock,
        price,
        source,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The cavity with this number. */
  public Optional<Cavity> cavity(String number) {
    return cavities.stream().filter(cavity -> cavity.number().equals(number)).findFirst();
  }
}
