package org.loomwright.intake;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.vehicle.Spot;

/**
 * What a row says, cell by cell.
 *
 * @param number number of the row
 * @param cavity cavity as moulded
 * @param filling what it says of the cavity
 * @param name name of the circuit
 * @param feed supply kind
 * @param size wire size
 * @param colour wire colour
 * @param colourAsSeen colour as written, where that is a code
 * @param from where the wire comes from
 * @param to where it goes
 * @param slot slot of its fuse
 * @param rating rating of its fuse
 * @param note what has no field
 * @param all all of the row but the cavity, in words
 * @param remarks what could not be read, and what was taken for granted
 */
record RowFacts(
    int number,
    Optional<String> cavity,
    Filling filling,
    Optional<String> name,
    Optional<String> feed,
    Optional<WireSize> size,
    Optional<Colour> colour,
    Optional<String> colourAsSeen,
    Optional<Spot> from,
    Optional<Spot> to,
    Optional<Spot.OfSlot> slot,
    Optional<Current> rating,
    Optional<String> note,
    Optional<String> all,
    List<CellRemark> remarks) {
  RowFacts {
    remarks = List.copyOf(remarks);
  }

  /** What a row says of its cavity. */
  enum Filling {
    WIRE,
    UNSAID,
    EMPTY,
    PLUGGED,
    BLOCKED
  }

  boolean hasProblem() {
    return remarks.stream().anyMatch(CellRemark::problem);
  }
}
