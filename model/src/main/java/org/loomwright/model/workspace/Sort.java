package org.loomwright.model.workspace;

/** What an id can name. */
enum Sort {
  VEHICLE("a vehicle", "vehicles"),
  EQUIPMENT("a piece of equipment", "pieces of equipment"),
  KIT("a kit", "kits"),
  PARTS("a parts list", "parts lists"),
  RULES("a set of rules", "sets of rules"),
  FINDING("a finding", "findings"),
  JOB("a job", "jobs"),
  BATCH("a batch", "batches"),
  TRAIT("a trait", "traits"),
  OPENING("an opening", "openings"),
  PLACE("a place", "places"),
  RUN("a run", "runs"),
  CONNECTOR("a connector", "connectors"),
  BLOCK("a fuse block", "fuse blocks"),
  SECTION("a section", "sections"),
  SLOT("a slot", "slots"),
  GROUND("a ground stud", "ground studs"),
  CIRCUIT("a circuit", "circuits"),
  PLUG("a plug", "plugs"),
  PIN("a pin", "pins"),
  WIRE("a wire", "wires"),
  HOUSING("a housing", "housings"),
  TERMINAL("a terminal", "terminals"),
  SEAL("a wire seal", "wire seals"),
  RING("a ring terminal", "ring terminals"),
  SPLICE("a splice", "splices"),
  FUSE("a fuse", "fuses"),
  COVERING("a covering", "coverings"),
  SUNDRY("a sundry part", "sundry parts");

  private final String noun;
  private final String plural;

  Sort(String noun, String plural) {
    this.noun = noun;
    this.plural = plural;
  }

  /** With article: "a place". */
  String noun() {
    return noun;
  }

  /** Without article: "place". */
  String bare() {
    return noun.substring(noun.indexOf(' ') + 1);
  }

  String plural() {
    return plural;
  }
}
