package org.loomwright.planner.proof;

/** What has to be shown of a kit and its guide. */
enum Claim {
  COVER("cover", "every possible build reaches exactly one end of the guide, that of its own case"),
  DECIDED("decided", "every branch of the guide is decided by answers given before it"),
  LANDED_RIGHT(
      "landed-right", "every end lands where answers given before show that it may be landed"),
  NOTHING_TWICE("nothing-twice", "no cavity, slot, stud or section is used beyond what it bears"),
  NEEDS_MET("needs-met", "every pin of the equipment is connected as it needs to be"),
  LIMITS("limits", "fuses, wires and voltage drops keep their limits"),
  NO_BACK_FEED("no-back-feed", "no net has two feeds, no parked end is live, every feed is fused"),
  ORDER("order", "openings and power are as each step needs them, and as found at the end"),
  COMPLETE(
      "complete",
      "the guide tells of every lead, tool, caution and measurement, and of nothing else");

  private final String id;
  private final String words;

  Claim(String id, String words) {
    this.id = id;
    this.words = words;
  }

  String id() {
    return id;
  }

  String words() {
    return words;
  }
}
