package org.loomwright.drawing.map;

/** What leads end in, each with its symbol. */
enum EndKind {
  HOUSING("housing of the kit"),
  CONNECTOR("connector of the vehicle"),
  BLOCK("fuse block"),
  GROUND("ground stud"),
  CIRCUIT("factory wire, spliced into"),
  JOINT("joint of the kit's leads"),
  PARKED("parked: capped, taped back, not live");

  private final String words;

  EndKind(String words) {
    this.words = words;
  }

  /** What the symbol means. */
  String words() {
    return words;
  }
}
