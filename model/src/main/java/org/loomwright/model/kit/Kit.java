package org.loomwright.model.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
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
 * @param ownLeads leads of the user's own, beside those that needs ask for
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
    @JsonInclude(JsonInclude.Include.NON_EMPTY) List<OwnLead> ownLeads,
    Map<String, String> designedAgainst)
    implements Document {
  public Kit {
    parts = List.copyOf(parts);
    mounts = List.copyOf(mounts);
    wishes = List.copyOf(wishes);
    ownLeads = List.copyOf(ownLeads);
    designedAgainst =
        java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(designedAgainst));
  }

  /** A kit without leads of the user's own. */
  public Kit(
      String id,
      String name,
      String revision,
      String vehicle,
      String rules,
      List<String> parts,
      List<Mount> mounts,
      List<Wish> wishes,
      Map<String, String> designedAgainst) {
    this(id, name, revision, vehicle, rules, parts, mounts, wishes, List.of(), designedAgainst);
  }
}
