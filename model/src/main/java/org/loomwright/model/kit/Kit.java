package org.loomwright.model.kit;

import java.util.List;
import java.util.Map;
import org.loomwright.model.document.Document;

/**
 * A kit as ordered from the planner.
 *
 * @param id kit id, printed on every page
 * @param name name for people
 * @param revision kit revision, printed on every page
 * @param vehicle vehicle document
 * @param rules rules document
 * @param parts parts documents, searched in this order
 * @param mounts where each plug goes
 * @param wishes ways forbidden or preferred
 * @param designedAgainst document id to the revision the kit was designed against
 */
public record Kit(
    String id,
    String name,
    String revision,
    String vehicle,
    String rules,
    List<String> parts,
    List<Mount> mounts,
    List<Wish> wishes,
    Map<String, String> designedAgainst)
    implements Document {
  public Kit {
    parts = List.copyOf(parts);
    mounts = List.copyOf(mounts);
    wishes = List.copyOf(wishes);
    designedAgainst =
        java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(designedAgainst));
  }
}
