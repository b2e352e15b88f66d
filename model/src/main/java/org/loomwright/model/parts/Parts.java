package org.loomwright.model.parts;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.document.Document;

/**
 * A parts list the shop can buy from.
 *
 * @param id name used in references
 * @param name name for people
 * @param revision revision of this document
 * @param wires wires
 * @param housings housings
 * @param terminals terminals
 * @param seals wire seals
 * @param rings ring terminals
 * @param splices splices
 * @param fuses fuses
 * @param coverings coverings
 * @param grommets grommets
 * @param clips clips
 * @param sundries parts counted by the piece
 */
public record Parts(
    String id,
    String name,
    String revision,
    List<Wire> wires,
    List<Housing> housings,
    List<Terminal> terminals,
    List<Seal> seals,
    List<Ring> rings,
    List<Splice> splices,
    List<Fuse> fuses,
    List<Covering> coverings,
    List<Grommet> grommets,
    List<Clip> clips,
    List<Sundry> sundries)
    implements Document {
  public Parts {
    wires = List.copyOf(wires);
    housings = List.copyOf(housings);
    terminals = List.copyOf(terminals);
    seals = List.copyOf(seals);
    rings = List.copyOf(rings);
    splices = List.copyOf(splices);
    fuses = List.copyOf(fuses);
    coverings = List.copyOf(coverings);
    grommets = List.copyOf(grommets);
    clips = List.copyOf(clips);
    sundries = List.copyOf(sundries);
  }

  /** The wire with this part number. */
  public Optional<Wire> wire(String partId) {
    return wires.stream().filter(it -> it.id().equals(partId)).findFirst();
  }

  /** The housing with this part number. */
  public Optional<Housing> housing(String partId) {
    return housings.stream().filter(it -> it.id().equals(partId)).findFirst();
  }

  /** The terminal with this part number. */
  public Optional<Terminal> terminal(String partId) {
    return terminals.stream().filter(it -> it.id().equals(partId)).findFirst();
  }
}
